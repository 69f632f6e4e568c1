// The calendar of the world as plain data; what is computed from it: calendar_dates.h. A calendar
// without parts is none: days are counted then ("Day 12").
#pragma once

#include "base/id.h"
#include "base/unknown_fields.h"

#include <cstdint>
#include <string>
#include <vector>

namespace game {

using base::Id;

// A stretch of the year: a month, or days that belong to no month. The year is all of them in their
// order.
struct YearPart {
    Id id = base::no_id;
    std::string name;
    int days = 30;          // of a usual year; 0: it exists only when a leap rule adds days
    bool is_month = true;   // false: festival days outside of the months
    bool is_in_week = true; // false: its days have no weekday, and the week goes on after them
    base::UnknownFields unknown{};

    bool operator==(const YearPart&) const = default;
};

// A step of a leap rule: every so many years. The first step adds the days, the second takes them
// back, the third adds them again, and so on: 4, 100, 400.
struct LeapStep {
    int every = 4; // years
    base::UnknownFields unknown{};

    bool operator==(const LeapStep&) const = default;
};

// Days that a part has more in some years: those whose number less `offset` divides by the steps.
struct LeapRule {
    Id id = base::no_id;
    Id part = base::no_id;
    int days = 1; // added
    std::vector<LeapStep> steps;
    int offset = 0; // years
    base::UnknownFields unknown{};

    bool operator==(const LeapRule&) const = default;
};

// A day that comes every year.
struct YearDay {
    Id part = base::no_id;
    int day = 1; // of the part, from 1
    base::UnknownFields unknown{};

    bool operator==(const YearDay&) const = default;
};

struct Season {
    Id id = base::no_id;
    std::string name;
    YearDay start{};
    base::UnknownFields unknown{};

    bool operator==(const Season&) const = default;
};

// A day of one year. Years are counted through, with a year 0; eras say how they are called.
struct FullDate {
    std::int64_t year = 1;
    Id part = base::no_id; // none: the first
    int day = 1;           // of the part, from 1
    base::UnknownFields unknown{};

    bool operator==(const FullDate&) const = default;
};

struct Moon {
    Id id = base::no_id;
    std::string name;
    double period_days = 29.530588853; // from new to new; the mean synodic month of the real one
    FullDate new_moon{};               // a day on which it is known to be new,
    int new_moon_second = 43200;       // and when on that day: noon
    base::UnknownFields unknown{};

    bool operator==(const Moon&) const = default;
};

enum class HolidayRule {
    fixed_day,  // a day of a part
    nth_weekday // the nth of a weekday in a part
};

struct Holiday {
    Id id = base::no_id;
    std::string name;
    HolidayRule rule = HolidayRule::fixed_day;
    Id part = base::no_id;
    int day = 1;     // fixed_day
    int weekday = 0; // nth_weekday: index in Calendar::weekdays
    int nth = 1;     // nth_weekday: from 1; -1 is the last one
    std::string note;
    base::UnknownFields unknown{};

    bool operator==(const Holiday&) const = default;
};

// How years are called. Counting on, its first year is 1 and later ones 2, 3 ...; counting
// backwards, the years before its first year are 2, 3 ...
struct Era {
    Id id = base::no_id;
    std::string name;
    std::string abbreviation; // behind the year: "1204 AE"
    std::int64_t first_year = 1;
    bool is_backwards = false;
    base::UnknownFields unknown{};

    bool operator==(const Era&) const = default;
};

struct Calendar {
    std::string name;
    std::vector<YearPart> parts;
    std::vector<LeapRule> leap_rules;
    std::vector<std::string> weekdays; // empty: no weeks
    int year_one_weekday = 0;          // of the first day of year 1 that is in a week: an index
    std::vector<Season> seasons;
    std::vector<Moon> moons;
    std::vector<Holiday> holidays;
    std::vector<Era> eras;
    YearDay midwinter{};        // for the weather; no part: the first day of the year
    int dawn_second = 6 * 3600; // common practice, no source
    int dusk_second = 18 * 3600;
    FullDate first_day{}; // the date of running day 1 of the campaign
    Id next_id = 1;       // for parts, rules, seasons, moons, holidays and eras
    base::UnknownFields unknown{};

    bool operator==(const Calendar&) const = default;
};

// Limits that the fields on screen and the file share.
struct CalendarLimits {
    static constexpr int part_days_max = 10'000;
    static constexpr int parts_max = 200;
    static constexpr int leap_every_max = 1'000'000;
    static constexpr int leap_days_max = 1'000;
    static constexpr int leap_steps_max = 6;
    static constexpr int list_max = 200; // weekdays, seasons, moons, holidays, eras, leap rules
    static constexpr int nth_max = 500;
    static constexpr double period_min = 1.0;
    static constexpr double period_max = 100'000.0;
    static constexpr std::int64_t year_max = 3'000'000;    // each way
    static constexpr std::int64_t day_max = 1'000'000'000; // running days each way
};

} // namespace game
