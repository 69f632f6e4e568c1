// Weather Walk: today's weather to read aloud, the week ahead, and the GM's own word.
#include "driver.h"
#include "fixtures.h"
#include "game/places_edit.h"
#include "game/weather_report.h"
#include "widgets/weather_walk.h"

#include <doctest/doctest.h>

#include <algorithm>

namespace {

using Driver = driver::PanelDriver<widgets::WeatherWalkView>;

game::Campaign at_the_ferry() {
    game::Campaign campaign = fixtures::sluice_campaign();
    campaign.clock.day = 12;
    game::Place place;
    place.name = "Salt Ferry";
    place.climate = "temperate_coast";
    game::add_place(campaign.places, place, campaign.about.title);
    place.name = "The cellars";
    place.climate.clear();
    game::add_place(campaign.places, place, campaign.about.title);
    place.name = "The pass";
    place.weather_of = 1;
    place.warmer_by = -6;
    game::add_place(campaign.places, place, campaign.about.title);
    return campaign;
}

struct Table : Driver {
    explicit Table(game::Campaign campaign = at_the_ferry(), const driver::Settings& settings = {})
        : Driver(
              std::move(campaign), fixtures::four_degree(), widgets::draw_weather_walk, settings
          ) {
        climates = &fixtures::climates();
        frames(3);
    }

    const game::Places& places() const { return campaign().places; }

    game::WeatherReport report(std::int64_t day) const {
        const game::Place* place = game::current_place(places());
        REQUIRE(place != nullptr);
        const auto source = game::weather_source(
            places(), *place, fixtures::climates(), game::year_clock(campaign().calendar)
        );
        REQUIRE(source.has_value());
        return game::report_weather(fixtures::climates(), *source, campaign().about, day);
    }

    const game::WeatherOverrule* said(base::Id place, std::int64_t day) const {
        return game::overrule_on(*game::place_with(places(), place), day);
    }
};

} // namespace

TEST_CASE("weather walk: without a place the first step is offered, and undone") {
    Table ui(fixtures::sluice_campaign());
    CHECK(ui.shows("No place is known yet."));
    ui.click("Add the first place");
    REQUIRE(ui.places().places.size() == 1);
    CHECK(ui.places().current == 1);
    CHECK(ui.shows("Today, day 1"));
    ui.undo();
    CHECK(ui.places().places.empty());
    CHECK(ui.shows("No place is known yet."));
}

TEST_CASE("weather walk: today's weather stands large, with the line to read aloud") {
    Table ui;
    const auto report = ui.report(12);
    const auto& today = report.days.front();
    CHECK(ui.shows("Today, day 12"));
    CHECK(ui.shows(report.line));
    CHECK(ui.shows(", " + game::temperature_text(today.high_c, false)));
    CHECK(ui.shows("low " + game::temperature_text(today.low_c, false)));
    CHECK(ui.shows(game::wind_text(fixtures::climates().phrases, today)));
    CHECK(ui.campaign().history.lines.empty()); // looking changes nothing
}

TEST_CASE("weather walk: a day ahead is shown with its line, and back") {
    Table ui;
    ui.click("In 3 days##ahead 3");
    CHECK(ui.shows("In 3 days, day 15"));
    CHECK(ui.shows(ui.report(15).line));
    ui.click("Back to today");
    CHECK(ui.shows("Today, day 12"));
}

TEST_CASE("weather walk: the sky the GM says holds, with its rules, and is taken back by undo") {
    Table ui;
    ui.click("Overrule this day");
    ui.click("##sky");
    ui.click("heavy snow");
    REQUIRE(ui.said(1, 12) != nullptr);
    CHECK(ui.said(1, 12)->sky == game::Sky::heavy_snow);
    CHECK(ui.last_edit() == "Salt Ferry, day 12: heavy snow");
    CHECK(ui.shows("Heavy snow, "));
    CHECK(ui.shows("Overruled by the GM."));
    CHECK(ui.shows("Snow: difficult terrain"));
    CHECK(ui.shows("The days after it follow on from what you say here."));
    ui.undo();
    CHECK(ui.said(1, 12) == nullptr);
    CHECK_FALSE(ui.shows("Overruled by the GM."));
}

TEST_CASE("weather walk: sky, high, wind and a note are said, and one press takes all back") {
    Table ui;
    ui.click("Overrule this day");
    ui.click("##wind");
    ui.click("gale");
    ui.fill("##high", "31");
    ui.fill("##note of day 12", "the hag is angry");
    REQUIRE(ui.said(1, 12) != nullptr);
    CHECK(ui.said(1, 12)->wind == game::WindStrength::gale);
    CHECK(ui.said(1, 12)->high_c == 31.0);
    CHECK(ui.said(1, 12)->note == "the hag is angry");
    CHECK(ui.shows("Overruled by the GM: the hag is angry"));
    ui.click("High as rolled");
    CHECK_FALSE(ui.said(1, 12)->high_c.has_value());
    CHECK(ui.said(1, 12)->wind == game::WindStrength::gale);
    ui.click("All as rolled");
    CHECK(ui.said(1, 12) == nullptr);
    CHECK_FALSE(ui.has("All as rolled"));
    ui.undo();
    CHECK(ui.said(1, 12)->note == "the hag is angry");
}

TEST_CASE("weather walk: a single choice goes back to as rolled") {
    Table ui;
    ui.click("Overrule this day");
    ui.click("##sky");
    ui.click("fog");
    CHECK(ui.said(1, 12)->sky == game::Sky::fog);
    ui.click("##sky");
    ui.click("as rolled");
    CHECK(ui.said(1, 12) == nullptr);
}

TEST_CASE("weather walk: a day ahead is overruled before the players are there") {
    Table ui;
    ui.click("Tomorrow##ahead 1");
    ui.click("Overrule this day");
    ui.click("##sky");
    ui.click("thunderstorm");
    REQUIRE(ui.said(1, 13) != nullptr);
    CHECK(ui.said(1, 12) == nullptr);
    CHECK(ui.report(12).days[1].sky == game::Sky::thunderstorm);
}

TEST_CASE("weather walk: temperatures in Fahrenheit, typed and shown") {
    Table ui;
    ui.click("F");
    CHECK(ui.places().in_fahrenheit);
    CHECK(ui.shows(", " + game::temperature_text(ui.report(12).days.front().high_c, true)));
    ui.click("Overrule this day");
    ui.fill("##high", "77");
    CHECK(ui.said(1, 12)->high_c == doctest::Approx(25.0));
    CHECK(ui.shows(", 77 F"));
    ui.click("C");
    CHECK_FALSE(ui.places().in_fahrenheit);
    CHECK(ui.shows(", 25 C"));
}

TEST_CASE("weather walk: the party goes elsewhere, below ground and on the way") {
    Table ui;
    ui.click("##the party is at");
    ui.click("The cellars");
    CHECK(ui.places().current == 2);
    CHECK(ui.last_edit() == "The party is at The cellars");
    CHECK(ui.shows("There is no weather here."));
    ui.click("##the party is at");
    ui.click("nowhere");
    CHECK(ui.places().current == base::no_id);
    CHECK(ui.shows("The party is at no place."));
    ui.undo();
    CHECK(ui.places().current == 2);
}

TEST_CASE("weather walk: what is said where the weather of another place holds counts for both") {
    game::Campaign campaign = at_the_ferry();
    campaign.places.current = 3;
    Table ui(std::move(campaign));
    ui.click("Overrule this day");
    CHECK(ui.shows("It holds for Salt Ferry too."));
    ui.fill("##high", "10");
    CHECK(ui.shows(", 10 C"));
    CHECK(ui.said(3, 12) == nullptr);
    CHECK(ui.said(1, 12)->high_c == 16.0); // the pass is 6 degrees colder
}

TEST_CASE("weather walk: a campaign open for reading shows the weather and changes nothing") {
    Table ui;
    ui.is_read_only = true;
    ui.frames(2);
    CHECK(ui.shows(ui.report(12).line));
    CHECK_FALSE(ui.is_enabled("Overrule this day"));
    CHECK_FALSE(ui.is_enabled("F"));
    ui.click("Tomorrow##ahead 1");
    CHECK(ui.shows("Tomorrow, day 13"));
}

TEST_CASE("weather walk: a climate that is gone is named, and no climate at all too") {
    game::Campaign campaign = at_the_ferry();
    campaign.places.places[0].climate = "airless";
    Table ui(std::move(campaign));
    CHECK(ui.shows("The climate \"airless\" is not there"));
    ui.climates = nullptr;
    ui.frames(2);
    CHECK(ui.shows("No climate can be read"));
}

TEST_CASE("weather walk: stands in narrow panels, at large text and under a finger") {
    for (const float scale : {1.0F, 2.0F, 2.5F})
        for (const float width : {340.0F, 560.0F, 1280.0F}) {
            CAPTURE(scale);
            CAPTURE(width);
            driver::Settings settings;
            settings.size = {width * std::min(scale, 2.0F), 700.0F};
            settings.scale = scale;
            settings.is_touch = true;
            Table ui(at_the_ferry(), settings);
            ui.click("Overrule this day");
            ui.click("In 7 days##ahead 7");
            CHECK(ui.shows("In 7 days, day 19"));
        }
}
