// Day Book: pages, weeks, months and years, what falls due, the clock, the way to any date.
#include "driver.h"
#include "fixtures.h"
#include "game/date_text.h"
#include "game/day_book_keeping.h"
#include "game/fights.h"
#include "game/places_edit.h"
#include "game/ready_calendars.h"
#include "game/weather_report.h"
#include "widgets/day_book.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <functional>

namespace {

using Driver = driver::PanelDriver<widgets::DayBookView>;

constexpr int hour = 3600;

// 12 Reedmonth 1204 AE, 17:40; a Fifthday.
game::Campaign on_the_road() {
    game::Campaign campaign = fixtures::sluice_campaign();
    campaign.calendar = ready_calendar("Salt Road Count");
    campaign.clock = {12, 17 * hour + 40 * 60, {}};
    game::write_page(campaign.day_book, 10, "The ferry took us across.\nThe bell is gone.");
    game::write_page(campaign.day_book, 30, "A letter from Selbra.");
    return campaign;
}

struct Table : Driver {
    explicit Table(game::Campaign campaign = on_the_road(), const driver::Settings& settings = {})
        : Driver(std::move(campaign), fixtures::four_degree(), widgets::draw_day_book, settings) {
        climates = &fixtures::climates();
        frames(3);
    }

    const game::DayBook& book() const { return campaign().day_book; }

    std::string now() const { return game::date_time_text(campaign()); }
};

} // namespace

TEST_CASE("day book: without a calendar days are counted, and the way to one is offered") {
    Table ui(fixtures::sluice_campaign());
    CHECK(ui.shows("Day 1"));
    CHECK(ui.shows("Days are counted until the campaign has a calendar"));
    CHECK_FALSE(ui.is_enabled("Month"));
    CHECK_FALSE(ui.is_enabled("Year"));
    ui.click("Week");
    CHECK(ui.has("Day 7##row"));
    ui.click("Choose a calendar");
    CHECK(ui.selection.wanted_panel == "calendar");
}

TEST_CASE("day book: today's date stands large, with season, moons and holidays") {
    Table ui;
    CHECK(ui.shows("Fifthday, 12 Reedmonth 1204 AE"));
    CHECK(ui.shows("Today, 17:40   Spring"));
    CHECK(ui.shows("Reed Moon: "));
    CHECK(ui.shows("Ember Moon: "));
    ui.fill("##jump", "14 Reedmonth");
    CHECK(ui.shows("Seventhday, 14 Reedmonth 1204 AE"));
    CHECK(ui.shows("In 2 days"));
    CHECK(ui.shows("Causeway Day"));
    CHECK(ui.shows("Tolls are waived until noon."));
}

TEST_CASE("day book: the page of a day holds what is written on it, and undo takes it back") {
    Table ui;
    ui.click("##page 12");
    ui.type("Rain all day.");
    ui.wait(1.2);
    CHECK(game::page_text(ui.book(), 12) == "Rain all day.");
    CHECK(ui.last_edit() == "Write on the page of 12 Reedmonth");
    ui.type(" The bell rang.");
    ui.wait(1.2);
    CHECK(game::page_text(ui.book(), 12) == "Rain all day. The bell rang.");
    ui.click("Previous day###earlier");
    CHECK(ui.shows("Fourthday, 11 Reedmonth 1204 AE"));
    ui.undo();
    CHECK(game::page_text(ui.book(), 12).empty());
}

TEST_CASE("day book: to any date by what a GM types, and nonsense is refused in one line") {
    Table ui;
    const auto jump = [&](const char* typed) {
        ui.fill("##jump", typed);
        ui.frames(2);
    };
    jump("1 Rimemonth 1");
    CHECK(ui.shows("Firstday, 1 Rimemonth 1 AE"));
    jump("High Water 1204");
    CHECK(ui.shows("High Water 1204 AE"));
    jump("+10");
    CHECK(ui.shows("10 Rimemonth 1205 AE"));
    jump("31 Reedmonth 1204");
    CHECK(ui.shows("has 28"));
    jump("the day after the flood");
    CHECK(ui.shows("10 Rimemonth 1205 AE")); // still there
    ui.click("Today");
    CHECK(ui.shows("Fifthday, 12 Reedmonth 1204 AE"));
    ui.fill("##jump", "1 Reedmonth 101204");
    CHECK(ui.shows("1 Reedmonth 101204 AE"));
}

TEST_CASE("day book: the arrows and keys turn days, weeks, months and years") {
    Table ui;
    ui.key(ImGuiKey_PageDown);
    CHECK(ui.shows("13 Reedmonth 1204 AE"));
    ui.key(ImGuiKey_PageUp);
    ui.key(ImGuiKey_PageUp);
    CHECK(ui.shows("11 Reedmonth 1204 AE"));
    ui.key(ImGuiKey_T);
    ui.frames(2);
    ui.click("Month");
    ui.click("Next month###later");
    CHECK(ui.shows("12 Mistmonth 1204 AE"));
    ui.click("Year");
    ui.click("Previous year###earlier");
    CHECK(ui.shows("12 Mistmonth 1203 AE"));
    CHECK(ui.shows("Year 1203 AE, 365 days"));
    ui.click("Week");
    ui.click("Next week###later");
    CHECK(ui.shows("15 Mistmonth 1203 AE"));
}

TEST_CASE("day book: a week tells each day's holidays, weather and first line") {
    game::Campaign campaign = on_the_road();
    game::Place ferry;
    ferry.name = "Salt Ferry";
    ferry.climate = "temperate_coast";
    game::add_place(campaign.places, ferry, campaign.about.title);
    Table ui(std::move(campaign));
    ui.click("Week");
    CHECK(ui.shows("Firstday, 8 Reedmonth"));
    CHECK(ui.shows("Seventhday, 14 Reedmonth"));
    CHECK(ui.shows("Causeway Day"));
    CHECK(ui.shows("The ferry took us across."));
    CHECK_FALSE(ui.shows("The bell is gone."));
    const auto source = game::weather_source(
        ui.campaign().places,
        *game::current_place(ui.campaign().places),
        fixtures::climates(),
        game::year_clock(ui.campaign().calendar)
    );
    REQUIRE(source.has_value());
    for (const game::DayWeather& day : game::walk_weather(*source, 8, 7))
        CHECK(ui.shows(game::short_weather(fixtures::climates().phrases, day, false)));
    ui.click("Thirdday, 10 Reedmonth##row");
    CHECK(ui.shows("Thirdday, 10 Reedmonth 1204 AE"));
    CHECK(ui.shows("The bell is gone."));
}

TEST_CASE("day book: a month and a year show every day with its marks, and lead to it") {
    Table ui;
    ui.click("Month");
    CHECK(ui.has("##cell 1 Reedmonth"));
    CHECK(ui.has("##cell 28 Reedmonth"));
    CHECK_FALSE(ui.has("##cell 29 Reedmonth"));
    CHECK(ui.shows("something written"));
    ui.click("##cell 14 Reedmonth");
    CHECK(ui.shows("Causeway Day"));
    ui.click("Year");
    CHECK(ui.shows("Year 1204 AE, 366 days"));
    CHECK(ui.shows("Weighing Fair"));
    ui.click("Haymonth##part");
    CHECK(ui.has("##cell 28 Haymonth"));
    CHECK(ui.has("##cell Low Water")); // outside the months, beside its neighbours
}

TEST_CASE("day book: time passes by minutes, hours, days, to dawn and dusk, and by a typed time") {
    Table ui;
    ui.click("+10 min");
    CHECK(ui.now() == "12 Reedmonth 1204 AE, 17:50");
    CHECK(ui.last_edit() == "On to 12 Reedmonth, 17:50");
    ui.click("To dusk");
    CHECK(ui.now() == "12 Reedmonth 1204 AE, 18:00");
    ui.click("+8 hours");
    CHECK(ui.now() == "13 Reedmonth 1204 AE, 02:00");
    ui.click("To dawn");
    CHECK(ui.now() == "13 Reedmonth 1204 AE, 06:00");
    ui.click("+1 hour");
    ui.click("+1 day");
    CHECK(ui.now() == "14 Reedmonth 1204 AE, 07:00");
    CHECK(ui.shows("Causeway Day")); // the page follows today
    ui.fill("##clock date", "2 Mistmonth");
    ui.fill("##clock time", "21:15");
    ui.click("Set the clock");
    CHECK(ui.now() == "2 Mistmonth 1204 AE, 21:15");
    ui.fill("##clock time", "25:00");
    ui.click("Set the clock");
    CHECK(ui.now() == "2 Mistmonth 1204 AE, 21:15");
    ui.undo();
    CHECK(ui.now() == "14 Reedmonth 1204 AE, 07:00");
    ui.click("Rest");
    CHECK(ui.selection.wanted_panel == "recovery");
}

TEST_CASE("day book: a shown day becomes today with one press, back in time too") {
    Table ui;
    ui.fill("##jump", "3 Reedmonth");
    ui.click("Make this day today");
    CHECK(ui.now() == "3 Reedmonth 1204 AE, 17:40");
    CHECK(ui.last_edit() == "Back to 3 Reedmonth, 17:40");
}

TEST_CASE("day book: a fight moves the clock by itself, so nothing else does") {
    Table ui(fixtures::running(on_the_road(), fixtures::four_degree()));
    CHECK_FALSE(ui.is_enabled("+1 hour"));
    CHECK_FALSE(ui.is_enabled("To dawn"));
    CHECK(ui.shows("Not while a fight is on; its rounds move the time."));
}

TEST_CASE("day book: a timer is set for a day, comes due, is ticked off and removed") {
    Table ui;
    ui.click("Add timer");
    CHECK(ui.shows("Type what falls due."));
    ui.fill("##timer text", "The eel spoils");
    ui.fill("##timer date", "+1");
    ui.fill("##timer time", "18:00");
    ui.click("Add timer");
    REQUIRE(ui.book().timers.size() == 1);
    CHECK(ui.last_edit() == "Timer until 13 Reedmonth 1204 AE, 18:00: The eel spoils");
    CHECK(ui.shows("13 Reedmonth, 18:00  The eel spoils  (in 1 day)"));
    ui.click("+1 day");
    CHECK(ui.shows("18:00  The eel spoils  (in 20 minutes)"));
    ui.click("+1 hour");
    CHECK(ui.last_edit() == "On to 13 Reedmonth, 18:40; due: The eel spoils");
    CHECK(ui.shows("(40 minutes late)"));
    ui.click("+1 day");
    CHECK(ui.shows("13 Reedmonth, 18:00  The eel spoils  (1 day late)"));
    ui.click("Done##The eel spoils");
    CHECK(ui.book().timers.front().is_done);
    ui.click("Previous day###earlier");
    CHECK(ui.shows("The eel spoils  (done)"));
    ui.click("Remove##The eel spoils");
    CHECK(ui.book().timers.empty());
    ui.undo();
    CHECK(ui.book().timers.size() == 1);
}

TEST_CASE("day book: a day without weather of a place has none, else the line to read aloud") {
    game::Campaign campaign = on_the_road();
    Table dry(campaign);
    CHECK_FALSE(dry.shows("Salt Ferry: "));
    game::Place ferry;
    ferry.name = "Salt Ferry";
    ferry.climate = "temperate_coast";
    game::add_place(campaign.places, ferry, campaign.about.title);
    Table ui(std::move(campaign));
    CHECK(ui.shows("Salt Ferry: "));
    const auto report_of = [&](std::int64_t day) {
        const auto source = game::weather_source(
            ui.campaign().places,
            *game::current_place(ui.campaign().places),
            fixtures::climates(),
            game::year_clock(ui.campaign().calendar)
        );
        REQUIRE(source.has_value());
        return game::report_weather(fixtures::climates(), *source, ui.campaign().about, day).line;
    };
    CHECK(ui.shows(report_of(12)));
    ui.click("Previous day###earlier");
    CHECK(ui.shows(report_of(11)));
}

TEST_CASE("day book: what the Session Sheet and the program noted stands on the page of its day") {
    game::Campaign campaign = on_the_road();
    game::Session session;
    session.id = 1;
    session.number = 3;
    session.title = "The dark toll house";
    game::NoteLine line;
    line.id = 2;
    line.text = "Selbra wants the bell back.";
    line.day = 12;
    line.second_of_day = 17 * hour;
    session.lines.push_back(line);
    campaign.sessions.sessions.push_back(session);
    campaign.sessions.next_id = 3;
    Table ui(std::move(campaign));
    CHECK(ui.shows("Session 3, The dark toll house"));
    CHECK(ui.shows("17:00  Selbra wants the bell back."));
    ui.click("+10 min");
    CHECK(ui.shows("17:50  On to 12 Reedmonth, 17:50"));
    ui.click("Previous day###earlier");
    CHECK_FALSE(ui.shows("Selbra wants the bell back."));
}

TEST_CASE("day book: all days are searched, and a find leads to its page") {
    Table ui;
    ui.click("##search");
    ui.type("bell");
    CHECK(ui.shows("The bell is gone."));
    CHECK_FALSE(ui.shows("A letter from Selbra."));
    ui.click("Thirdday, 10 Reedmonth 1204 AE##found");
    CHECK(ui.shows("2 days ago"));
    CHECK(ui.has("##page 10"));
    ui.click("##search");
    ui.type("dragon");
    CHECK(ui.shows("No day holds \"dragon\"."));
    ui.click("Clear");
    CHECK(ui.has("##page 10"));
}

TEST_CASE("day book: a campaign open for reading is leafed through and not changed") {
    Table ui;
    ui.is_read_only = true;
    ui.frames(2);
    CHECK_FALSE(ui.is_enabled("+1 day"));
    CHECK_FALSE(ui.is_enabled("Add timer"));
    ui.fill("##jump", "10 Reedmonth");
    CHECK(ui.shows("The ferry took us across."));
    CHECK(ui.last_edit().empty());
}

TEST_CASE("day book: stands in narrow panels, at large text and under a finger") {
    for (const float scale : {1.0F, 2.0F, 2.5F})
        for (const float width : {380.0F, 640.0F, 1280.0F}) {
            CAPTURE(scale);
            CAPTURE(width);
            driver::Settings settings;
            settings.size = {width * std::min(scale, 2.0F), 760.0F};
            settings.scale = scale;
            settings.is_touch = true;
            Table ui(on_the_road(), settings);
            for (const char* span : {"Week", "Month", "Year", "Day"})
                ui.click(span);
            CHECK(ui.shows("12 Reedmonth 1204 AE"));
        }
}
