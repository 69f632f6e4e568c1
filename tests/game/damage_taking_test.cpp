#include "fight_table.h"
#include "game/damage_taking.h"

#include <doctest/doctest.h>

using fight_table::rulebook_of;
using rules::Family;

namespace {

game::DamageTrait trait(const char* type, int amount) {
    game::DamageTrait made;
    made.type = type;
    made.amount = amount;
    return made;
}

rules::Distribution d6() {
    return rules::distribution_of(rules::parse_dice("1d6").value());
}

} // namespace

TEST_CASE("damage taking: four-degree weakness before resistance, and nothing below none") {
    // Player Core (ORC), Damage, step order: immunity, weakness, resistance.
    game::Combatant lurker;
    lurker.statistics.weaknesses = {trait("fire", 3)};
    lurker.statistics.resistances = {trait("all", 2), trait("fire", 5)};
    const rules::Rulebook& rulebook = rulebook_of(Family::four_degree);
    const game::DamageTaking fire = game::damage_taking(rulebook, lurker, "fire");
    CHECK(fire.weakness == 3);
    CHECK(fire.resistance == 5);
    CHECK(game::taken_amount(fire, 6) == 4);
    CHECK(game::taken_amount(fire, 1) == 0);
    CHECK(game::taken_amount(fire, 0) == 0);
    const game::DamageTaking cold = game::damage_taking(rulebook, lurker, "cold");
    CHECK(game::taken_amount(cold, 6) == 4);
    CHECK(game::damage_taking(rulebook, lurker, "") == game::DamageTaking{});
    lurker.statistics.immunities = {"fire"};
    CHECK(game::taken_amount(game::damage_taking(rulebook, lurker, "fire"), 60) == 0);
}

TEST_CASE("damage taking: the hardness of a hazard comes off last") {
    // GM Core (ORC), Hazards; Player Core (ORC), Damage, step order.
    game::Combatant gate;
    gate.statistics.hazard = game::Hazard::simple;
    gate.statistics.hardness = 9;
    gate.statistics.weaknesses = {trait("fire", 3)};
    const rules::Rulebook& rulebook = rulebook_of(Family::four_degree);
    CHECK(game::taken_amount(game::damage_taking(rulebook, gate, "fire"), 10) == 4);
    CHECK(game::taken_amount(game::damage_taking(rulebook, gate, ""), 10) == 1);
    CHECK(game::taken_amount(game::damage_taking(rulebook, gate, ""), 9) == 0);
}

TEST_CASE("damage taking: srd5 halves, rounded down, and doubles") {
    // SRD 5.1, Combat, Damage Resistance and Vulnerability.
    game::Combatant lurker;
    lurker.statistics.resistances = {trait("cold", 0)};
    lurker.statistics.weaknesses = {trait("fire", 0)};
    const rules::Rulebook& rulebook = rulebook_of(Family::srd5);
    CHECK(game::taken_amount(game::damage_taking(rulebook, lurker, "cold"), 7) == 3);
    CHECK(game::taken_amount(game::damage_taking(rulebook, lurker, "fire"), 7) == 14);
    lurker.statistics.resistances.push_back(trait("fire", 0));
    CHECK(game::taken_amount(game::damage_taking(rulebook, lurker, "fire"), 7) == 6);
    fight_table::Table table(Family::srd5);
    table.foe("Statue", 30, 15);
    table.give("Statue", "petrified"); // SRD 5.1, Conditions: resists all damage
    CHECK(game::damage_taking(table.rulebook, table.who("Statue"), "acid").is_halved);
}

TEST_CASE("damage taking: a whole distribution moves as each of its amounts does") {
    game::Combatant lurker;
    lurker.statistics.resistances = {trait("fire", 4)};
    const game::DamageTaking fire =
        game::damage_taking(rulebook_of(Family::four_degree), lurker, "fire");
    const rules::Distribution taken = game::taken_damage(fire, d6());
    // Of 1 to 6, four leave nothing, 5 leaves 1 and 6 leaves 2.
    CHECK(rules::chance_of_total(taken, 0) == doctest::Approx(4.0 / 6));
    CHECK(rules::chance_of_total(taken, 1) == doctest::Approx(1.0 / 6));
    CHECK(rules::chance_of_total(taken, 2) == doctest::Approx(1.0 / 6));
    CHECK(rules::mean(taken) == doctest::Approx(0.5));
    CHECK(game::taken_damage({}, d6()) == rules::floored_at(d6(), 0));
    game::DamageTaking immune;
    immune.is_immune = true;
    CHECK(rules::mean(game::taken_damage(immune, d6())) == 0);
}

TEST_CASE("damage taking: the number pad takes the same") {
    for (const Family family : {Family::four_degree, Family::srd5}) {
        fight_table::Table table(family);
        table.foe("Lurker", 300, 15);
        table.change("Lurker").statistics.resistances = {trait("fire", 5)};
        table.change("Lurker").statistics.weaknesses = {trait("cold", 3)};
        table.change("Lurker").statistics.immunities = {"acid"};
        for (const char* type : {"fire", "cold", "acid", "slashing", ""}) {
            const auto taking = game::damage_taking(table.rulebook, table.who("Lurker"), type);
            for (int amount = 0; amount <= 20; ++amount) {
                CAPTURE(type);
                CAPTURE(amount);
                game::Damage damage;
                damage.amount = amount;
                damage.type = type;
                CHECK(
                    game::preview_damage(table.rulebook, table.who("Lurker"), damage).taken ==
                    game::taken_amount(taking, amount)
                );
            }
        }
    }
}
