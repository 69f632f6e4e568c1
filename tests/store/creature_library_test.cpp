// The library of ready creatures: its figures hold together as the document says they do, and
// slips in the file are named.
#include "rules/dice.h"
#include "store/creature_library.h"
#include "store/rulebook_json.h"
#include "store/samples.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <filesystem>
#include <fstream>
#include <functional>
#include <map>
#include <unistd.h>

namespace {

using nlohmann::json;

std::string assets() {
    return std::string(TABLEWICK_SOURCE_DIR) + "/assets";
}

const rules::Rulebook& srd5() {
    return samples::rulebook(rules::Family::srd5);
}

const std::vector<game::LibraryCreature>& library() {
    static const std::vector<game::LibraryCreature> creatures = [] {
        auto loaded = store::load_creature_library(assets(), srd5());
        if (!loaded.ok()) FAIL(base::to_text(loaded.error()));
        return loaded.ok() ? std::move(loaded).value() : std::vector<game::LibraryCreature>();
    }();
    return creatures;
}

const game::LibraryCreature& creature(const std::string& key) {
    for (const game::LibraryCreature& each : library()) {
        if (each.key == key) return each;
    }
    FAIL("no creature " << key);
    return library().front();
}

int floor_of_mean(const std::string& dice) {
    const auto parsed = rules::parse_dice(dice);
    REQUIRE(parsed.ok());
    return static_cast<int>(std::floor(rules::mean(parsed.value())));
}

// The file with one change, and what is said about it.
std::string complaint(const std::function<void(json&)>& change) {
    std::ifstream stream(assets() + "/creatures/srd51.json");
    json file = json::parse(stream);
    change(file);
    const auto read = store::read_creature_library(file, "creatures.json", srd5());
    return read.ok() ? std::string("none") : base::to_text(read.error());
}

} // namespace

TEST_CASE("library: every creature of the document is there, for both editions of the rules") {
    // SRD 5.1 (CC-BY-4.0), Monsters, Miscellaneous Creatures, Nonplayer Characters: 317 entries and
    // 5 printed variants.
    CHECK(library().size() == 322);
    const auto later =
        store::load_rulebook(assets(), rules::Family::srd5, rules::SrdEdition::srd_5_2_1);
    REQUIRE(later.ok());
    const auto again = store::load_creature_library(assets(), later.value());
    REQUIRE(again.ok());
    CHECK(again.value() == library());
    const auto none =
        store::load_creature_library(assets(), samples::rulebook(rules::Family::four_degree));
    REQUIRE(none.ok());
    CHECK(none.value().empty());
}

TEST_CASE("library: hit points are the mean of the hit dice, rounded down") {
    // SRD 5.1, Monsters, Hit Points.
    for (const game::LibraryCreature& each : library()) {
        CAPTURE(each.name);
        CHECK(floor_of_mean(each.statistics.hit_dice) == each.statistics.hit_points);
    }
}

TEST_CASE("library: hit dice go by size, and each adds the Constitution modifier") {
    // SRD 5.1, Monsters, Hit Dice by Size.
    const std::map<std::string, int> die_of = {
        {"tiny", 4}, {"small", 6}, {"medium", 8}, {"large", 10}, {"huge", 12}, {"gargantuan", 20}};
    int odd = 0;
    for (const game::LibraryCreature& each : library()) {
        CAPTURE(each.name);
        const auto dice = rules::parse_dice(each.statistics.hit_dice);
        REQUIRE(dice.ok());
        REQUIRE(dice.value().terms.size() == 1);
        const rules::DiceTerm term = dice.value().terms.front();
        REQUIRE(die_of.count(each.size) == 1);
        CHECK(term.sides == die_of.at(each.size));
        const int constant = term.count * each.statistics.abilities.at("con");
        if (dice.value().constant != constant) odd += 1;
    }
    CHECK(odd == 1); // the Horned Devil, 17d10+55 in the document itself
}

TEST_CASE("library: damage averages are the mean of the dice, rounded down") {
    // SRD 5.1, Monsters, Actions. 746 printed averages stand in attacks and saves and elsewhere;
    // here those of base hits and of failed saves.
    int checked = 0;
    const auto check = [&](const std::vector<game::DamagePart>& damage) {
        for (const game::DamagePart& part : damage) {
            CAPTURE(part.dice);
            CHECK(floor_of_mean(part.dice) == part.average);
            checked += 1;
        }
    };
    for (const game::LibraryCreature& each : library()) {
        CAPTURE(each.name);
        for (const game::LibraryAttack& attack : each.attacks)
            check(attack.damage);
        for (const game::SaveEffect& effect : each.save_effects)
            check(effect.damage);
    }
    CHECK(checked == 577 + 113);
}

TEST_CASE("library: experience points follow from the challenge rating") {
    // SRD 5.1, Monsters, Experience Points by Challenge Rating.
    const std::map<double, int> published = {
        {0, 10},      {0.125, 25},  {0.25, 50},   {0.5, 100},  {1, 200},    {2, 450},
        {3, 700},     {4, 1100},    {5, 1800},    {6, 2300},   {7, 2900},   {8, 3900},
        {9, 5000},    {10, 5900},   {11, 7200},   {12, 8400},  {13, 10000}, {14, 11500},
        {15, 13000},  {16, 15000},  {17, 18000},  {18, 20000}, {19, 22000}, {20, 25000},
        {21, 33000},  {22, 41000},  {23, 50000},  {24, 62000}, {25, 75000}, {26, 90000},
        {27, 105000}, {28, 120000}, {29, 135000}, {30, 155000}};
    int harmless = 0;
    for (const game::LibraryCreature& each : library()) {
        CAPTURE(each.name);
        REQUIRE(published.count(each.statistics.challenge) == 1);
        if (each.xp == 0 && each.statistics.challenge == 0) {
            harmless += 1; // worth 0 or 10 at challenge 0, by the same table
            CHECK(each.attacks.empty());
            continue;
        }
        CHECK(each.xp == published.at(each.statistics.challenge));
    }
    CHECK(harmless == 2);
}

TEST_CASE("library: passive Perception is 10 and the Perception modifier") {
    // SRD 5.1, Using Ability Scores, Passive Checks.
    for (const game::LibraryCreature& each : library()) {
        CAPTURE(each.name);
        CHECK(each.passive_perception == 10 + each.statistics.perception);
    }
}

TEST_CASE("library: single creatures against the document") {
    // SRD 5.1, Monsters (A), Aboleth.
    const game::LibraryCreature& aboleth = creature("aboleth");
    CHECK(aboleth.statistics.armor_class == 17);
    CHECK(aboleth.statistics.hit_points == 135);
    CHECK(aboleth.statistics.speeds_ft.at("swim") == 40);
    CHECK(aboleth.statistics.abilities.at("str") == 5);
    CHECK(aboleth.statistics.saves.at("con") == 6);
    CHECK(aboleth.statistics.saves.at("str") == 5); // untrained: Strength alone
    CHECK(aboleth.statistics.saves.size() == 6);
    CHECK(aboleth.statistics.skills.at("history") == 12);
    CHECK(aboleth.legendary_actions == 3);
    // SRD 5.1, Monsters (D), Adult Black Dragon.
    const game::LibraryCreature& dragon = creature("adult_black_dragon");
    CHECK(dragon.statistics.challenge == 14);
    CHECK(dragon.size == "huge");
    CHECK(dragon.statistics.immunities == std::vector<std::string>{"acid"});
    REQUIRE(dragon.attacks.size() == 3);
    CHECK(dragon.attacks[0].reach_ft == 10);
    CHECK(dragon.attacks[0].damage[1] == game::DamagePart{"1d8", 4, "acid"});
    CHECK(dragon.routines.size() == 1);
    // SRD 5.1, Nonplayer Characters, Bandit Captain: two ways to attack.
    const game::LibraryCreature& captain = creature("bandit_captain");
    REQUIRE(captain.routines.size() == 2);
    CHECK(game::routine_text(captain.routines[0]) == "2 Scimitar, 1 Dagger");
    CHECK(game::routine_text(captain.routines[1]) == "2 Dagger");
    CHECK(creature("ghost").hovers);
}

TEST_CASE("library: a slip of the pen is named with its place and what is needed") {
    CHECK(complaint([](json&) {}) == "none");
    CHECK(
        complaint([](json& file) { file["creatures"][0]["hit_dice"] = "3d0"; }) ==
        "creatures.json (/creatures/0/hit_dice): In the creature library, dice such as 2d6+3 is "
        "needed here, not \"3d0\". Correct it there, or put the original file back."
    );
    const auto place = [](const std::function<void(json&)>& change) {
        const std::string text = complaint(change);
        const std::size_t from = text.find('(');
        return text.substr(from + 1, text.find(')') - from - 1);
    };
    const auto first = [&](const std::function<void(json&)>& change) {
        return place([&](json& file) { change(file["creatures"][0]); });
    };
    CHECK(first([](json& c) { c["size"] = 3; }) == "/creatures/0/size");
    CHECK(first([](json& c) { c["speed"] = 30; }) == "/creatures/0/speed");
    CHECK(first([](json& c) { c.erase("xp"); }) == "/creatures/0");
    CHECK(first([](json& c) { c["challenge"] = 0.3; }) == "/creatures/0/challenge");
    CHECK(first([](json& c) { c["challenge"] = 1e300; }) == "/creatures/0/challenge");
    CHECK(first([](json& c) { c["saves"]["luck"] = 1; }) == "/creatures/0/saves/luck");
    CHECK(first([](json& c) { c["scores"].erase(0); }) == "/creatures/0/scores");
    CHECK(first([](json& c) { c["immunities"] = {"mud"}; }) == "/creatures/0/immunities/0");
    CHECK(first([](json& c) { c["resistances"] = {"prone"}; }) == "/creatures/0/resistances/0");
    CHECK(first([](json& c) { c["routines"][0][0][0] = "Beak"; }) == "/creatures/0/routines/0/0/0");
    CHECK(first([](json& c) { c["routines"][0] = json::array(); }) == "/creatures/0/routines/0");
    CHECK(first([](json& c) {
              c["attacks"][0]["damage"][0] = {"1d4", 2};
          }) == "/creatures/0/attacks/0/damage/0");
    CHECK(first([](json& c) {
              c["attacks"][0]["damage"][0][2] = "mud";
          }) == "/creatures/0/attacks/0/damage/0/2");
    CHECK(first([](json& c) {
              c["attacks"][0]["range_ft"] = {10, 20, 30};
          }) == "/creatures/0/attacks/0/range_ft");
    CHECK(first([](json& c) {
              c["save_effects"][1]["on_hit_of"] = "Beak";
          }) == "/creatures/0/save_effects/1/on_hit_of");
    CHECK(first([](json& c) {
              c["save_effects"][0]["ability"] = "luck";
          }) == "/creatures/0/save_effects/0/ability");
    CHECK(first([](json& c) {
              c["spellcasting"] = {{{"ability", "luck"}, {"dc", 12}}};
          }) == "/creatures/0/spellcasting/0/ability");
    CHECK(place([](json& f) { f["format"] = "other"; }) == "/format");
    CHECK(place([](json& f) { f["family"] = "four_degree"; }) == "/family");
    CHECK(place([](json& f) { f["creatures"][1]["key"] = "aboleth"; }) == "/creatures/1/key");
}

TEST_CASE("library: a file that is missing or no JSON is named with its line") {
    const std::filesystem::path folder =
        std::filesystem::temp_directory_path() / ("tablewick_library_" + std::to_string(getpid()));
    std::filesystem::create_directories(folder / "creatures");
    const auto missing = store::load_creature_library(folder, srd5());
    REQUIRE_FALSE(missing.ok());
    CHECK(missing.error().kind == base::ErrorKind::not_found);
    std::ofstream(folder / "creatures" / "srd51.json")
        << "{\"format\": \"tablewick-creatures\", \"family\": \"srd5\",\n\"creatures\": [\n{}]}";
    const auto empty = store::load_creature_library(folder, srd5());
    REQUIRE_FALSE(empty.ok());
    CHECK(empty.error().place.line == 3);
    CHECK(empty.error().place.pointer == "/creatures/0");
    std::ofstream(folder / "creatures" / "srd51.json") << "{\n,}";
    const auto broken = store::load_creature_library(folder, srd5());
    REQUIRE_FALSE(broken.ok());
    CHECK(broken.error().kind == base::ErrorKind::not_json);
    std::filesystem::remove_all(folder);
}
