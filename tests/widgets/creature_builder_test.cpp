// An opponent made up while the players wait.
#include "driver.h"
#include "fixtures.h"
#include "widgets/creature_builder.h"

#include <doctest/doctest.h>

namespace {

using Driver = driver::PanelDriver<widgets::CreatureBuilderView>;

Driver sluice() {
    return {
        fixtures::running(fixtures::sluice_campaign(), fixtures::four_degree()),
        fixtures::four_degree(),
        widgets::draw_creature_builder};
}

} // namespace

TEST_CASE("creature builder: three bruisers into a running fight with few presses") {
    Driver ui = sluice();
    ui.click("##kind");
    ui.click("Bruiser");
    ui.click("+##more count");
    ui.click("+##more count");
    ui.click("Into the fight");
    CHECK(ui.last_edit() == "Drop in 3 Bruiser");
    for (const char* name : {"Bruiser 1", "Bruiser 2", "Bruiser 3"}) {
        CHECK(ui.combatant(name).initiative.has_value());
        CHECK(ui.combatant(name).side == game::Side::opponents);
    }
    CHECK(ui.shows("Done: Drop in 3 Bruiser."));
    ui.undo();
    CHECK(ui.document.view().encounter.combatants.size() == 9);
}

TEST_CASE("creature builder: a number is nudged, typed, and brought back to the usual") {
    // GM Core (ORC), Building Creatures, AC of level 4: moderate 20, high 21.
    Driver ui = sluice();
    ui.click("+##more armor_class");
    CHECK(ui.shows("high"));
    ui.fill("##armor_class", "25");
    CHECK(ui.shows("typed"));
    ui.click("Into the fight");
    CHECK(ui.combatant("Plain").statistics.armor_class == 25);
    ui.click("Usual##usual armor_class");
    CHECK_FALSE(ui.shows("typed"));
    CHECK(ui.view.choice->numbers.empty());
}

TEST_CASE("creature builder: kept on the shelf under a name of its own") {
    Driver ui = sluice();
    ui.fill("##name", "Gravel Eater");
    ui.click("Elite");
    ui.click("Keep on the shelf");
    const auto& shelf = ui.document.view().shelf.creatures;
    REQUIRE(shelf.size() == 4);
    CHECK(shelf.back().name == "Gravel Eater");
    CHECK(shelf.back().statistics.level == 5); // Monster Core (ORC), Adjusting Creatures: elite
}

TEST_CASE("creature builder: the read-out tells every member's chance and the threat") {
    Driver ui = sluice();
    CHECK(ui.shows("The party against it"));
    CHECK(ui.shows("Ysolde Marr"));
    CHECK(ui.shows("40 XP each."));
}

TEST_CASE("creature builder: srd5 goes by challenge rating") {
    Driver ui{
        fixtures::running(fixtures::pier_campaign(), fixtures::srd5()),
        fixtures::srd5(),
        widgets::draw_creature_builder};
    ui.click("##challenge");
    ui.click("1/4");
    CHECK(ui.view.choice->challenge == 0.25);
    CHECK(ui.shows("50 XP each.")); // SRD 5.1, Monsters, Experience Points by Challenge Rating
    ui.click("Roll its HP");
    ui.click("Into the fight");
    CHECK(ui.combatant("Plain").hp >= 1);
}

TEST_CASE("creature builder: opened for reading only it makes and shows, but puts nothing anywhere"
) {
    Driver ui = sluice();
    ui.is_read_only = true;
    ui.frames(2);
    ui.click("Into the fight");
    CHECK_FALSE(ui.document.can_undo());
}

TEST_CASE("creature builder: without tables it says so") {
    rules::Rulebook book = fixtures::four_degree();
    book.creature_building = {};
    Driver ui{fixtures::sluice_campaign(), book, widgets::draw_creature_builder};
    CHECK(ui.shows("no tables to build creatures from"));
}

TEST_CASE("creature builder: a resistance, a speed and a new name go along, whatever the level") {
    Driver ui = sluice();
    ui.click("Names, speeds, resistances");
    ui.fill("##attack name 0", "hooked pole");
    ui.click("Add a speed");
    ui.click("climb speed");
    ui.click("+##more level");
    ui.click("Into the fight");
    const game::Statistics& made = ui.combatant("Plain").statistics;
    CHECK(made.level == 5);
    CHECK(made.attacks[0].name == "hooked pole");
    CHECK(made.speeds_ft.count("climb") == 1);
    CHECK(ui.shows("hooked pole +"));
    ui.click("As the kind has them");
    CHECK(ui.view.details.empty());
    CHECK_FALSE(ui.shows("hooked pole +"));
}
