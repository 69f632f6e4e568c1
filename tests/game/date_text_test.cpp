// Dates in words, and dates that people type.
#include "game/calendar_dates.h"
#include "game/calendar_editing.h"
#include "game/date_text.h"
#include "game/ready_calendars.h"
#include "rules/dice.h"

namespace {

using game::Calendar;

// What the typed date means in full words, or the error.
std::string typed(const Calendar& calendar, const std::string& text, std::int64_t today = 12) {
    const auto day = game::parse_date(calendar, text, today);
    return day.ok() ? game::date_text(calendar, day.value()) : day.error().message;
}

} // namespace

TEST_CASE("dates: said in full, without the weekday, and short") {
    const Calendar salt = ready_calendar("Salt Road Count");
    CHECK(game::date_text(salt, 12) == "Fifthday, 12 Reedmonth 1204 AE");
    CHECK(game::plain_date_text(salt, 12) == "12 Reedmonth 1204 AE");
    CHECK(game::short_date_text(salt, 12) == "12 Reedmonth");
    CHECK(game::date_text(salt, game::day_of(salt, {1204, 7, 1})) == "Low Water 1204 AE");
    CHECK(game::date_text(salt, game::day_of(salt, {0, 0, 3})) == "Thirdday, 3 Rimemonth 1 BE");
    const Calendar quay = ready_calendar("Quay Reckoning");
    CHECK(game::date_text(quay, game::day_of(quay, {311, 5, 2})) == "2 of Lamp Nights 311 YH");
    CHECK(game::date_text({}, 12) == "Day 12");
    CHECK(game::day_in_words({}, 12) == "day 12");
    CHECK(game::day_in_words(salt, 12) == "12 Reedmonth 1204 AE");
    CHECK(game::short_date_text({}, -3) == "Day -3");
}

TEST_CASE("dates: with the time of day, by the campaign's calendar, a fight counted") {
    game::Campaign campaign;
    campaign.clock = {12, 8 * 3600, {}};
    CHECK(game::date_time_text(campaign) == "Day 12, 08:00");
    campaign.calendar = ready_calendar("Salt Road Count");
    CHECK(game::date_time_text(campaign) == "12 Reedmonth 1204 AE, 08:00");
    CHECK(game::short_date_time_text(campaign) == "12 Reedmonth, 08:00");
    campaign.clock = {28, 24 * 3600 - 12, {}};
    campaign.encounter.phase = game::Phase::running;
    campaign.encounter.elapsed_seconds = 18;
    CHECK(game::short_date_time_text(campaign) == "1 Mistmonth, 00:00");
}

TEST_CASE("dates: the years of every era are told and found again") {
    Calendar calendar = ready_calendar("Salt Road Count");
    game::add_calendar_entry(
        calendar, &Calendar::eras, game::Era{0, "Second count", "SC", 1210, false, {}}
    );
    CHECK(game::year_text(calendar, 1209) == "1209 AE");
    CHECK(game::year_text(calendar, 1210) == "1 SC");
    CHECK(game::year_text(calendar, 0) == "1 BE");
    CHECK(game::year_text(calendar, -99) == "100 BE");
    for (std::int64_t year = -300; year < 2000; year += 7) {
        const game::Era& era = calendar.eras[*game::era_index(calendar, year)];
        CHECK(game::year_of_era(era, game::year_in_era(era, year)) == year);
        CHECK(game::year_in_era(era, year) > 0);
    }
    calendar.eras.clear();
    CHECK(game::year_text(calendar, -99) == "-99");
}

TEST_CASE("dates: typed the ways people type them") {
    const Calendar salt = ready_calendar("Salt Road Count");
    for (const char* text :
         {"12 Reedmonth 1204",
          "12 reedmonth 1204 ae",
          "12. Reedmonth 1204 AE",
          "12th of Reedmonth, 1204",
          "Fifthday, 12 Reedmonth 1204 AE",
          "Reedmonth 12",
          "Reedmonth 12 1204",
          "12 Reed",
          "12.4.1204",
          "12.4.",
          "12",
          "day 12",
          "today",
          "12 Reedmonth 1204 After the Embankment"})
        CHECK_MESSAGE(typed(salt, text) == "Fifthday, 12 Reedmonth 1204 AE", text);
    CHECK(typed(salt, "+10") == "Firstday, 22 Reedmonth 1204 AE");
    CHECK(typed(salt, "today +10") == "Firstday, 22 Reedmonth 1204 AE");
    CHECK(typed(salt, "-3") == "Secondday, 9 Reedmonth 1204 AE");
    CHECK(typed(salt, "tomorrow") == "Sixthday, 13 Reedmonth 1204 AE");
    CHECK(typed(salt, "yesterday") == "Fourthday, 11 Reedmonth 1204 AE");
    CHECK(typed(salt, "+2 weeks") == "Fifthday, 26 Reedmonth 1204 AE");
    CHECK(typed(salt, "+1 month") == "Fifthday, 12 Mistmonth 1204 AE");
    CHECK(typed(salt, "-1 year") == "Fifthday, 12 Reedmonth 1203 AE");
    CHECK(typed(salt, "day 40") == "Fifthday, 12 Mistmonth 1204 AE");
    CHECK(typed(salt, "Mistmonth") == "Firstday, 1 Mistmonth 1204 AE");
    CHECK(typed(salt, "Mistmonth 1210") == "Firstday, 1 Mistmonth 1210 AE");
    CHECK(typed(salt, "Low Water") == "Low Water 1204 AE");
    CHECK(typed(salt, "low water 1210 AE") == "Low Water 1210 AE");
    CHECK(typed(salt, "12 Reedmonth 3 BE") == "Fifthday, 12 Reedmonth 3 BE");
    CHECK(typed(salt, "12 Reedmonth -2") == "Fifthday, 12 Reedmonth 3 BE");
    const Calendar quay = ready_calendar("Quay Reckoning");
    CHECK(typed(quay, "2 of Lamp Nights 311 YH") == "2 of Lamp Nights 311 YH");
}

TEST_CASE("dates: names that hold numbers and names that begin alike are told apart") {
    Calendar calendar;
    game::make_months(calendar, 12, 30);
    CHECK(typed(calendar, "12 Month 3 1", 1) == "12 Month 3 1");
    CHECK(typed(calendar, "12 Month 12", 1) == "12 Month 12 1");
    CHECK(typed(calendar, "12 Mon", 1) == "Several parts of the year begin with \"Mon\".");
}

TEST_CASE("dates: what cannot be understood or does not exist is one sentence") {
    const Calendar salt = ready_calendar("Salt Road Count");
    CHECK(typed(salt, "30 Reedmonth 1204") == "Reedmonth 1204 AE has 28 days.");
    CHECK(typed(salt, "0 Reedmonth") == "Reedmonth 1204 AE has 28 days.");
    CHECK(typed(salt, "High Water 1205") == "1205 AE has no High Water.");
    CHECK(typed(salt, "12 Foomonth") == "No part of the year is called \"Foomonth\".");
    CHECK(typed(salt, "12.14.1204") == "There is no month number 14.");
    CHECK(typed(salt, "12 Reedmonth 9999999999") == "That is too far away.");
    CHECK(typed(salt, "+99999999999") == "That is too far away.");
    CHECK(typed(salt, "day 99999999999") == "That is too far away.");
    const std::string hint =
        "This is no date; type for instance \"+10\", \"day 40\", or day, month and year.";
    for (const char* text :
         {"",
          "  ",
          "12 13",
          "+",
          "+x",
          "-3 ducks",
          "12 Reedmonth 1204 XX",
          "Reedmonth next year",
          "today 4",
          "12 of 12 Reedmonth",
          "99999999999999999999"})
        CHECK_MESSAGE(typed(salt, text) == hint, text);
    CHECK(typed({}, "40") == "Day 40");
    CHECK(typed({}, "+3") == "Day 15");
    CHECK(typed({}, "12 Reedmonth") == hint);
    CHECK(typed({}, "+1 month") == "Without a calendar there are only days.");
    CHECK(typed({}, "+1 week") == "This calendar has no weeks.");
}

TEST_CASE("dates: what is shown can be typed again, on any day of the ready calendars") {
    rules::Dice dice(3);
    for (const char* name : {"Salt Road Count", "Quay Reckoning", "Gregorian"}) {
        const Calendar calendar = ready_calendar(name);
        for (int i = 0; i < 500; ++i) {
            const std::int64_t day = std::int64_t{dice.roll(40'000'000)} - 20'000'000;
            const std::string text = game::date_text(calendar, day);
            const auto read = game::parse_date(calendar, text, 1);
            CAPTURE(text);
            REQUIRE(read.ok());
            CHECK(read.value() == day);
        }
    }
}

TEST_CASE("dates: time of day as typed") {
    CHECK(game::parse_time_of_day("16:30").value() == 16 * 3600 + 30 * 60);
    CHECK(game::parse_time_of_day(" 8 ").value() == 8 * 3600);
    CHECK(game::parse_time_of_day("0:05").value() == 300);
    for (const char* text : {"", "24:00", "12:60", "-1", "noon", "12:", "1:2:3", "012:00"})
        CHECK_MESSAGE(!game::parse_time_of_day(text).ok(), text);
}
