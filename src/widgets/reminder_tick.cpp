#include "widgets/reminder_tick.h"

#include "game/turns.h"
#include "widgets/form.h"
#include "widgets/read_only.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <string>

namespace widgets {

using game::Combatant;
using game::Encounter;
using game::Reminder;

namespace {

void ask_use(
    const PanelContext& context, const Combatant& combatant, const Reminder& reminder, int change
) {
    context.edits.add(
        &game::Campaign::encounter,
        combatant.name + (change > 0 ? " uses: " : " gets back: ") + reminder.text,
        [id = combatant.id, what = reminder.id, change](Encounter& encounter) {
            game::use_reminder(encounter, id, what, change);
        }
    );
}

std::string left_words(const Combatant& combatant, const Reminder& reminder) {
    return std::to_string(game::uses_left(combatant, reminder)) + " left";
}

std::string
why_not_used(const PanelContext& context, const Combatant& combatant, const Reminder& reminder) {
    std::string why_not = read_only_reason(context);
    if (why_not.empty() && game::is_used_up(combatant, reminder)) why_not = "All of it is used.";
    return why_not;
}

} // namespace

void draw_reminder_chip(
    const PanelContext& context, const Combatant& combatant, const Reminder& reminder
) {
    std::string words = reminder.text;
    if (reminder.uses > 0) words += ": " + left_words(combatant, reminder);
    const bool is_spent = game::is_used_up(combatant, reminder);
    const char* tooltip = reminder.uses == 0 ? "A reminder; it is not counted"
                          : is_spent         ? "All used; press to give one back"
                                             : "Press when it is used";
    ImGui::PushID(static_cast<int>(reminder.id));
    const bool is_pressed =
        chip((words + "###reminder").c_str(), is_spent ? Ink::muted : Ink::good, tooltip);
    ImGui::PopID();
    if (is_pressed && reminder.uses > 0 && !context.is_read_only)
        ask_use(context, combatant, reminder, is_spent ? -1 : 1);
}

void draw_reminder_row(
    const PanelContext& context,
    const Combatant& combatant,
    const Reminder& reminder,
    bool tells_when
) {
    const bool is_spent = game::is_used_up(combatant, reminder);
    std::string when;
    if (tells_when && reminder.comes_up != game::ComesUp::own_turn)
        when = game::comes_up_words(reminder.comes_up);
    ImGui::PushID(static_cast<int>(reminder.id));
    std::string told = reminder.text;
    if (reminder.uses == 0 && !when.empty()) told += " (" + when + ")";
    text_wrapped(is_spent ? Ink::muted : Ink::text, told);
    if (reminder.uses > 0) {
        const int left = game::uses_left(combatant, reminder);
        std::string words = std::to_string(left) + " of " + std::to_string(reminder.uses) +
                            " left, " + game::refreshed_words(reminder.refreshed_by);
        if (!when.empty()) words += ", " + when;
        Flow flow;
        flow.next(button_width("Used"));
        if (small_button(
                ("Used##" + reminder.text).c_str(), why_not_used(context, combatant, reminder)
            ))
            ask_use(context, combatant, reminder, 1);
        if (left < reminder.uses) {
            flow.next(button_width("Give back"));
            if (small_button(("Give back##" + reminder.text).c_str(), read_only_reason(context)))
                ask_use(context, combatant, reminder, -1);
        }
        flow.next(ImGui::CalcTextSize(words.c_str()).x);
        ImGui::AlignTextToFramePadding();
        text(Ink::muted, words);
    }
    ImGui::PopID();
}

void draw_called_reminder(const PanelContext& context, const game::ShownReminder& shown) {
    const Combatant& combatant = *shown.combatant;
    const Reminder& reminder = *shown.reminder;
    ImGui::PushID(static_cast<int>(combatant.id));
    ImGui::PushID(static_cast<int>(reminder.id));
    if (reminder.uses > 0) {
        if (button(
                ("Used##called " + reminder.text).c_str(),
                why_not_used(context, combatant, reminder)
            ))
            ask_use(context, combatant, reminder, 1);
        ImGui::SameLine();
    }
    if (button("Not now", read_only_reason(context)))
        context.edits.add(
            &game::Campaign::encounter,
            "Set aside: " + reminder.text,
            [id = combatant.id, what = reminder.id](Encounter& encounter) {
                game::set_reminder_aside(encounter, id, what);
            }
        );
    ImGui::SameLine();
    ImGui::AlignTextToFramePadding();
    std::string words = combatant.name + " can: " + reminder.text;
    if (reminder.uses > 0) words += " (" + left_words(combatant, reminder) + ")";
    text_fitted(Ink::text, words, ImGui::GetContentRegionAvail().x);
    ImGui::PopID();
    ImGui::PopID();
}

} // namespace widgets
