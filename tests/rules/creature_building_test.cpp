// Creatures made up on the spot, both rule families, against their published tables.
#include "building_table.h"
#include "rules/challenge_bands.h"
#include "rules/creature_building.h"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <set>

using building_table::four_degree;
using building_table::srd5;
using rules::Band;
using rules::BuildChoice;
using rules::BuiltCreature;
using rules::NumberOffer;

namespace {

BuildChoice at_level(int level, const std::string& archetype = "plain") {
    BuildChoice choice;
    choice.level = level;
    choice.archetype = archetype;
    return choice;
}

BuildChoice at_challenge(double challenge, const std::string& archetype = "plain") {
    BuildChoice choice;
    choice.challenge = challenge;
    choice.archetype = archetype;
    return choice;
}

BuildChoice with_band(BuildChoice choice, const std::string& number, Band band) {
    choice.numbers[number].band = band;
    return choice;
}

BuildChoice with_value(BuildChoice choice, const std::string& number, int value) {
    choice.numbers[number].value = value;
    return choice;
}

std::vector<std::string> archetypes(const rules::Rulebook& rulebook) {
    std::vector<std::string> keys;
    for (const rules::Archetype& archetype : rulebook.creature_building.archetypes)
        keys.push_back(archetype.key);
    return keys;
}

// Armor class by level, low to extreme, and so on: figures as published.
struct Row {
    int level;
    std::array<int, 4> numbers;
};

constexpr std::array four_bands = {Band::low, Band::moderate, Band::high, Band::extreme};

} // namespace

TEST_CASE("building: armor class, attack and damage are those of the published tables") {
    // GM Core (ORC), Building Creatures, tables Armor Class and Strike Attack Bonus.
    const std::vector<Row> armor_class = {
        {-1, {12, 14, 15, 18}},
        {1, {13, 15, 16, 19}},
        {5, {19, 21, 22, 25}},
        {12, {30, 32, 33, 36}},
        {20, {42, 44, 45, 48}},
        {24, {48, 50, 51, 54}}};
    for (const Row& row : armor_class) {
        for (std::size_t at = 0; at < four_bands.size(); ++at) {
            CAPTURE(row.level);
            const auto choice = with_band(at_level(row.level), "armor_class", four_bands[at]);
            CHECK(rules::built_creature(four_degree(), choice).armor_class == row.numbers[at]);
        }
    }
    const std::vector<Row> attack = {
        {-1, {4, 6, 8, 10}}, {1, {5, 7, 9, 11}}, {10, {17, 21, 23, 25}}, {24, {36, 42, 44, 46}}};
    for (const Row& row : attack) {
        for (std::size_t at = 0; at < four_bands.size(); ++at) {
            CAPTURE(row.level);
            const auto choice = with_band(at_level(row.level), "attack", four_bands[at]);
            CHECK(rules::built_creature(four_degree(), choice).attacks[0].bonus == row.numbers[at]);
        }
    }
    // GM Core (ORC), table Strike Damage, levels 1 and 10.
    const std::array first = {"1d4+2", "1d6+2", "1d6+3", "1d8+4"};
    const std::array tenth = {"2d6+10", "2d10+11", "2d12+13", "2d12+20"};
    for (std::size_t at = 0; at < four_bands.size(); ++at) {
        const auto dice = [&](int level) {
            const auto choice = with_band(at_level(level), "damage", four_bands[at]);
            return rules::to_text(rules::built_creature(four_degree(), choice).attacks[0].damage);
        };
        CHECK(dice(1) == first[at]);
        CHECK(dice(10) == tenth[at]);
    }
}

TEST_CASE("building: perception, saves, skills, hit points and magic are those of the tables") {
    // GM Core (ORC), Building Creatures, tables Perception and Saving Throws, level 10.
    const std::array five_bands = {
        Band::terrible, Band::low, Band::moderate, Band::high, Band::extreme};
    const std::array numbers = {14, 16, 19, 22, 24};
    for (std::size_t at = 0; at < five_bands.size(); ++at) {
        BuildChoice choice = with_band(at_level(10), "perception", five_bands[at]);
        choice.numbers["save_will"].band = five_bands[at];
        const BuiltCreature built = rules::built_creature(four_degree(), choice);
        CHECK(built.perception == numbers[at]);
        CHECK(built.saves.at("will") == numbers[at]);
    }
    const auto one = [](const std::string& number, Band band) {
        return rules::built_creature(four_degree(), with_band(at_level(10), number, band));
    };
    // Table Skills, level 10: low is printed as 15 to 17.
    CHECK(one("skill_stealth", Band::low).skills.at("stealth") == 16);
    CHECK(one("skill_stealth", Band::extreme).skills.at("stealth") == 25);
    // Table Hit Points, level 10: 127 to 135, 171 to 179, 215 to 223.
    CHECK(one("hit_points", Band::low).hit_points == 131);
    CHECK(one("hit_points", Band::moderate).hit_points == 175);
    CHECK(one("hit_points", Band::high).hit_points == 219);
    // Table Spell DC and Spell Attack Modifier, level 10.
    CHECK(one("spell_dc", Band::moderate).spell_dc == 26);
    CHECK(one("spell_dc", Band::high).spell_dc == 29);
    CHECK(one("spell_dc", Band::extreme).spell_dc == 33);
    CHECK(one("spell_dc", Band::extreme).spell_attack == 25);
    // Table Attribute Modifier Scales: no extreme below level 1.
    CHECK(one("ability_str", Band::extreme).abilities.at("str") == 8);
    const auto weakest = with_band(at_level(0), "ability_str", Band::extreme);
    CHECK(rules::built_creature(four_degree(), weakest).abilities.at("str") == 3);
}

TEST_CASE("building: at every level and band the number lies where the table prints it") {
    const rules::CreatureTables& tables = four_degree().creature_building.tables;
    REQUIRE(tables.level_min == -1);
    REQUIRE(tables.level_max == 24);
    const std::vector<std::pair<std::string, const rules::NumberTable*>> numbers = {
        {"armor_class", &tables.armor_class},
        {"hit_points", &tables.hit_points},
        {"perception", &tables.perception},
        {"attack", &tables.attack},
        {"spell_dc", &tables.spell_dc},
        {"save_reflex", &tables.saves},
        {"skill_stealth", &tables.skills},
        {"ability_con", &tables.ability}};
    int checked = 0;
    for (int level = -1; level <= 24; ++level) {
        for (const auto& [key, table] : numbers) {
            const std::string& number = key;
            const auto& row = table->rows[static_cast<std::size_t>(level - tables.level_min)];
            for (std::size_t column = 0; column < table->bands.size(); ++column) {
                if (!row[column]) continue;
                CAPTURE(level);
                CAPTURE(number);
                const auto choice = with_band(at_level(level), number, table->bands[column]);
                const auto offers = rules::number_offers(four_degree(), choice);
                const NumberOffer* offer = rules::find_offer(offers, number);
                REQUIRE(offer != nullptr);
                CHECK(offer->band == table->bands[column]);
                CHECK(offer->value >= row[column]->low);
                CHECK(offer->value <= row[column]->high);
                checked += 1;
            }
        }
    }
    CHECK(checked == 26 * (4 + 3 + 5 + 4 + 3 + 5 + 4 + 4) - 2); // two cells are not printed
}

TEST_CASE("building: every damage expression has the printed average, to one") {
    // GM Core (ORC), table Strike Damage: the budget comes first, dice may miss it by one.
    for (int level = -1; level <= 24; ++level) {
        for (const Band band : four_bands) {
            CAPTURE(level);
            const auto choice = with_band(at_level(level), "damage", band);
            const auto offers = rules::number_offers(four_degree(), choice);
            const double mean =
                rules::mean(rules::built_creature(four_degree(), choice).attacks[0].damage);
            CHECK(std::abs(mean - rules::find_offer(offers, "damage")->value) <= 1);
        }
    }
}

TEST_CASE("building: typed numbers stand as typed, damage finds its dice") {
    BuildChoice choice = at_level(5);
    choice.step = rules::BuildStep::elite;
    for (const auto& [key, value] : std::map<std::string, int>{
             {"armor_class", 30},
             {"hit_points", 7},
             {"save_will", -2},
             {"attack", 1},
             {"damage", 23},
             {"spell_dc", 40},
             {"skill_arcana", 12}})
        choice.numbers[key].value = value;
    const BuiltCreature built = rules::built_creature(four_degree(), choice);
    CHECK(built.armor_class == 30);
    CHECK(built.hit_points == 7);
    CHECK(built.saves.at("will") == -2);
    CHECK(built.attacks[0].bonus == 1);
    CHECK(std::abs(rules::mean(built.attacks[0].damage) - 23) <= 0.5);
    CHECK(built.spell_dc == 40);
    CHECK(built.spell_attack == 32);
    CHECK(built.skills.at("arcana") == 12);
    CHECK(
        rules::built_creature(four_degree(), with_value(at_level(3), "hit_points", -9))
            .hit_points == 1
    );
}

TEST_CASE("building: elite and weak change what the rules say, at every level they know") {
    // Monster Core (ORC), Adjusting Creatures: +2 or -2 to AC, attacks, DCs, saves, Perception,
    // skills and damage; HP by level.
    const auto stepped = [](int level, rules::BuildStep step) {
        BuildChoice choice = at_level(level, "caster");
        choice.step = step;
        return rules::built_creature(four_degree(), choice);
    };
    for (int level = -1; level <= 24; ++level) {
        CAPTURE(level);
        const BuiltCreature plain = stepped(level, rules::BuildStep::none);
        const BuiltCreature elite = stepped(level, rules::BuildStep::elite);
        const int more_hp = level <= 1 ? 10 : level <= 4 ? 15 : level <= 19 ? 20 : 30;
        CHECK(elite.hit_points == plain.hit_points + more_hp);
        CHECK(elite.level == (level < 1 ? level + 2 : level + 1));
        CHECK(elite.armor_class == plain.armor_class + 2);
        CHECK(elite.attacks[0].bonus == plain.attacks[0].bonus + 2);
        CHECK(rules::mean(elite.attacks[0].damage) == rules::mean(plain.attacks[0].damage) + 2);
        CHECK(*elite.spell_dc == *plain.spell_dc + 2);
        CHECK(*elite.spell_attack == *plain.spell_attack + 2);
        CHECK(rules::mean(elite.area->damage) == rules::mean(plain.area->damage) + 4);
        CHECK(elite.saves.at("will") == plain.saves.at("will") + 2);
        CHECK(elite.perception == plain.perception + 2);
        CHECK(elite.skills.at("arcana") == plain.skills.at("arcana") + 2);
        CHECK(elite.abilities == plain.abilities);
        const BuiltCreature weak = stepped(level, rules::BuildStep::weak);
        const bool has_weak =
            rules::has_step(four_degree(), at_level(level), rules::BuildStep::weak);
        CHECK(has_weak == (level >= 1));
        if (!has_weak) {
            CHECK(weak == plain);
            continue;
        }
        const int less_hp = level <= 2 ? 10 : level <= 5 ? 15 : level <= 20 ? 20 : 30;
        CHECK(weak.hit_points == plain.hit_points - less_hp);
        CHECK(weak.level == (level == 1 ? -1 : level - 1));
        CHECK(weak.armor_class == plain.armor_class - 2);
        CHECK(*weak.spell_dc == *plain.spell_dc - 2);
    }
}

TEST_CASE("building: a stronger level never has a weaker number, whatever the archetype") {
    const auto compare = [](const auto& before, const auto& after) {
        REQUIRE(before.size() == after.size());
        for (std::size_t at = 0; at < before.size(); ++at) {
            CAPTURE(before[at].key);
            CHECK(before[at].value <= after[at].value);
        }
    };
    for (const std::string& archetype : archetypes(four_degree())) {
        CAPTURE(archetype);
        for (int level = -1; level < 24; ++level) {
            CAPTURE(level);
            compare(
                rules::number_offers(four_degree(), at_level(level, archetype)),
                rules::number_offers(four_degree(), at_level(level + 1, archetype))
            );
        }
    }
    const auto& steps = srd5().creature_building.statistics.steps;
    for (const std::string& archetype : archetypes(srd5())) {
        CAPTURE(archetype);
        for (std::size_t at = 0; at + 1 < steps.size(); ++at) {
            CAPTURE(steps[at].challenge);
            compare(
                rules::number_offers(srd5(), at_challenge(steps[at].challenge, archetype)),
                rules::number_offers(srd5(), at_challenge(steps[at + 1].challenge, archetype))
            );
        }
    }
}

TEST_CASE("building: both families know the same archetypes") {
    CHECK(archetypes(four_degree()) == archetypes(srd5()));
    CHECK(archetypes(srd5()).size() == 13);
    std::set<std::string> different;
    for (const std::string& archetype : archetypes(four_degree())) {
        const BuiltCreature built = rules::built_creature(four_degree(), at_level(8, archetype));
        different.insert(
            std::to_string(built.armor_class) + " " + std::to_string(built.hit_points) + " " +
            std::to_string(built.attacks[0].bonus) + " " + rules::to_text(built.attacks[0].damage) +
            " " + std::to_string(built.saves.at("fortitude")) + " " +
            std::to_string(built.saves.at("reflex"))
        );
    }
    CHECK(different.size() == 13);
}

TEST_CASE("building: bands step by step, from a typed number to the next") {
    const auto offers = rules::number_offers(four_degree(), at_level(5));
    const NumberOffer& armor_class = *rules::find_offer(offers, "armor_class");
    CHECK(armor_class.usual == Band::moderate);
    CHECK(armor_class.name == "AC");
    CHECK(rules::next_band(armor_class, 1) == Band::high);
    CHECK(rules::next_band(armor_class, -1) == Band::low);
    const auto high =
        rules::number_offers(four_degree(), with_band(at_level(5), "armor_class", Band::extreme));
    CHECK_FALSE(rules::next_band(*rules::find_offer(high, "armor_class"), 1).has_value());
    const auto typed =
        rules::number_offers(four_degree(), with_value(at_level(5), "armor_class", 23));
    CHECK(rules::find_offer(typed, "armor_class")->is_typed);
    CHECK(rules::next_band(*rules::find_offer(typed, "armor_class"), 1) == Band::extreme);
    CHECK(rules::next_band(*rules::find_offer(typed, "armor_class"), -1) == Band::high);
    CHECK(rules::find_offer(offers, "luck") == nullptr);
}

TEST_CASE("building: resistances by level, immunities and attacks of the archetype") {
    // GM Core (ORC), table Resistances and Weaknesses, level 10: 7 to 13.
    const BuiltCreature swarm = rules::built_creature(four_degree(), at_level(10, "swarm"));
    CHECK(swarm.resistances.at("bludgeoning") == 7);
    CHECK(swarm.resistances.at("slashing") == 13);
    CHECK(swarm.attacks[0].is_agile);
    CHECK(swarm.abilities.at("int") == -5);
    const BuiltCreature five = rules::built_creature(srd5(), at_challenge(3, "swarm"));
    CHECK(five.resistances.at("slashing") == 0); // srd5 halves
    const BuiltCreature beast = rules::built_creature(four_degree(), at_level(4, "beast"));
    REQUIRE(beast.attacks.size() == 2);
    CHECK(rules::mean(beast.attacks[0].damage) > rules::mean(beast.attacks[1].damage));
}

TEST_CASE("building: levels and names outside the tables take the nearest") {
    CHECK(rules::built_creature(four_degree(), at_level(99)).level == 24);
    CHECK(rules::built_creature(four_degree(), at_level(-9)).level == -1);
    CHECK(rules::built_creature(srd5(), at_challenge(31)).challenge == 30);
    CHECK(rules::built_creature(srd5(), at_challenge(0.3)).challenge == 0.25);
    CHECK(rules::built_creature(four_degree(), at_level(3, "unheard_of")).name == "Plain");
    const rules::Rulebook empty;
    CHECK(rules::number_offers(empty, at_level(3)).empty());
    CHECK(rules::built_creature(empty, at_level(3)) == BuiltCreature{});
}
