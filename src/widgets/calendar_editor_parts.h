// The parts the Calendar panel is drawn from. Nobody else needs them.
#pragma once

#include "game/calendar_editing.h"
#include "widgets/calendar_editor.h"

#include <functional>
#include <optional>
#include <string>

namespace widgets {

struct CalendarForm {
    const PanelContext& context;
    CalendarEditorView& view;
    const game::Calendar& calendar;
};

using CalendarChange = std::function<void(game::Calendar&)>;

// Queues the change, unless the calendar would have a flaw that it does not have now: that is told
// instead, and nothing changes. So a calendar never stops being sound while it is worked on.
void ask_calendar(
    const CalendarForm& form,
    const std::string& label,
    const CalendarChange& change,
    const std::string& merge_key = {}
);

// A text of the calendar with its name before it, refused under itself by what it would break.
// `change` carries the text into the calendar; why it cannot is what it returns.
using CalendarTextChange = std::function<std::string(game::Calendar&, const std::string&)>;
void calendar_text(
    const CalendarForm& form,
    Flow& flow,
    const char* name,
    const std::string& label,
    const std::string& value,
    float width,
    const CalendarTextChange& change
);

// A whole number of the calendar, the same way.
void calendar_number(
    const CalendarForm& form,
    Flow& flow,
    const char* name,
    const std::string& label,
    int value,
    int minimum,
    int maximum,
    const std::function<void(game::Calendar&, int)>& change
);

// A month or other part of the year, and a day of it.
void calendar_day(
    const CalendarForm& form,
    Flow& flow,
    const char* name,
    const std::string& label,
    const game::YearDay& value,
    const std::function<void(game::Calendar&, const game::YearDay&)>& change
);

void calendar_part_choice(
    const CalendarForm& form,
    Flow& flow,
    const char* name,
    const std::string& label,
    game::Id value,
    const std::function<void(game::Calendar&, game::Id)>& change
);

// `value`: index of the weekday.
void calendar_weekday_choice(
    const CalendarForm& form,
    Flow& flow,
    const char* name,
    const std::string& label,
    std::size_t value,
    const std::function<void(game::Calendar&, std::size_t)>& change
);

// A button that changes the calendar.
void calendar_verb(
    const CalendarForm& form,
    Flow& flow,
    const std::string& button_label,
    const std::string& label,
    const CalendarChange& change
);

// A date as full as a calendar keeps it.
game::FullDate full_date_of(const game::Calendar& calendar, std::int64_t day);
std::int64_t day_of_full_date(const game::Calendar& calendar, const game::FullDate& date);

void draw_calendar_year(const CalendarForm& form);
void draw_calendar_week(const CalendarForm& form);
void draw_calendar_sky(const CalendarForm& form);
void draw_calendar_holidays(const CalendarForm& form);
void draw_calendar_eras(const CalendarForm& form);
void draw_calendar_today(const CalendarForm& form);

} // namespace widgets
