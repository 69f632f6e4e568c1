#include "fight_table.h"
#include "game/attack_routine.h"
#include "store/creature_library.h"

#include <doctest/doctest.h>

using fight_table::rulebook_of;
using fight_table::Table;

namespace {

game::Attack attack(const char* name, int bonus, const char* damage, int per_turn = 0) {
    game::Attack made;
    made.name = name;
    made.bonus = bonus;
    made.damage = damage;
    made.damage_type = "slashing";
    made.per_turn = per_turn;
    return made;
}

std::vector<int> modifiers(const game::Routine& routine) {
    std::vector<int> numbers;
    for (const rules::Attack& each : routine.attacks)
        numbers.push_back(each.modifier);
    return numbers;
}

game::LibraryCreature creature(const std::string& key) {
    const auto loaded = store::load_creature_library(
        std::string(TABLEWICK_SOURCE_DIR) + "/assets", rulebook_of(rules::Family::srd5)
    );
    REQUIRE(loaded.ok());
    for (const game::LibraryCreature& each : loaded.value()) {
        if (each.key == key) return each;
    }
    FAIL("no creature " << key);
    return {};
}

} // namespace

TEST_CASE("attack routine: four-degree strikes three times, each at its penalty") {
    game::Statistics lurker;
    lurker.attacks = {
        attack("jaws", 12, "1d10+5"), attack("claw", 12, "1d6+5"), attack("net", 9, "")};
    lurker.attacks[1].is_agile = true;
    const auto routines = game::turn_routines(rulebook_of(rules::Family::four_degree), lurker);
    REQUIRE(routines.size() == 2); // the net deals nothing
    // Player Core (ORC), Multiple Attack Penalty: -5 and -10, agile -4 and -8.
    CHECK(modifiers(routines[0]) == std::vector<int>{12, 7, 2});
    CHECK(modifiers(routines[1]) == std::vector<int>{12, 8, 4});
    CHECK(routines[0].text == "3 jaws");
    CHECK(routines[0].attacks[0].kind == rules::CheckKind::four_degree);
    CHECK(routines[0].damage_types == std::vector<std::string>(3, "slashing"));
    CHECK(rules::to_text(routines[0].attacks[2].damage) == "1d10+5");
}

TEST_CASE("attack routine: conditions cost bonus, damage and strikes") {
    Table table(rules::Family::four_degree);
    table.foe("Lurker", 30, 18);
    table.change("Lurker").statistics.attacks = {attack("jaws", 12, "1d10+5")};
    table.change("Lurker").attacks_made = 2; // of the turn it is in; a new one starts at none
    game::ActiveCondition slowed;
    slowed.id = 90;
    slowed.key = "slowed";
    slowed.value = 1;
    game::ActiveCondition enfeebled = slowed;
    enfeebled.id = 91;
    enfeebled.key = "enfeebled";
    enfeebled.value = 2;
    table.change("Lurker").conditions = {slowed, enfeebled};
    const auto routines = game::turn_routines(table.rulebook, table.who("Lurker"));
    REQUIRE(routines.size() == 1);
    // Player Core (ORC), conditions: slowed 1 leaves two actions; enfeebled 2 takes 2 from
    // Strength attacks and their damage.
    CHECK(modifiers(routines[0]) == std::vector<int>{10, 5});
    CHECK(rules::to_text(routines[0].attacks[0].damage) == "1d10+3");
    table.change("Lurker").conditions[0].key = "unconscious";
    CHECK(game::turn_routines(table.rulebook, table.who("Lurker")).empty());
}

TEST_CASE("attack routine: srd5 takes what the sheet puts into one turn, or one attack") {
    game::Statistics lurker;
    lurker.attacks = {
        attack("bite", 6, "2d6+4", 1), attack("claw", 6, "1d6+4", 2), attack("rock", 6, "4d6+4")};
    const rules::Rulebook& rulebook = rulebook_of(rules::Family::srd5);
    const auto routines = game::turn_routines(rulebook, lurker);
    REQUIRE(routines.size() == 4);
    CHECK(routines[0].text == "1 bite, 2 claw");
    CHECK(routines[0].attacks.size() == 3);
    CHECK(modifiers(routines[0]) == std::vector<int>{6, 6, 6});
    CHECK(routines[0].attacks[0].kind == rules::CheckKind::srd5_attack);
    CHECK(routines[3].text == "1 rock");
    // On a hit: bite 11 + 2 x 7.5 = 26, rock 18.
    CHECK(game::best_routine(routines, 15) == routines.data());
    lurker.attacks[0].per_turn = 0;
    lurker.attacks[1].per_turn = 0;
    const auto alone = game::turn_routines(rulebook, lurker);
    REQUIRE(alone.size() == 3);
    CHECK(game::best_routine(alone, 15)->text == "1 rock");
    CHECK(game::best_routine({}, 15) == nullptr);
}

TEST_CASE("attack routine: every option of a library creature, as printed") {
    // SRD 5.1, Monsters (M), Manticore: one bite and two claws, or three tail spikes.
    const auto routines = game::turn_routines(creature("manticore"));
    REQUIRE(routines.size() == 5);
    CHECK(routines[0].text == "1 Bite, 2 Claw");
    CHECK(routines[1].text == "3 Tail Spike");
    CHECK(modifiers(routines[1]) == std::vector<int>{5, 5, 5});
    CHECK(rules::to_text(routines[1].attacks[0].damage) == "1d8+3");
    // The same numbers as on its sheet: statistics_of counts the option that deals most.
    const auto sheet = game::turn_routines(
        rulebook_of(rules::Family::srd5), game::statistics_of(creature("manticore"))
    );
    CHECK(sheet[0].attacks.size() == 3);
    CHECK(
        rules::expected_damage(sheet[0].attacks, 14) ==
        doctest::Approx(rules::expected_damage(game::best_routine(routines, 14)->attacks, 14))
    );
}

TEST_CASE("attack routine: an attack that only holds is no routine") {
    // SRD 5.1, Monsters (R), Roper: tendrils grapple without damage, the bite deals 4d8+4.
    const auto routines = game::turn_routines(creature("roper"));
    REQUIRE_FALSE(routines.empty());
    for (const game::Routine& routine : routines) {
        CAPTURE(routine.text);
        CHECK(routine.attacks.size() == 1);
        CHECK(rules::to_text(routine.attacks[0].damage) == "4d8+4");
    }
}
