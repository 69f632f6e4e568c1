#include "widgets/party_roster_form.h"

#include "game/reminding.h"
#include "game/roster.h"
#include "widgets/form.h"
#include "widgets/read_only.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <utility>

namespace widgets {

using game::Character;
using game::ComesUp;
using game::RefreshedBy;
using game::Reminder;

namespace {

struct NameField {
    const char* caption;
    const char* label;
    std::string Character::*part;
    TextCheck check;
};

void draw_name_field(
    const PanelContext& context,
    PartyRosterView& view,
    const Character& character,
    Flow& flow,
    const NameField& field
) {
    const float width = px(210.0F);
    flow.field(field.caption, width);
    const bool is_name = field.part == &Character::name;
    if (is_name && view.wants_name == character.id) {
        give_keyboard_to_next_field();
        view.wants_name = base::no_id;
    }
    const auto typed = checked_text(
        field.label,
        character.*(field.part),
        view.editor.drafts,
        context.now_seconds,
        width,
        field.check
    );
    Flow::end_field();
    if (!typed.has_value()) return;
    const std::string label = is_name ? character.name + " is now called " + *typed
                                      : std::string(field.caption) + " of " + character.name;
    ask_character(
        context,
        character.id,
        label,
        field.label,
        [part = field.part, words = *typed](Character& changed) { changed.*part = words; }
    );
}

void draw_head(const PanelContext& context, PartyRosterView& view, const Character& character) {
    push_font(TextSize::name);
    text_fitted(Ink::text, character.name, ImGui::GetContentRegionAvail().x);
    ImGui::PopFont();
    Flow flow;
    const std::array<NameField, 3> fields{
        NameField{"Name", "##name", &Character::name, check_name},
        NameField{"Player", "##player", &Character::player, check_text},
        NameField{"Calling", "##calling", &Character::calling, check_text}};
    for (const NameField& field : fields)
        draw_name_field(context, view, character, flow, field);
    const char* remove = "Remove from the party";
    flow.next(button_width(remove));
    if (button(remove, read_only_reason(context)))
        context.edits.add(
            {game::Section::party, game::Section::encounter},
            "Remove " + character.name + " from the party",
            [id = character.id, rulebook = &context.rulebook](game::Campaign& campaign) {
                game::remove_character(campaign, *rulebook, id);
                return std::string();
            }
        );
    for (const NameField& field : fields)
        draw_complaints(view.editor.drafts, field.label);
}

// Asks for a change of one reminder of the character.
template <class Change>
void ask_reminder(
    const PanelContext& context,
    const Character& character,
    const Reminder& reminder,
    const std::string& typed_in,
    Change change
) {
    ask_character(
        context,
        character.id,
        "Reminder of " + character.name,
        typed_in,
        [change, id = reminder.id](Character& changed) {
            for (Reminder& each : changed.reminders) {
                if (each.id == id) change(each);
            }
        }
    );
}

void draw_refreshed_by(
    const PanelContext& context, const Character& character, const Reminder& reminder, float width
) {
    using enum RefreshedBy;
    static constexpr std::array all{turn, round, fight, short_rest, rest, dawn, hand};
    const std::string label = "##refreshed " + std::to_string(reminder.id);
    const std::string now = game::refreshed_words(reminder.refreshed_by);
    if (!begin_choice(label.c_str(), now, width)) return;
    for (const RefreshedBy each : all) {
        if (choice_row(game::refreshed_words(each), each == reminder.refreshed_by))
            ask_reminder(context, character, reminder, {}, [each](Reminder& changed) {
                changed.refreshed_by = each;
            });
    }
    ImGui::EndCombo();
}

void draw_comes_up(
    const PanelContext& context, const Character& character, const Reminder& reminder, float width
) {
    using enum ComesUp;
    static constexpr std::array all{
        own_turn, hurt, falls, ally_hurt, ally_falls, initiative, exploring};
    const std::string label = "##comes up " + std::to_string(reminder.id);
    if (!begin_choice(label.c_str(), game::comes_up_words(reminder.comes_up), width)) return;
    for (const ComesUp each : all) {
        if (choice_row(game::comes_up_words(each), each == reminder.comes_up))
            ask_reminder(context, character, reminder, {}, [each](Reminder& changed) {
                changed.comes_up = each;
            });
    }
    ImGui::EndCombo();
}

void draw_reminder(
    const PanelContext& context,
    PartyRosterView& view,
    const Character& character,
    const Reminder& reminder
) {
    constexpr int most_uses = 99;
    const std::string id = std::to_string(reminder.id);
    const std::string text_label = "##reminder " + id;
    Flow flow;
    const float widest = ImGui::GetContentRegionAvail().x;
    const float width = std::min(px(320.0F), widest);
    flow.next(width);
    const auto typed = checked_text(
        text_label, reminder.text, view.editor.drafts, context.now_seconds, width, check_name
    );
    if (typed.has_value())
        ask_reminder(context, character, reminder, text_label, [words = *typed](Reminder& each) {
            each.text = words;
        });
    flow.field("uses", stepper_width());
    const auto uses = stepper("uses " + id, reminder.uses, 0, most_uses, "Uses");
    Flow::end_field();
    if (uses.has_value())
        ask_reminder(context, character, reminder, {}, [number = *uses](Reminder& each) {
            each.uses = number;
        });
    const float choice_width = width_of_letters(22);
    flow.next(choice_width);
    draw_comes_up(context, character, reminder, choice_width);
    if (reminder.uses > 0) {
        flow.next(choice_width);
        draw_refreshed_by(context, character, reminder, choice_width);
    }
    const std::string remove = "Remove##reminder " + id;
    flow.next(button_width(remove.c_str()));
    if (small_button(remove.c_str()))
        ask_character(
            context,
            character.id,
            "Take the reminder \"" + reminder.text + "\" from " + character.name,
            {},
            [which = reminder.id](Character& changed) {
                std::erase_if(changed.reminders, [which](const Reminder& each) {
                    return each.id == which;
                });
            }
        );
    draw_complaints(view.editor.drafts, text_label);
}

} // namespace

void draw_reminder_form(
    const PanelContext& context, PartyRosterView& view, const Character& character
) {
    heading("Reminders");
    text_wrapped(
        Ink::muted,
        "What a player may forget; it comes up when it is of use. 0 uses: shown, not counted."
    );
    for (const Reminder& reminder : character.reminders)
        draw_reminder(context, view, character, reminder);
    if (button("Add a reminder"))
        ask_character(
            context,
            character.id,
            "Add a reminder to " + character.name,
            {},
            [](Character& changed) {
                Reminder reminder;
                reminder.text = "New reminder";
                changed.reminders.push_back(reminder);
            }
        );
}

void draw_character_form(
    const PanelContext& context, PartyRosterView& view, const Character& character
) {
    ImGui::PushID(static_cast<int>(character.id));
    ImGui::BeginDisabled(context.is_read_only);
    draw_head(context, view, character);
    draw_statistics_editor(
        {context,
         view.editor,
         character.statistics,
         character.name,
         false,
         [&](std::string label, const std::string& typed_in, StatisticsForm::Change change) {
             ask_character(
                 context,
                 character.id,
                 std::move(label),
                 typed_in,
                 [change = std::move(change)](Character& changed) { change(changed.statistics); }
             );
         }}
    );
    draw_growth_form(context, character);
    draw_reminder_form(context, view, character);
    heading("Notes");
    const auto notes =
        long_text("##notes", character.notes, view.editor.drafts, context.now_seconds, px(110.0F));
    draw_complaints(view.editor.drafts, "##notes");
    if (notes.has_value())
        ask_character(
            context,
            character.id,
            "Notes on " + character.name,
            "##notes",
            [words = *notes](Character& changed) { changed.notes = words; }
        );
    ImGui::EndDisabled();
    ImGui::PopID();
}

} // namespace widgets
