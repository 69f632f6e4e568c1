// Calendar: a ready one taken, one of thirteen months and two moons made by hand and lived through
// for two years, every part of it changed, and what would break it refused.
#include "driver.h"
#include "fixtures.h"
#include "game/calendar_editing.h"
#include "game/date_text.h"
#include "game/fights.h"
#include "game/ready_calendars.h"
#include "widgets/calendar_editor.h"
#include "widgets/day_book.h"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <numbers>

namespace {

using game::Calendar;

struct Editor : driver::PanelDriver<widgets::CalendarEditorView> {
    explicit Editor(game::Campaign campaign, const driver::Settings& settings = {})
        : PanelDriver(
              std::move(campaign), fixtures::four_degree(), widgets::draw_calendar_editor, settings
          ) {
        calendars = {ready_calendar("Gregorian"), ready_calendar("Salt Road Count")};
        frames(3);
    }

    const Calendar& calendar() const { return campaign().calendar; }

    void fill_in(const std::string& label, base::Id id, const char* typed) {
        fill(label + std::to_string(id), typed);
        frames(2);
    }
};

game::Campaign salt_road() {
    game::Campaign campaign = fixtures::sluice_campaign();
    campaign.calendar = ready_calendar("Salt Road Count");
    campaign.clock.day = 12;
    return campaign;
}

// The calendar made below, counted by hand, one day after the other: thirteen months of 28 days
// and Turning, a day outside them that has no weekday and a second one every third year but not
// every twelfth; six weekdays.
struct CountedDays {
    static constexpr std::array months{
        "Ice",
        "Thaw",
        "Seed",
        "Leaf",
        "Bloom",
        "Hay",
        "Sun",
        "Corn",
        "Wine",
        "Mist",
        "Wood",
        "Storm",
        "Dark"};
    static constexpr std::array weekdays{"Anvil", "Bread", "Candle", "Door", "Ember", "Ferry"};

    int year = 2;
    std::size_t part = 0; // 13: Turning
    int day = 1;
    std::size_t weekday = 0;
    int days_since_start = 0;

    bool is_leap() const { return year % 3 == 0 && year % 12 != 0; }

    int length() const { return part < months.size() ? 28 : is_leap() ? 2 : 1; }

    void next() {
        days_since_start += 1;
        if (part < months.size()) weekday = (weekday + 1) % weekdays.size();
        day += 1;
        if (day <= length()) return;
        day = 1;
        part += 1;
        if (part <= months.size()) return;
        part = 0;
        year += 1;
    }

    std::string words() const {
        const std::string in_year = " " + std::to_string(year) + " TR";
        if (part == months.size())
            return (length() == 1 ? "" : std::to_string(day) + " of ") + std::string("Turning") +
                   in_year;
        return std::string(weekdays.at(weekday)) + ", " + std::to_string(day) + " " +
               months.at(part) + in_year;
    }

    // "Reed: full moon, 99 % lit" of a moon that was new at noon of the first day.
    std::string moon(const std::string& name, double period) const {
        static constexpr std::array phases{
            "new moon",
            "waxing crescent",
            "first quarter",
            "waxing gibbous",
            "full moon",
            "waning gibbous",
            "last quarter",
            "waning crescent"};
        const double at = days_since_start / period * 4.0; // quarters since new, at noon
        const double half_day = 0.5 / period * 4.0;
        const double nearest = std::round(at);
        const bool is_moment = at - half_day <= nearest && nearest < at + half_day;
        const auto whole = static_cast<std::size_t>(is_moment ? nearest : std::floor(at));
        const std::size_t phase = whole % 4 * 2 + (is_moment ? 0 : 1);
        const double lit = (1.0 - std::cos(at / 4.0 * 2.0 * std::numbers::pi)) / 2.0;
        return name + ": " + phases.at(phase) + ", " + std::to_string(std::lround(lit * 100.0)) +
               " % lit";
    }
};

// All of it through the screen, as a GM would.
game::Campaign made_by_hand() {
    Editor ui(fixtures::sluice_campaign());
    CHECK(ui.shows("Until there is one, days are counted."));
    ui.fill("##new months", "13");
    ui.fill("##new days", "28");
    ui.click("Make it");
    REQUIRE(ui.calendar().parts.size() == 13);
    ui.fill("##calendar name", "Turning of the Reeds");
    ui.fill(
        "##month names",
        "Ice, Thaw, Seed, Leaf, Bloom, Hay, Sun, Corn, Wine, Mist, Wood, Storm, Dark"
    );
    ui.click("Name the months");
    ui.click("Add days outside months");
    REQUIRE(ui.calendar().parts.size() == 14);
    ui.fill_in("##part ", ui.calendar().parts.back().id, "Turning");
    ui.click("Add a leap rule");
    REQUIRE(ui.calendar().leap_rules.size() == 1);
    const std::string rule = std::to_string(ui.calendar().leap_rules.front().id);
    ui.fill("##leap " + rule + " step 0", "3");
    ui.click("Add an exception##" + rule);
    ui.fill("##leap " + rule + " step 1", "12");
    CHECK(ui.shows("365, 365, 366, 365, 365"));
    ui.click("Week");
    ui.fill("##weekdays", "Anvil, Bread, Candle, Door, Ember, Ferry");
    ui.click("Eras");
    ui.click("Add an era");
    ui.fill_in("##era short ", ui.calendar().eras.front().id, "TR");
    ui.click("Today");
    ui.fill("##date of today", "1 Ice 2");
    ui.click("Week");
    ui.click("##weekday of today");
    ui.click("Anvil##in ##weekday of today");
    ui.click("Seasons and moons");
    ui.click("Add a moon");
    ui.click("Add a moon");
    REQUIRE(ui.calendar().moons.size() == 2);
    ui.fill_in("##moon ", ui.calendar().moons[0].id, "Reed");
    ui.fill_in("##period ", ui.calendar().moons[0].id, "29.53");
    ui.fill_in("##moon ", ui.calendar().moons[1].id, "Ember");
    ui.fill_in("##period ", ui.calendar().moons[1].id, "11.617");
    ui.click("Holidays");
    ui.click("Add a holiday");
    ui.fill_in("##holiday ", ui.calendar().holidays.front().id, "First Ferry");
    CHECK(ui.last_error.empty());
    CHECK(game::calendar_problems(ui.calendar()).empty());
    CHECK(ui.shows("Today: Anvil, 1 Ice 2 TR"));
    CHECK(ui.shows("13 months, 365 days a year, a week of 6 days, 1 leap rule, 2 moons, 1 holiday")
    );
    return ui.campaign();
}

} // namespace

TEST_CASE("calendar: a ready one is taken with one press, and undone with one") {
    Editor ui(fixtures::sluice_campaign());
    CHECK(ui.shows("13 months, 365 days a year, a week of 7 days"));
    CHECK(ui.shows("12 months, 365 days a year, a week of 7 days"));
    ui.click("Use Salt Road Count");
    CHECK(ui.calendar() == ready_calendar("Salt Road Count"));
    CHECK(ui.shows("Today: Firstday, 1 Reedmonth 1204 AE"));
    ui.click("Another calendar");
    ui.click("Use Gregorian");
    CHECK(ui.calendar().name == "Gregorian");
    ui.undo();
    ui.undo();
    CHECK(ui.calendar() == Calendar{});
    CHECK(ui.shows("Until there is one, days are counted."));
}

TEST_CASE("calendar: thirteen months and two moons made by hand, and two years lived day by day") {
    driver::PanelDriver<widgets::DayBookView> ui(
        made_by_hand(), fixtures::four_degree(), widgets::draw_day_book
    );
    CountedDays counted;
    const int two_years = 365 + 366;
    while (counted.days_since_start <= two_years) {
        CAPTURE(counted.words());
        REQUIRE(
            game::date_text(ui.campaign().calendar, game::now(ui.campaign()).day) == counted.words()
        );
        // The eye reads a page a week, the first of every month and every page outside the months.
        if (counted.days_since_start % 7 == 0 || counted.day == 1 || counted.part == 13) {
            const std::string page = ui.text();
            CHECK(page.find(counted.words()) != std::string::npos);
            CHECK(page.find(counted.moon("Reed", 29.53)) != std::string::npos);
            CHECK(page.find(counted.moon("Ember", 11.617)) != std::string::npos);
            CHECK(
                (page.find("First Ferry") != std::string::npos) ==
                (counted.part == 0 && counted.day == 1)
            );
        }
        ui.click("+1 day");
        counted.next();
    }
    CHECK(counted.words() == "Door, 2 Ice 4 TR");
    ui.fill("##jump", "2 of Turning 3");
    CHECK(ui.shows("2 of Turning 3 TR"));
    ui.fill("##jump", "2 of Turning 12");
    CHECK_FALSE(ui.shows("2 of Turning 12 TR")); // no leap year
}

TEST_CASE("calendar: what would break it is refused where it is typed, in one sentence") {
    Editor ui(salt_road());
    const Calendar before = ui.calendar();
    ui.fill("##part 4", "Rimemonth");
    CHECK(ui.calendar() == before);
    CHECK(ui.shows("Two parts of the year are called Rimemonth."));
    ui.fill("##part 5", "");
    CHECK(ui.shows("has no name."));
    ui.fill("##days of 4", "10");
    CHECK(ui.shows("Causeway Day is on day 14, but Reedmonth has 10."));
    CHECK(ui.calendar() == before);
    ui.click("Week");
    ui.fill("##weekdays", "One, Two");
    CHECK(ui.shows("Weighing Fair needs a weekday."));
    ui.click("Seasons and moons");
    ui.fill("##period 40", "a month");
    CHECK(ui.shows("Type the days from new to new, like 29.53."));
    ui.fill("##period 41", "0.2");
    CHECK(ui.shows("Ember Moon needs 1 to 100,000 days from new to new."));
    ui.fill("##dusk", "05:00");
    CHECK(ui.shows("Dawn must come before dusk."));
    CHECK(ui.calendar() == before);
    CHECK(ui.last_error.empty());
}

TEST_CASE("calendar: months are renamed, lengthened, moved and removed, with what hangs on them") {
    Editor ui(salt_road());
    ui.fill("##part 4", "Ferrymonth");
    ui.fill("##days of 4", "30");
    CHECK(ui.calendar().parts[3].name == "Ferrymonth");
    CHECK(ui.calendar().parts[3].days == 30);
    CHECK(ui.shows("12 Ferrymonth 1204 AE"));
    ui.click("Up##4");
    CHECK(ui.calendar().parts[2].name == "Ferrymonth");
    ui.click("Remove##part 4");
    CHECK(ui.calendar().parts.size() == 14);
    CHECK(game::calendar_problems(ui.calendar()).empty());
    ui.undo();
    CHECK(ui.calendar().parts[2].name == "Ferrymonth");
    ui.click("In the week##20");
    CHECK(ui.calendar().parts[7].is_in_week);
    ui.click("A month##20");
    CHECK(ui.calendar().parts[7].is_month);
    ui.click("Add a month");
    CHECK(ui.calendar().parts.back().name == "New month");
}

TEST_CASE("calendar: the name of a month is written again while the calendar is used") {
    Editor ui(salt_road());
    ui.click("Name the months");
    CHECK(ui.shows("Type the names of the months first, with commas between."));
    ui.fill("##month names", "Rime 30, Thaw");
    ui.click("Name the months");
    CHECK(ui.calendar().parts[0].name == "Rime");
    CHECK(ui.calendar().parts[0].days == 30);
    CHECK(ui.calendar().parts[1].name == "Thaw");
    CHECK(ui.calendar().parts[1].days == 28);
}

TEST_CASE("calendar: a leap rule is added, changed and taken away") {
    Editor ui(salt_road());
    CHECK(ui.shows("Days of 1204 AE and the years after: 366, 365, 365, 365, 366."));
    ui.fill("##leap 22 step 0", "2");
    CHECK(ui.shows("366, 365, 366, 365, 366."));
    ui.click("Take the last away##22");
    CHECK(ui.calendar().leap_rules[0].steps.size() == 1);
    ui.fill("##leap offset 22", "1");
    CHECK(ui.shows("365, 366, 365, 366, 365."));
    ui.click("##leap part 22");
    ui.click("Low Water##in ##leap part 22");
    CHECK(ui.calendar().leap_rules[0].part == 21);
    CHECK(ui.shows("High Water has no days; give it some, or a leap rule."));
    ui.click("Remove##leap 22");
    CHECK(ui.calendar().leap_rules.size() == 1); // the same
}

TEST_CASE("calendar: a holiday goes by day or by weekday, with a note") {
    Editor ui(salt_road());
    ui.click("Holidays");
    ui.click("By weekday##51");
    ui.click("##nth 51");
    ui.click("last");
    ui.click("##holiday weekday 51");
    ui.click("Thirdday##in ##holiday weekday 51");
    const game::Holiday& causeway = ui.calendar().holidays[1];
    CHECK(causeway.rule == game::HolidayRule::nth_weekday);
    CHECK(causeway.nth == -1);
    CHECK(causeway.weekday == 2);
    ui.fill("##holiday note 51", "No tolls at all.");
    CHECK(ui.calendar().holidays[1].note == "No tolls at all.");
    ui.click("Remove##holiday 51");
    CHECK(ui.calendar().holidays.size() == 5);
}

TEST_CASE("calendar: seasons and eras are added, changed and removed") {
    Editor ui(salt_road());
    ui.click("Seasons and moons");
    ui.click("Add a season");
    REQUIRE(ui.calendar().seasons.size() == 5);
    const base::Id season = ui.calendar().seasons.back().id;
    ui.fill_in("##season ", season, "Flood");
    ui.fill("##season " + std::to_string(season) + " day", "20");
    CHECK(ui.calendar().seasons.back().name == "Flood");
    CHECK(ui.calendar().seasons.back().start.day == 20);
    ui.click("Remove##season " + std::to_string(season));
    CHECK(ui.calendar().seasons.size() == 4);
    ui.click("##midwinter part");
    ui.click("Thawmonth##in ##midwinter part");
    CHECK(ui.calendar().midwinter.part == 2);
    ui.click("Eras");
    ui.fill("##era year 60", "1000");
    CHECK(ui.shows("The year 1204 is called 205 AE."));
    ui.click("Add an era");
    CHECK(ui.calendar().eras.size() == 3);
    ui.click("Remove##era " + std::to_string(ui.calendar().eras.back().id));
    CHECK(ui.calendar().eras.size() == 2);
}

TEST_CASE("calendar: today gets another date and weekday, and no time passes") {
    Editor ui(salt_road());
    ui.click("Today");
    ui.fill("##date of today", "High Water 1208");
    CHECK(ui.shows("Today: High Water 1208 AE"));
    CHECK(ui.campaign().clock.day == 12);
    ui.fill("##date of today", "1 Nevermonth");
    CHECK(ui.shows("Today: High Water 1208 AE"));
    ui.fill("##date of today", "3 Saltmonth 1207");
    ui.click("Week");
    ui.click("##weekday of today");
    ui.click("Sixthday##in ##weekday of today");
    CHECK(ui.shows("Today: Sixthday, 3 Saltmonth 1207 AE"));
}

TEST_CASE("calendar: a campaign open for reading shows it and changes nothing") {
    Editor ui(salt_road());
    ui.is_read_only = true;
    ui.frames(2);
    CHECK_FALSE(ui.is_enabled("Add a month"));
    CHECK_FALSE(ui.is_enabled("Remove##part 4"));
    ui.click("Holidays");
    CHECK_FALSE(ui.is_enabled("Add a holiday"));
    ui.click("Another calendar");
    CHECK_FALSE(ui.is_enabled("Use Gregorian"));
}

TEST_CASE("calendar: stands in narrow panels, at large text and under a finger") {
    for (const float scale : {1.0F, 2.0F, 2.5F})
        for (const float width : {380.0F, 1280.0F}) {
            CAPTURE(scale);
            CAPTURE(width);
            driver::Settings settings;
            settings.size = {width * std::min(scale, 2.0F), 760.0F};
            settings.scale = scale;
            settings.is_touch = true;
            Editor ui(salt_road(), settings);
            for (const char* section :
                 {"Week",
                  "Seasons and moons",
                  "Holidays",
                  "Eras",
                  "Today",
                  "Another calendar",
                  "Year"})
                ui.click(section);
            CHECK(ui.shows("Today: Fifthday, 12 Reedmonth 1204 AE"));
        }
}
