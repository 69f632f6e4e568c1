#include "widgets/turn_order_actions.h"

#include "game/effects.h"
#include "game/turns.h"
#include "widgets/picking.h"
#include "widgets/read_only.h"
#include "widgets/turn_order_select.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>

namespace widgets {

using base::Id;
using game::Combatant;
using game::Encounter;

std::string why_not_delay(const PanelContext& context, const std::vector<Id>& who) {
    if (context.is_read_only) return read_only_reason(context);
    const Encounter& encounter = context.campaign.encounter;
    if (who.size() != 1) return "One combatant at a time.";
    const Combatant* combatant = game::find_combatant(encounter, who.front());
    if (combatant == nullptr) return "Pick a combatant first.";
    if (combatant->id != encounter.current)
        return "Only on its own turn; now it is not " + combatant->name + "'s.";
    if (!game::can_delay(context.rulebook, *combatant)) return "A condition forbids it.";
    return {};
}

void ask_delay(const PanelContext& context, Id combatant) {
    const Encounter& encounter = context.campaign.encounter;
    context.edits.add(
        &game::Campaign::encounter,
        names_text(encounter, {combatant}) + " delays",
        [rulebook = &context.rulebook](Encounter& changed) { game::delay_turn(changed, *rulebook); }
    );
}

void ask_return(const PanelContext& context, Id combatant) {
    context.edits.add(
        &game::Campaign::encounter,
        names_text(context.campaign.encounter, {combatant}) + " returns",
        [combatant, rulebook = &context.rulebook](Encounter& encounter) {
            game::return_from_delay(encounter, *rulebook, combatant);
        }
    );
}

namespace {

// The button after another: on the same line if it fits.
bool verb(const char* label, std::string_view why_not) {
    same_line_if_fits(button_width(label));
    return button(label, why_not);
}

void draw_delay_verb(
    const PanelContext& context, const std::vector<Id>& who, const Combatant* main
) {
    if (main != nullptr && main->standing == game::Standing::delaying) {
        const std::string why_not =
            who.size() == 1 ? std::string(read_only_reason(context)) : "One combatant at a time.";
        if (verb("Return", why_not)) ask_return(context, main->id);
        return;
    }
    if (!context.rulebook.turn.has_delay) return;
    if (verb("Delay", why_not_delay(context, who))) ask_delay(context, main->id);
}

void draw_ready_verb(
    const PanelContext& context,
    TurnOrderActionsView& view,
    const std::vector<Id>& who,
    const Combatant* main
) {
    std::string why_not = read_only_reason(context);
    if (why_not.empty() && who.size() != 1) why_not = "One combatant at a time.";
    if (main == nullptr || main->readied.empty()) {
        if (verb("Ready", why_not)) view.wants_ready = true;
        return;
    }
    if (why_not.empty() && !game::can_react(context.rulebook, *main))
        why_not = "It cannot use reactions.";
    if (why_not.empty() && main->reaction_used) why_not = "Its reaction is used.";
    if (verb("Use readied", why_not))
        context.edits.add(
            &game::Campaign::encounter,
            main->name + " uses what was readied: " + main->readied,
            [id = main->id, rulebook = &context.rulebook](Encounter& encounter) {
                game::use_readied(encounter, *rulebook, id);
            }
        );
}

void draw_reaction_verb(
    const PanelContext& context, const std::vector<Id>& who, const Combatant* main
) {
    std::string why_not = read_only_reason(context);
    if (why_not.empty() && who.size() != 1) why_not = "One combatant at a time.";
    const bool is_used = main != nullptr && main->reaction_used;
    if (why_not.empty() && !is_used && !game::can_react(context.rulebook, *main))
        why_not = "A condition takes its reactions.";
    if (!verb(is_used ? "Reaction back" : "Use reaction", why_not)) return;
    context.edits.add(
        &game::Campaign::encounter,
        main->name + (is_used ? " has its reaction back" : " uses its reaction"),
        [id = main->id, is_used](Encounter& encounter) {
            game::set_reaction_used(encounter, id, !is_used);
        }
    );
}

void draw_hide_verb(
    const PanelContext& context, const std::vector<Id>& who, std::string_view why_not
) {
    const Encounter& encounter = context.campaign.encounter;
    const bool is_hidden = !who.empty() && std::all_of(who.begin(), who.end(), [&](Id id) {
        const Combatant* combatant = game::find_combatant(encounter, id);
        return combatant != nullptr && combatant->is_hidden;
    });
    if (!verb(is_hidden ? "Show" : "Hide", why_not)) return;
    context.edits.add(
        &game::Campaign::encounter,
        (is_hidden ? "Show " : "Hide ") + names_text(encounter, who),
        [who, is_hidden](Encounter& changed) {
            for (const Id id : who)
                game::set_hidden(changed, id, !is_hidden);
        }
    );
}

} // namespace

float turn_order_actions_height(const TurnOrderActionsView& view) {
    if (view.measured_width == ImGui::GetContentRegionAvail().x) return view.measured_height;
    return row_height() + ImGui::GetStyle().ItemSpacing.y + ImGui::GetTextLineHeightWithSpacing();
}

// Verbs change their words. For one width the height only grows, so that rows seldom move.
static void measure_turn_order_actions(TurnOrderActionsView& view, float width, float needed) {
    const float before = view.measured_width == width ? view.measured_height : 0.0F;
    if (needed > before) ask_frame_in(0.0);
    view.measured_width = width;
    view.measured_height = std::max(before, needed);
}

void draw_turn_order_actions(
    const PanelContext& context,
    TurnOrderActionsView& view,
    NumberPadView& pad,
    AddCombatantView& add
) {
    const Encounter& encounter = context.campaign.encounter;
    const float width = ImGui::GetContentRegionAvail().x;
    const float top = ImGui::GetCursorPosY();
    const std::vector<Id> who = targets(encounter, context.selection);
    const Combatant* main = who.empty() ? nullptr : game::find_combatant(encounter, who.back());
    const std::size_t picked = context.selection.combatants.size();
    std::string whom = names_text(encounter, who);
    if (picked == 0 && main != nullptr) whom += " (current; pick a row for another)";
    if (picked > 1) whom += " picked";
    text_fitted(Ink::muted, "For " + whom + ":", ImGui::GetContentRegionAvail().x);

    std::string why_not = read_only_reason(context);
    if (why_not.empty() && main == nullptr) why_not = "Pick a row first.";
    if (button("Hurt", why_not)) open_number_pad(pad, PadVerb::hurt, who);
    if (verb("Heal", why_not)) open_number_pad(pad, PadVerb::heal, who);
    if (verb("Condition", why_not)) view.wants_condition = true;
    draw_delay_verb(context, who, main);
    draw_ready_verb(context, view, who, main);
    draw_reaction_verb(context, who, main);
    draw_hide_verb(context, who, why_not);
    if (verb("Add", read_only_reason(context))) add.is_wanted = true;
    if (verb("More", why_not)) view.wants_more = true;
    same_line_if_fits(button_width("Several"));
    draw_several(view.picks_several);
    measure_turn_order_actions(view, width, ImGui::GetCursorPosY() - top);
}

} // namespace widgets
