// The current row below its first line: conditions, actions, reaction, attacks, reminders, note.
#include "game/effects.h"
#include "game/reminding.h"
#include "game/turns.h"
#include "rules/attack_penalty.h"
#include "widgets/read_only.h"
#include "widgets/reminder_tick.h"
#include "widgets/turn_order_rows.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <array>

namespace widgets {

using base::Id;
using game::Combatant;
using game::Encounter;

static bool has_reminders(const PanelContext& context, const Combatant& combatant) {
    const auto shown = game::reminders_of_the_moment(context.campaign.encounter);
    return std::any_of(shown.begin(), shown.end(), [&](const game::ShownReminder& each) {
        return each.combatant == &combatant;
    });
}

static std::string note_words(const Combatant& combatant) {
    std::string words;
    if (!combatant.readied.empty()) words += "readied: " + combatant.readied;
    if (!combatant.note.empty()) words += (words.empty() ? "note: " : "; note: ") + combatant.note;
    return words;
}

float current_row_details_height(const PanelContext& context, const Combatant& combatant) {
    const float line = row_height() + ImGui::GetStyle().ItemSpacing.y;
    int lines = 1;
    if (!combatant.conditions.empty()) lines += 1;
    if (has_reminders(context, combatant)) lines += 1;
    if (!note_words(combatant).empty()) lines += 1;
    return static_cast<float>(lines) * line + px(4.0F);
}

// One pip an action: pressed, it is spent; pressed again, it is given back.
static void draw_action_pips(const PanelContext& context, const Combatant& combatant) {
    const int total = std::max(combatant.actions_total, combatant.actions_left);
    ImGui::AlignTextToFramePadding();
    text(
        combatant.actions_left > 0 ? Ink::text : Ink::muted,
        std::to_string(combatant.actions_left) + " of " + std::to_string(total) +
            (total == 1 ? " action" : " actions")
    );
    for (int i = 1; i <= total; ++i) {
        const bool is_left = i <= combatant.actions_left;
        ImGui::SameLine();
        const std::string label = std::to_string(i) + "##action";
        if (!toggle_button(label.c_str(), is_left, read_only_reason(context))) continue;
        const int spent = is_left ? combatant.actions_left - i + 1 : combatant.actions_left - i;
        context.edits.add(
            &game::Campaign::encounter,
            combatant.name + (spent > 0 ? " spends " : " gets back ") +
                std::to_string(std::abs(spent)) + (std::abs(spent) == 1 ? " action" : " actions"),
            [id = combatant.id, spent](Encounter& encounter) {
                game::spend_action(encounter, id, spent);
            }
        );
    }
}

static void draw_reaction(const PanelContext& context, const Combatant& combatant) {
    const char* label =
        combatant.reaction_used ? "Reaction used###reaction" : "Reaction ready###reaction";
    std::string why_not = read_only_reason(context);
    if (why_not.empty() && !game::can_react(context.rulebook, combatant))
        why_not = "A condition takes its reactions.";
    same_line_if_fits(button_width(label));
    if (!toggle_button(label, !combatant.reaction_used, why_not)) return;
    context.edits.add(
        &game::Campaign::encounter,
        combatant.name +
            (combatant.reaction_used ? " has its reaction back" : " uses its reaction"),
        [id = combatant.id, is_used = !combatant.reaction_used](Encounter& encounter) {
            game::set_reaction_used(encounter, id, is_used);
        }
    );
}

// "next attack -5, agile -4": the penalty of the rulebook for the attacks already made.
static std::string attack_words(const rules::Rulebook& rulebook, int made) {
    const int full = rules::attack_penalty(rulebook.turn, false, made);
    const int agile = rules::attack_penalty(rulebook.turn, true, made);
    if (full == 0) return "next attack +0";
    return "next attack " + std::to_string(full) + ", agile " + std::to_string(agile);
}

static void draw_attacks(const PanelContext& context, const Combatant& combatant) {
    if (context.rulebook.turn.attack_penalty.empty()) return;
    const auto ask = [&](int attacks, const char* what) {
        context.edits.add(
            &game::Campaign::encounter,
            combatant.name + what,
            [id = combatant.id, attacks](Encounter& encounter) {
                game::set_attacks_made(encounter, id, attacks);
            }
        );
    };
    const int made = combatant.attacks_made;
    same_line_if_fits(button_width("Attack made"));
    if (button("Attack made", read_only_reason(context))) ask(made + 1, " attacks");
    if (made > 0) {
        ImGui::SameLine();
        if (button("Not made", read_only_reason(context))) ask(made - 1, " takes an attack back");
    }
    const std::string words = attack_words(context.rulebook, made);
    same_line_if_fits(ImGui::CalcTextSize(words.c_str()).x);
    ImGui::AlignTextToFramePadding();
    text(Ink::muted, words);
}

static void draw_turn_reminders(const PanelContext& context, const Combatant& combatant) {
    bool is_first = true;
    for (const game::ShownReminder& shown :
         game::reminders_of_the_moment(context.campaign.encounter)) {
        if (shown.combatant != &combatant) continue;
        const std::string& words = shown.reminder->text;
        if (!is_first) same_line_if_fits(button_width((words + ": 1 left").c_str()));
        is_first = false;
        draw_reminder_chip(context, combatant, *shown.reminder);
    }
}

void draw_current_row_details(
    const PanelContext& context, const Combatant& combatant, const RowPopups& popups
) {
    if (!combatant.conditions.empty())
        draw_row_chips(context, combatant, popups, ImGui::GetContentRegionAvail().x);
    draw_action_pips(context, combatant);
    draw_reaction(context, combatant);
    draw_attacks(context, combatant);
    draw_turn_reminders(context, combatant);
    const std::string words = note_words(combatant);
    if (words.empty()) return;
    ImGui::AlignTextToFramePadding();
    text_fitted(Ink::muted, words, ImGui::GetContentRegionAvail().x);
}

} // namespace widgets
