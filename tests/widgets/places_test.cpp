// Places: added, named, given a climate, chosen, removed.
#include "driver.h"
#include "fixtures.h"
#include "game/places_edit.h"
#include "widgets/places.h"

#include <doctest/doctest.h>

#include <algorithm>

namespace {

using Driver = driver::PanelDriver<widgets::PlacesView>;

game::Campaign two_places() {
    game::Campaign campaign = fixtures::sluice_campaign();
    game::Place place;
    place.name = "Salt Ferry";
    place.climate = "temperate_coast";
    game::add_place(campaign.places, place, campaign.about.title);
    place.name = "The pass";
    place.climate = "mountains";
    game::add_place(campaign.places, place, campaign.about.title);
    return campaign;
}

struct Table : Driver {
    explicit Table(game::Campaign campaign = two_places(), const driver::Settings& settings = {})
        : Driver(std::move(campaign), fixtures::four_degree(), widgets::draw_places, settings) {
        climates = &fixtures::climates();
        frames(3);
    }

    const game::Places& places() const { return campaign().places; }

    const game::Place& place(base::Id id) const {
        const game::Place* found = game::place_with(places(), id);
        REQUIRE(found != nullptr);
        return *found;
    }
};

} // namespace

TEST_CASE("places: an empty panel offers the first one, ready to be named") {
    Table ui(fixtures::sluice_campaign());
    CHECK(ui.shows("No place is known yet."));
    ui.click("Add the first place");
    ui.frames(3);
    ui.type("Wrack Ferry");
    ui.key(ImGuiKey_Enter);
    REQUIRE(ui.places().places.size() == 1);
    CHECK(ui.place(1).name == "Wrack Ferry");
    CHECK(ui.places().current == 1);
    CHECK_FALSE(ui.place(1).climate.empty());
}

TEST_CASE("places: another one lies in the climate of the last, and undo takes it back") {
    Table ui;
    ui.click("Add a place");
    REQUIRE(ui.places().places.size() == 3);
    CHECK(ui.place(3).climate == "mountains");
    CHECK(ui.places().current == 1);
    ui.undo();
    CHECK(ui.places().places.size() == 2);
}

TEST_CASE("places: each row tells climate and weather, and the party goes there with one press") {
    Table ui;
    CHECK(ui.shows("Temperate coast: "));
    CHECK(ui.shows("Mountains: "));
    ui.click("Party here##here", driver::near("The pass"));
    CHECK(ui.places().current == 2);
    CHECK(ui.last_edit() == "The party is at The pass");
}

TEST_CASE("places: renamed, and an empty name is refused with a reason") {
    Table ui;
    ui.click("The pass");
    ui.fill("##name", "Crow Pass");
    CHECK(ui.place(2).name == "Crow Pass");
    ui.fill("##name", "");
    CHECK(ui.place(2).name == "Crow Pass");
    ui.undo();
    CHECK(ui.place(2).name == "The pass");
}

TEST_CASE("places: a climate, no weather below ground, or the weather of another place") {
    Table ui;
    ui.click("The pass");
    ui.click("##climate");
    ui.click("Desert");
    CHECK(ui.place(2).climate == "desert");
    ui.click("##climate");
    ui.click("no weather (below ground)");
    CHECK(ui.place(2).climate.empty());
    CHECK(ui.shows("no weather"));
    ui.click("##climate");
    ui.click("weather of Salt Ferry");
    CHECK(ui.place(2).weather_of == 1);
    CHECK(ui.shows("weather of Salt Ferry: "));
    // Salt Ferry cannot follow who follows it.
    ui.click("Salt Ferry");
    ui.click("##climate");
    CHECK_FALSE(ui.has("weather of The pass"));
    CHECK_FALSE(ui.has("weather of Salt Ferry"));
    ui.key(ImGuiKey_Escape);
    ui.click("The pass");
    ui.click("##climate");
    ui.click("Steppe");
    CHECK(ui.place(2).weather_of == base::no_id);
    CHECK(ui.place(2).climate == "steppe");
}

TEST_CASE("places: colder than its climate, and a note") {
    Table ui;
    ui.click("The pass");
    ui.fill("##warmer", "-6");
    CHECK(ui.place(2).warmer_by == -6);
    ui.click("##note");
    ui.type("Snowed in from the first storm on.");
    ui.wait(1.2);
    CHECK(ui.place(2).note == "Snowed in from the first storm on.");
}

TEST_CASE("places: removed with one press, and undo brings place and party back") {
    Table ui;
    ui.click("Salt Ferry");
    ui.click("Remove this place");
    CHECK(ui.places().places.size() == 1);
    CHECK(ui.places().current == base::no_id);
    ui.undo();
    CHECK(ui.place(1).name == "Salt Ferry");
    CHECK(ui.places().current == 1);
}

TEST_CASE("places: a campaign open for reading shows them and changes nothing") {
    Table ui;
    ui.is_read_only = true;
    ui.frames(2);
    CHECK_FALSE(ui.is_enabled("Add a place"));
    ui.click("The pass");
    CHECK_FALSE(ui.is_enabled("Remove this place"));
}

TEST_CASE("places: stand in narrow panels, at large text and under a finger") {
    for (const float scale : {1.0F, 2.0F, 2.5F}) {
        CAPTURE(scale);
        driver::Settings settings;
        settings.size = {360.0F * std::min(scale, 2.0F), 700.0F};
        settings.scale = scale;
        settings.is_touch = true;
        Table ui(two_places(), settings);
        ui.click("The pass");
        CHECK(ui.has("Remove this place"));
        ui.click("Back to the places");
        CHECK(ui.has("Salt Ferry"));
    }
}
