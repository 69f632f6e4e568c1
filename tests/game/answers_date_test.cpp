// Asking for the date: today's, another day's, and where it is not known.
#include "game/asking.h"
#include "game/day_book_keeping.h"
#include "game/ready_calendars.h"

namespace {

game::Campaign on_the_road() {
    game::Campaign campaign;
    campaign.calendar = ready_calendar("Salt Road Count");
    campaign.clock = {12, 17 * 3600, {}};
    game::add_day_timer(campaign.day_book, "the eel spoils", {14, 18 * 3600, {}});
    return campaign;
}

} // namespace

TEST_CASE("ask: today's date with weekday, season and moons") {
    const game::Campaign campaign = on_the_road();
    const game::Answer answer = asking::answer("date", asking::four(), &campaign);
    CHECK(answer.title == "Fifthday, 12 Reedmonth 1204 AE, 17:00");
    CHECK(asking::whole(answer.values, "day") == 12);
    CHECK(asking::whole(answer.values, "days_away") == 0);
    CHECK(asking::whole(answer.values, "day_of_year") == 3 * 28 + 12);
    CHECK(asking::text(answer.values, "weekday") == "Fifthday");
    CHECK(asking::text(answer.values, "season") == "Spring");
    CHECK(asking::says(answer, "day 96 of 366 of the year")); // 1204 is a leap year
    REQUIRE(asking::rows(answer.values, "moons").size() == 2);
    CHECK(asking::text(asking::rows(answer.values, "moons")[0], "name") == "Reed Moon");
}

TEST_CASE("ask: another day's date however it is typed, with holidays and what is due") {
    const game::Campaign campaign = on_the_road();
    for (const char* words :
         {"date +2",
          "date 14 Reedmonth",
          "date day 14",
          "date Seventhday, 14 Reedmonth 1204 AE",
          "date 14.4.1204"}) {
        CAPTURE(words);
        const game::Answer answer = asking::answer(words, asking::four(), &campaign);
        CHECK(answer.title == "Seventhday, 14 Reedmonth 1204 AE");
        CHECK(answer.lines.front() == "in 2 days");
        CHECK(asking::says(answer, "Causeway Day: Tolls are waived until noon."));
        CHECK(asking::says(answer, "due 18:00: the eel spoils"));
    }
    const game::Answer before = asking::answer("date -13 years", asking::four(), &campaign);
    CHECK(before.title == "Fifthday, 12 Reedmonth 1191 AE");
    CHECK(before.lines.front() == "4748 days ago"); // 13 years of 365 days and 3 leap days
}

TEST_CASE("ask: without a calendar the day is a number, and without a campaign there is none") {
    game::Campaign campaign;
    campaign.clock.day = 12;
    CHECK(asking::answer("date +3", asking::four(), &campaign).title == "Day 15");
    CHECK(asking::refusal("date").find("The date in which world?") == 0);
    const auto never = game::answer({asking::four(), &campaign}, "date 1 Nevermonth");
    CHECK_FALSE(never.ok());
}
