// Making a calendar, changing it, and what is said of one that is not sound.
#include "game/calendar_dates.h"
#include "game/calendar_editing.h"
#include "game/date_text.h"
#include "game/ready_calendars.h"

#include <functional>
#include <limits>

namespace {

using game::Calendar;
using Lines = std::vector<std::string>;

Lines problems_after(const std::function<void(Calendar&)>& change) {
    Calendar calendar = ready_calendar("Salt Road Count");
    change(calendar);
    return game::calendar_problems(calendar);
}

} // namespace

TEST_CASE("calendar editing: the ready calendars are sound") {
    for (const char* name : {"Salt Road Count", "Quay Reckoning", "Gregorian"})
        CHECK(game::calendar_problems(ready_calendar(name)).empty());
}

TEST_CASE("calendar editing: from nothing to thirteen named months in two steps") {
    Calendar calendar;
    CHECK(game::calendar_problems(calendar) == Lines{"A calendar needs at least one month."});
    game::make_months(calendar, 13, 28);
    CHECK(game::calendar_problems(calendar).empty());
    CHECK(game::year_length(calendar, 1) == 364);
    CHECK(game::date_text(calendar, 29) == "1 Month 2 1");
    game::name_months(calendar, game::listed_names("Rime, Thaw; Sprig\nReed 30\n\n", true));
    CHECK(calendar.parts[3].name == "Reed");
    CHECK(calendar.parts[3].days == 30);
    CHECK(calendar.parts[4].name == "Month 5");
    game::name_weekdays(calendar, game::listed_names("One, Two, Three", false));
    CHECK(game::date_text(calendar, 1) == "One, 1 Rime 1");
}

TEST_CASE("calendar editing: a pasted list carries lengths, and is as long as it is") {
    using game::ListedName;
    CHECK(
        game::listed_names("January 31\nFebruary (28)\r\nMarch: 31\n April", true) ==
        std::vector<ListedName>{{"January", 31}, {"February", 28}, {"March", 31}, {"April", 0}}
    );
    CHECK(
        game::listed_names("Day 1, Day 2", false) ==
        std::vector<ListedName>{{"Day 1", 0}, {"Day 2", 0}}
    );
    CHECK(game::listed_names(" ,;\n, ", true).empty());
    CHECK(game::listed_names("30", true) == std::vector<ListedName>{{"30", 0}});
    Calendar calendar;
    game::name_months(calendar, game::listed_names("A 10, B, C 5", true));
    REQUIRE(calendar.parts.size() == 3);
    CHECK(calendar.parts[1].days == 10);
    CHECK(game::year_length(calendar, 7) == 25);
    CHECK(game::calendar_problems(calendar).empty());
}

TEST_CASE(
    "calendar editing: new months stand after the last month, before the days that end the year"
) {
    Calendar calendar = ready_calendar("Salt Road Count");
    const std::size_t before = calendar.parts.size();
    std::string names;
    for (int i = 0; i < 14; ++i)
        names += "N" + std::string(1, static_cast<char>('a' + i)) + ",";
    game::name_months(calendar, game::listed_names(names, true));
    CHECK(calendar.parts.size() == before + 1);
    CHECK(calendar.parts[before - 1].name == "Nn");
    CHECK(calendar.parts[before].name == "High Water");
}

TEST_CASE("calendar editing: a month that goes takes its own with it and hands on the rest") {
    Calendar calendar = ready_calendar("Salt Road Count");
    game::remove_part(calendar, 21); // High Water: its leap rule and its holiday
    CHECK(calendar.leap_rules.empty());
    CHECK(calendar.holidays.size() == 5);
    game::remove_part(calendar, 4); // Reedmonth: day 1 and both new moons
    CHECK(calendar.first_day.part == 5);
    CHECK(calendar.moons[0].new_moon.part == 5);
    game::remove_part(calendar, 1); // Rimemonth: midwinter
    CHECK(calendar.midwinter.part == 2);
    CHECK(game::calendar_problems(calendar).empty());
    while (!calendar.parts.empty())
        game::remove_part(calendar, calendar.parts.back().id);
    CHECK_FALSE(game::has_dates(calendar));
    CHECK(game::date_text(calendar, 5) == "Day 5");
}

TEST_CASE("calendar editing: entries move within their list and stop at its ends") {
    Calendar calendar = ready_calendar("Salt Road Count");
    game::move_calendar_entry(calendar.parts, 2, -1);
    CHECK(calendar.parts[0].id == 2);
    game::move_calendar_entry(calendar.parts, 2, -1);
    CHECK(calendar.parts[0].id == 2);
    game::move_calendar_entry(calendar.parts, 21, 1);
    CHECK(calendar.parts.back().id == 21);
    game::move_calendar_entry(calendar.moons, 40, 1);
    CHECK(calendar.moons[1].id == 40);
    game::remove_calendar_entry(calendar.moons, 40);
    CHECK(calendar.moons.size() == 1);
    CHECK(game::find_calendar_entry(calendar.moons, 41) == &calendar.moons[0]);
    CHECK(game::find_calendar_entry(calendar.moons, 40) == nullptr);
}

TEST_CASE("calendar editing: today gets another date, and the days before and after follow") {
    Calendar calendar = ready_calendar("Salt Road Count");
    game::set_date_of_day(calendar, 500, {1300, 5, 7, {}});
    CHECK(game::plain_date_text(calendar, 500) == "7 Mistmonth 1300 AE");
    CHECK(game::plain_date_text(calendar, 501) == "8 Mistmonth 1300 AE");
    CHECK(game::calendar_problems(calendar).empty());
}

TEST_CASE("calendar editing: every slip is one short sentence") {
    const auto one = [](const std::function<void(Calendar&)>& change) {
        const Lines lines = problems_after(change);
        return lines.size() == 1 ? lines.front() : std::to_string(lines.size()) + " lines";
    };
    CHECK(one([](Calendar& c) { c.parts[2].name = ""; }) == "Month 3 has no name.");
    CHECK(one([](Calendar& c) {
              c.parts[2].name = "REEDMONTH";
          }) == "Two parts of the year are called Reedmonth.");
    CHECK(one([](Calendar& c) {
              c.parts[10].days = -1;
          }) == "Orchardmonth can have 0 to 10000 days.");
    CHECK(
        problems_after([](Calendar& c) { c.parts[14].days = 0, c.leap_rules.clear(); }) ==
        Lines{
            "High Water has no days; give it some, or a leap rule.",
            "High Water is on day 1, but High Water has 0."}
    );
    CHECK(
        problems_after([](Calendar& c) { c.leap_rules[0].part = 99; }).at(1) ==
        "A leap rule needs a month to add days to."
    ); // behind the day outside the months that it no longer makes
    CHECK(one([](Calendar& c) {
              c.leap_rules[0].steps.clear();
          }) == "The leap rule of High Water needs to say every how many years.");
    CHECK(one([](Calendar& c) {
              c.leap_rules[0].steps[1].every = 2;
          }) == "The leap rule of High Water: every 2 undoes the step before it altogether.");
    CHECK(one([](Calendar& c) {
              c.leap_rules[0].steps[0].every = 0;
          }) == "The leap rule of High Water can go by 1 to 1000000 years.");
    CHECK(one([](Calendar& c) { c.weekdays[1] = ""; }) == "Weekday 2 has no name.");
    CHECK(one([](Calendar& c) {
              c.weekdays[1] = "firstday";
          }) == "Two weekdays are called firstday.");
    CHECK(one([](Calendar& c) {
              c.year_one_weekday = 7;
          }) == "Year 1 must begin on one of the weekdays.");
    CHECK(one([](Calendar& c) {
              c.seasons[1].start.day = 29;
          }) == "Spring is on day 29, but Sprigmonth has 28.");
    CHECK(one([](Calendar& c) {
              c.seasons[2].start = c.seasons[1].start;
          }) == "Summer begins on the same day as another season.");
    CHECK(one([](Calendar& c) {
              c.moons[0].period_days = std::numeric_limits<double>::quiet_NaN();
          }) == "Reed Moon needs 1 to 100,000 days from new to new.");
    CHECK(one([](Calendar& c) {
              c.moons[0].new_moon = {1205, 21, 1, {}};
          }) == "The new moon of Reed Moon is on day 1, but High Water has 0 in that year.");
    CHECK(one([](Calendar& c) { c.holidays[0].name = ""; }) == "Holiday 1 has no name.");
    CHECK(one([](Calendar& c) { c.holidays[0].part = 99; }) == "Hearthnight needs a month.");
    CHECK(one([](Calendar& c) { c.holidays[4].weekday = 7; }) == "Weighing Fair needs a weekday.");
    CHECK(one([](Calendar& c) {
              c.holidays[4].nth = 5;
          }) == "Weighing Fair: Saltmonth has no weekday number 5.");
    CHECK(one([](Calendar& c) {
              c.holidays[4].part = 20;
          }) == "Weighing Fair goes by weekdays, but Low Water has none.");
    CHECK(one([](Calendar& c) {
              c.eras[0].name = c.eras[0].abbreviation = "";
          }) == "An era needs a name or an abbreviation.");
    CHECK(one([](Calendar& c) {
              c.midwinter.day = 29;
          }) == "Midwinter is on day 29, but Rimemonth has 28.");
    CHECK(one([](Calendar& c) {
              c.first_day.day = 40;
          }) == "Day 1 of the campaign is on day 40, but Reedmonth has 28 in that year.");
    CHECK(one([](Calendar& c) { c.dusk_second = 100; }) == "Dawn must come before dusk.");
}

TEST_CASE("calendar editing: leap rules in words") {
    const Calendar gregorian = ready_calendar("Gregorian");
    CHECK(
        game::leap_rule_text(gregorian.leap_rules[0]) ==
        "every 4 years, not every 100, but every 400"
    );
    CHECK(game::leap_rule_text({0, 1, 1, {{1, {}}}, 0, {}}) == "every year");
}
