// What keeps a calendar from being sound, in words for the GM.
#include "base/unicode.h"
#include "game/calendar_dates.h"
#include "game/calendar_editing.h"

#include <cmath>
#include <numeric>
#include <set>

namespace game {

namespace {

using Lines = std::vector<std::string>;
using L = CalendarLimits;

std::string quoted(const std::string& name, const char* otherwise) {
    return name.empty() ? std::string(otherwise) : name;
}

// Empty names and names twice in one list.
class NameCheck {
public:
    NameCheck(const char* one, const char* several, Lines& lines)
        : one_(one), several_(several), lines_(lines) {}

    void add(const std::string& name) {
        number_ += 1;
        if (name.empty())
            lines_.push_back(std::string(one_) + " " + std::to_string(number_) + " has no name.");
        else if (!seen_.insert(base::folded(name)).second)
            lines_.push_back("Two " + std::string(several_) + " are called " + name + ".");
    }

private:
    const char* one_;
    const char* several_;
    Lines& lines_;
    std::set<std::string> seen_;
    int number_ = 0;
};

void check_count(std::size_t count, int most, const char* several, Lines& lines) {
    if (count > static_cast<std::size_t>(most))
        lines.push_back(
            "There may be " + std::to_string(most) + " " + several + ", not " +
            std::to_string(count) + "."
        );
}

// A day that some year has; `what` begins the sentence.
void check_year_day(
    const Calendar& calendar, Id part, int day, const std::string& what, Lines& lines
) {
    const auto index = part_index(calendar, part);
    if (!index) {
        lines.push_back(what + " needs a month.");
        return;
    }
    const int longest = longest_part(calendar, *index);
    if (day < 1 || day > longest)
        lines.push_back(
            what + " is on day " + std::to_string(day) + ", but " + calendar.parts[*index].name +
            " has " + std::to_string(longest) + "."
        );
}

// A day of its year; `what` begins the sentence.
void check_full_date(
    const Calendar& calendar, const FullDate& date, const std::string& what, Lines& lines
) {
    if (date.year < -L::year_max || date.year > L::year_max) {
        lines.push_back(what + " is in a year too far away.");
        return;
    }
    const auto index = part_index(calendar, date.part);
    if (!index) {
        lines.push_back(what + " needs a month.");
        return;
    }
    const int length = part_length(calendar, *index, date.year);
    if (date.day < 1 || date.day > length)
        lines.push_back(
            what + " is on day " + std::to_string(date.day) + ", but " +
            calendar.parts[*index].name + " has " + std::to_string(length) + " in that year."
        );
}

void check_parts(const Calendar& calendar, Lines& lines) {
    NameCheck names("Month", "parts of the year", lines);
    for (std::size_t i = 0; i < calendar.parts.size(); ++i) {
        const YearPart& part = calendar.parts[i];
        names.add(part.name);
        if (part.days < 0 || part.days > L::part_days_max)
            lines.push_back(
                quoted(part.name, "A month") + " can have 0 to " +
                std::to_string(L::part_days_max) + " days."
            );
        else if (longest_part(calendar, i) < 1)
            lines.push_back(
                quoted(part.name, "A month") + " has no days; give it some, or a leap rule."
            );
    }
    if (!has_dates(calendar)) lines.emplace_back("A usual year needs at least one day.");
    check_count(calendar.parts.size(), L::parts_max, "parts of the year", lines);
}

void check_leap_rule(const Calendar& calendar, const LeapRule& rule, Lines& lines) {
    const auto part = part_index(calendar, rule.part);
    if (!part || rule.part == base::no_id) {
        lines.emplace_back("A leap rule needs a month to add days to.");
        return;
    }
    const std::string what = "The leap rule of " + calendar.parts[*part].name;
    if (rule.days < 1 || rule.days > L::leap_days_max)
        lines.push_back(what + " must add 1 to " + std::to_string(L::leap_days_max) + " days.");
    if (rule.steps.empty()) lines.push_back(what + " needs to say every how many years.");
    check_count(rule.steps.size(), L::leap_steps_max, "steps in a leap rule", lines);
    if (std::abs(rule.offset) > L::leap_every_max)
        lines.push_back(what + " starts in a year too far away.");
    std::int64_t cycle = 0;
    for (const LeapStep& step : rule.steps) {
        if (step.every < 1 || step.every > L::leap_every_max) {
            lines.push_back(
                what + " can go by 1 to " + std::to_string(L::leap_every_max) + " years."
            );
            return;
        }
        const std::int64_t next = std::lcm(std::max<std::int64_t>(cycle, 1), step.every);
        if (next == cycle) {
            lines.push_back(
                what + ": every " + std::to_string(step.every) +
                " undoes the step before it altogether."
            );
            return;
        }
        if (next > L::leap_every_max * std::int64_t{L::leap_every_max}) return;
        cycle = next;
    }
}

void check_week(const Calendar& calendar, Lines& lines) {
    NameCheck names("Weekday", "weekdays", lines);
    for (const std::string& weekday : calendar.weekdays)
        names.add(weekday);
    const auto size = static_cast<int>(calendar.weekdays.size());
    check_count(calendar.weekdays.size(), L::list_max, "weekdays", lines);
    if (size > 0 && (calendar.year_one_weekday < 0 || calendar.year_one_weekday >= size))
        lines.emplace_back("Year 1 must begin on one of the weekdays.");
}

void check_seasons(const Calendar& calendar, Lines& lines) {
    NameCheck names("Season", "seasons", lines);
    std::set<std::pair<Id, int>> starts;
    for (const Season& season : calendar.seasons) {
        names.add(season.name);
        const std::string what = quoted(season.name, "A season");
        check_year_day(calendar, season.start.part, season.start.day, what, lines);
        if (!starts.emplace(season.start.part, season.start.day).second)
            lines.push_back(what + " begins on the same day as another season.");
    }
    check_count(calendar.seasons.size(), L::list_max, "seasons", lines);
}

void check_moons(const Calendar& calendar, Lines& lines) {
    constexpr int seconds_a_day = 86'400;
    NameCheck names("Moon", "moons", lines);
    for (const Moon& moon : calendar.moons) {
        names.add(moon.name);
        const std::string what = quoted(moon.name, "A moon");
        // Written so that a number that is none is refused too.
        if (!(moon.period_days >= L::period_min && moon.period_days <= L::period_max))
            lines.push_back(what + " needs 1 to 100,000 days from new to new.");
        check_full_date(calendar, moon.new_moon, "The new moon of " + what, lines);
        if (moon.new_moon_second < 0 || moon.new_moon_second >= seconds_a_day)
            lines.push_back("The new moon of " + what + " needs a time of day.");
    }
    check_count(calendar.moons.size(), L::list_max, "moons", lines);
}

void check_weekday_holiday(const Calendar& calendar, const Holiday& holiday, Lines& lines) {
    const std::string what = quoted(holiday.name, "A holiday");
    const auto week = static_cast<int>(calendar.weekdays.size());
    const auto part = part_index(calendar, holiday.part);
    if (!part) {
        lines.push_back(what + " needs a month.");
        return;
    }
    if (holiday.weekday < 0 || holiday.weekday >= week) {
        lines.push_back(what + " needs a weekday.");
        return;
    }
    const std::string& name = calendar.parts[*part].name;
    const int most = (longest_part(calendar, *part) + week - 1) / week;
    if (!calendar.parts[*part].is_in_week)
        lines.push_back(what + " goes by weekdays, but " + name + " has none.");
    else if (holiday.nth != -1 && (holiday.nth < 1 || holiday.nth > most))
        lines.push_back(
            what + ": " + name + " has no weekday number " + std::to_string(holiday.nth) + "."
        );
}

void check_holidays(const Calendar& calendar, Lines& lines) {
    NameCheck names("Holiday", "holidays", lines);
    for (const Holiday& holiday : calendar.holidays) {
        names.add(holiday.name);
        if (holiday.rule == HolidayRule::nth_weekday)
            check_weekday_holiday(calendar, holiday, lines);
        else
            check_year_day(
                calendar, holiday.part, holiday.day, quoted(holiday.name, "A holiday"), lines
            );
    }
    check_count(calendar.holidays.size(), L::list_max, "holidays", lines);
}

void check_eras(const Calendar& calendar, Lines& lines) {
    std::set<std::pair<std::int64_t, bool>> starts;
    for (const Era& era : calendar.eras) {
        const std::string what = quoted(era.abbreviation, quoted(era.name, "An era").c_str());
        if (era.abbreviation.empty() && era.name.empty())
            lines.emplace_back("An era needs a name or an abbreviation.");
        if (era.first_year < -L::year_max || era.first_year > L::year_max)
            lines.push_back(what + " begins too far away.");
        if (!starts.emplace(era.first_year, era.is_backwards).second)
            lines.push_back(what + " begins in the same year as another era.");
    }
    check_count(calendar.eras.size(), L::list_max, "eras", lines);
}

} // namespace

Lines calendar_problems(const Calendar& calendar) {
    Lines lines;
    if (calendar.parts.empty()) return {"A calendar needs at least one month."};
    check_parts(calendar, lines);
    for (const LeapRule& rule : calendar.leap_rules)
        check_leap_rule(calendar, rule, lines);
    check_count(calendar.leap_rules.size(), L::list_max, "leap rules", lines);
    check_week(calendar, lines);
    check_seasons(calendar, lines);
    check_moons(calendar, lines);
    check_holidays(calendar, lines);
    check_eras(calendar, lines);
    check_year_day(calendar, calendar.midwinter.part, calendar.midwinter.day, "Midwinter", lines);
    check_full_date(calendar, calendar.first_day, "Day 1 of the campaign", lines);
    if (calendar.dawn_second >= calendar.dusk_second)
        lines.emplace_back("Dawn must come before dusk.");
    return lines;
}

} // namespace game
