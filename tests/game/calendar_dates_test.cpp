// Dates against the civil calendar of the C++ standard library, against published examples, and
// against a plain walk from day to day.
#include "game/calendar_dates.h"
#include "game/calendar_editing.h"
#include "game/date_text.h"
#include "game/ready_calendars.h"
#include "rules/dice.h"

#include <array>
#include <chrono>
#include <cmath>
#include <map>
#include <numeric>

namespace {

using game::Calendar;
using game::CalendarDate;

std::int64_t day_in(const Calendar& calendar, std::int64_t year, unsigned month, unsigned day) {
    return game::day_of(calendar, {year, month - 1, static_cast<int>(day)});
}

// A calendar with any parts and leap rules, in which every function has something to do.
Calendar random_calendar(rules::Dice& dice) {
    Calendar calendar;
    const int parts = dice.roll(14);
    for (int i = 0; i < parts; ++i) {
        game::YearPart part;
        part.name = "P" + std::to_string(i);
        part.days = i == 0 ? dice.roll(40) : dice.roll(41) - 1;
        part.is_month = dice.roll(4) > 1;
        part.is_in_week = dice.roll(4) > 1;
        game::add_calendar_entry(calendar, &Calendar::parts, part);
    }
    const int rules = dice.roll(4) - 1;
    for (int i = 0; i < rules; ++i) {
        game::LeapRule rule;
        rule.part = calendar.parts[static_cast<std::size_t>(dice.roll(parts) - 1)].id;
        rule.days = dice.roll(5);
        rule.offset = dice.roll(201) - 101;
        const int steps = dice.roll(3);
        for (int step = 0; step < steps; ++step)
            rule.steps.push_back({dice.roll(60), {}});
        game::add_calendar_entry(calendar, &Calendar::leap_rules, rule);
    }
    const int week = dice.roll(12) - 1;
    for (int i = 0; i < week; ++i)
        calendar.weekdays.push_back("W" + std::to_string(i));
    calendar.year_one_weekday = week == 0 ? 0 : dice.roll(week) - 1;
    calendar.first_day = {dice.roll(3000) - 1500, calendar.parts[0].id, 1, {}};
    return calendar;
}

// Leap years and lengths worked out from the words of the rule, year by year.
int plain_length(const Calendar& calendar, std::size_t part, std::int64_t year) {
    int days = calendar.parts[part].days;
    for (const game::LeapRule& rule : calendar.leap_rules) {
        if (rule.part != calendar.parts[part].id) continue;
        std::int64_t cycle = 1;
        bool adds = false;
        for (const game::LeapStep& step : rule.steps) {
            cycle = std::lcm(cycle, std::int64_t{step.every});
            if ((year - rule.offset) % cycle == 0) adds = !adds;
        }
        days += adds ? rule.days : 0;
    }
    return days;
}

} // namespace

TEST_CASE("calendar: every day of 1600 to 2400 is that of the standard library's civil calendar") {
    // Reference: std::chrono::year_month_day, sys_days and weekday (C++20).
    namespace chrono = std::chrono;
    const Calendar gregorian = ready_calendar("Gregorian");
    const chrono::sys_days first = chrono::year{2000} / 1 / 1; // day 1 of the file
    int differences = 0;
    for (chrono::sys_days at = chrono::year{1600} / 1 / 1; at <= chrono::year{2400} / 12 / 31;
         at += chrono::days{1}) {
        const chrono::year_month_day civil(at);
        const std::int64_t day = (at - first).count() + 1;
        const CalendarDate date = game::date_of(gregorian, day);
        const CalendarDate expected{
            static_cast<int>(civil.year()),
            static_cast<unsigned>(civil.month()) - 1,
            static_cast<int>(static_cast<unsigned>(civil.day()))};
        const unsigned weekday = chrono::weekday(at).iso_encoding() - 1; // Monday 0
        const std::int64_t of_year = (at - chrono::sys_days(civil.year() / 1 / 1)).count() + 1;
        differences += date != expected || game::day_of(gregorian, expected) != day ||
                       game::weekday_of(gregorian, day) != weekday ||
                       game::day_of_year(gregorian, day) != of_year;
    }
    CHECK(differences == 0);
}

TEST_CASE("calendar: months and years added as the standard library adds them") {
    // Reference: std::chrono year_month arithmetic; the last day where the month is shorter.
    namespace chrono = std::chrono;
    const Calendar gregorian = ready_calendar("Gregorian");
    rules::Dice dice(7);
    for (int i = 0; i < 2000; ++i) {
        const std::int64_t day = dice.roll(200000) - 100000;
        const int months = dice.roll(4001) - 2001;
        const CalendarDate date = game::date_of(gregorian, day);
        const chrono::year_month month = chrono::year_month(
                                             chrono::year(static_cast<int>(date.year)),
                                             chrono::month(static_cast<unsigned>(date.part) + 1)
                                         ) +
                                         chrono::months(months);
        const auto last = static_cast<unsigned>(
            chrono::year_month_day_last(month.year(), chrono::month_day_last(month.month())).day()
        );
        const CalendarDate expected{
            static_cast<int>(month.year()),
            static_cast<unsigned>(month.month()) - 1,
            std::min(date.day, static_cast<int>(last))};
        CHECK(game::date_of(gregorian, game::add_months(gregorian, day, months)) == expected);
        CHECK(
            game::add_years(gregorian, day, months) ==
            game::add_months(gregorian, day, 12L * months)
        );
    }
}

TEST_CASE("calendar: published weekdays, leap years and Julian day numbers") {
    const Calendar gregorian = ready_calendar("Gregorian");
    const auto weekday = [&](std::int64_t year, unsigned month, unsigned day) {
        return gregorian
            .weekdays[*game::weekday_of(gregorian, day_in(gregorian, year, month, day))];
    };
    // ISO 8601:2004, 2.2.10 note: 20 May 1875 as the reference of the calendar; the weekday from
    // memory.
    CHECK(weekday(1875, 5, 20) == "Thursday");
    // ISO 8601, week date examples (from memory): 2008-W39-6 is Saturday 27 September 2008,
    // 1981-W14-7 is Sunday 5 April 1981.
    CHECK(weekday(2008, 9, 27) == "Saturday");
    CHECK(weekday(1981, 4, 5) == "Sunday");
    // ISO 8601 ordinal date example (from memory): 5 April 1981 is 1981-095.
    CHECK(game::day_of_year(gregorian, day_in(gregorian, 1981, 4, 5)) == 95);
    // ISO 8601, leap years: divisible by four, centuries only when divisible by 400.
    const std::map<int, int> lengths{
        {1900, 365}, {2000, 366}, {2004, 366}, {2100, 365}, {0, 366}, {-4, 366}, {-100, 365}};
    for (const auto& [year, length] : lengths)
        CHECK(game::year_length(gregorian, year) == length);
    // J. Meeus, Astronomical Algorithms, chapter 7, table of Julian days (from memory); the Julian
    // day at noon of 1 January 2000 is 2451545.
    const std::int64_t noon_2000 = 2451545;
    CHECK(noon_2000 + day_in(gregorian, 1987, 1, 27) - 1 == 2446823); // 2446822.5 at 0h
    CHECK(noon_2000 + day_in(gregorian, 1957, 10, 4) - 1 == 2436116); // 2436116.31 with the launch
    CHECK(noon_2000 + day_in(gregorian, 1600, 1, 1) - 1 == 2305448);  // 2305447.5 at 0h
    // Julian day 0 is noon of 24 November 4714 BC, proleptic Gregorian (the astronomers' -4713).
    CHECK(noon_2000 + day_in(gregorian, -4713, 11, 24) - 1 == 0);
    // RFC 3339, appendix B and common knowledge: 1 January 1970 was a Thursday.
    CHECK(weekday(1970, 1, 1) == "Thursday");
}

TEST_CASE("calendar: any calendar goes forward and back over 100,000 years without a slip") {
    rules::Dice dice(11);
    for (int i = 0; i < 300; ++i) {
        const Calendar calendar = random_calendar(dice);
        REQUIRE(game::has_dates(calendar));
        for (int k = 0; k < 40; ++k) {
            const std::int64_t year = std::int64_t{dice.roll(200001)} - 100001;
            const std::int64_t start = game::day_of(calendar, {year, 0, 1});
            const std::int64_t length = game::year_length(calendar, year);
            CHECK(game::date_of(calendar, start).year == year);
            CHECK(game::date_of(calendar, start + length - 1).year == year);
            CHECK(game::day_of_year(calendar, start + length - 1) == length);
            CHECK(game::day_of(calendar, {year + 1, 0, 1}) == start + length);
            std::int64_t sum = 0;
            for (std::size_t part = 0; part < calendar.parts.size(); ++part) {
                CHECK(
                    game::part_length(calendar, part, year) == plain_length(calendar, part, year)
                );
                sum += game::part_length(calendar, part, year);
            }
            CHECK(sum == length);
            const std::int64_t day = start + dice.roll(static_cast<int>(length)) - 1;
            const CalendarDate date = game::date_of(calendar, day);
            CHECK(game::day_of(calendar, date) == day);
            CHECK(date.day >= 1);
            CHECK(date.day <= game::part_length(calendar, date.part, date.year));
            const double share = game::year_share(calendar, day);
            CHECK(share >= 0.0);
            CHECK(share < 1.0);
        }
    }
}

TEST_CASE("calendar: weekdays follow each other in any calendar, and days outside the week wait") {
    rules::Dice dice(12);
    for (int i = 0; i < 200; ++i) {
        const Calendar calendar = random_calendar(dice);
        const std::int64_t from =
            game::day_of(calendar, {std::int64_t{dice.roll(200001)} - 100001, 0, 1});
        std::optional<std::size_t> last;
        for (std::int64_t day = from; day < from + 300; ++day) {
            const auto weekday = game::weekday_of(calendar, day);
            const auto& part = calendar.parts[game::date_of(calendar, day).part];
            CHECK(weekday.has_value() == (part.is_in_week && !calendar.weekdays.empty()));
            if (weekday && last) CHECK(*weekday == (*last + 1) % calendar.weekdays.size());
            if (weekday) last = weekday;
        }
    }
}

TEST_CASE("calendar: two years of thirteen months and two moons day by day as a hand would count") {
    const Calendar calendar = ready_calendar("Salt Road Count");
    // Counted on by hand from 1 Reedmonth 1203, a weekday asked once: lengths, week and moons.
    std::int64_t year = 1203;
    std::size_t part = 3;
    int in_part = 1;
    std::int64_t day = game::day_of(calendar, {year, part, in_part});
    std::size_t weekday = *game::weekday_of(calendar, day);
    std::array<double, 2> age{}; // days since new, at the start of the day
    for (std::size_t moon = 0; moon < 2; ++moon) {
        const game::Moon& each = calendar.moons[moon];
        const std::int64_t known = game::day_of(
            calendar,
            {each.new_moon.year, *game::part_index(calendar, each.new_moon.part), each.new_moon.day}
        );
        double since = static_cast<double>(day - known) - each.new_moon_second / 86400.0;
        while (since < 0)
            since += each.period_days;
        age[moon] = since;
    }
    int leap_days = 0;
    for (int walked = 0; walked < 365 + 366; ++walked) {
        CAPTURE(game::date_text(calendar, day));
        CHECK(game::date_of(calendar, day) == CalendarDate{year, part, in_part});
        const bool is_in_week = part != 7 && part != 14;
        CHECK(game::weekday_of(calendar, day).has_value() == is_in_week);
        if (is_in_week) {
            CHECK(game::weekday_of(calendar, day) == weekday);
            weekday = (weekday + 1) % 7;
        }
        for (std::size_t moon = 0; moon < 2; ++moon) {
            const double period = calendar.moons[moon].period_days;
            const double noon = std::fmod(age[moon] + 0.5, period) / period;
            const double share = game::moon_share(calendar, calendar.moons[moon], day);
            CHECK(std::min(std::abs(share - noon), 1 - std::abs(share - noon)) < 1e-6);
            const bool is_full = age[moon] <= period / 2 && period / 2 < age[moon] + 1;
            CHECK(
                (game::moon_phase(calendar, calendar.moons[moon], day) == game::MoonPhase::full_moon
                ) == is_full
            );
            age[moon] = std::fmod(age[moon] + 1, period);
        }
        leap_days += part == 14;
        // One day on: 28 days a month, Low Water after the seventh, High Water every fourth year.
        day += 1;
        in_part += 1;
        const int length = part == 7 ? 1 : part == 14 ? 1 : 28;
        if (in_part > length) {
            in_part = 1;
            part += 1;
            if (part == 14 && year % 4 != 0) part = 15;
            if (part == 15) {
                part = 0;
                year += 1;
            }
        }
    }
    CHECK(leap_days == 1);
    CHECK(year == 1205);
}

TEST_CASE("moon: the mean synodic month keeps its time over centuries") {
    const Calendar gregorian = ready_calendar("Gregorian");
    const game::Moon& moon = gregorian.moons.front();
    CHECK(moon.period_days == 29.530588853);

    // J. Meeus, Astronomical Algorithms, chapter 49 (from memory): mean new moons are 29.530588861
    // days apart from 2000 January 6; the true moon strays from the mean one by up to 14 hours. New
    // and full moons of eclipses, whose dates are public knowledge (from memory):
    struct Known {
        int year;
        unsigned month;
        unsigned day;
        double share;
    };

    constexpr std::array<Known, 5> eclipses{
        Known{1919, 5, 29, 0.0},
        Known{1999, 8, 11, 0.0},
        Known{2017, 8, 21, 0.0},
        Known{2018, 7, 27, 0.5},
        Known{2024, 4, 8, 0.0}};
    for (const Known& known : eclipses) {
        CAPTURE(known.year);
        const double share = game::moon_share(
            gregorian, moon, day_in(gregorian, known.year, known.month, known.day)
        );
        const double off = std::abs(std::remainder(share - known.share, 1.0)) * moon.period_days;
        CHECK(off < 1.2); // 14 hours of the moon, half a day of the eclipse's own hour
    }
    // 235 synodic months are 6939.688 days (the cycle of nineteen years): the share comes back.
    const double now = game::moon_share(gregorian, moon, 1000);
    CHECK(std::abs(game::moon_share(gregorian, moon, 1000 + 6940) - now) * 29.53 < 0.35);
}

TEST_CASE("moon: every cycle has one new moon, one full moon and two quarters") {
    const Calendar calendar = ready_calendar("Salt Road Count");
    for (const game::Moon& moon : calendar.moons) {
        std::map<game::MoonPhase, int> counts;
        const int cycles = 200;
        const auto days = static_cast<std::int64_t>(moon.period_days * cycles);
        for (std::int64_t day = -40'000'000; day < -40'000'000 + days; ++day) {
            counts[game::moon_phase(calendar, moon, day)] += 1;
            const double light = game::moon_light(calendar, moon, day);
            CHECK(light >= 0.0);
            CHECK(light <= 1.0);
        }
        using enum game::MoonPhase;
        for (const auto phase : {new_moon, first_quarter, full_moon, last_quarter})
            CHECK(std::abs(counts[phase] - cycles) <= 1);
    }
}

TEST_CASE("calendar: seasons begin where the calendar says and run into the next year") {
    const Calendar calendar = ready_calendar("Salt Road Count");
    const auto season = [&](std::int64_t year, std::size_t part, int day) {
        return calendar
            .seasons[*game::season_of(calendar, game::day_of(calendar, {year, part, day}))]
            .name;
    };
    CHECK(season(1204, 2, 1) == "Spring");
    CHECK(season(1204, 1, 28) == "Winter");
    CHECK(season(1204, 0, 1) == "Winter");
    CHECK(season(1204, 12, 15) == "Winter");
    CHECK(season(1204, 7, 1) == "Summer"); // Low Water
}

TEST_CASE("calendar: share of the year is 0 at midwinter and half at midsummer") {
    const Calendar calendar = ready_calendar("Salt Road Count");
    CHECK(game::year_share(calendar, game::day_of(calendar, {1204, 0, 1})) == 0.0);
    CHECK(
        game::year_share(calendar, game::day_of(calendar, {1203, 6, 15})) ==
        doctest::Approx(182.0 / 365)
    );
    const Calendar gregorian = ready_calendar("Gregorian");
    CHECK(game::year_share(gregorian, day_in(gregorian, 2001, 12, 21)) == 0.0);
    CHECK(
        game::year_share(gregorian, day_in(gregorian, 2001, 6, 21)) ==
        doctest::Approx(0.5).epsilon(0.01)
    );
    // Without a calendar: a mean Gregorian year, spring on day 1.
    CHECK(game::year_share({}, 1) == 0.0);
    const double share = 73.0 / 365.2425; // mean Gregorian year
    CHECK(game::year_share({}, 74) == doctest::Approx(share));
    CHECK(game::year_share({}, 74 + 146097) == doctest::Approx(share)); // 400 Gregorian years
    CHECK(game::year_share({}, 74 - 146097) == doctest::Approx(share));
}

TEST_CASE("calendar: holidays on a day of a month and on the nth weekday") {
    const Calendar calendar = ready_calendar("Salt Road Count");
    std::map<std::string, int> counts;
    const std::int64_t from = game::day_of(calendar, {1201, 0, 1});
    const std::int64_t to = game::day_of(calendar, {1209, 0, 1});
    for (std::int64_t day = from; day < to; ++day) {
        for (const std::size_t holiday : game::holidays_on(calendar, day)) {
            const std::string& name = calendar.holidays[holiday].name;
            counts[name] += 1;
            const CalendarDate date = game::date_of(calendar, day);
            if (name == "Weighing Fair") { // the second fourth day of Saltmonth
                CHECK(game::weekday_of(calendar, day) == 3U);
                CHECK(date.day > 7);
                CHECK(date.day <= 14);
            }
            if (name == "Night of Names") { // the last seventh day of Smokemonth
                CHECK(game::weekday_of(calendar, day) == 6U);
                CHECK(date.day > 21);
            }
        }
    }
    CHECK(counts["Weighing Fair"] == 8);
    CHECK(counts["Night of Names"] == 8);
    CHECK(counts["Causeway Day"] == 8);
    CHECK(counts["Low Water"] == 8);
    CHECK(counts["High Water"] == 2);
}

TEST_CASE("calendar: a month from a festival day is a month from the end of the one before it") {
    const Calendar calendar = ready_calendar("Salt Road Count");
    const std::int64_t low_water = game::day_of(calendar, {1204, 7, 1});
    CHECK(
        game::date_of(calendar, game::add_months(calendar, low_water, 1)) ==
        CalendarDate{1204, 8, 28}
    );
    const std::int64_t day = game::day_of(calendar, {1204, 3, 12});
    CHECK(
        game::date_of(calendar, game::add_months(calendar, day, 13)) == CalendarDate{1205, 3, 12}
    );
    CHECK(
        game::date_of(calendar, game::add_months(calendar, day, -4)) == CalendarDate{1203, 13, 12}
    );
}

TEST_CASE("calendar: a weekday that is set holds for its day") {
    Calendar calendar = ready_calendar("Salt Road Count");
    game::set_weekday(calendar, 12, 5);
    CHECK(game::weekday_of(calendar, 12) == 5U);
    CHECK(game::weekday_of(calendar, 13) == 6U);
}

TEST_CASE("calendar: a week runs from its first day to its last, days outside of it included") {
    const Calendar calendar = ready_calendar("Salt Road Count");
    CHECK((game::week_around(calendar, 12) == game::DaySpan{8, 14}));
    const std::int64_t low_water = game::day_of(calendar, {1204, 7, 1});
    CHECK((game::week_around(calendar, low_water) == game::DaySpan{low_water - 7, low_water}));
    CHECK((game::week_around({}, 12) == game::DaySpan{12, 18}));
    // Weeks follow each other without a gap in any calendar.
    rules::Dice dice(5);
    for (int i = 0; i < 100; ++i) {
        const Calendar other = random_calendar(dice);
        const game::DaySpan week = game::week_around(other, dice.roll(10000));
        CHECK(week.last - week.first < 60);
        CHECK(game::week_around(other, week.last + 1).first == week.last + 1);
    }
}
