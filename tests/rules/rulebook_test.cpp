#include "rules/rulebook.h"
#include "store/rulebook_json.h"

#include <doctest/doctest.h>

#include <algorithm>

namespace {

rules::Rulebook load(rules::Family family) {
    auto rulebook = store::load_rulebook(
        std::string(TABLEWICK_SOURCE_DIR) + "/assets", family, rules::SrdEdition::srd_5_1
    );
    REQUIRE(rulebook.ok());
    return rulebook.value();
}

} // namespace

TEST_CASE("rulebook: conditions and stats are found by key") {
    const rules::Rulebook four = load(rules::Family::four_degree);
    REQUIRE(rules::find_condition(four, "off_guard") != nullptr);
    CHECK(rules::find_condition(four, "off_guard")->name == "off-guard");
    CHECK(rules::find_condition(four, "exhaustion") == nullptr);
    CHECK(rules::find_condition(four, "") == nullptr);
    REQUIRE(rules::find_stat(four, "reflex") != nullptr);
    CHECK(rules::find_stat(four, "reflex")->ability == "dex");
    CHECK(rules::find_stat(four, "perception") == nullptr); // neither save nor skill there
    CHECK(rules::find_stat(four, "luck") == nullptr);
    // In srd5 "dex" is a save and an ability: the save is meant first.
    const rules::Rulebook srd = load(rules::Family::srd5);
    REQUIRE(rules::find_stat(srd, "dex") != nullptr);
    CHECK(rules::find_stat(srd, "dex")->ability == "dex");
    CHECK(rules::find_stat(srd, "perception") != nullptr);
}

TEST_CASE("rulebook: the abilities that saves and skills rest on") {
    // Player Core (ORC), saving throws and skills; SRD 5.1, Using Ability Scores.
    const rules::Rulebook four = load(rules::Family::four_degree);
    const rules::Rulebook srd = load(rules::Family::srd5);
    const std::vector<std::tuple<const rules::Rulebook*, std::string, std::string>> rows = {
        {&four, "fortitude", "con"},
        {&four, "will", "wis"},
        {&four, "athletics", "str"},
        {&four, "crafting", "int"},
        {&four, "nature", "wis"},
        {&four, "religion", "wis"},
        {&four, "thievery", "dex"},
        {&four, "occultism", "int"},
        {&four, "performance", "cha"},
        {&srd, "nature", "int"},
        {&srd, "religion", "int"},
        {&srd, "insight", "wis"},
        {&srd, "history", "int"},
        {&srd, "persuasion", "cha"},
        {&srd, "sleight_of_hand", "dex"},
    };
    for (const auto& row : rows) {
        const rules::Rulebook& rulebook = *std::get<0>(row);
        const std::string& key = std::get<1>(row);
        CAPTURE(key);
        REQUIRE(rules::find_stat(rulebook, key) != nullptr);
        CHECK(rules::find_stat(rulebook, key)->ability == std::get<2>(row));
    }
    CHECK(four.skills.size() == 16); // Player Core (ORC), skills, without Lore
    CHECK(srd.skills.size() == 18);  // SRD 5.1, Using Ability Scores
}

TEST_CASE("rulebook: the stat words of a family, each once and sorted") {
    for (const auto family : {rules::Family::four_degree, rules::Family::srd5}) {
        const std::vector<std::string> words = rules::stat_words(load(family));
        CHECK(std::is_sorted(words.begin(), words.end()));
        CHECK(std::adjacent_find(words.begin(), words.end()) == words.end());
        const auto knows = [&](const char* word) {
            return std::binary_search(words.begin(), words.end(), std::string(word));
        };
        for (const char* word :
             {"ac", "all_checks", "perception", "dex_saves", "str_checks", "speed"})
            CHECK(knows(word));
        CHECK(knows("reflex") == (family == rules::Family::four_degree));
        CHECK(knows("insight") == (family == rules::Family::srd5));
        CHECK_FALSE(knows("luck"));
    }
}

TEST_CASE("rulebook: a screen can ask what is a house rule") {
    rules::Rulebook book;
    CHECK_FALSE(rules::is_house_ruled(book, ""));
    book.house_ruled = {{"/dc_by_level/rows/10/dc"}, {"/turn/actions"}};
    CHECK(rules::is_house_ruled(book, ""));
    CHECK(rules::is_house_ruled(book, "/dc_by_level"));
    CHECK(rules::is_house_ruled(book, "/dc_by_level/rows/10"));
    CHECK(rules::is_house_ruled(book, "/turn/actions"));
    CHECK_FALSE(rules::is_house_ruled(book, "/dc_by_level/rows/1")); // another row
    CHECK_FALSE(rules::is_house_ruled(book, "/turn/actions/more"));
    CHECK_FALSE(rules::is_house_ruled(book, "/simple_dc"));
}
