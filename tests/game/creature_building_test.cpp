#include "fight_table.h"
#include "game/creature_building.h"
#include "rules/dice.h"

#include <doctest/doctest.h>

using fight_table::rulebook_of;
using rules::Family;

TEST_CASE("creature building: a built creature has its numbers on the sheet") {
    // GM Core (ORC), Building Creatures, level 10: spell DC extreme 33, spell attack 25, area
    // damage of limited use 11d6.
    rules::BuildChoice choice;
    choice.level = 10;
    choice.archetype = "caster";
    const game::Statistics caster =
        game::built_statistics(rulebook_of(Family::four_degree), choice);
    CHECK(caster.level == 10);
    CHECK(caster.armor_class == 27);
    CHECK(caster.hit_points == 131);
    CHECK(caster.saves.size() == 3);
    CHECK(caster.abilities.size() == 6);
    CHECK(caster.difficulty_classes.at("spell_dc") == 33);
    CHECK(caster.notes.find("Spell attack: +25\nArea damage: 11d6, basic save against DC 33") == 0);
    CHECK(caster.attacks[0].damage == "2d6+10");
    CHECK(caster.hit_dice.empty());
    choice.archetype = "swarm";
    const game::Statistics swarm = game::built_statistics(rulebook_of(Family::four_degree), choice);
    CHECK(swarm.resistances.size() == 3);
    CHECK(swarm.resistances[0] == game::DamageTrait{"bludgeoning", 7, {}});
    CHECK(swarm.attacks[0].is_agile);
}

TEST_CASE("creature building: srd5 knows its hit dice and how often it attacks") {
    rules::BuildChoice choice;
    choice.challenge = 9;
    choice.archetype = "beast";
    const game::Statistics beast = game::built_statistics(rulebook_of(Family::srd5), choice);
    CHECK(beast.challenge == 9);
    CHECK(beast.attacks[0].per_turn >= 2);
    const auto dice = rules::parse_dice(beast.hit_dice);
    REQUIRE(dice.ok());
    CHECK(static_cast<int>(rules::mean(dice.value())) == beast.hit_points);
}

TEST_CASE("creature building: whatever is built can stand in a campaign without a complaint") {
    for (const Family family : {Family::four_degree, Family::srd5}) {
        fight_table::Table table(family);
        for (const rules::Archetype& archetype : table.rulebook.creature_building.archetypes) {
            for (int level = -1; level <= 30; ++level) {
                rules::BuildChoice choice;
                choice.archetype = archetype.key;
                choice.level = level;
                choice.challenge = level;
                game::Creature creature;
                creature.name = archetype.name;
                creature.statistics = game::built_statistics(table.rulebook, choice);
                game::add_creature(table.campaign.shelf, creature);
            }
        }
        const auto problems = game::find_problems(table.campaign, table.rulebook);
        CHECK((problems.empty() ? "" : problems.front().pointer + problems.front().text) == "");
    }
}

TEST_CASE("creature building: a hazard can be noticed, disabled, broken and rolls Stealth") {
    // GM Core (ORC), Building Hazards, level 10, complex.
    rules::HazardChoice choice;
    choice.level = 10;
    choice.is_complex = true;
    const game::Statistics hazard =
        game::hazard_statistics(rulebook_of(Family::four_degree), choice);
    CHECK(hazard.initiative == 22);
    CHECK(hazard.attacks[0].bonus == 23);
    CHECK(hazard.attacks[0].damage == "2d12+13");
    CHECK(hazard.notes == "Broken at 36 HP or fewer");
    CHECK(hazard.hazard == game::Hazard::complex);
    CHECK(hazard.hardness == 18);
    CHECK(hazard.difficulty_classes.at("stealth_dc") == 32);
    CHECK(hazard.difficulty_classes.at("disable_dc") == 32);
    CHECK(hazard.saves.at("fortitude") == 22);
    CHECK(hazard.difficulty_classes.at("effect_dc") == 29);
}
