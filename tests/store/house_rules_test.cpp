#include "rules/difficulty.h"
#include "store/house_rules.h"
#include "store/rulebook_json.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>
#include <unistd.h>

namespace {

using nlohmann::json;

std::string assets() {
    return std::string(TABLEWICK_SOURCE_DIR) + "/assets";
}

json shipped_tables() {
    std::ifstream stream(assets() + "/rules/four_degree.json");
    return json::parse(stream);
}

// A house-rules file of its own, gone at the end.
struct HouseRulesFile {
    std::filesystem::path path = std::filesystem::temp_directory_path() /
                                 ("tablewick_house_rules_" + std::to_string(getpid()) + ".json");

    explicit HouseRulesFile(const std::string& text) { std::ofstream(path) << text; }

    ~HouseRulesFile() { std::filesystem::remove(path); }

    HouseRulesFile(const HouseRulesFile&) = delete;
    HouseRulesFile& operator=(const HouseRulesFile&) = delete;

    base::Result<rules::Rulebook> load(
        rules::Family family = rules::Family::four_degree,
        rules::SrdEdition edition = rules::SrdEdition::srd_5_1
    ) const {
        return store::load_rulebook(assets(), family, edition, path);
    }
};

std::string with_rules(const std::string& replace, const std::string& family = "four_degree") {
    return "{\n  \"format\": \"tablewick-house-rules\",\n  \"family\": \"" + family +
           "\",\n  \"replace\": {\n    " + replace + "\n  }\n}\n";
}

base::Error error_of(const std::string& text) {
    const HouseRulesFile file(text);
    const auto book = file.load();
    REQUIRE_FALSE(book.ok());
    CHECK(book.error().place.file == file.path.string());
    CHECK_FALSE(book.error().remedy.empty());
    return book.error();
}

base::Error error_of_rule(const std::string& replace) {
    return error_of(with_rules(replace));
}

} // namespace

TEST_CASE("house rules: single values are replaced, and only those") {
    const HouseRulesFile file(
        with_rules(R"("/dc_by_level/rows/7/dc": 24, "/turn/attack_penalty/1": -4)")
    );
    const auto changed = file.load();
    REQUIRE(changed.ok());
    CHECK(rules::dc_for_level(changed.value(), 7).value() == 24);
    CHECK(rules::dc_for_level(changed.value(), 8).value() == 24); // GM Core (ORC): unchanged
    CHECK(changed.value().turn.attack_penalty[1] == -4);
    CHECK(
        changed.value().house_ruled ==
        std::vector<rules::HouseRule>{
            {"/dc_by_level/rows/7/dc", "23", "24"}, {"/turn/attack_penalty/1", "-5", "-4"}}
    );
    CHECK(rules::is_house_ruled(changed.value(), "/dc_by_level"));
    CHECK(rules::is_house_ruled(changed.value(), "/turn/attack_penalty/1"));
    CHECK_FALSE(rules::is_house_ruled(changed.value(), "/simple_dc"));

    auto plain =
        store::load_rulebook(assets(), rules::Family::four_degree, rules::SrdEdition::srd_5_1);
    REQUIRE(plain.ok());
    CHECK(plain.value().house_ruled.empty());
    // Put back by hand, it is the shipped rulebook again: nothing else has changed.
    rules::Rulebook restored = changed.value();
    restored.house_ruled.clear();
    restored.difficulty.by_level[7].dc = 23;
    restored.turn.attack_penalty[1] = -5;
    CHECK(restored == plain.value());
}

TEST_CASE("house rules: texts, dice and truths can be replaced, a remark may stand on top") {
    const HouseRulesFile file(R"({
  "format": "tablewick-house-rules",
  "family": "four_degree",
  "about": "Kinder healing",
  "replace": {
    "/treat_wounds/rows/0/success": "3d8",
    "/turn/opponents_win_ties": false,
    "/conditions/list/0/summary": "Cannot see anything at all."
  }
})");
    const auto book = file.load();
    REQUIRE(book.ok());
    CHECK(rules::to_text(book.value().recovery.treat_wounds.ranks[0].success) == "3d8");
    CHECK_FALSE(book.value().turn.opponents_win_ties);
    CHECK(book.value().conditions[0].summary == "Cannot see anything at all.");
    CHECK(book.value().house_ruled.size() == 3);
}

TEST_CASE("house rules: of the other family, read for the edition that is played") {
    const HouseRulesFile file(with_rules(
        R"("/rests/long/hit_dice_divisor/srd_5_1": 1, "/difficulty_classes/rows/0/dc": 6)", "srd5"
    ));
    const auto book = file.load(rules::Family::srd5);
    REQUIRE(book.ok());
    CHECK(book.value().recovery.rests.hit_dice_divisor == 1);
    CHECK(rules::simple_dc(book.value(), "very_easy").value() == 6);
    const auto other = file.load(rules::Family::four_degree);
    REQUIRE_FALSE(other.ok());
    CHECK(other.error().kind == base::ErrorKind::wrong_format);
    CHECK(
        other.error().message == "These house rules cannot be read: \"four_degree\", as the "
                                 "rulebook has it is needed, not \"srd5\"."
    );
    CHECK(other.error().place.line == 3);
}

TEST_CASE("house rules: none at all leave the rulebook as it is") {
    const HouseRulesFile file(with_rules(""));
    const auto book = file.load();
    REQUIRE(book.ok());
    CHECK(book.value().house_ruled.empty());
    CHECK_FALSE(rules::is_house_ruled(book.value(), ""));
}

TEST_CASE("house rules: a pointer that leads nowhere is named with file and line") {
    const base::Error error = error_of_rule(R"("/dc_by_level/rows/26/dc": 24)");
    CHECK(error.kind == base::ErrorKind::dangling_reference);
    CHECK(error.message == "This pointer leads to nothing in the rulebook.");
    CHECK(error.place.pointer == "/dc_by_level/rows/26/dc");
    CHECK(error.place.line == 5);
    for (const char* pointer :
         {"/dc_by_levels/rows/7/dc",
          "/dc_by_level/rows/-/dc",
          "/dc_by_level/rows/07/dc",
          "/dc_by_level/rows/x/dc",
          "/dc_by_level/rows/7/dc/more",
          "/dc_by_level/rows/99999999999999999999/dc",
          "dc_by_level",
          "/~2",
          "/"}) {
        CAPTURE(pointer);
        const base::Error each = error_of_rule("\"" + std::string(pointer) + "\": 24");
        CHECK(each.message == "This pointer leads to nothing in the rulebook.");
        CHECK(each.place.pointer == pointer);
        CHECK(each.place.line == 5);
    }
}

TEST_CASE("house rules: a value of another kind is refused") {
    const base::Error text = error_of_rule(R"("/dc_by_level/rows/7/dc": "24")");
    CHECK(text.kind == base::ErrorKind::wrong_type);
    CHECK(text.message == "The rulebook has a number here, the house rule a text.");
    CHECK(text.place.pointer == "/dc_by_level/rows/7/dc");
    CHECK(
        error_of_rule(R"("/turn/has_delay": 0)").message ==
        "The rulebook has true or false here, the house rule a number."
    );
    CHECK(
        error_of_rule(R"("/simple_dc/rows/0/name": null)").message ==
        "The rulebook has a text here, the house rule null."
    );
    CHECK(
        error_of_rule(R"("/simple_dc/rows/0/dc": [10])").message ==
        "The rulebook has a number here, the house rule a list or a group of values."
    );
    for (const char* pointer : {"/turn/attack_penalty", "/dc_by_level", ""}) {
        CAPTURE(pointer);
        CHECK(
            error_of_rule("\"" + std::string(pointer) + "\": [0]").message ==
            "A house rule replaces a single value, and this pointer leads to a list or a group of "
            "values."
        );
    }
}

TEST_CASE("house rules: what the rulebook cannot be is blamed on the house rule") {
    const base::Error range = error_of_rule(R"("/dc_by_level/rows/7/dc": 2400)");
    CHECK(range.place.pointer == "/dc_by_level/rows/7/dc");
    CHECK(range.place.line == 5);
    CHECK(
        range.message == "The rulebook is not as expected here: a whole number from 0 to 200 is "
                         "needed, not 2400."
    );
    CHECK(range.remedy == "Correct the house rule, or take it out.");
    CHECK(
        error_of_rule(R"("/dc_by_level/rows/7/dc": 23.5)").message.find("a whole number") !=
        std::string::npos
    );
    // The row that no longer fits may be another one than the one replaced.
    const base::Error order = error_of_rule(R"("/encounter_budget/rows/1/budget": 80)");
    CHECK(order.place.pointer == "/encounter_budget/rows/2/budget");
    CHECK(order.message.find("more than the budget of the row before") != std::string::npos);
    CHECK(order.place.line == 4); // "replace"
    error_of_rule(R"("/dc_by_level/rows/7/level": 8)");
    error_of_rule(R"("/family": "srd5")");
    error_of_rule(R"("/format": "mine")");
}

TEST_CASE("house rules: tables that only repeat figures say where those count") {
    const base::Error error = error_of_rule(R"("/flat_checks/rows/0/dc": 6)");
    CHECK(error.kind == base::ErrorKind::not_possible);
    CHECK(
        error.message == "This table only repeats figures for looking up; they count in "
                         "/conditions and /dying."
    );
}

TEST_CASE("house rules: a spoiled file ends in one sentence") {
    CHECK(error_of("").kind == base::ErrorKind::not_json);
    CHECK(error_of("{\n \"format\" 5}").place.line == 2);
    CHECK(error_of("[]").message.find("an object is needed") != std::string::npos);
    CHECK(
        error_of(R"({"format": "tablewick"})").message.find("tablewick-house-rules") !=
        std::string::npos
    );
    CHECK(
        error_of(R"({"format": "tablewick-house-rules", "family": 5, "replace": {}})")
            .message.find("a text is needed, not 5") != std::string::npos
    );
    CHECK(
        error_of(R"({"format": "tablewick-house-rules", "family": "four_degree"})")
            .message.find("a key \"replace\" is needed") != std::string::npos
    );
    CHECK(
        error_of(R"({"format": "tablewick-house-rules", "family": "four_degree", "replace": []})")
            .message.find("an object of pointers and values") != std::string::npos
    );
    CHECK(
        error_of(R"({"format": "tablewick-house-rules", "replaces": {}})")
            .message.find("one of the keys format, family, about, replace") != std::string::npos
    );
    CHECK(
        error_of_rule(R"("/simple_dc/rows/0/dc": 9, "/simple_dc/rows/0/dc": 8)").kind ==
        base::ErrorKind::duplicate
    );
}

TEST_CASE("house rules: a missing file says so") {
    const auto book = store::load_rulebook(
        assets(), rules::Family::srd5, rules::SrdEdition::srd_5_1, "/nowhere/house_rules.json"
    );
    REQUIRE_FALSE(book.ok());
    CHECK(book.error().kind == base::ErrorKind::not_found);
    CHECK(book.error().place.file == "/nowhere/house_rules.json");
}

TEST_CASE("house rules: when one is wrong, none is laid over") {
    const json before = shipped_tables();
    json tables = before;
    const std::string text = with_rules(R"("/dc_by_level/rows/7/dc": 24, "/nothing/here": 1)");
    CHECK_FALSE(store::lay_over(tables, text, "mine.json", rules::Family::four_degree).ok());
    CHECK(tables == before);
}
