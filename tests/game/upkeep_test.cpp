// What the game master counts by hand.
#include "fight_table.h"
#include "game/upkeep.h"

#include <doctest/doctest.h>

using fight_table::Table;

TEST_CASE("upkeep: three death saves made are stable, three failed are dead") {
    // SRD 5.1, Combat / Death Saving Throws.
    Table table(rules::Family::srd5);
    table.hero("Joss", 21, 15);
    table.hero("Wren", 24, 14);
    table.hurt("Joss", 21);
    table.hurt("Wren", 24);
    game::set_death_saves(table.encounter(), table.rulebook, table.id("Joss"), 2, 1);
    CHECK(table.who("Joss").death_saves.successes == 2);
    CHECK(table.who("Joss").death_saves.failures == 1);
    game::set_death_saves(table.encounter(), table.rulebook, table.id("Joss"), 3, 1);
    CHECK(table.who("Joss").death_saves.is_stable);
    CHECK_FALSE(table.who("Joss").is_dead);
    game::set_death_saves(table.encounter(), table.rulebook, table.id("Wren"), 0, 3);
    CHECK(table.who("Wren").is_dead);
}

TEST_CASE("upkeep: concentration ended by hand asks for no more saves") {
    Table table(rules::Family::srd5);
    table.hero("Wren", 24, 14);
    table.initiative("Wren", 12);
    game::begin_fight(table.encounter(), table.rulebook);
    game::set_concentration(table.encounter(), table.id("Wren"), "the lantern ward");
    CHECK(table.who("Wren").concentrating_on == "the lantern ward");
    table.hurt("Wren", 5);
    CHECK(table.asked().find("Wren") != std::string::npos);
    game::set_concentration(table.encounter(), table.id("Wren"), "");
    CHECK(table.who("Wren").concentrating_on.empty());
    CHECK(table.asked().empty());
}
