#include "store/rulebook_conditions.h"
#include "store/rulebook_json.h"

#include <doctest/doctest.h>

#include <fstream>
#include <tuple>

namespace {

using nlohmann::json;

json four_degree_tables() {
    std::ifstream stream(std::string(TABLEWICK_SOURCE_DIR) + "/assets/rules/four_degree.json");
    return json::parse(stream);
}

// What is said about the tables when their first condition (blinded, which has no value) has this
// one effect.
std::string complaint_about(json book, const json& effect) {
    book["conditions"]["list"][0]["effects"] = json::array({effect});
    const auto rulebook = store::read_rulebook(book, "house.json", rules::SrdEdition::srd_5_1);
    return rulebook.ok() ? std::string("none") : base::to_text(rulebook.error());
}

} // namespace

TEST_CASE("rulebook: an effect that would do nothing is refused") {
    const json book = four_degree_tables();
    const std::vector<std::tuple<json, std::string, std::string>> rows = {
        {{{"kind", "sparkles"}}, "/kind", "one of modifier, own_rolls"},
        {json::object(), "", "a key \"kind\""},
        {{{"kind", "modifier"}, {"amount", -1}}, "", "a key \"applies_to\""},
        {{{"kind", "modifier"}, {"amount", -1}, {"applies_to", {"luck"}}},
         "/applies_to/0",
         "a stat word"},
        {{{"kind", "modifier"}, {"amount", -1}, {"applies_to", json::array()}},
         "/applies_to",
         "at least one stat word"},
        {{{"kind", "modifier"}, {"applies_to", {"ac"}}}, "", "an \"amount\""},
        {{{"kind", "modifier"}, {"applies_to", {"ac"}}, {"amout", -1}},
         "/amout",
         "one of the keys kind, applies_to"},
        {{{"kind", "modifier"}, {"applies_to", {"ac"}}, {"amount_per_value", -1}},
         "/amount_per_value",
         "\"has_value\": true"},
        {{{"kind", "modifier"}, {"applies_to", {"ac"}}, {"amount", 1}, {"bonus_type", "luck"}},
         "/bonus_type",
         "one of untyped, circumstance"},
        {{{"kind", "modifier"}, {"applies_to", {"ac"}}, {"amount", 100000}},
         "/amount",
         "from -1000 to 1000"},
        {{{"kind", "modifier"}, {"applies_to", {"ac"}}, {"amount", 1}, {"is_situational", true}},
         "",
         "a \"note\""},
        {{{"kind", "own_rolls"}, {"applies_to", {"attack"}}}, "", "a key \"mode\""},
        {{{"kind", "rolls_against"}, {"mode", "great"}}, "/mode", "one of advantage"},
        {{{"kind", "fails"}}, "", "a key \"applies_to\""},
        {{{"kind", "speed_factor"}, {"factor", 0}}, "/factor", "a number above 0 and up to 1"},
        {{{"kind", "hp_max_factor"}}, "", "a key \"factor\""},
        {{{"kind", "told"}}, "", "a key \"note\""},
        {{{"kind", "implies"}}, "", "a key \"condition\""},
        {{{"kind", "implies"}, {"condition", "sleepy"}}, "/condition", "the key of a condition"},
        {{{"kind", "overrides"}, {"condition", "sleepy"}}, "/condition", "not \"sleepy\""},
        {{{"kind", "implies"}, {"condition", "clumsy"}}, "", "the value of clumsy"},
        {{{"kind", "implies"}, {"condition", "blinded"}}, "/condition", "bring blinded back"},
        // unconscious brings blinded with it already
        {{{"kind", "gains_when_set"}, {"condition", "unconscious"}},
         "/condition",
         "bring blinded back"},
    };
    for (const auto& [effect, place, needed] : rows) {
        const std::string said = complaint_about(book, effect);
        CAPTURE(said);
        CHECK(said.find("(/conditions/list/0/effects/0" + place + "): ") != std::string::npos);
        CHECK(said.find(needed) != std::string::npos);
    }
}

TEST_CASE("rulebook: an effect reads as it is written") {
    const json effect = {
        {"kind", "modifier"},
        {"applies_to", {"ac", "reflex"}},
        {"bonus_type", "circumstance"},
        {"amount", -3},
        {"is_situational", true},
        {"note", "in the dark"}};
    json book = four_degree_tables();
    book["conditions"]["list"][0]["effects"] = json::array({effect});
    const auto rulebook = store::read_rulebook(book, "house.json", rules::SrdEdition::srd_5_1);
    REQUIRE(rulebook.ok());
    const rules::ConditionRule& blinded = *rules::find_condition(rulebook.value(), "blinded");
    REQUIRE(blinded.effects.size() == 1);
    rules::Effect expected;
    expected.kind = rules::EffectKind::modifier;
    expected.applies_to = {"ac", "reflex"};
    expected.bonus_type = rules::BonusType::circumstance;
    expected.amount = -3;
    expected.is_situational = true;
    expected.note = "in the dark";
    CHECK(blinded.effects.front() == expected);
}

TEST_CASE("rulebook: conditions stand in the order of their names") {
    const auto rulebook =
        store::read_rulebook(four_degree_tables(), "house.json", rules::SrdEdition::srd_5_1);
    REQUIRE(rulebook.ok());
    const auto& conditions = rulebook.value().conditions;
    for (std::size_t at = 1; at < conditions.size(); ++at)
        CHECK(conditions[at - 1].name < conditions[at].name);
}
