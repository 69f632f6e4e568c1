// Ready creatures: found by typing, read, dropped in.
#include "driver.h"
#include "fixtures.h"
#include "store/creature_library.h"
#include "widgets/open_creatures.h"

#include <doctest/doctest.h>

namespace {

using Driver = driver::PanelDriver<widgets::OpenCreaturesView>;

// The pier with every creature of SRD 5.1.
struct Pier : Driver {
    Pier()
        : Driver(
              fixtures::running(fixtures::pier_campaign(), fixtures::srd5()),
              fixtures::srd5(),
              widgets::draw_open_creatures
          ) {
        auto loaded =
            store::load_creature_library(TABLEWICK_SOURCE_DIR "/assets", fixtures::srd5());
        REQUIRE(loaded.ok());
        library = std::move(loaded).value();
        frames(2);
    }
};

} // namespace

TEST_CASE("open creatures: found by the start of a word, read as a card") {
    Pier ui;
    ui.fill("##search", "abol");
    ui.click("Aboleth");
    CHECK(ui.shows("large aberration, CR 10, 5900 XP")); // SRD 5.1, Monsters, Aboleth
    CHECK(ui.shows("135 (18d10+36)"));
}

TEST_CASE("open creatures: another panel opens a card") {
    Pier ui;
    ui.selection.wanted = {"open_creatures", base::no_id, base::no_id, "aboleth"};
    ui.frames(2);
    CHECK(ui.shows("135 (18d10+36)")); // SRD 5.1, Monsters, Aboleth
    CHECK(ui.selection.wanted == widgets::Wanted{});
}

TEST_CASE("open creatures: two of them into the fight, undone with one press") {
    Pier ui;
    ui.fill("##search", "owlbear");
    ui.click("Owlbear");
    ui.click("+##more count");
    ui.click("Into the fight");
    CHECK(ui.last_edit() == "Drop in 2 Owlbear");
    CHECK(ui.combatant("Owlbear 2").statistics.armor_class == 13); // SRD 5.1, Monsters, Owlbear
    ui.undo();
    CHECK(ui.document.view().encounter.combatants.size() == 6);
}

TEST_CASE("open creatures: kept on the shelf with its numbers") {
    Pier ui;
    ui.fill("##search", "commoner");
    ui.click("Commoner");
    ui.click("Keep on the shelf");
    CHECK(ui.document.view().shelf.creatures.back().name == "Commoner");
    CHECK(ui.document.view().shelf.creatures.back().statistics.hit_points == 4);
}

TEST_CASE("open creatures: narrowed by type and rating, and all shown again") {
    Pier ui;
    ui.click("##type");
    ui.click("dragon");
    ui.click("##to");
    ui.click("1");
    for (const std::size_t place : ui.view.found) {
        CHECK(ui.library[place].type == "dragon");
        CHECK(ui.library[place].statistics.challenge <= 1);
    }
    CHECK_FALSE(ui.view.found.empty());
    ui.click("Show all");
    CHECK(ui.view.found.size() == ui.library.size());
}

TEST_CASE("open creatures: what nothing answers says so; a rulebook without creatures too") {
    Pier ui;
    ui.fill("##search", "zzzz");
    CHECK(ui.shows("No creature answers that."));
    Driver other{
        fixtures::sluice_campaign(), fixtures::four_degree(), widgets::draw_open_creatures};
    CHECK(other.shows("This rulebook brings no ready creatures."));
}
