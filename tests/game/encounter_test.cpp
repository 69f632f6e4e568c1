#include "game/encounter.h"

#include <doctest/doctest.h>

namespace {

game::Encounter two_of_them() {
    game::Encounter encounter;
    game::Combatant lurker;
    lurker.id = 4;
    game::ActiveCondition afraid;
    afraid.id = 7;
    afraid.key = "frightened";
    game::ActiveCondition worded;
    worded.id = 8;
    worded.name = "Shield raised";
    lurker.conditions = {worded, afraid};
    game::Combatant hero;
    hero.id = 5;
    hero.character = 2;
    encounter.combatants = {lurker, hero};
    return encounter;
}

} // namespace

TEST_CASE("encounter: combatants are found by id and by the character they play") {
    game::Encounter encounter = two_of_them();
    REQUIRE(game::find_combatant(encounter, 5) != nullptr);
    CHECK(game::find_combatant(encounter, 5)->character == 2);
    CHECK(game::find_combatant(encounter, 9) == nullptr);
    REQUIRE(game::find_party_combatant(encounter, 2) != nullptr);
    CHECK(game::find_party_combatant(encounter, 2)->id == 5);
    CHECK(game::find_party_combatant(encounter, 4) == nullptr);
    game::find_combatant(encounter, 4)->hp = 11; // the found one is the stored one
    CHECK(encounter.combatants.front().hp == 11);
}

TEST_CASE("encounter: no id finds nothing, not the first one without it") {
    game::Encounter encounter = two_of_them();
    encounter.combatants.front().id = base::no_id;
    CHECK(game::find_combatant(encounter, base::no_id) == nullptr);
    CHECK(game::find_party_combatant(encounter, base::no_id) == nullptr);
}

TEST_CASE("encounter: conditions are found by id and by key") {
    game::Encounter encounter = two_of_them();
    game::Combatant& lurker = encounter.combatants.front();
    REQUIRE(game::find_active(lurker, base::Id{7}) != nullptr);
    CHECK(game::find_active(lurker, base::Id{7})->key == "frightened");
    CHECK(game::find_active(lurker, base::Id{9}) == nullptr);
    REQUIRE(game::find_active(lurker, std::string("frightened")) != nullptr);
    CHECK(game::find_active(lurker, std::string("frightened"))->id == 7);
    CHECK(game::find_active(lurker, std::string("prone")) == nullptr);
    // An effect worded by the GM has no key; asking for none must not find it.
    CHECK(game::find_active(lurker, std::string()) == nullptr);
}
