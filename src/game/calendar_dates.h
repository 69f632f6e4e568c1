// Dates of the world: running days of the campaign to days of the calendar and back, exact in whole
// numbers over the whole range of days and closed (no walk from year to year). Everything here is
// total: a calendar that counts no days (has_dates) gives no weekday, season, moon or holiday.
#pragma once

#include "game/calendar.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace game {

// A date by its place in Calendar::parts.
struct CalendarDate {
    std::int64_t year = 1; // counted through, with a year 0
    std::size_t part = 0;  // index in Calendar::parts
    int day = 1;           // of the part, from 1

    auto operator<=>(const CalendarDate&) const = default;
};

// The calendar can tell dates: it has parts, and every year has at least one day.
bool has_dates(const Calendar& calendar);

// Index in Calendar::parts; no_id is the first. Nothing: no such part.
std::optional<std::size_t> part_index(const Calendar& calendar, Id part);

// The following need has_dates(calendar).

CalendarDate date_of(const Calendar& calendar, std::int64_t day);
// A day past the end of its part counts as its last one, one before its start as its first; a part
// that the year does not have gives the day that follows in its place.
std::int64_t day_of(const Calendar& calendar, const CalendarDate& date);

int part_length(const Calendar& calendar, std::size_t part, std::int64_t year); // days
// Days of a part in a year in which all its leap rules add theirs.
int longest_part(const Calendar& calendar, std::size_t part);
std::int64_t year_length(const Calendar& calendar, std::int64_t year); // days
std::int64_t day_of_year(const Calendar& calendar, std::int64_t day);  // from 1

// Index in Calendar::weekdays; nothing: the calendar has no weeks, or the day is in none.
std::optional<std::size_t> weekday_of(const Calendar& calendar, std::int64_t day);
// The weekdays of the calendar are set so that this day has this one; no effect on a day that is in
// no week.
void set_weekday(Calendar& calendar, std::int64_t day, std::size_t weekday);

// A run of days, both included.
struct DaySpan {
    std::int64_t first = 1;
    std::int64_t last = 1;

    bool operator==(const DaySpan&) const = default;
};

// The week around this day, from its first weekday to the day before the next first one: days
// outside of the week belong to the week they follow. Without weeks: the seven days from this one.
// A stretch outside of the week that makes it longer than 60 days is told in pieces of 60 days.
DaySpan week_around(const Calendar& calendar, std::int64_t day);

// So many months on (negative: back): the same day of the month, or its last one. Days outside
// months count as the end of the month before them. A calendar without months goes by its parts.
std::int64_t add_months(const Calendar& calendar, std::int64_t day, std::int64_t months);
std::int64_t add_years(const Calendar& calendar, std::int64_t day, std::int64_t years);

// Which number a month has, from 1, days outside left out; 0 for those.
int month_number(const Calendar& calendar, std::size_t part);

// The following answer for any calendar.

// Index in Calendar::seasons.
std::optional<std::size_t> season_of(const Calendar& calendar, std::int64_t day);

// Share of the year 0..1 counted from midwinter: 0 midwinter, 0.5 midsummer. Without a calendar a
// year has 365.2425 days (the mean Gregorian year) and begins at midwinter with day 1.
double year_share(const Calendar& calendar, std::int64_t day);

// The same as a function of the running day, for what is asked day by day: the weather. It points
// to the calendar.
using YearClock = std::function<double(std::int64_t day)>;
YearClock year_clock(const Calendar& calendar);
YearClock year_clock(Calendar&& calendar) = delete;

// The eight phases that astronomy names.
enum class MoonPhase {
    new_moon,
    waxing_crescent,
    first_quarter,
    waxing_gibbous,
    full_moon,
    waning_gibbous,
    last_quarter,
    waning_crescent
};

// Share of the cycle 0..1 since the last new moon, at noon.
double moon_share(const Calendar& calendar, const Moon& moon, std::int64_t day);
// New moon, full moon and quarters are the days on which their moment falls.
MoonPhase moon_phase(const Calendar& calendar, const Moon& moon, std::int64_t day);
// Share of the disc that is lit at noon, 0..1: (1 - cos(2 pi share)) / 2, common practice for a
// mean moon.
double moon_light(const Calendar& calendar, const Moon& moon, std::int64_t day);
const char* moon_phase_text(MoonPhase phase); // "waxing crescent"

// Indices in Calendar::holidays, in their order.
std::vector<std::size_t> holidays_on(const Calendar& calendar, std::int64_t day);

} // namespace game
