#include "widgets/combatant_choice.h"

#include "widgets/form.h"

#include <imgui.h>

#include <algorithm>
#include <string>

namespace widgets {

using base::Id;

std::vector<const game::Combatant*> combatants_at_the_table(const game::Encounter& encounter) {
    std::vector<const game::Combatant*> there;
    const auto is_in = [&](const game::Combatant& combatant) {
        return encounter.phase == game::Phase::no_fight ||
               combatant.standing != game::Standing::absent;
    };
    for (const Id id : encounter.order) {
        const game::Combatant* combatant = game::find_combatant(encounter, id);
        if (combatant != nullptr) there.push_back(combatant);
    }
    for (const game::Combatant& combatant : encounter.combatants) {
        if (is_in(combatant) && std::find(there.begin(), there.end(), &combatant) == there.end())
            there.push_back(&combatant);
    }
    return there;
}

void draw_combatant_choice(
    const PanelContext& context, const char* label, Id& chosen, std::string_view nobody, float width
) {
    const game::Encounter& encounter = context.campaign.encounter;
    const game::Combatant* now = game::find_combatant(encounter, chosen);
    if (!begin_choice(label, now == nullptr ? std::string(nobody) : now->name, width)) return;
    if (choice_row(std::string(nobody), now == nullptr)) chosen = base::no_id;
    for (const game::Combatant* combatant : combatants_at_the_table(encounter)) {
        ImGui::PushID(static_cast<int>(combatant->id));
        if (choice_row(combatant->name, combatant->id == chosen)) chosen = combatant->id;
        ImGui::PopID();
    }
    ImGui::EndCombo();
}

} // namespace widgets
