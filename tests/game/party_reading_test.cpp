// The read-out beside a creature, against fractions worked out by hand.
#include "fight_table.h"
#include "game/party_reading.h"

#include <doctest/doctest.h>

using fight_table::Table;
using rules::Family;

namespace {

game::Attack attack(const char* name, int bonus, const char* damage, const char* type) {
    game::Attack made;
    made.name = name;
    made.bonus = bonus;
    made.damage = damage;
    made.damage_type = type;
    return made;
}

game::Statistics creature(int hp, int armor_class) {
    game::Statistics made;
    made.hit_points = hp;
    made.armor_class = armor_class;
    return made;
}

game::PartyReading reading(const Table& table, const game::Statistics& opponent) {
    return game::party_reading(table.rulebook, game::present_party(table.campaign), opponent);
}

// Changes the sheet of a character, from which combatants take their numbers.
template <class Change>
void change_sheet(Table& table, const std::string& name, Change change) {
    for (game::Character& character : table.campaign.party.characters) {
        if (character.name == name) change(character.statistics);
    }
    game::link_party(table.campaign);
}

} // namespace

TEST_CASE("party reading: three strikes against AC 20, face by face") {
    Table table(Family::four_degree);
    table.hero("Ysolde", 50, 20);
    change_sheet(table, "Ysolde", [](game::Statistics& sheet) {
        sheet.attacks = {attack("longsword", 12, "1d8+4", "slashing")};
    });
    // Player Core (ORC), Checks and Strike. At +12: 8 to 17 hit (10 of 20), 18 to 20 are critical
    // (3). At +7: 13 to 19 hit (7), 20 is critical. At +2: 18 and 19 hit (2), 20 is critical. A hit
    // deals 8.5, a critical hit 17.
    const double expected =
        (10 * 8.5 + 3 * 17) / 20 + (7 * 8.5 + 1 * 17) / 20 + (2 * 8.5 + 1 * 17) / 20;
    const auto read = reading(table, creature(60, 20));
    REQUIRE(read.members.size() == 1);
    const game::AttackReading& on_creature = read.members[0].on_creature;
    CHECK(on_creature.routine == "3 longsword");
    CHECK(on_creature.needed == 8);
    CHECK(on_creature.chance == doctest::Approx(13.0 / 20));
    CHECK(on_creature.damage_per_round == doctest::Approx(expected));
    CHECK(read.damage_on_creature == doctest::Approx(expected));
    CHECK(read.members[0].by_creature == game::AttackReading{}); // it cannot attack
    CHECK(read.damage_on_member == 0);
    // Resistance 5 takes 5 from each hit, doubled or not: 3.5 and 12.
    game::Statistics resisting = creature(60, 20);
    resisting.resistances = {{"slashing", 5, {}}};
    const double resisted =
        (10 * 3.5 + 3 * 12.0) / 20 + (7 * 3.5 + 1 * 12) / 20 + (2 * 3.5 + 1 * 12) / 20;
    CHECK(
        reading(table, resisting).members[0].on_creature.damage_per_round ==
        doctest::Approx(resisted)
    );
    resisting.immunities = {"slashing"};
    CHECK(reading(table, resisting).damage_on_creature == 0);
    CHECK_FALSE(reading(table, resisting).rounds_to_drop.has_value());
}

TEST_CASE("party reading: conditions of the moment count on both sides") {
    Table table(Family::four_degree);
    table.hero("Ysolde", 50, 20);
    change_sheet(table, "Ysolde", [](game::Statistics& sheet) {
        sheet.attacks = {attack("longsword", 12, "10", "slashing")};
        sheet.difficulty_classes = {{"class_dc", 22}};
    });
    game::Statistics lurker = creature(60, 20);
    lurker.attacks = {attack("jaws", 10, "10", "piercing")};
    lurker.saves = {{"fortitude", 12}, {"reflex", 9}, {"will", 5}};
    const auto before = reading(table, lurker);
    CHECK(before.members[0].on_creature.needed == 8);
    CHECK(before.members[0].by_creature.needed == 10);
    // Jaws at +10, +5, 0 against AC 20: 10 to 19 hit, 20 critical; 15 to 19, 20; only a 20, which
    // is a success made critical.
    CHECK(
        before.members[0].by_creature.damage_per_round ==
        doctest::Approx((10 * 10 + 20) / 20.0 + (5 * 10 + 20) / 20.0 + 20 / 20.0)
    );
    REQUIRE(before.saves.size() == 3);
    CHECK(before.saves[0].save == "fortitude");
    CHECK(before.saves[0].modifier == 12);
    REQUIRE(before.saves[0].against.size() == 1);
    CHECK(before.saves[0].against[0].dc == 22);
    CHECK(before.saves[0].against[0].needed == 10);
    CHECK(*before.saves[0].chance == doctest::Approx(11.0 / 20));
    CHECK(*before.saves[2].chance == doctest::Approx(4.0 / 20)); // 17 to 20 at +5
    // Frightened 2 costs 2 on her attack, her AC and her DC (Player Core (ORC), conditions).
    table.give("Ysolde", "frightened", 2);
    const auto after = reading(table, lurker);
    CHECK(after.members[0].on_creature.needed == 10);
    CHECK(after.members[0].by_creature.needed == 8);
    CHECK(after.saves[0].against[0].dc == 20);
    table.give("Ysolde", "unconscious");
    const auto out = reading(table, lurker);
    CHECK(out.members[0].on_creature == game::AttackReading{});
    CHECK_FALSE(out.rounds_to_drop.has_value());
}

TEST_CASE("party reading: rounds until it drops, by the chance of at least one hit") {
    Table table(Family::four_degree);
    table.hero("Ysolde", 50, 20);
    change_sheet(table, "Ysolde", [](game::Statistics& sheet) {
        sheet.attacks = {attack("longsword", 12, "10", "slashing")};
    });
    // Any hit takes its 10 HP. Misses: 7, 12 and 17 of 20; so a round without a hit has 1428 of
    // 8000, and the first round with one comes on average after 1 / (1 - 1428 / 8000).
    const auto alone = reading(table, creature(10, 20));
    CHECK(*alone.rounds_to_drop == doctest::Approx(8000.0 / (8000 - 1428)));
    table.hero("Bram", 40, 18);
    change_sheet(table, "Bram", [](game::Statistics& sheet) {
        sheet.attacks = {attack("axe", 12, "10", "slashing")};
    });
    const auto both = reading(table, creature(10, 20));
    const double nobody = 1428.0 / 8000 * 1428 / 8000;
    CHECK(*both.rounds_to_drop == doctest::Approx(1 / (1 - nobody)));
    CHECK(both.damage_on_creature == doctest::Approx(2 * alone.damage_on_creature));
}

TEST_CASE("party reading: srd5 rolls dice twice on a 20, and takes advantage of the helpless") {
    Table table(Family::srd5);
    table.hero("Ysolde", 50, 16);
    change_sheet(table, "Ysolde", [](game::Statistics& sheet) {
        sheet.attacks = {
            attack("longsword", 6, "1d8+4", "slashing"), attack("bow", 5, "1d8+3", "piercing")};
        sheet.attacks[0].per_turn = 2;
        sheet.difficulty_classes = {{"spell_dc", 14}};
    });
    game::Statistics lurker = creature(30, 15);
    lurker.attacks = {attack("jaws", 5, "2d6+3", "piercing")};
    lurker.saves = {{"dex", 2}};
    // SRD 5.1, Combat. +6 against AC 15: 9 to 19 hit (11 of 20) for 8.5, 20 for 13; twice.
    const auto read = reading(table, lurker);
    CHECK(read.members[0].on_creature.routine == "2 longsword");
    CHECK(
        read.members[0].on_creature.damage_per_round ==
        doctest::Approx(2 * (11 * 8.5 + 1 * 13.0) / 20)
    );
    // +5 against AC 16: 11 to 19 hit (9 of 20) for 10, 20 for 17.
    CHECK(read.members[0].by_creature.damage_per_round == doctest::Approx((9 * 10.0 + 17) / 20));
    REQUIRE(read.saves.size() == 6);
    CHECK(read.saves[1].save == "dex");
    CHECK(*read.saves[1].chance == doctest::Approx(9.0 / 20)); // 12 to 20 at +2
    CHECK(read.saves[0].modifier == 0);
    // Restrained: attacked with advantage, attacks with disadvantage (SRD 5.1, Conditions).
    table.give("Ysolde", "restrained");
    const auto bound = reading(table, lurker);
    CHECK(bound.members[0].by_creature.chance == doctest::Approx(1 - 0.25)); // 10 of 20 miss, twice
    CHECK(bound.members[0].on_creature.chance == doctest::Approx(0.6 * 0.6));
    CHECK(bound.members[0].by_creature.needed == 11);
}

TEST_CASE("party reading: who is away or dead does not count, and nobody at all gives no numbers") {
    Table table(Family::four_degree);
    table.hero("Ysolde", 50, 20);
    table.hero("Bram", 40, 18);
    table.hero("Orrin", 30, 17);
    game::set_present(table.campaign, table.campaign.party.characters[1].id, false);
    table.change("Orrin").is_dead = true;
    game::Statistics lurker = creature(30, 15);
    lurker.attacks = {attack("jaws", 10, "10", "piercing")};
    const auto read = reading(table, lurker);
    REQUIRE(read.members.size() == 1);
    CHECK(read.members[0].name == "Ysolde");
    const auto nobody = game::party_reading(table.rulebook, {}, lurker);
    CHECK(nobody.members.empty());
    CHECK(nobody.damage_on_member == 0);
    CHECK_FALSE(nobody.rounds_to_drop.has_value());
    CHECK_FALSE(nobody.saves[0].chance.has_value());
}
