// Counting days: whole years by closed counts of their leap days, the rest by the parts of one
// year. A day's number counts from the first day of year 1, which is 0.
#include "game/calendar_dates.h"

#include "game/calendar_parts.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

namespace game {

namespace {

enum class Counted { all_days, days_in_weeks };

// No year within reach divides by it but the offset itself.
constexpr std::int64_t no_cycle = 1'000'000'000'000'000;

std::int64_t joined_cycle(std::int64_t cycle, std::int64_t every) {
    const std::int64_t factor = every / std::gcd(cycle, every);
    return factor > no_cycle / cycle ? no_cycle : cycle * factor;
}

// Calls with the cycle of each step and whether it gives or takes: 4 gives, 100 takes, 400 gives.
template <class Visit>
void each_cycle(const LeapRule& rule, Visit visit) {
    std::int64_t cycle = 1;
    std::int64_t sign = 1;
    for (const LeapStep& step : rule.steps) {
        cycle = joined_cycle(cycle, std::max(step.every, 1));
        visit(cycle, sign);
        sign = -sign;
    }
}

// Leap years among 1..year; for years before 1 less than nothing, so that differences are right.
std::int64_t leap_years_to(const LeapRule& rule, std::int64_t year) {
    std::int64_t count = 0;
    each_cycle(rule, [&](std::int64_t cycle, std::int64_t sign) {
        count += sign * (floor_div(year - rule.offset, cycle) - floor_div(-rule.offset, cycle));
    });
    return count;
}

bool is_leap(const LeapRule& rule, std::int64_t year) {
    bool adds = false;
    for (const LeapStep& step : rule.steps) {
        if (floor_mod(year - rule.offset, std::max(step.every, 1)) != 0) break;
        adds = !adds;
    }
    return adds;
}

bool counts(const YearPart& part, Counted counted) {
    return counted == Counted::all_days || part.is_in_week;
}

std::int64_t usual_days(const Calendar& calendar, Counted counted) {
    std::int64_t days = 0;
    for (const YearPart& part : calendar.parts)
        if (counts(part, counted)) days += part.days;
    return days;
}

// Days before the first of this year.
std::int64_t days_before(const Calendar& calendar, std::int64_t year, Counted counted) {
    std::int64_t days = (year - 1) * usual_days(calendar, counted);
    for (const LeapRule& rule : calendar.leap_rules) {
        const auto part = part_index(calendar, rule.part);
        if (part && counts(calendar.parts[*part], counted))
            days += rule.days * leap_years_to(rule, year - 1);
    }
    return days;
}

double mean_year(const Calendar& calendar) {
    auto days = static_cast<double>(usual_days(calendar, Counted::all_days));
    for (const LeapRule& rule : calendar.leap_rules) {
        if (!part_index(calendar, rule.part)) continue;
        each_cycle(rule, [&](std::int64_t cycle, std::int64_t sign) {
            days += static_cast<double>(sign * rule.days) / static_cast<double>(cycle);
        });
    }
    return days;
}

std::int64_t year_of(const Calendar& calendar, std::int64_t number) {
    const double mean = mean_year(calendar);
    std::int64_t year = 1;
    // Leap days stand a little away from where the mean has them: a second guess mends the first.
    for (int guess = 0; guess < 3; ++guess) {
        const std::int64_t off = number - days_before(calendar, year, Counted::all_days);
        year += static_cast<std::int64_t>(static_cast<double>(off) / mean);
    }
    while (days_before(calendar, year, Counted::all_days) > number)
        year -= 1;
    while (days_before(calendar, year + 1, Counted::all_days) <= number)
        year += 1;
    return year;
}

std::int64_t days_of_parts_before(
    const Calendar& calendar, std::size_t part, std::int64_t year, Counted counted
) {
    std::int64_t days = 0;
    for (std::size_t i = 0; i < part; ++i)
        if (counts(calendar.parts[i], counted)) days += part_length(calendar, i, year);
    return days;
}

std::int64_t number_of(const Calendar& calendar, const CalendarDate& date) {
    const int length = part_length(calendar, date.part, date.year);
    return days_before(calendar, date.year, Counted::all_days) +
           days_of_parts_before(calendar, date.part, date.year, Counted::all_days) +
           (length == 0 ? 0 : std::clamp(date.day, 1, length) - 1);
}

std::int64_t number_of(const Calendar& calendar, const FullDate& date) {
    const std::size_t part = part_index(calendar, date.part).value_or(0);
    return number_of(calendar, CalendarDate{date.year, part, date.day});
}

// Days in a week before this date, which is in one.
std::int64_t week_days_before(const Calendar& calendar, const CalendarDate& date) {
    return days_before(calendar, date.year, Counted::days_in_weeks) +
           days_of_parts_before(calendar, date.part, date.year, Counted::days_in_weeks) + date.day -
           1;
}

std::int64_t week_size(const Calendar& calendar) {
    return static_cast<std::int64_t>(calendar.weekdays.size());
}

std::vector<std::size_t> months_of(const Calendar& calendar) {
    std::vector<std::size_t> months;
    for (std::size_t i = 0; i < calendar.parts.size(); ++i)
        if (calendar.parts[i].is_month) months.push_back(i);
    if (months.empty()) {
        months.resize(calendar.parts.size());
        std::iota(months.begin(), months.end(), std::size_t{0});
    }
    return months;
}

// Is this the day of the month on which the nth of the weekday falls?
bool is_nth_weekday(const Calendar& calendar, const Holiday& holiday, const CalendarDate& date) {
    if (!calendar.parts[date.part].is_in_week || week_size(calendar) == 0) return false;
    const auto weekday = floor_mod(
        calendar.year_one_weekday + week_days_before(calendar, date), week_size(calendar)
    );
    if (weekday != holiday.weekday) return false;
    const std::int64_t nth = (date.day - 1) / week_size(calendar) + 1;
    if (holiday.nth > 0) return nth == holiday.nth;
    return date.day + week_size(calendar) > part_length(calendar, date.part, date.year);
}

} // namespace

bool has_dates(const Calendar& calendar) {
    return usual_days(calendar, Counted::all_days) > 0;
}

std::optional<std::size_t> part_index(const Calendar& calendar, Id part) {
    if (calendar.parts.empty()) return {};
    if (part == base::no_id) return 0;
    for (std::size_t i = 0; i < calendar.parts.size(); ++i)
        if (calendar.parts[i].id == part) return i;
    return {};
}

CalendarDate date_of(const Calendar& calendar, std::int64_t day) {
    const std::int64_t number = number_of(calendar, calendar.first_day) + day - 1;
    CalendarDate date;
    date.year = year_of(calendar, number);
    std::int64_t left = number - days_before(calendar, date.year, Counted::all_days);
    while (date.part + 1 < calendar.parts.size()) {
        const int length = part_length(calendar, date.part, date.year);
        if (left < length) break;
        left -= length;
        date.part += 1;
    }
    date.day = static_cast<int>(left) + 1;
    return date;
}

std::int64_t day_of(const Calendar& calendar, const CalendarDate& date) {
    return number_of(calendar, date) - number_of(calendar, calendar.first_day) + 1;
}

int part_length(const Calendar& calendar, std::size_t part, std::int64_t year) {
    int length = calendar.parts[part].days;
    for (const LeapRule& rule : calendar.leap_rules)
        if (part_index(calendar, rule.part) == part && is_leap(rule, year)) length += rule.days;
    return length;
}

int longest_part(const Calendar& calendar, std::size_t part) {
    int length = calendar.parts[part].days;
    for (const LeapRule& rule : calendar.leap_rules)
        if (part_index(calendar, rule.part) == part) length += rule.days;
    return length;
}

std::int64_t year_length(const Calendar& calendar, std::int64_t year) {
    return days_before(calendar, year + 1, Counted::all_days) -
           days_before(calendar, year, Counted::all_days);
}

std::int64_t day_of_year(const Calendar& calendar, std::int64_t day) {
    const CalendarDate date = date_of(calendar, day);
    return days_of_parts_before(calendar, date.part, date.year, Counted::all_days) + date.day;
}

std::optional<std::size_t> weekday_of(const Calendar& calendar, std::int64_t day) {
    if (calendar.weekdays.empty() || !has_dates(calendar)) return {};
    const CalendarDate date = date_of(calendar, day);
    if (!calendar.parts[date.part].is_in_week) return {};
    return static_cast<std::size_t>(
        floor_mod(calendar.year_one_weekday + week_days_before(calendar, date), week_size(calendar))
    );
}

void set_weekday(Calendar& calendar, std::int64_t day, std::size_t weekday) {
    if (calendar.weekdays.empty() || !has_dates(calendar)) return;
    const CalendarDate date = date_of(calendar, day);
    if (!calendar.parts[date.part].is_in_week) return;
    calendar.year_one_weekday = static_cast<int>(floor_mod(
        static_cast<std::int64_t>(weekday) - week_days_before(calendar, date), week_size(calendar)
    ));
}

DaySpan week_around(const Calendar& calendar, std::int64_t day) {
    constexpr std::int64_t longest = 60;
    constexpr std::int64_t reach = 2'000; // nobody's festival lasts longer
    constexpr std::int64_t plain_week = 7;
    if (calendar.weekdays.empty() || !has_dates(calendar)) return {day, day + plain_week - 1};
    const auto begins = [&](std::int64_t at) { return weekday_of(calendar, at) == std::size_t{0}; };
    DaySpan week{day, day};
    while (!begins(week.first) && day - week.first < reach)
        week.first -= 1;
    // Pieces count from where the week began, or from day 0 where no week is near.
    week.first =
        begins(week.first) ? day - (day - week.first) % longest : floor_div(day, longest) * longest;
    while (!begins(week.last + 1) && week.last - week.first + 1 < longest)
        week.last += 1;
    return week;
}

std::int64_t add_months(const Calendar& calendar, std::int64_t day, std::int64_t months) {
    if (months == 0) return day;
    const std::vector<std::size_t> list = months_of(calendar);
    const auto count = static_cast<std::int64_t>(list.size());
    CalendarDate date = date_of(calendar, day);
    const auto next = std::upper_bound(list.begin(), list.end(), date.part);
    const std::int64_t here = next - list.begin() - 1; // -1: before the first month of the year
    const bool is_in_month = next != list.begin() && *(next - 1) == date.part;
    if (!is_in_month) date.day = CalendarLimits::part_days_max + CalendarLimits::leap_days_max;
    const std::int64_t there = here + months;
    date.year += floor_div(there, count);
    date.part = list[static_cast<std::size_t>(floor_mod(there, count))];
    return day_of(calendar, date);
}

std::int64_t add_years(const Calendar& calendar, std::int64_t day, std::int64_t years) {
    CalendarDate date = date_of(calendar, day);
    date.year += years;
    return day_of(calendar, date);
}

int month_number(const Calendar& calendar, std::size_t part) {
    if (!calendar.parts[part].is_month) return 0;
    int number = 0;
    for (std::size_t i = 0; i <= part; ++i)
        number += calendar.parts[i].is_month ? 1 : 0;
    return number;
}

std::optional<std::size_t> season_of(const Calendar& calendar, std::int64_t day) {
    if (!has_dates(calendar)) return {};
    const CalendarDate date = date_of(calendar, day);
    using Place = std::pair<std::size_t, int>;
    const Place here{date.part, date.day};
    // The latest start up to here, else the latest of the year before.
    std::optional<std::size_t> begun;
    std::optional<std::size_t> last;
    const auto start_of = [&](std::size_t season) {
        const YearDay& start = calendar.seasons[season].start;
        return Place{part_index(calendar, start.part).value_or(0), start.day};
    };
    for (std::size_t i = 0; i < calendar.seasons.size(); ++i) {
        if (!last || start_of(i) > start_of(*last)) last = i;
        if (start_of(i) <= here && (!begun || start_of(i) > start_of(*begun))) begun = i;
    }
    return begun ? begun : last;
}

double year_share(const Calendar& calendar, std::int64_t day) {
    if (!has_dates(calendar)) {
        constexpr double mean_gregorian_year = 365.2425;
        const double years = static_cast<double>(day - 1) / mean_gregorian_year;
        return years - std::floor(years);
    }
    const std::size_t part = part_index(calendar, calendar.midwinter.part).value_or(0);
    const auto midwinter = [&](std::int64_t year) {
        return day_of(calendar, {year, part, calendar.midwinter.day});
    };
    const std::int64_t year = date_of(calendar, day).year;
    const std::int64_t first = midwinter(year) <= day ? year : year - 1;
    const std::int64_t from = midwinter(first);
    return static_cast<double>(day - from) / static_cast<double>(midwinter(first + 1) - from);
}

YearClock year_clock(const Calendar& calendar) {
    return [&calendar](std::int64_t day) { return year_share(calendar, day); };
}

std::vector<std::size_t> holidays_on(const Calendar& calendar, std::int64_t day) {
    if (!has_dates(calendar)) return {};
    const CalendarDate date = date_of(calendar, day);
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < calendar.holidays.size(); ++i) {
        const Holiday& holiday = calendar.holidays[i];
        if (part_index(calendar, holiday.part) != date.part) continue;
        const bool is_today = holiday.rule == HolidayRule::fixed_day
                                  ? holiday.day == date.day
                                  : is_nth_weekday(calendar, holiday, date);
        if (is_today) found.push_back(i);
    }
    return found;
}

} // namespace game
