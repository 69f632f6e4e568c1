// The reference file: figures of the rulebook in its texts, and every slip said with its place.
#include "store/reference_json.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <functional>
#include <unistd.h>

namespace {

using nlohmann::json;
using rules::Family;
using rules::SrdEdition;

json tables() {
    return {
        {"rest", {{"hours", 8}, {"lost", -2}, {"armor", "tired"}}},
        {"types", {"fire", "cold"}},
        {"cover",
         {{"rows",
           {{{"key", "low"}, {"name", "low wall"}, {"ac", 2}, {"far", 2.0}, {"hides", false}},
            {{"key", "high"}, {"name", "high wall"}, {"ac", 0}}}}}}};
}

json small_reference() {
    return {
        {"format", "tablewick-reference"},
        {"family", "srd5"},
        {"about", "for the test"},
        {"chapters",
         {{{"title", "Rest"},
           {"entries",
            {{{"key", "night"},
              {"title", "night"},
              {"text", "{/rest/hours} hours, {+/rest/hours}, {+/rest/lost}; {/types}."},
              {"points", {"asleep: {/rest/armor}"}},
              {"also", {"sleep"}},
              {"source", "a test"}},
             {{"key", "walls"},
              {"title", "Walls"},
              {"text", "Stone."},
              {"source", "a test"},
              {"figures",
               {{"rows_of", "/cover/rows"},
                {"columns",
                 {{{"title", "wall"}, {"cell", "{name}"}},
                  {{"title", "AC"}, {"cell", "{+ac}"}},
                  {{"title", "far"}, {"cell", "{far} ft"}},
                  {{"title", "hides"}, {"cell", "{hides}"}}}}}}},
             {{"key", "old"},
              {"title", "Old"},
              {"text", "Once."},
              {"edition", "srd_5_1"},
              {"source", "a test"},
              {"figures",
               {{"titles", json::array({"a", "b"})},
                {"rows", json::array({json::array({"1", "2"})})}}}}}}},
          {{"title", "Walls one by one"},
           {"rows_of", "/cover/rows"},
           {"entry", {{"title", "{name}"}, {"text", "AC {+ac}."}, {"source", "a test"}}}}}}};
}

base::Result<game::Reference> read(const json& reference, SrdEdition edition) {
    return store::read_reference(reference, "srd5.json", tables(), Family::srd5, edition);
}

std::string complaint(const std::function<void(json&)>& change) {
    json reference = small_reference();
    change(reference);
    const auto loaded = read(reference, SrdEdition::srd_5_1);
    return loaded.ok() ? std::string("none")
                       : loaded.error().place.pointer + " " + loaded.error().message;
}

} // namespace

TEST_CASE("reference file: texts and tables are filled with the rulebook's figures") {
    const auto loaded = read(small_reference(), SrdEdition::srd_5_1);
    REQUIRE(loaded.ok());
    const auto& entries = loaded.value().entries;
    REQUIRE(entries.size() == 5);
    CHECK(entries[0].title == "Night");
    CHECK(entries[0].text == "8 hours, +8, -2; fire, cold.");
    CHECK(entries[0].points == std::vector<std::string>{"asleep: tired"});
    CHECK(entries[0].also == std::vector<std::string>{"sleep"});
    CHECK(entries[1].columns == std::vector<std::string>{"wall", "AC", "far", "hides"});
    REQUIRE(entries[1].rows.size() == 2);
    CHECK(entries[1].rows[0] == std::vector<std::string>{"low wall", "+2", "2 ft", "no"});
    CHECK(entries[1].rows[1] == std::vector<std::string>{"high wall", "0", "- ft", "-"});
    CHECK(entries[2].rows[0] == std::vector<std::string>{"1", "2"});
    CHECK(entries[3].key == "low");
    CHECK(entries[3].chapter == "Walls one by one");
    CHECK(entries[4].title == "High wall");
    CHECK(entries[4].text == "AC 0.");
}

TEST_CASE("reference file: what belongs to another edition is left out") {
    const auto loaded = read(small_reference(), SrdEdition::srd_5_2_1);
    REQUIRE(loaded.ok());
    CHECK(loaded.value().entries.size() == 4);
}

TEST_CASE("reference file: every slip is said with its pointer") {
    const char* entry = "/chapters/0/entries/0";

    struct Slip {
        std::string pointer;
        std::string words;
        std::function<void(json&)> change;
    };

    const auto at = [](json& r) -> json& { return r["chapters"][0]["entries"][0]; };
    const std::vector<Slip> slips{
        {"/format", "\"tablewick-reference\"", [](json& r) { r["format"] = "x"; }},
        {"/family", "family of the rulebook", [](json& r) { r["family"] = "four_degree"; }},
        {"/chapters", "a list", [](json& r) { r["chapters"] = 3; }},
        {"/chapters", "at least one entry", [](json& r) { r["chapters"] = json::array(); }},
        {"/abuot", "\"abuot\"", [](json& r) { r["abuot"] = 1; }},
        {entry, "\"source\"", [&](json& r) { at(r).erase("source"); }},
        {std::string(entry) + "/text", "text", [&](json& r) { at(r)["text"] = 3; }},
        {std::string(entry) + "/text",
         "{/rest/days}",
         [&](json& r) { at(r)["text"] = "{/rest/days}"; }},
        {std::string(entry) + "/text", "{/rest}", [&](json& r) { at(r)["text"] = "{/rest}"; }},
        {std::string(entry) + "/text", "{/a~b}", [&](json& r) { at(r)["text"] = "{/a~b}"; }},
        {std::string(entry) + "/text", "{name}", [&](json& r) { at(r)["text"] = "{name}"; }},
        {std::string(entry) + "/text", "between", [&](json& r) { at(r)["text"] = "{/rest"; }},
        {std::string(entry) + "/text", "between", [&](json& r) { at(r)["text"] = "{}"; }},
        {std::string(entry) + "/text", "between", [&](json& r) { at(r)["text"] = "{+}"; }},
        {std::string(entry) + "/key", "small letters", [&](json& r) { at(r)["key"] = "A b"; }},
        {"/chapters/0/entries/1/key",
         "no other entry",
         [&](json& r) { r["chapters"][0]["entries"][1]["key"] = "night"; }},
        {"/chapters/1/rows_of", "no other entry", [&](json& r) { at(r)["key"] = "low"; }},
        {"/chapters/1/rows_of", "a table", [](json& r) { r["chapters"][1]["rows_of"] = "/types"; }},
        {"/chapters/1/entry/key",
         "no key",
         [](json& r) { r["chapters"][1]["entry"]["key"] = "x"; }},
        {"/chapters/0/entries/1/figures/columns/1/cell",
         "a name that a row",
         [](json& r) {
             r["chapters"][0]["entries"][1]["figures"]["columns"][1]["cell"] = "{acc}";
         }},
        {"/chapters/0/entries/2/figures/rows/0",
         "as many cells",
         [](json& r) { r["chapters"][0]["entries"][2]["figures"]["rows"][0] = {"1"}; }},
        {"/chapters/0/entries/2/edition", "srd_5_1", [](json& r) {
             r["chapters"][0]["entries"][2]["edition"] = "srd_6";
         }}};
    for (const Slip& slip : slips) {
        const std::string said = complaint(slip.change);
        CAPTURE(said);
        CAPTURE(slip.words);
        CHECK(said.compare(0, slip.pointer.size() + 1, slip.pointer + " ") == 0);
        CHECK(said.find(slip.words) != std::string::npos);
    }
}

TEST_CASE("reference file: a house rule changes what is looked up") {
    const auto file = std::filesystem::temp_directory_path() /
                      ("tablewick_reference_" + std::to_string(getpid()) + ".json");
    std::ofstream(file) << R"({"format": "tablewick-house-rules", "family": "srd5",
        "replace": {"/falling/dice_max": 30}})";
    const auto loaded = store::load_reference(
        TABLEWICK_SOURCE_DIR "/assets", Family::srd5, SrdEdition::srd_5_1, file
    );
    std::filesystem::remove(file);
    REQUIRE(loaded.ok());
    const auto falling = std::find_if(
        loaded.value().entries.begin(),
        loaded.value().entries.end(),
        [](const game::ReferenceEntry& entry) { return entry.key == "falling"; }
    );
    REQUIRE(falling != loaded.value().entries.end());
    CHECK(falling->text.find("at most 30 dice") != std::string::npos);
}

TEST_CASE("reference file: one that is missing or broken names its file") {
    const auto missing =
        store::load_reference("/nowhere/at/all", Family::srd5, SrdEdition::srd_5_1);
    REQUIRE_FALSE(missing.ok());
    CHECK(missing.error().place.file.find("srd5.json") != std::string::npos);
}

TEST_CASE("reference file: the shipped figures are those of the published tables") {
    const auto four = store::load_reference(
        TABLEWICK_SOURCE_DIR "/assets", Family::four_degree, SrdEdition::srd_5_1
    );
    REQUIRE_MESSAGE(four.ok(), base::to_text(four.error()));
    const auto find = [](const game::Reference& reference, const std::string& key) {
        for (const game::ReferenceEntry& entry : reference.entries)
            if (entry.key == key) return entry;
        return game::ReferenceEntry{};
    };
    // Player Core (ORC), Cover: standard cover +2 to AC, to Reflex against areas, to Stealth.
    CHECK(
        find(four.value(), "cover").rows.at(1) ==
        std::vector<std::string>{"standard cover", "+2", "+2", "+2", "yes"}
    );
    // Player Core (ORC), table Travel Speed: Speed 25 feet is 2.5 miles an hour, 20 a day.
    CHECK(
        find(four.value(), "travel").rows.at(3) ==
        std::vector<std::string>{"25", "250", "2.5", "20"}
    );
    // Player Core (ORC), Multiple Attack Penalty: -5 and -10; agile -4 and -8.
    CHECK(find(four.value(), "attack_penalty").rows.at(2).at(2) == "-8");
    const auto old =
        store::load_reference(TABLEWICK_SOURCE_DIR "/assets", Family::srd5, SrdEdition::srd_5_1);
    const auto later =
        store::load_reference(TABLEWICK_SOURCE_DIR "/assets", Family::srd5, SrdEdition::srd_5_2_1);
    REQUIRE_MESSAGE(old.ok(), base::to_text(old.error()));
    REQUIRE(later.ok());
    // SRD 5.1, Appendix PH-A: exhaustion level 4 halves the hit point maximum.
    CHECK(find(old.value(), "exhaustion_5_1").rows.at(3).at(1) == "hit point maximum halved");
    // SRD 5.2.1, Rules Glossary: -2 for each level on d20 tests, -5 feet.
    CHECK(
        find(later.value(), "exhaustion_5_2").rows.at(2) ==
        std::vector<std::string>{"3", "-6", "-15", "no"}
    );
    CHECK(find(later.value(), "exhaustion_5_1").key.empty());
    // SRD 5.1, Objects: iron and steel AC 19.
    CHECK(find(old.value(), "objects").rows.at(4).at(1) == "19");
}
