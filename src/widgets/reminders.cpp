#include "widgets/reminders.h"

#include "game/conditions.h"
#include "game/reminding.h"
#include "game/turns.h"
#include "widgets/form.h"
#include "widgets/party_first.h"
#include "widgets/read_only.h"
#include "widgets/reminder_tick.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <string>
#include <vector>

namespace widgets {

using game::Combatant;
using game::ComesUp;
using game::Encounter;
using game::RefreshedBy;

const PanelInfo reminders_info{
    "reminders",
    "Reminders",
    "What the players may forget, at the moment it is of use.",
    "Shift+F12",
    300.0F,
    180.0F};

namespace {

// What its conditions do, and what it keeps up: forgotten as easily as an ability.
void draw_state_of(const PanelContext& context, const Combatant& combatant) {
    for (const game::ActiveCondition& active : combatant.conditions) {
        const rules::ConditionRule* rule = rules::find_condition(context.rulebook, active.key);
        std::string words = game::condition_text(context.rulebook, active);
        if (rule != nullptr && !rule->summary.empty()) words += ": " + rule->summary;
        text_wrapped(Ink::muted, words);
    }
    if (!combatant.concentrating_on.empty())
        text_wrapped(Ink::muted, "Concentrating on " + combatant.concentrating_on);
}

void draw_turn_of(const PanelContext& context, const Combatant& combatant) {
    push_font(TextSize::name);
    text_fitted(Ink::accent, combatant.name, ImGui::GetContentRegionAvail().x);
    ImGui::PopFont();
    draw_state_of(context, combatant);
}

void draw_moment(const PanelContext& context) {
    const Encounter& encounter = context.campaign.encounter;
    const ComesUp moment = game::present_moment(encounter);
    const Combatant* current = game::find_combatant(encounter, encounter.current);
    const std::vector<game::ShownReminder> shown = game::reminders_of_the_moment(encounter);
    if (moment == ComesUp::own_turn) {
        heading("Whose turn it is");
        if (current != nullptr) draw_turn_of(context, *current);
        if (shown.empty()) text(Ink::muted, "No reminders for this turn.");
    } else {
        heading(moment == ComesUp::initiative ? "Initiative is rolled" : "On the way");
        if (shown.empty()) text(Ink::muted, "No reminders for this moment.");
    }
    const Combatant* named = nullptr;
    for (const game::ShownReminder& each : shown) {
        ImGui::PushID(static_cast<int>(each.combatant->id));
        if (moment != ComesUp::own_turn && each.combatant != named)
            text(Ink::accent, each.combatant->name);
        named = each.combatant;
        draw_reminder_row(context, *each.combatant, *each.reminder);
        ImGui::PopID();
    }
}

void draw_next(const PanelContext& context) {
    const Encounter& encounter = context.campaign.encounter;
    const Combatant* next = game::find_combatant(encounter, game::upcoming(encounter, 1));
    if (next == nullptr) return;
    std::string words = "Next: " + next->name;
    bool is_first = true;
    for (const game::Reminder& reminder : next->reminders) {
        if (reminder.comes_up != ComesUp::own_turn || game::is_used_up(*next, reminder)) continue;
        words += (is_first ? ". " : "; ") + reminder.text;
        is_first = false;
    }
    text_wrapped(Ink::muted, words);
}

void ask_refresh(const PanelContext& context, const char* label, RefreshedBy happened) {
    context.edits.add(&game::Campaign::encounter, label, [happened](Encounter& encounter) {
        game::refresh_party(encounter, happened);
    });
}

void draw_refreshing(const PanelContext& context) {
    const std::string why_not = read_only_reason(context);
    const bool is_srd = context.rulebook.family == rules::Family::srd5;
    const char* rested = is_srd ? "A short rest is over" : "Ten minutes are over";
    Flow flow;
    flow.next(button_width(rested));
    if (button(rested, why_not)) ask_refresh(context, rested, RefreshedBy::short_rest);
    ImGui::SetItemTooltip("Gives back what a short rest gives back; no time passes");
    const char* dawn = "The day dawns";
    flow.next(button_width(dawn));
    if (button(dawn, why_not)) ask_refresh(context, dawn, RefreshedBy::dawn);
    ImGui::SetItemTooltip("Gives back what the dawn gives back; no time passes");
}

bool is_shown_now(const std::vector<game::ShownReminder>& now, const game::Reminder& reminder) {
    return std::any_of(now.begin(), now.end(), [&](const game::ShownReminder& each) {
        return each.reminder == &reminder;
    });
}

void draw_all_others(const PanelContext& context) {
    heading("All others");
    draw_refreshing(context);
    const auto now = game::reminders_of_the_moment(context.campaign.encounter);
    for (const game::Character& character : context.campaign.party.characters) {
        const Combatant* combatant =
            game::find_party_combatant(context.campaign.encounter, character.id);
        if (!character.is_present || combatant == nullptr) continue;
        const auto& own = combatant->reminders;
        if (std::all_of(own.begin(), own.end(), [&](const game::Reminder& each) {
                return is_shown_now(now, each);
            }))
            continue;
        ImGui::PushID(static_cast<int>(character.id));
        text(Ink::accent, character.name);
        for (const game::Reminder& reminder : combatant->reminders) {
            if (is_shown_now(now, reminder)) continue;
            draw_reminder_row(context, *combatant, reminder, true);
        }
        ImGui::PopID();
    }
}

bool has_any_reminder(const game::Party& party) {
    for (const game::Character& character : party.characters)
        if (!character.reminders.empty()) return true;
    return false;
}

} // namespace

void draw_reminders(const PanelContext& context, RemindersView& /*view*/) {
    if (!has_any_reminder(context.campaign.party)) {
        empty_state("What a player may forget: a reaction against a hit, a boon once a day. It "
                    "comes up when it is of use. Reminders belong to a character: add them in the "
                    "Party panel.");
        offer_the_party(context);
        return;
    }
    const std::vector<game::ShownReminder> called =
        game::called_reminders(context.campaign.encounter);
    if (!called.empty()) heading("Now, before it is too late");
    for (const game::ShownReminder& each : called)
        draw_called_reminder(context, each);
    ImGui::PushID("moment");
    draw_moment(context);
    draw_next(context);
    ImGui::PopID();
    draw_all_others(context);
}

} // namespace widgets
