// What creatures are built from: the tables hold together, and slips in them are named.
#include "rules/ability_modifier.h"
#include "store/creature_library.h"
#include "store/rulebook_json.h"
#include "store/samples.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <functional>
#include <map>
#include <set>

namespace {

using nlohmann::json;
using rules::Band;

json tables(const char* name) {
    std::ifstream stream(std::string(TABLEWICK_SOURCE_DIR) + "/assets/rules/" + name);
    return json::parse(stream);
}

const rules::CreatureBuilding& four_degree() {
    return samples::rulebook(rules::Family::four_degree).creature_building;
}

const rules::CreatureBuilding& srd5() {
    return samples::rulebook(rules::Family::srd5).creature_building;
}

// "POINTER EXPECTED" of the file with one change.
std::string complaint(const char* name, const std::function<void(json&)>& change) {
    json book = tables(name);
    change(book);
    const auto read = store::read_rulebook(book, "book.json", rules::SrdEdition::srd_5_1);
    return read.ok() ? std::string("none")
                     : read.error().place.pointer + " " + read.error().message;
}

// First quartile, median and third quartile by linear interpolation, ends included.
double quantile(std::vector<double> values, double share) {
    std::sort(values.begin(), values.end());
    const double place = static_cast<double>(values.size() - 1) * share;
    const auto below = static_cast<std::size_t>(place);
    if (below + 1 >= values.size()) return values.back();
    return values[below] +
           (place - static_cast<double>(below)) * (values[below + 1] - values[below]);
}

void check_quartiles(const rules::Quartiles& read, const std::vector<double>& values) {
    REQUIRE(read.count == static_cast<int>(values.size()));
    if (values.empty()) return;
    CHECK(read.first == doctest::Approx(quantile(values, 0.25)).epsilon(0.001));
    CHECK(read.median == doctest::Approx(quantile(values, 0.5)).epsilon(0.001));
    CHECK(read.third == doctest::Approx(quantile(values, 0.75)).epsilon(0.001));
}

} // namespace

TEST_CASE("building tables: what the published figures say of each other") {
    // Cross-checks of GM Core (ORC), Building Creatures: high hit points are 125 percent and low 75
    // percent of moderate; a spell attack is its DC less 8; area damage of limited use is one d6 a
    // level and one more. Common practice, no source: bands rise, and so do levels.
    const rules::CreatureTables& tables = four_degree().tables;
    REQUIRE(tables.hit_points.rows.size() == 26);
    for (int level = -1; level <= 24; ++level) {
        CAPTURE(level);
        const auto hp = [&](Band band) {
            const rules::BandRange range =
                *rules::find_cell(tables.hit_points, tables, level, band);
            return (range.low + range.high) / 2.0;
        };
        const double moderate = hp(Band::moderate);
        CHECK(std::abs(hp(Band::high) - 1.25 * moderate) <= 1.5);
        CHECK(std::abs(hp(Band::low) - 0.75 * moderate) <= 1.5);
        for (const Band band : {Band::moderate, Band::high, Band::extreme}) {
            CHECK(
                rules::find_cell(tables.spell_attack, tables, level, band)->low ==
                rules::find_cell(tables.spell_dc, tables, level, band)->low - 8
            );
        }
        const auto row = static_cast<std::size_t>(level - tables.level_min);
        if (level >= 1)
            CHECK(
                rules::to_text(tables.area_limited[row].dice) == std::to_string(level + 1) + "d6"
            );
        // The printed average is a budget: 9d6 stands for 30.
        for (const rules::BandDamage& damage :
             {tables.area_limited[row], tables.area_unlimited[row]})
            CHECK(std::abs(rules::mean(damage.dice) - damage.average) <= 1.5);
        for (const auto* offense :
             {&four_degree().hazards.simple, &four_degree().hazards.complex}) {
            const rules::BandDamage& damage = (*offense)[row].damage;
            CHECK(std::abs(rules::mean(damage.dice) - damage.average) <= 1);
        }
    }
    for (const auto* table :
         {&tables.ability,
          &tables.perception,
          &tables.skills,
          &tables.armor_class,
          &tables.saves,
          &tables.hit_points,
          &tables.resistance,
          &tables.attack,
          &tables.spell_dc}) {
        for (std::size_t row = 0; row < table->rows.size(); ++row) {
            for (std::size_t column = 0; column < table->bands.size(); ++column) {
                const auto& cell = table->rows[row][column];
                if (!cell) continue;
                if (column > 0) CHECK(table->rows[row][column - 1]->high <= cell->low);
                if (row > 0 && table->rows[row - 1][column])
                    CHECK(table->rows[row - 1][column]->low <= cell->low);
            }
        }
    }
}

TEST_CASE("building tables: the statistics are those of the library's own creatures") {
    // Computed afresh from SRD 5.1 (CC-BY-4.0); the five printed variants are left out.
    const auto loaded = store::load_creature_library(
        std::string(TABLEWICK_SOURCE_DIR) + "/assets", samples::rulebook(rules::Family::srd5)
    );
    REQUIRE(loaded.ok());
    const std::set<std::string> variants = {
        "giant_rat_diseased",
        "swarm_of_beetles",
        "swarm_of_centipedes",
        "swarm_of_spiders",
        "swarm_of_wasps"};

    struct Numbers {
        std::vector<double> armor_class, hit_points, attack, save_dc, ability;
    };

    std::map<double, Numbers> by_challenge;
    std::size_t counted = 0;
    for (const game::LibraryCreature& creature : loaded.value()) {
        if (variants.count(creature.key) > 0) continue;
        counted += 1;
        Numbers& numbers = by_challenge[creature.statistics.challenge];
        numbers.armor_class.push_back(creature.statistics.armor_class);
        numbers.hit_points.push_back(creature.statistics.hit_points);
        for (const auto& [key, modifier] : creature.statistics.abilities)
            numbers.ability.push_back(modifier);
        int attack = -99;
        for (const game::LibraryAttack& each : creature.attacks)
            attack = std::max(attack, each.bonus);
        if (attack > -99) numbers.attack.push_back(attack);
        int dc = 0;
        for (const game::SaveEffect& effect : creature.save_effects)
            dc = std::max(dc, effect.dc);
        for (const game::Spellcasting& casting : creature.spellcasting)
            dc = std::max(dc, casting.dc);
        if (dc > 0) numbers.save_dc.push_back(dc);
    }
    CHECK(counted == 317);
    REQUIRE(srd5().statistics.rows.size() == by_challenge.size());
    for (const rules::ChallengeRow& row : srd5().statistics.rows) {
        CAPTURE(row.challenge);
        REQUIRE(by_challenge.count(row.challenge) == 1);
        const Numbers& numbers = by_challenge.at(row.challenge);
        check_quartiles(row.armor_class, numbers.armor_class);
        check_quartiles(row.hit_points, numbers.hit_points);
        check_quartiles(row.attack, numbers.attack);
        check_quartiles(row.save_dc, numbers.save_dc);
        check_quartiles(row.ability, numbers.ability);
    }
}

TEST_CASE("building tables: a level or band that is not printed takes the nearest") {
    const rules::CreatureTables& tables = four_degree().tables;
    const auto cell = [&](int level, Band band) {
        return rules::find_cell(tables.ability, tables, level, band)->low;
    };
    CHECK(cell(0, Band::extreme) == 3);  // high: none is printed
    CHECK(cell(0, Band::terrible) == 0); // low
    CHECK(cell(99, Band::high) == 12);
    CHECK(cell(-99, Band::high) == 3);
    CHECK(rules::find_cell(rules::NumberTable{}, tables, 1, Band::low) == nullptr);
    CHECK(rules::find_archetype(four_degree(), "guard")->name == "Guard");
    CHECK(rules::find_archetype(four_degree(), "unheard_of") == nullptr);
}

TEST_CASE("building tables: each slip of the pen in the four-degree tables is named") {
    const auto said = [](const std::function<void(json&)>& change) {
        return complaint("four_degree.json", change);
    };
    const std::string needed = " The rulebook is not as expected here: ";
    CHECK(said([](json&) {}) == "none");
    CHECK(
        said([](json& b) { b["creature_building"]["armor_class"]["rows"]["5"][1] = "many"; }) ==
        "/creature_building/armor_class/rows/5/1" + needed +
            "a whole number is needed, not \"many\"."
    );
    CHECK(
        said([](json& b) {
            b["creature_building"]["hit_points"]["rows"]["5"][1] = {79, 72};
        }) == "/creature_building/hit_points/rows/5/1/1" + needed +
                  "a whole number from 79 to 9999 is needed, not 72."
    );
    CHECK(said([](json& b) {
              b["creature_building"]["saves"]["rows"].erase("7");
          }) == "/creature_building/saves/rows" + needed + "a key \"7\" is needed.");
    CHECK(
        said([](json& b) {
            b["creature_building"]["saves"]["rows"]["25"] = {1, 2, 3, 4, 5};
        }).find("/creature_building/saves/rows" + needed + "a row for each level from -1 to 24") ==
        0
    );
    CHECK(said([](json& b) {
              b["creature_building"]["attack"]["bands"] = {"high", "low", "moderate", "extreme"};
          }).find("/creature_building/attack/bands/1" + needed + "a stronger band") == 0);
    CHECK(said([](json& b) {
              b["creature_building"]["attack"]["bands"] = json::array();
          }).find("/creature_building/attack/bands") == 0);
    CHECK(said([](json& b) {
              b["creature_building"]["attack"]["rows"]["3"] = {nullptr, nullptr, nullptr, nullptr};
          }).find("/creature_building/attack/rows/3" + needed + "at least one number") == 0);
    CHECK(said([](json& b) {
              b["creature_building"]["damage"]["rows"]["3"][0] = {"3d0", 4};
          }).find("/creature_building/damage/rows/3/0/0" + needed + "dice") == 0);
    CHECK(said([](json& b) {
              b["creature_building"]["area_damage"]["rows"]["3"][1] = {"1d6"};
          }).find("/creature_building/area_damage/rows/3/1") == 0);
    CHECK(said([](json& b) {
              b["hazard_building"]["offense"]["rows"]["3"][1][1] = 4;
          }).find("/hazard_building/offense/rows/3/1/1") == 0);
    CHECK(said([](json& b) {
              b["hazard_building"]["broken_at_divisor"] = 0;
          }).find("/hazard_building/broken_at_divisor") == 0);
    CHECK(said([](json& b) {
              b["elite_weak"]["elite"]["hit_points"][0]["to"] = -2;
          }).find("/elite_weak/elite/hit_points/0/to") == 0);
    CHECK(said([](json& b) {
              b["elite_weak"]["weak"]["luck"] = 2;
          }).find("/elite_weak/weak/luck") == 0);
}

TEST_CASE("building tables: each slip of the pen in statistics and archetypes is named") {
    const auto said = [](const std::function<void(json&)>& change) {
        return complaint("srd5.json", change);
    };
    const auto first = [&](const std::function<void(json&)>& change) {
        const std::string text = said([&](json& b) { change(b["archetypes"]["list"][0]); });
        return text.substr(0, text.find(' '));
    };
    const std::string rows = "/challenge_statistics/rows";
    CHECK(said([](json&) {}) == "none");
    CHECK(said([](json& b) {
              b["challenge_statistics"]["rows"][2]["attack"] = {3, 5, 4, 6};
          }).find(rows + "/2/attack ") == 0);
    CHECK(said([](json& b) {
              b["challenge_statistics"]["rows"][2]["challenge"] = 0.3;
          }).find(rows + "/2/challenge ") == 0);
    CHECK(said([](json& b) {
              b["challenge_statistics"]["rows"][2]["challenge"] = 0;
          }).find(rows + "/2/challenge ") == 0);
    CHECK(said([](json& b) {
              b["challenge_statistics"]["rows"] = json::array();
          }).find(rows + " ") == 0);
    CHECK(said([](json& b) {
              b["challenge_statistics"]["proficiency"][3][0] = 0;
          }).find("/challenge_statistics/proficiency/3 ") == 0);
    const std::string here = "/archetypes/list/0";
    CHECK(first([](json& a) { a["armor_class"] = "moderate"; }) == here + "/armor_class");
    CHECK(first([](json& a) { a["perception"] = "high"; }) == here + "/perception");
    CHECK(first([](json& a) { a["abilities"].erase("con"); }) == here + "/abilities");
    CHECK(first([](json& a) { a["abilities"]["luck"] = 3; }) == here + "/abilities/luck");
    CHECK(first([](json& a) { a["saves"]["will"] = "trained"; }) == here + "/saves/will");
    CHECK(first([](json& a) { a["skills"]["luck"] = "trained"; }) == here + "/skills/luck");
    CHECK(first([](json& a) { a["speeds_ft"]["hop"] = 30; }) == here + "/speeds_ft/hop");
    CHECK(first([](json& a) { a["attacks"] = json::array(); }) == here + "/attacks");
    CHECK(first([](json& a) {
              a["attacks"][0]["damage_type"] = "mud";
          }) == here + "/attacks/0/damage_type");
    CHECK(first([](json& a) { a["resistances"] = {"mud"}; }) == here + "/resistances/0");
    CHECK(first([](json& a) { a["immunities"] = {"mud"}; }) == here + "/immunities/0");
    CHECK(first([](json& a) { a["attack_ability"] = "luck"; }) == here + "/attack_ability");
    CHECK(first([](json& a) { a["spell_dc"] = "high"; }) == here);
    CHECK(first([](json& a) { a["colour"] = "red"; }) == here + "/colour");
    CHECK(said([](json& b) {
              b["archetypes"]["list"][1]["key"] = "plain";
          }).find("/archetypes/list/1/key ") == 0);
    CHECK(said([](json& b) {
              b["archetypes"]["list"] = json::array();
          }).find("/archetypes/list ") == 0);
    CHECK(complaint("four_degree.json", [](json& b) {
              b["archetypes"]["list"][0]["saves"].erase("will");
          }).find("/archetypes/list/0/saves ") == 0);
    CHECK(complaint("four_degree.json", [](json& b) {
              b["archetypes"]["list"][0]["resistances"]["mud"] = "low";
          }).find("/archetypes/list/0/resistances/mud ") == 0);
}

TEST_CASE("building tables: archetypes say in one line what they are") {
    for (const rules::CreatureBuilding* building : {&four_degree(), &srd5()}) {
        for (const rules::Archetype& archetype : building->archetypes) {
            CAPTURE(archetype.key);
            CHECK(archetype.summary.size() >= 20);
            CHECK(archetype.summary.size() <= 90);
            CHECK(archetype.name.size() <= 12);
        }
    }
}
