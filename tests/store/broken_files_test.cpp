// Ways a campaign file gets broken: by a cut, an editor, a script, a newer program, a bad disk.
// Each ends in one clear sentence with its place, and the file is left as it is.
#include "store/campaign_json.h"
#include "store/campaign_open.h"
#include "store/json_text.h"
#include "store/samples.h"
#include "store/simulated_disk.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using base::ErrorKind;

namespace {

// A small campaign whose lines are easy to count.
const std::string good = R"({
    "format": "tablewick",
    "version": 1,
    "revision": 3,
    "about": {
        "title": "Pier",
        "rules": "srd5"
    },
    "encounter": {
        "phase": "running",
        "round": 1,
        "current": 1,
        "order": [1, 2],
        "combatants": [
            {"id": 1, "name": "", "side": "party", "character": 1, "hp": 9, "standing": "in_order"},
            {"id": 2, "name": "Dock Rat", "side": "opponents", "hp": 4, "standing": "in_order",
             "conditions": [{"id": 3, "key": "prone"}]}
        ],
        "next_id": 9
    },
    "party": {
        "characters": [{"id": 1, "name": "Wren", "statistics": {"hit_points": 9, "challenge": 0.5}}]
    }
}
)";

std::string with(const std::string& from, const std::string& to) {
    std::string text = good;
    const std::size_t at = text.find(from);
    REQUIRE(at != std::string::npos);
    return text.replace(at, from.size(), to);
}

std::string cut_after(const std::string& part) {
    return good.substr(0, good.find(part) + part.size());
}

struct Breakage {
    std::string what;
    std::string text;
    ErrorKind kind;
    std::string message;
};

std::vector<Breakage> breakages() {
    return {
        {"empty file", "", ErrorKind::not_json, "camp.json:1:1: The file ends in the middle."},
        {"cut in the middle",
         cut_after("\"hp\": 9"),
         ErrorKind::not_json,
         "camp.json:15:75 (/encounter/combatants/0/hp): The file ends in the middle."},
        {"cut inside a text",
         cut_after("\"Pi"),
         ErrorKind::not_json,
         "camp.json:6:21 (/about/title): The file ends in the middle."},
        {"a comma too many",
         with("\"srd5\"\n", "\"srd5\",\n"),
         ErrorKind::not_json,
         "camp.json:8:5 (/about/rules): This is not valid JSON."},
        {"a comma missing",
         with("\"version\": 1,", "\"version\": 1"),
         ErrorKind::not_json,
         "camp.json:4:14 (/version): This is not valid JSON."},
        {"not JSON at all",
         "Dear diary,\nthe rats are back.\n",
         ErrorKind::not_json,
         "camp.json:1:1: This is not valid JSON."},
        {"something after the end",
         good + "{}",
         ErrorKind::not_json,
         "camp.json:25:1: Something follows after the end of the file's content."},
        {"another kind of file",
         with("\"tablewick\"", "\"recipes\""),
         ErrorKind::wrong_format,
         "camp.json:2:15 (/format): This is not a campaign file: its \"format\" must be "
         "\"tablewick\"."},
        {"a list instead of a campaign",
         "[1, 2]",
         ErrorKind::wrong_format,
         "camp.json:1:1: This is not a campaign file: it must be an object in braces."},
        {"a newer program's file",
         with("\"version\": 1", "\"version\": 7"),
         ErrorKind::newer_version,
         "camp.json:3:16 (/version): This campaign was written by a newer version of the program "
         "(file version 7, this program reads up to 1). Open it with the newer version."},
        {"no version",
         with("\"version\": 1,", ""),
         ErrorKind::missing_field,
         "camp.json:1:1: Version is missing."},
        {"coins that no amount can be written in",
         with(
             "\"party\": {",
             "\"treasury\": {\"coins\": [{\"abbreviation\": \"gp\", \"worth\": 100}]},\n    "
             "\"party\": {"
         ),
         ErrorKind::bad_text,
         "camp.json:21:27 (/treasury/coins): One coin that amounts are shown in must be worth 1."},
        {"a text for a number",
         with("\"hp\": 9", "\"hp\": \"nine\""),
         ErrorKind::wrong_type,
         "camp.json:15:74 (/encounter/combatants/0/hp): Hit points must be a whole number from 0 "
         "to "
         "9999."},
        {"a number far too large for its field",
         with("\"hit_points\": 9", "\"hit_points\": 1000000"),
         ErrorKind::out_of_range,
         "camp.json:22:79 (/party/characters/0/statistics/hit_points): Hit points must be a whole "
         "number from 1 to 9999."},
        {"a number that fits no computer",
         with("0.5", "1e999"),
         ErrorKind::out_of_range,
         "camp.json:22:95 (/party/characters/0/statistics/challenge): The number 1e999 is too "
         "large."},
        {"not a number",
         with("0.5", "NaN"),
         ErrorKind::not_json,
         "camp.json:22:95 (/party/characters/0/statistics/challenge): This is not valid JSON."},
        {"a word nobody knows",
         with("\"opponents\"", "\"foes\""),
         ErrorKind::out_of_range,
         "camp.json:16:51 (/encounter/combatants/1/side): Side must be one of: party, opponents, "
         "others."},
        {"a key twice",
         with("\"title\": \"Pier\",", "\"title\": \"Pier\", \"title\": \"Quay\","),
         ErrorKind::duplicate,
         "camp.json:6:26 (/about/title): The key \"title\" stands here twice."},
        {"an id twice",
         with("\"id\": 2", "\"id\": 1"),
         ErrorKind::duplicate,
         "camp.json:16:20 (/encounter/combatants/1/id): The id 1 stands on two combatants."},
        {"a turn of nobody",
         with("[1, 2]", "[1, 2, 8]"),
         ErrorKind::dangling_reference,
         "camp.json:13:25 (/encounter/order/2): There is no combatant with the id 8."},
        {"a combatant of a gone character",
         with("\"character\": 1", "\"character\": 5"),
         ErrorKind::dangling_reference,
         "camp.json:15:65 (/encounter/combatants/0/character): There is no character with the id "
         "5."},
        {"nested far too deep",
         with("\"Pier\"", std::string(100, '[') + std::string(100, ']')),
         ErrorKind::too_deep,
         "camp.json:6:80 (/about/title" +
             [] {
                 std::string zeros;
                 for (int i = 0; i < 62; ++i)
                     zeros += "/0";
                 return zeros;
             }() +
             "): The nesting is deeper than 64."},
        {"bytes that are no text",
         with("Pier", "P\xFFier"),
         ErrorKind::bad_text,
         "camp.json:6:20 (/about/title): The text is not valid UTF-8 here."},
        {"a section of the wrong kind",
         with(
             "\"party\": {\n        \"characters\"",
             "\"party\": [], \"other\": {\n        \"characters\""
         ),
         ErrorKind::wrong_type,
         "camp.json:21:14 (/party): Party must be an object in braces."},
        {"a character without a name",
         with("\"name\": \"Wren\", ", ""),
         ErrorKind::missing_field,
         "camp.json:22:24 (/party/characters/0): Name is missing."},
    };
}

} // namespace

TEST_CASE("broken files: the unbroken one is read") {
    const auto reading = store::read_campaign(good, "camp.json");
    CHECK(reading.loaded.has_value());
    CHECK(reading.problems.empty());
}

TEST_CASE("broken files: each way of breaking ends in one clear sentence with its place") {
    REQUIRE(breakages().size() >= 20);
    for (const Breakage& breakage : breakages()) {
        CAPTURE(breakage.what);
        const auto reading = store::read_campaign(breakage.text, "camp.json");
        CHECK(!reading.loaded.has_value());
        REQUIRE(!reading.problems.empty());
        CHECK(base::to_text(reading.error()) == breakage.message);
        CHECK(static_cast<int>(reading.error().kind) == static_cast<int>(breakage.kind));
    }
}

TEST_CASE("broken files: a backup is opened read-only and the broken file stays as it is") {
    for (const Breakage& breakage : breakages()) {
        CAPTURE(breakage.what);
        simulated::Disk disk;
        disk.put("/table/camp.json", breakage.text);
        disk.put("/table/camp.backups/2026-01-30T19-00-00Z.json", good);
        disk.put("/table/camp.backups/2026-01-31T19-00-00Z.json", "{ spoiled");
        const auto opened = store::open_campaign(
            disk, "/table/camp.json", "process 1 on lamp", "2026-02-03T20-00-00Z"
        );
        REQUIRE(opened.ok());
        CHECK(opened.value().loaded.campaign.about.title == "Pier");
        CHECK(!opened.value().start.has_value());
        CHECK(
            opened.value().read_only_cause ==
            "This is the backup 2026-01-30T19-00-00Z.json; the campaign file itself cannot be read."
        );
        REQUIRE(opened.value().messages.size() == 2);
        CHECK(opened.value().messages[0] == "/table/" + breakage.message);
        CHECK(disk.content("/table/camp.json") == breakage.text);
    }
}

TEST_CASE("broken files: without a backup the error is told and nothing is made up") {
    simulated::Disk disk;
    disk.put("/table/camp.json", "{");
    const auto opened =
        store::open_campaign(disk, "/table/camp.json", "process 1 on lamp", "2026-02-03T20-00-00Z");
    REQUIRE(!opened.ok());
    CHECK(opened.error().kind == ErrorKind::not_json);
    CHECK(disk.names() == std::vector<std::string>{"/table/camp.json"});
}

TEST_CASE("broken files: a file over 256 MB is not even read") {
    const auto outcome = store::check_size((std::size_t{256} << 20) + 1, "camp.json");
    REQUIRE(!outcome.ok());
    CHECK(outcome.error().kind == ErrorKind::too_large);
    CHECK(base::to_text(outcome.error()) == "camp.json: The file is larger than 256 MB.");
    CHECK(store::check_size(std::size_t{256} << 20, "camp.json").ok());
}
