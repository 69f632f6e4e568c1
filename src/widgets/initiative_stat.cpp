#include "widgets/initiative_stat.h"

#include "game/effects.h"
#include "game/turns.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <string>

namespace widgets {

static std::string signed_text(int number) {
    return (number < 0 ? "" : "+") + std::to_string(number);
}

static std::string stat_name(const rules::Rulebook& rulebook, const std::string& key) {
    const std::string& wanted = key.empty() ? rulebook.turn.initiative_stat : key;
    if (wanted == "perception") return "Perception";
    const rules::StatName* stat = rules::find_stat(rulebook, wanted);
    return stat == nullptr ? wanted : stat->name;
}

static bool draw_choice(const std::string& words, bool is_chosen) {
    return ImGui::Selectable(
        words.c_str(), is_chosen, ImGuiSelectableFlags_None, {0.0F, row_height()}
    );
}

static void
ask_stat(const PanelContext& context, const game::Combatant& combatant, const std::string& key) {
    context.edits.add(
        &game::Campaign::encounter,
        combatant.name + " rolls " + stat_name(context.rulebook, key) + " for initiative",
        [id = combatant.id, key](game::Encounter& encounter) {
            game::set_initiative_stat(encounter, id, key);
        }
    );
}

void draw_initiative_stat(const PanelContext& context, const game::Combatant& combatant) {
    const rules::Rulebook& rulebook = context.rulebook;
    const std::string now = stat_name(rulebook, combatant.initiative_stat) + " " +
                            signed_text(game::initiative_modifier(rulebook, combatant));
    ImGui::SetNextItemWidth(-1.0F);
    ImGui::BeginDisabled(context.is_read_only);
    if (ImGui::BeginCombo("##stat", now.c_str(), ImGuiComboFlags_HeightLarge)) {
        if (draw_choice(stat_name(rulebook, {}) + " (usual)", combatant.initiative_stat.empty()))
            ask_stat(context, combatant, {});
        for (const rules::StatName& skill : rulebook.skills) {
            const int modifier = game::effective_check(rulebook, combatant, skill.key).total;
            const bool is_chosen = combatant.initiative_stat == skill.key;
            if (draw_choice(skill.name + " " + signed_text(modifier), is_chosen))
                ask_stat(context, combatant, skill.key);
        }
        ImGui::EndCombo();
    }
    ImGui::EndDisabled();
}

} // namespace widgets
