// Creatures made up on the spot by challenge rating.
#include "building_table.h"
#include "rules/challenge_bands.h"
#include "rules/creature_building.h"

#include <doctest/doctest.h>

#include <cmath>

using building_table::srd5;
using rules::Band;
using rules::BuildChoice;
using rules::BuiltCreature;

namespace {

BuildChoice at_challenge(double challenge, const std::string& archetype = "plain") {
    BuildChoice choice;
    choice.challenge = challenge;
    choice.archetype = archetype;
    return choice;
}

BuildChoice all_in(BuildChoice choice, Band band) {
    for (const char* number :
         {"armor_class", "hit_points", "attack", "damage", "spell_dc", "attacks_per_turn"})
        choice.numbers[number].band = band;
    return choice;
}

double damage_of_a_turn(const BuiltCreature& built) {
    return built.attacks[0].per_turn * rules::mean(built.attacks[0].damage);
}

} // namespace

TEST_CASE("building srd5: within the middle half of the published creatures of that rating") {
    // The quartiles of the creatures of SRD 5.1 (CC-BY-4.0), for every challenge rating that has
    // eight or more.
    int checked = 0;
    for (const rules::ChallengeRow& row : srd5().creature_building.statistics.rows) {
        CAPTURE(row.challenge);
        for (const Band band : {Band::low, Band::typical, Band::high}) {
            const BuiltCreature built =
                rules::built_creature(srd5(), all_in(at_challenge(row.challenge), band));
            const auto check = [&](const rules::Quartiles& raw, double value) {
                if (raw.count < 8) return;
                CAPTURE(value);
                CHECK(value >= raw.first);
                CHECK(value <= raw.third);
                checked += 1;
            };
            check(row.armor_class, built.armor_class);
            check(row.hit_points, built.hit_points);
            check(row.attack, built.attacks[0].bonus);
            check(row.save_dc, *built.spell_dc);
            // Published averages are rounded down for each attack.
            const double rounded_down =
                built.attacks[0].per_turn * std::floor(rules::mean(built.attacks[0].damage));
            if (row.damage.count >= 8) {
                CHECK(rounded_down <= row.damage.third);
                CHECK(damage_of_a_turn(built) >= row.damage.first);
                checked += 1;
            }
        }
    }
    CHECK(checked > 150);
}

TEST_CASE("building srd5: the dice of a turn add up to their band") {
    for (const rules::ChallengeStep& step : srd5().creature_building.statistics.steps) {
        for (const rules::Archetype& archetype : srd5().creature_building.archetypes) {
            CAPTURE(step.challenge);
            CAPTURE(archetype.key);
            const BuildChoice choice = at_challenge(step.challenge, archetype.key);
            const BuiltCreature built = rules::built_creature(srd5(), choice);
            const auto offers = rules::number_offers(srd5(), choice);
            const int wanted = rules::find_offer(offers, "damage")->value;
            // Averages are printed rounded down: each attack may have half a point more.
            CHECK(std::abs(damage_of_a_turn(built) - wanted) <= built.attacks[0].per_turn * 0.5);
            CHECK(
                built.attacks[0].per_turn == rules::find_offer(offers, "attacks_per_turn")->value
            );
        }
    }
}

TEST_CASE("building srd5: hit dice come to the hit points, rounded down as published") {
    for (const rules::ChallengeStep& step : srd5().creature_building.statistics.steps) {
        for (const rules::Archetype& archetype : srd5().creature_building.archetypes) {
            CAPTURE(step.challenge);
            CAPTURE(archetype.key);
            const BuiltCreature built =
                rules::built_creature(srd5(), at_challenge(step.challenge, archetype.key));
            REQUIRE(built.hit_dice.has_value());
            CHECK(static_cast<int>(std::floor(rules::mean(*built.hit_dice))) == built.hit_points);
            CHECK(built.hit_dice->terms[0].count <= 100);
            CHECK(rules::parse_dice(rules::to_text(*built.hit_dice)).ok());
        }
    }
}

TEST_CASE("building srd5: saves, skills and attacks rest on ability and proficiency") {
    // SRD 5.1, Monsters: a save or skill is the ability modifier plus proficiency, or twice that.
    const BuiltCreature caster = rules::built_creature(srd5(), at_challenge(5, "caster"));
    constexpr int proficiency = 3;
    CHECK(caster.saves.at("int") == caster.abilities.at("int") + proficiency);
    CHECK(caster.saves.at("str") == caster.abilities.at("str"));
    CHECK(caster.skills.at("arcana") == caster.abilities.at("int") + 2 * proficiency);
    CHECK(caster.perception == caster.abilities.at("wis") + proficiency);
    CHECK(*caster.spell_dc == 8 + proficiency + caster.abilities.at("int"));
    CHECK(*caster.spell_attack == *caster.spell_dc - 8);
    const BuiltCreature guard = rules::built_creature(srd5(), at_challenge(5, "guard"));
    CHECK(guard.attacks[0].bonus == proficiency + guard.abilities.at("str"));
    BuildChoice typed = at_challenge(5, "guard");
    typed.numbers["attack"].value = 12;
    CHECK(rules::built_creature(srd5(), typed).abilities.at("str") == 9);
    typed.numbers["ability_str"].value = 4; // and its own word beats what follows
    CHECK(rules::built_creature(srd5(), typed).saves.at("str") == 4 + proficiency);
}

TEST_CASE("building srd5: weak and elite are the challenge ratings beside it") {
    BuildChoice choice = at_challenge(1);
    choice.step = rules::BuildStep::elite;
    CHECK(rules::built_creature(srd5(), choice) == rules::built_creature(srd5(), at_challenge(2)));
    choice.step = rules::BuildStep::weak;
    CHECK(rules::built_creature(srd5(), choice).challenge == 0.5);
    choice.challenge = 0;
    CHECK_FALSE(rules::has_step(srd5(), choice, rules::BuildStep::weak));
    CHECK(rules::has_step(srd5(), choice, rules::BuildStep::elite));
    CHECK(rules::built_creature(srd5(), choice).challenge == 0);
    choice.challenge = 30;
    CHECK_FALSE(rules::has_step(srd5(), choice, rules::BuildStep::elite));
}
