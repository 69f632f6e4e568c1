#include "fight_table.h"
#include "game/library_creature.h"
#include "open_library.h"

#include <doctest/doctest.h>

namespace {

using open_library::library;

game::Statistics statistics(const std::string& key) {
    for (const game::LibraryCreature& each : library()) {
        if (each.key == key) return game::statistics_of(each);
    }
    FAIL("no creature " << key);
    return {};
}

} // namespace

TEST_CASE("library creature: a dragon ready for a fight") {
    // SRD 5.1, Monsters (D), Adult Black Dragon: one bite and two claws a turn.
    const game::Statistics dragon = statistics("adult_black_dragon");
    REQUIRE(dragon.attacks.size() == 3);
    CHECK(dragon.attacks[0].name == "Bite");
    CHECK(dragon.attacks[0].damage == "2d10+1d8+6");
    CHECK(dragon.attacks[0].damage_type == "piercing");
    CHECK(dragon.attacks[0].traits == "reach 10 ft, 2d10+6 piercing and 1d8 acid");
    CHECK(dragon.attacks[0].per_turn == 1);
    CHECK(dragon.attacks[1].per_turn == 2);
    CHECK(dragon.attacks[2].per_turn == 0);
    CHECK(dragon.hit_dice == "17d12+85");
    CHECK(dragon.senses == "blindsight 60 ft, darkvision 120 ft, passive Perception 21");
    CHECK(dragon.notes.find("Attacks of one turn: 1 Bite, 2 Claw\n") == 0);
    CHECK(
        dragon.notes.find("\nAcid Breath: Dex DC 18, 12d8 acid, half on a success, line 60 by 5 "
                          "ft, recharge 5-6\n") != std::string::npos
    );
    CHECK(dragon.notes.find("legendary action (2)") != std::string::npos);
}

TEST_CASE("library creature: of several routines the one that deals most is counted") {
    // SRD 5.1, Nonplayer Characters, Bandit Captain: scimitars 1d6+3, daggers 1d4+3.
    const game::Statistics captain = statistics("bandit_captain");
    REQUIRE(captain.attacks.size() == 2);
    CHECK(captain.attacks[0].per_turn == 2);
    CHECK(captain.attacks[1].per_turn == 1);
    CHECK(captain.attacks[1].traits.find("thrown, range 20/60 ft") == 0);
    CHECK_FALSE(captain.attacks[1].is_ranged);
    CHECK(captain.notes.find("2 Scimitar, 1 Dagger; or 2 Dagger") != std::string::npos);
}

TEST_CASE("library creature: spell attacks and spell DCs carry their words") {
    // SRD 5.1, Nonplayer Characters, Acolyte: spell save DC 12.
    CHECK(statistics("acolyte").difficulty_classes.at("spell_dc") == 12);
    CHECK(statistics("goblin").difficulty_classes.empty());
}

TEST_CASE("library creature: every one can stand in a campaign without a complaint") {
    fight_table::Table table(rules::Family::srd5);
    for (const game::LibraryCreature& each : library()) {
        game::Creature entry;
        entry.name = each.name;
        entry.statistics = game::statistics_of(each);
        CHECK(entry.statistics.attacks.size() == each.attacks.size());
        game::add_creature(table.campaign.shelf, entry);
    }
    const auto problems = game::find_problems(table.campaign, table.rulebook);
    CHECK((problems.empty() ? "" : problems.front().pointer + problems.front().text) == "");
}
