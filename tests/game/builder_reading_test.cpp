// What stands beside a creature that is being made.
#include "fight_table.h"
#include "game/builder_reading.h"

#include <doctest/doctest.h>

using fight_table::Table;
using rules::Family;

namespace {

// Four heroes of level 4 in a fight that gathers.
Table four_heroes(Family family) {
    Table table(family);
    for (const char* name : {"Ysolde", "Bram", "Orrin", "Sefa"})
        table.hero(name, 50, 20);
    return table;
}

rules::BuildChoice plain(int level, double challenge) {
    rules::BuildChoice choice;
    choice.level = level;
    choice.challenge = challenge;
    choice.archetype = "plain";
    return choice;
}

} // namespace

TEST_CASE("builder reading: a level 4 creature is worth 40 XP, and two are a moderate threat") {
    // GM Core (ORC), tables Encounter Budget and Creature XP: party level +0 is 40 XP; four PCs:
    // moderate 80, severe 120.
    const Table table = four_heroes(Family::four_degree);
    const auto reading = game::builder_reading(table.campaign, table.rulebook, plain(4, 0), 2);
    CHECK(reading.xp_each == 40);
    CHECK(
        reading.threat_text == "40 XP each. With 2 more: 80 XP: moderate (80); 40 to severe (120)"
    );
    CHECK(reading.party.members.size() == 4);
    CHECK_FALSE(reading.numbers.empty());
}

TEST_CASE("builder reading: what already fights counts into the threat, defeated or not") {
    Table table = four_heroes(Family::four_degree);
    table.foe("Lurker", 30, 18).statistics.level = 4;
    const auto reading = game::builder_reading(table.campaign, table.rulebook, plain(4, 0), 1);
    CHECK(
        reading.threat_text == "40 XP each. With 1 more: 80 XP: moderate (80); 40 to severe (120)"
    );
    CHECK(game::opponents_of(table.campaign.encounter, Family::four_degree).size() == 1);
    table.campaign.encounter.phase = game::Phase::no_fight;
    CHECK(game::opponents_of(table.campaign.encounter, Family::four_degree).empty());
}

TEST_CASE("builder reading: srd5 measures by challenge rating and the budgets of SRD 5.2.1") {
    // SRD 5.1, Monsters: CR 2 is 450 XP. SRD 5.2.1, Combat Encounters: level 4, low 250 a
    // character.
    const Table table = four_heroes(Family::srd5);
    const auto reading = game::builder_reading(table.campaign, table.rulebook, plain(1, 2), 1);
    CHECK(reading.xp_each == 450);
    CHECK(reading.threat_text == "450 XP each. With 1 more: 450 XP: low (up to 1000); 550 left");
}

TEST_CASE("builder reading: far from the party's level the tables say nothing, and that is said") {
    const Table table = four_heroes(Family::four_degree);
    const auto reading = game::builder_reading(table.campaign, table.rulebook, plain(20, 0), 1);
    CHECK_FALSE(reading.xp_each.has_value());
    CHECK(reading.threat_text == "The tables do not rate it for this party.");
    const Table nobody(Family::four_degree);
    CHECK(
        game::threat_text(nobody.campaign, nobody.rulebook, {}, 1) ==
        "Nobody plays tonight, so the threat is open."
    );
}

TEST_CASE("builder reading: it begins at the party's level, with a name that follows the kind") {
    const Table table = four_heroes(Family::four_degree);
    rules::BuildChoice choice = game::first_choice(table.campaign, table.rulebook);
    CHECK(choice.level == 4);
    CHECK_FALSE(choice.name.empty());
    game::choose_archetype(choice, table.rulebook, "bruiser");
    CHECK(choice.name == "Bruiser");
    choice.name = "Old Tar";
    game::choose_archetype(choice, table.rulebook, "guard");
    CHECK(choice.name == "Old Tar");
    CHECK(choice.archetype == "guard");
    game::choose_archetype(choice, table.rulebook, "no such kind");
    CHECK(choice.archetype == "guard");
}

TEST_CASE("builder reading: a nudge moves one band, and back at the usual one leaves no trace") {
    // GM Core (ORC), Building Creatures, AC of level 4: moderate 20, high 21.
    const Table table = four_heroes(Family::four_degree);
    rules::BuildChoice choice = plain(4, 0);
    auto numbers = rules::number_offers(table.rulebook, choice);
    game::nudge(choice.numbers, *rules::find_offer(numbers, "armor_class"), 1);
    numbers = rules::number_offers(table.rulebook, choice);
    CHECK(rules::find_offer(numbers, "armor_class")->value == 21);
    game::nudge(choice.numbers, *rules::find_offer(numbers, "armor_class"), -1);
    CHECK(choice.numbers.empty());
}

TEST_CASE("builder reading: what is said of attacks and saves") {
    game::AttackReading attack;
    CHECK(game::attack_text(attack) == "no attack");
    attack.routine = "3 claw";
    attack.needed = 12;
    attack.chance = 0.45;
    attack.damage_per_round = 9.24;
    CHECK(game::attack_text(attack) == "hits on 12+ (45 %), 9.2 a round");
    game::PartyReading party;
    CHECK(game::rounds_text(party) == "is never dropped by attacks");
    party.rounds_to_drop = 2.41;
    CHECK(game::rounds_text(party) == "drops in 2.4 rounds");
    game::SaveReading save;
    save.modifier = 9;
    CHECK(game::save_text(save) == "+9");
    save.chance = 0.45;
    CHECK(game::save_text(save) == "+9, 45 % against the party's DCs");
    game::Attack claw;
    claw.name = "claw";
    claw.bonus = 12;
    claw.damage = "2d8+4";
    claw.damage_type = "slashing";
    claw.per_turn = 2;
    CHECK(game::built_attack_text(claw) == "claw +12, 2d8+4 slashing, 2 a turn");
}

TEST_CASE("builder reading: what may be typed for a number") {
    CHECK(game::number_range("hit_points") == game::NumberRange{1, 9999});
    CHECK(game::number_range("armor_class") == game::NumberRange{0, 99});
    CHECK(game::number_range("damage_2") == game::NumberRange{1, 999});
    CHECK(game::number_range("save_will") == game::NumberRange{-30, 99});
}
