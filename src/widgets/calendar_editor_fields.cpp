// The fields that all sections of the Calendar panel are made of.
#include "game/calendar_dates.h"
#include "widgets/calendar_editor_parts.h"
#include "widgets/read_only.h"

#include <imgui.h>

#include <algorithm>

namespace widgets {

using game::Calendar;

namespace {

// The first flaw that the changed calendar has and the one before has not.
std::string new_flaw(const Calendar& before, const Calendar& changed) {
    const std::vector<std::string> known = game::calendar_problems(before);
    for (const std::string& flaw : game::calendar_problems(changed))
        if (std::find(known.begin(), known.end(), flaw) == known.end()) return flaw;
    return {};
}

std::string part_name(const Calendar& calendar, game::Id part) {
    const auto index = game::part_index(calendar, part);
    return index ? calendar.parts[*index].name : std::string("none");
}

std::string weekday_name(const Calendar& calendar, std::size_t weekday) {
    return weekday < calendar.weekdays.size() ? calendar.weekdays[weekday] : "none";
}

// What of the calendar is typed here, as the history tells it.
std::string edit_label(const char* name) {
    return std::string("Calendar: ") + name;
}

} // namespace

void ask_calendar(
    const CalendarForm& form,
    const std::string& label,
    const CalendarChange& change,
    const std::string& merge_key
) {
    Calendar changed = form.calendar;
    change(changed);
    form.view.refusal = new_flaw(form.calendar, changed);
    if (form.view.refusal.empty())
        form.context.edits.add(&game::Campaign::calendar, label, change, merge_key);
}

void calendar_text(
    const CalendarForm& form,
    Flow& flow,
    const char* name,
    const std::string& label,
    const std::string& value,
    float width,
    const CalendarTextChange& change
) {
    width = std::min(width, ImGui::GetContentRegionAvail().x * 0.7F);
    flow.field(name, width);
    const auto typed = checked_text(
        label,
        value,
        form.view.drafts,
        form.context.now_seconds,
        width,
        [&](const std::string& text) {
            if (std::string why = check_text(text); !why.empty()) return why;
            Calendar changed = form.calendar;
            std::string why = change(changed, text);
            return why.empty() ? new_flaw(form.calendar, changed) : why;
        }
    );
    draw_complaints(form.view.drafts, label);
    Flow::end_field();
    if (!typed.has_value()) return;
    ask_calendar(
        form,
        edit_label(name) + " " + *typed,
        [change, text = *typed](Calendar& calendar) { change(calendar, text); },
        "calendar/" + label
    );
}

void calendar_number(
    const CalendarForm& form,
    Flow& flow,
    const char* name,
    const std::string& label,
    int value,
    int minimum,
    int maximum,
    const std::function<void(Calendar&, int)>& change
) {
    flow.field(name, stepper_width());
    const auto number = stepper(label, value, minimum, maximum, name);
    Flow::end_field();
    if (!number.has_value()) return;
    ask_calendar(
        form,
        edit_label(name) + " " + std::to_string(*number),
        [change, chosen = *number](Calendar& calendar) { change(calendar, chosen); },
        "calendar/" + label
    );
}

void calendar_part_choice(
    const CalendarForm& form,
    Flow& flow,
    const char* name,
    const std::string& label,
    game::Id value,
    const std::function<void(Calendar&, game::Id)>& change
) {
    const float width = std::min(width_of_letters(18), ImGui::GetContentRegionAvail().x * 0.7F);
    flow.field(name, width);
    if (begin_choice(label.c_str(), part_name(form.calendar, value), width)) {
        for (const game::YearPart& part : form.calendar.parts) {
            const std::string row = part.name + "##in " + label;
            ImGui::PushID(static_cast<int>(part.id));
            if (choice_row(row, part.id == value) && part.id != value)
                ask_calendar(
                    form,
                    edit_label(name) + " " + part.name,
                    [change, id = part.id](Calendar& calendar) { change(calendar, id); }
                );
            ImGui::PopID();
        }
        ImGui::EndCombo();
    }
    Flow::end_field();
}

void calendar_day(
    const CalendarForm& form,
    Flow& flow,
    const char* name,
    const std::string& label,
    const game::YearDay& value,
    const std::function<void(Calendar&, const game::YearDay&)>& change
) {
    const auto part = game::part_index(form.calendar, value.part).value_or(0);
    calendar_part_choice(
        form,
        flow,
        name,
        "##" + label + " part",
        form.calendar.parts[part].id,
        [change, value](Calendar& calendar, game::Id id) {
            game::YearDay chosen = value;
            chosen.part = id;
            const auto index = game::part_index(calendar, id);
            if (index) chosen.day = std::min(chosen.day, game::longest_part(calendar, *index));
            change(calendar, chosen);
        }
    );
    calendar_number(
        form,
        flow,
        "day",
        label + " day",
        value.day,
        1,
        std::max(game::longest_part(form.calendar, part), 1),
        [change, value](Calendar& calendar, int day) {
            game::YearDay chosen = value;
            chosen.day = day;
            change(calendar, chosen);
        }
    );
}

void calendar_weekday_choice(
    const CalendarForm& form,
    Flow& flow,
    const char* name,
    const std::string& label,
    std::size_t value,
    const std::function<void(Calendar&, std::size_t)>& change
) {
    const float width = width_of_letters(14);
    flow.field(name, width);
    if (begin_choice(label.c_str(), weekday_name(form.calendar, value), width)) {
        for (std::size_t i = 0; i < form.calendar.weekdays.size(); ++i)
            if (choice_row(form.calendar.weekdays[i] + "##in " + label, i == value) && i != value)
                ask_calendar(
                    form,
                    std::string("Calendar: ") + name + " " + form.calendar.weekdays[i],
                    [change, i](Calendar& calendar) { change(calendar, i); }
                );
        ImGui::EndCombo();
    }
    Flow::end_field();
}

void calendar_verb(
    const CalendarForm& form,
    Flow& flow,
    const std::string& button_label,
    const std::string& label,
    const CalendarChange& change
) {
    flow.next(button_width(button_label.c_str()));
    if (button(button_label.c_str(), read_only_reason(form.context)))
        ask_calendar(form, label, change);
}

game::FullDate full_date_of(const Calendar& calendar, std::int64_t day) {
    const game::CalendarDate date = game::date_of(calendar, day);
    return {date.year, calendar.parts[date.part].id, date.day, {}};
}

std::int64_t day_of_full_date(const Calendar& calendar, const game::FullDate& date) {
    const std::size_t part = game::part_index(calendar, date.part).value_or(0);
    return game::day_of(calendar, {date.year, part, date.day});
}

} // namespace widgets
