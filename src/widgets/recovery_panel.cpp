#include "widgets/recovery_panel.h"

#include "game/effects.h"
#include "widgets/form.h"
#include "widgets/house_rule_mark.h"
#include "widgets/party_first.h"
#include "widgets/read_only.h"
#include "widgets/recovery_parts.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>

namespace widgets {

const PanelInfo recovery_info{
    "recovery",
    "Recovery",
    "Wounds treated, nights and rests: what they give, rolled or typed, and the time they take.",
    "",
    360.0F,
    260.0F};

const game::Combatant* combatant_of(const PanelContext& context, const game::Character& character) {
    return game::find_party_combatant(context.campaign.encounter, character.id);
}

bool is_chosen(const RecoveryView& view, base::Id character, bool is_usual) {
    return is_usual != (view.chosen_otherwise.count(character) > 0);
}

std::string why_no_recovery(const PanelContext& context, bool is_anybody_chosen) {
    std::string read_only = read_only_reason(context);
    if (!read_only.empty()) return read_only;
    std::string fight = game::why_no_rest(context.campaign);
    if (!fight.empty()) return fight;
    return is_anybody_chosen ? std::string() : std::string("Nobody is chosen.");
}

static float widest_name(const PanelContext& context) {
    float widest = 0.0F;
    for (const game::Character& character : context.campaign.party.characters)
        widest = std::max(widest, button_width(character.name.c_str()));
    return widest;
}

void draw_member(
    const PanelContext& context,
    RecoveryView& view,
    const game::Character& character,
    bool is_usual,
    std::string_view why_not
) {
    const std::string label = character.name + "##member " + std::to_string(character.id);
    const float indent = ImGui::GetCursorPosX();
    const bool is_on = why_not.empty() && is_chosen(view, character.id, is_usual);
    if (toggle_button(label.c_str(), is_on, why_not) &&
        view.chosen_otherwise.erase(character.id) == 0)
        view.chosen_otherwise.insert(character.id);
    const game::Combatant* combatant = combatant_of(context, character);
    if (combatant == nullptr) return;
    const ImVec2 size{std::min(px(170.0F), ImGui::GetContentRegionAvail().x), row_height()};
    // The bars of all stand below each other.
    const float left = widest_name(context) + ImGui::GetStyle().ItemSpacing.x;
    if (left + size.x <= ImGui::GetContentRegionAvail().x) ImGui::SameLine(left + indent);
    hp_bar(
        combatant->hp,
        game::effective_hp_max(context.rulebook, *combatant),
        combatant->temp_hp,
        size
    );
}

void forget_rolls(RecoveryView& view) {
    view.natural.clear();
    view.rolled.clear();
    view.spent.clear();
    view.dice.clear();
    view.natural_drafts = {};
    view.rolled_drafts = {};
    view.chosen_otherwise.clear();
    view.refusal.clear();
}

static void draw_kinds(const PanelContext& context, RecoveryView& view) {
    const bool is_srd5 = context.rulebook.family == rules::Family::srd5;
    const char* brief = is_srd5 ? "Short rest" : "Treat wounds";
    const char* overnight = is_srd5 ? "Long rest" : "Night's rest";
    Flow flow;
    flow.next(button_width(brief));
    if (toggle_button(brief, view.kind == RecoveryKind::brief)) {
        view.kind = RecoveryKind::brief;
        view.chosen_otherwise.clear();
    }
    flow.next(button_width(overnight));
    if (toggle_button(overnight, view.kind == RecoveryKind::overnight)) {
        view.kind = RecoveryKind::overnight;
        view.chosen_otherwise.clear();
    }
}

void draw_recovery(const PanelContext& context, RecoveryView& view) {
    if (context.campaign.party.characters.empty()) {
        empty_state("Wounds are treated and nights are slept through here. Enter the player "
                    "characters in the Party panel first.");
        offer_the_party(context);
        return;
    }
    draw_kinds(context, view);
    draw_house_rule_mark(context, {"/treat_wounds", "/first_aid", "/rest", "/rests"});
    const std::string fight = game::why_no_rest(context.campaign);
    if (!fight.empty()) text_wrapped(Ink::accent, fight);
    if (ImGui::BeginChild("recovery", {0.0F, 0.0F})) {
        if (view.kind == RecoveryKind::overnight)
            draw_night(context, view);
        else if (context.rulebook.family == rules::Family::srd5)
            draw_short_rest(context, view);
        else
            draw_treat_wounds(context, view);
    }
    ImGui::EndChild();
}

} // namespace widgets
