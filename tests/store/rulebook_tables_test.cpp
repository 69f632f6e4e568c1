// The tables of difficulty, encounters, advancement and recovery: what is refused, and that tables
// which repeat figures for looking up agree with those that are computed with.
#include "store/rulebook_json.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>
#include <functional>
#include <map>

namespace {

using nlohmann::json;

const json& tables(const std::string& name) {
    static std::map<std::string, json> read;
    if (read.count(name) == 0) {
        std::ifstream stream(std::string(TABLEWICK_SOURCE_DIR) + "/assets/rules/" + name);
        read[name] = json::parse(stream);
    }
    return read.at(name);
}

struct Slip {
    std::function<void(json&)> make;
    std::string place;
    std::string needed;
};

void check_slips(const std::string& name, const std::vector<Slip>& slips) {
    for (const Slip& slip : slips) {
        json book = tables(name);
        slip.make(book);
        const auto read = store::read_rulebook(book, "house.json", rules::SrdEdition::srd_5_1);
        CAPTURE(slip.place);
        REQUIRE_FALSE(read.ok());
        CHECK(read.error().place.pointer == slip.place);
        CHECK(read.error().place.file == "house.json");
        CAPTURE(read.error().message);
        CHECK(read.error().message.find(slip.needed) != std::string::npos);
    }
}

void cut(json& list, std::size_t index) {
    list.erase(list.begin() + static_cast<json::difference_type>(index));
}

} // namespace

TEST_CASE("rulebook tables: missing rows, wrong types and ranges of four-degree are named") {
    check_slips(
        "four_degree.json",
        {
            {[](json& b) { b.erase("dc_by_level"); }, "", "a key \"dc_by_level\""},
            {[](json& b) { b["dc_by_level"].erase("source"); }, "/dc_by_level", "a key \"source\""},
            {[](json& b) { cut(b["dc_by_level"]["rows"], 7); },
             "/dc_by_level/rows/7/level",
             "rows of level 0 to 25 in order and without a gap"},
            {[](json& b) { cut(b["dc_by_level"]["rows"], 25); },
             "/dc_by_level/rows",
             "rows of level 0 to 25"},
            {[](json& b) {
                 b["dc_by_level"]["rows"].push_back({{"level", 26}, {"dc", 52}});
             },
             "/dc_by_level/rows/26/level",
             "rows of level 0 to 25"},
            {[](json& b) { b["dc_by_level"]["rows"][3]["dc"] = "18"; },
             "/dc_by_level/rows/3/dc",
             "a whole number"},
            {[](json& b) { b["dc_by_level"]["rows"][3]["dc"] = -1; },
             "/dc_by_level/rows/3/dc",
             "from 0 to 200"},
            {[](json& b) { b["dc_by_level"]["rows"][3].erase("dc"); },
             "/dc_by_level/rows/3",
             "a key \"dc\""},
            {[](json& b) { cut(b["spell_rank_dc"]["rows"], 0); },
             "/spell_rank_dc/rows/0/rank",
             "rows of rank 1 to 10"},
            {[](json& b) { b["simple_dc"]["rows"] = json::array(); },
             "/simple_dc/rows",
             "at least one entry"},
            {[](json& b) { b["simple_dc"]["rows"][1]["key"] = "untrained"; },
             "/simple_dc/rows/1/key",
             "a key that stands once"},
            {[](json& b) { b["dc_adjustments"]["rarities"][1]["key"] = "hard"; },
             "/dc_adjustments/rarities/1/key",
             "a key that stands once"},
            {[](json& b) { b["dc_adjustments"]["steps"][1]["amount"] = 101; },
             "/dc_adjustments/steps/1/amount",
             "from -100 to 100"},
            {[](json& b) { b["encounter_budget"]["party_size"] = 0; },
             "/encounter_budget/party_size",
             "from 1 to 20"},
            {[](json& b) { b["encounter_budget"]["rows"][2]["budget"] = 60; },
             "/encounter_budget/rows/2/budget",
             "more than the budget of the row before"},
            {[](json& b) { b["encounter_budget"]["rows"][2].erase("per_character"); },
             "/encounter_budget/rows/2",
             "a key \"per_character\""},
            {[](json& b) { cut(b["creature_xp"]["rows"], 4); },
             "/creature_xp/rows/4/level_difference",
             "rows of level_difference -4 to 4"},
            {[](json& b) { b["hazard_xp"]["rows"][4]["complex"] = 0.5; },
             "/hazard_xp/rows/4/complex",
             "a whole number"},
            {[](json& b) { cut(b["hazard_xp"]["rows"], 8); },
             "/hazard_xp/rows",
             "rows of level_difference -4 to 4"},
            {[](json& b) { b["level_up_xp"]["rows"][0]["xp"] = 0; },
             "/level_up_xp/rows/0/xp",
             "from 1 to"},
            {[](json& b) { b["xp_awards"]["rows"][0]["earns_hero_point"] = "no"; },
             "/xp_awards/rows/0/earns_hero_point",
             "true or false"},
            {[](json& b) { b["treat_wounds"]["rows"][0]["success"] = "two dice"; },
             "/treat_wounds/rows/0/success",
             "dice such as 2d8+10"},
            {[](json& b) { b["treat_wounds"]["critical_failure_damage"] = 8; },
             "/treat_wounds/critical_failure_damage",
             "a text"},
            {[](json& b) { b["treat_wounds"]["ends_condition"] = "hurt"; },
             "/treat_wounds/ends_condition",
             "the key of a condition"},
            {[](json& b) { b["treat_wounds"]["full_treatment_factor"] = 0; },
             "/treat_wounds/full_treatment_factor",
             "from 1 to 10"},
            {[](json& b) { b["first_aid"].erase("stabilize_dc_base"); },
             "/first_aid",
             "a key \"stabilize_dc_base\""},
            {[](json& b) { b["rest"]["rough_comfort_divisor"] = 0; },
             "/rest/rough_comfort_divisor",
             "from 1 to 10"},
        }
    );
}

TEST_CASE("rulebook tables: missing rows, wrong types and ranges of srd5 are named") {
    check_slips(
        "srd5.json",
        {
            {[](json& b) { b.erase("difficulty_classes"); }, "", "a key \"difficulty_classes\""},
            {[](json& b) { b["difficulty_classes"]["rows"][0]["dc"] = true; },
             "/difficulty_classes/rows/0/dc",
             "a whole number"},
            {[](json& b) { b.erase("traps"); }, "", "a key \"traps\""},
            {[](json& b) { b["traps"]["dangers"] = json::array(); },
             "/traps/dangers",
             "at least one entry"},
            {[](json& b) { b["traps"]["dangers"][1]["save_dc_max"] = 11; },
             "/traps/dangers/1/save_dc_max",
             "at least save_dc_min"},
            {[](json& b) { b["traps"]["dangers"][2]["attack_max"] = 8; },
             "/traps/dangers/2/attack_max",
             "at least attack_min"},
            {[](json& b) { b["traps"]["damage"][1]["level_min"] = 6; },
             "/traps/damage/1/level_min",
             "levels 1 to 20 in order and without a gap"},
            {[](json& b) { b["traps"]["damage"][1]["level_max"] = 4; },
             "/traps/damage/1/level_max",
             "at least level_min"},
            {[](json& b) { cut(b["traps"]["damage"], 3); },
             "/traps/damage",
             "levels 1 to 20 in order and without a gap"},
            {[](json& b) { b["traps"]["damage"][0].erase("deadly"); },
             "/traps/damage/0",
             "a key \"deadly\""},
            {[](json& b) { b["traps"]["damage"][0]["deadly"] = "many"; },
             "/traps/damage/0/deadly",
             "dice such as 2d8+10"},
            {[](json& b) { cut(b["xp_by_challenge"]["rows"], 1); },
             "/xp_by_challenge/rows/1/challenge",
             "rows of challenge 0, 0.125, 0.25, 0.5 and 1 to 30"},
            {[](json& b) { cut(b["xp_by_challenge"]["rows"], 33); },
             "/xp_by_challenge/rows",
             "rows of challenge"},
            {[](json& b) {
                 b["xp_by_challenge"]["rows"].push_back({{"challenge", 31}, {"xp", 175000}});
             },
             "/xp_by_challenge/rows/34/challenge",
             "rows of challenge"},
            {[](json& b) { b["xp_by_challenge"]["rows"][2]["xp"] = -50; },
             "/xp_by_challenge/rows/2/xp",
             "from 0 to"},
            {[](json& b) { cut(b["xp_budget_per_character"]["rows"], 19); },
             "/xp_budget_per_character/rows",
             "rows of level 1 to 20"},
            {[](json& b) { b["xp_budget_per_character"]["rows"][2]["high"] = 225; },
             "/xp_budget_per_character/rows/2/high",
             "more than the budget of the difficulty before"},
            {[](json& b) { b["xp_budget_per_character"]["difficulties"][1]["key"] = "medium"; },
             "/xp_budget_per_character/rows/0",
             "a key \"medium\""},
            {[](json& b) { b["character_advancement"]["rows"][0]["xp"] = 10; },
             "/character_advancement/rows/0/xp",
             "0 for the first level"},
            {[](json& b) { b["character_advancement"]["rows"][5]["xp"] = 6500; },
             "/character_advancement/rows/5/xp",
             "more than the XP of the row before"},
            {[](json& b) { b["rests"]["short"]["hit_points_per_die_min"].erase("srd_5_1"); },
             "/rests/short/hit_points_per_die_min",
             "a key \"srd_5_1\""},
            {[](json& b) { b["rests"]["long"]["hit_dice_divisor"]["srd_5_1"] = 0; },
             "/rests/long/hit_dice_divisor/srd_5_1",
             "from 1 to 10"},
        }
    );
}

TEST_CASE("rulebook tables: flat checks for looking up are those of conditions and dying") {
    // Player Core (ORC), flat checks: one figure, printed in two places.
    const json& book = tables("four_degree.json");
    const auto dc_of = [&](const std::string& key) {
        for (const json& row : book.at("flat_checks").at("rows"))
            if (row.at("key") == key) return row.at("dc").get<int>();
        FAIL("no flat check " << key);
        return 0;
    };
    const auto rulebook = store::read_rulebook(book, "book", rules::SrdEdition::srd_5_1);
    REQUIRE(rulebook.ok());
    const auto effect_of = [&](const char* condition) {
        for (const rules::Effect& effect :
             rules::find_condition(rulebook.value(), condition)->effects)
            if (effect.kind == rules::EffectKind::flat_check) return effect;
        FAIL("no flat check in " << condition);
        return rules::Effect{};
    };
    for (const auto& pair : std::vector<std::pair<const char*, const char*>>{
             {"concealed", "concealed"},
             {"hidden", "hidden"},
             {"undetected_guess", "undetected"},
             {"persistent_damage", "persistent_damage"},
             {"grabbed_manipulate", "grabbed"},
             {"deafened_auditory", "deafened"},
             {"confused_recovery", "confused"},
             {"stupefied_casting", "stupefied"},
         }) {
        CAPTURE(pair.first);
        CHECK(dc_of(pair.first) == effect_of(pair.second).amount);
    }
    CHECK(effect_of("stupefied").amount_per_value == 1);
    const rules::DyingRules& dying = rulebook.value().dying;
    CHECK(dc_of("persistent_damage") == dying.persistent_flat_dc);
    CHECK(dc_of("persistent_damage_helped") == dying.persistent_helped_dc);
    CHECK(dc_of("recovery_check") == dying.recovery_dc_base);
}

TEST_CASE("rulebook tables: exhaustion for looking up is that of the condition") {
    // SRD 5.2.1, Rules Glossary / Exhaustion: -2 on d20 rolls and -5 feet for each level.
    const json& book = tables("srd5.json");
    const auto rulebook = store::read_rulebook(book, "book", rules::SrdEdition::srd_5_2_1);
    REQUIRE(rulebook.ok());
    const rules::ConditionRule* rule = rules::find_condition(rulebook.value(), "exhaustion");
    REQUIRE(rule != nullptr);
    const json& rows = book.at("exhaustion").at("srd_5_2_1");
    CHECK(rows.size() == static_cast<std::size_t>(rule->max_value));
    for (const json& row : rows) {
        const int level = row.at("level");
        for (const rules::Effect& effect : rule->effects) {
            if (effect.kind == rules::EffectKind::modifier)
                CHECK(row.at("d20_rolls") == effect.amount_per_value * level);
            if (effect.kind == rules::EffectKind::speed_changes)
                CHECK(row.at("speed_ft") == effect.amount_per_value * level);
            if (effect.kind == rules::EffectKind::dies)
                CHECK(row.at("dies") == (level >= effect.from_value));
        }
    }
}

TEST_CASE("rulebook tables: figures that are only looked up so far, against the published ones") {
    const json& four = tables("four_degree.json");
    // GM Core (ORC), table Party Treasure by Level; worked example gp-01: level 3, five characters.
    const json& treasure = four.at("party_treasure_by_level");
    const json& third = treasure.at("rows").at(2);
    CHECK(third.at("level") == 3);
    const int added = third.at("currency_gp_per_added_character");
    CHECK(third.at("currency_gp").get<int>() + added == 150);
    CHECK(third.at("total_gp").get<int>() + added == 530);
    CHECK(treasure.at("rows").size() == 20);
    // GM Core (ORC), tables Treasure by Encounter and Character Wealth.
    CHECK(four.at("treasure_by_encounter").at("rows").at(9).at("severe") == 1200);
    CHECK(four.at("new_character_wealth").at("rows").at(4).at("lump_sum_gp") == 270);
    // Player Core (ORC), table Travel Speed; worked example trv-01: Speed 25, a day of 8 hours.
    const json& travel = four.at("travel_speed");
    const json& walker = travel.at("rows").at(3);
    CHECK(walker.at("speed_ft") == 25);
    CHECK(walker.at("miles_per_day") == 20.0);
    CHECK(walker.at("miles_per_hour").get<double>() * travel.at("day_hours").get<int>() == 20.0);
    CHECK(travel.at("terrain").at(1).at("divisor") == 2);   // 10 miles
    CHECK(travel.at("terrain").at(2).at("divisor") == 3);   // 20/3 miles
    CHECK(four.at("cover").at("rows").at(2).at("ac") == 4); // Player Core (ORC), Cover: greater
    const json& srd = tables("srd5.json");
    // SRD 5.1: Cover, Adventuring / Falling, Objects, Travel Pace, Ability Modifiers.
    CHECK(srd.at("cover").at("rows").at(1).at("ac") == 5);
    CHECK(srd.at("falling").at("dice_max") == 20);
    CHECK(srd.at("objects").at("materials").at(4).at("ac") == 19); // iron, steel
    CHECK(srd.at("travel_pace").at("rows").at(0).at("miles_per_day") == 30);
    for (const json& row : srd.at("ability_modifiers").at("rows")) {
        const int score = row.at("score");
        CHECK(row.at("modifier") == score / 2 - 5); // half of what is above 10, rounded down
    }
    // SRD 5.1, Proficiency Bonus by Challenge Rating: 2 up to challenge 4, then 1 more every four.
    for (const json& row : srd.at("proficiency_by_challenge").at("rows")) {
        const int challenge = std::max(row.at("challenge").get<int>(), 1);
        CHECK(row.at("proficiency") == 2 + (challenge - 1) / 4);
    }
}
