#include "store/campaign_json.h"
#include "store/json_text.h"
#include "store/samples.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>

namespace {

// Whether any object of the value has a key of its default constructed kind left in the text.
std::string reading_errors(const store::CampaignReading& reading) {
    std::string text;
    for (const base::Error& error : reading.problems)
        text += base::to_text(error) + "\n";
    return text;
}

store::LoadedCampaign loaded(const std::string& text) {
    const store::CampaignReading reading = store::read_campaign(text, "camp.json");
    INFO(reading_errors(reading));
    REQUIRE(reading.loaded.has_value());
    return *reading.loaded;
}

} // namespace

TEST_CASE("campaign file: everything that can be said in a campaign survives saving and loading") {
    const game::Campaign campaign = samples::everything();
    const store::LoadedCampaign again = loaded(store::write_campaign(campaign, 42));
    CHECK(again.campaign == campaign);
    CHECK(again.revision == 42);
    CHECK(again.version == store::file_version);
}

TEST_CASE("campaign file: an empty campaign survives saving and loading") {
    const game::Campaign campaign;
    CHECK(loaded(store::write_campaign(campaign, 0)).campaign == campaign);
}

TEST_CASE("campaign file: the demo campaign is read without a complaint and survives a round trip"
) {
    const store::CampaignReading reading = store::read_campaign(samples::demo_text(), "demo");
    CHECK(reading_errors(reading) == "");
    REQUIRE(reading.loaded.has_value());
    const game::Campaign campaign = reading.loaded->campaign;
    CHECK(campaign.party.characters.size() == 5);
    CHECK(loaded(store::write_campaign(campaign, 1)).campaign == campaign);
}

TEST_CASE("campaign file: sections are sorted and stand one to a line block, ready for hand editing"
) {
    const std::string text = store::write_campaign(samples::everything(), 42);
    std::size_t at = 0;
    for (const char* key :
         {"\"format\"",
          "\"version\"",
          "\"revision\"",
          "\"about\"",
          "\"clock\"",
          "\"encounter\"",
          "\"history\"",
          "\"party\"",
          "\"preparation\"",
          "\"shelf\"",
          "\"table_rolls\""}) {
        CAPTURE(key);
        const std::size_t found = text.find(std::string("\n    ") + key + ": ");
        REQUIRE(found != std::string::npos);
        CHECK(found > at);
        at = found;
    }
}

TEST_CASE("campaign file: values at their default are left out") {
    game::Campaign campaign;
    campaign.shelf.creatures.push_back({1, "Dock Rat", {}, "", {}});
    campaign.shelf.next_id = 2;
    const std::string text = store::write_campaign(campaign, 1);
    CHECK(text.find("\"attacks\"") == std::string::npos);
    CHECK(text.find("\"senses\"") == std::string::npos);
    CHECK(text.find("\"armor_class\": 10") != std::string::npos);
}

TEST_CASE("campaign file: a file from before experience and hit dice is read as having none") {
    const std::string start =
        R"({"format": "tablewick", "version": 1, "about": {"rules": "srd5"}, "party": {"characters": )";
    const auto old = loaded(start + R"([{"id": 1, "name": "Wren"}]}})").campaign;
    CHECK(old.party.characters[0].experience == 0);
    CHECK(old.party.characters[0].hit_dice.empty());
    CHECK(store::write_campaign(old, 1).find("experience") == std::string::npos);
    const auto reading = store::read_campaign(
        start + R"([{"id": 1, "name": "Wren", "experience": -5}]}})", "c.json"
    );
    REQUIRE(!reading.loaded.has_value());
    CHECK(reading.error().message == "Experience must be a whole number from 0 to 100000000.");
    CHECK(reading.error().place.pointer == "/party/characters/0/experience");
}

TEST_CASE("campaign file: a party member's numbers stand once, with the character") {
    const std::string text = store::write_campaign(samples::demo(), 1);
    auto value = store::parse_json(text, "camp.json");
    REQUIRE(value.ok());
    int party_members = 0;
    for (const store::Json& combatant : value.value()["encounter"]["combatants"]) {
        const bool is_member = combatant.contains("character");
        CHECK(combatant.contains("statistics") != is_member);
        party_members += is_member ? 1 : 0;
    }
    CHECK(party_members == 5);
    CHECK(loaded(text).campaign.encounter.combatants.front().statistics.armor_class == 22);
}

TEST_CASE("campaign file: numbers a script wrote as 3.0 are whole numbers, 3.5 is not") {
    const std::string start =
        R"({"format": "tablewick", "version": 1, "about": {"rules": "srd5"}, )";
    CHECK(loaded(start + R"("clock": {"day": 3.0}})").campaign.clock.day == 3);
    const auto reading = store::read_campaign(start + R"("clock": {"day": 3.5}})", "camp.json");
    REQUIRE(!reading.loaded.has_value());
    CHECK(
        reading.error().message == "The day must be a whole number from -1000000000 to 1000000000."
    );
    CHECK(reading.error().kind == base::ErrorKind::wrong_type);
}

TEST_CASE("campaign file: rolls at the table that cannot have been are told, each at its place") {
    const auto complaint = [](const std::string& rolls) {
        const std::string text =
            R"({"format": "tablewick", "version": 1, "about": {"rules": "srd5"}, "table_rolls": {"rolls": [)" +
            rolls + "]}}";
        return reading_errors(store::read_campaign(text, "camp.json"));
    };
    const std::string good = R"({"id": 3, "stat": "wis", "dc": 15, "results": [)"
                             R"({"character": 1, "name": "Wren", "natural": 12, "modifier": 5, )"
                             R"("degree": "success"}]})";
    CHECK(complaint(good) == "");
    CHECK(
        complaint(good + "," + good)
            .find("(/table_rolls/rolls/1/id): The id 3 stands on two "
                  "rolls at the table.") != std::string::npos
    );
    const auto with = [&](const std::string& was, const std::string& is) {
        std::string changed = good;
        return complaint(changed.replace(changed.find(was), was.size(), is));
    };
    CHECK(with("12", "21").find("(/table_rolls/rolls/0/results/0/natural)") != std::string::npos);
    CHECK(
        with("\"success\"", "\"great\"")
            .find("Degree must be one of: critical_failure, failure, success, critical_success.") !=
        std::string::npos
    );
}

TEST_CASE("campaign file: every problem is told, not only the first") {
    std::string text =
        R"({"format": "tablewick", "version": 1, "about": {"rules": "srd5"}, "shelf": {"creatures": [)";
    for (int i = 1; i <= 12; ++i)
        text +=
            std::string(i == 1 ? "" : ",") + "\n{\"id\": " + std::to_string(i) + ", \"name\": 5}";
    const auto reading = store::read_campaign(text + "]}}", "camp.json");
    CHECK(!reading.loaded.has_value());
    REQUIRE(reading.problems.size() == 12);
    CHECK(
        base::to_text(reading.problems[3]) ==
        "camp.json:5:19 (/shelf/creatures/3/name): Name must be a text in quotes."
    );
}

TEST_CASE("campaign file: a forgotten next_id never gives an id twice") {
    const auto campaign =
        loaded(R"({"format": "tablewick", "version": 1, "about": {"rules": "srd5"},
        "party": {"characters": [{"id": 8, "name": "Wren", "reminders": [{"id": 30, "text": "x"}]}]}})"
        )
            .campaign;
    CHECK(campaign.party.next_id == 31);
    CHECK(campaign.encounter.combatants.size() == 1);
}

TEST_CASE("campaign file: during a fight a hand-edited turn order is mended and the GM is told") {
    game::Campaign campaign = samples::crowded_fight(8);
    campaign.encounter.order.pop_back();
    const auto reading = store::read_campaign(store::write_campaign(campaign, 1), "camp.json");
    REQUIRE(reading.loaded.has_value());
    CHECK(reading.loaded->campaign.encounter.order.size() == 8);
    REQUIRE(reading.problems.size() == 1);
    CHECK(
        reading.problems[0].message == "Combatants missing in the turn order were put at its end."
    );
}

TEST_CASE("migration: an older file takes every step up to the present version") {
    constexpr std::array<store::Migration, 2> steps = {{
        {1, [](store::Json& value) { value["titel"] = value["name"]; }},
        {2, [](store::Json& value) { value["title"] = value["titel"]; }},
    }};
    store::Json value = {{"name", "Salt Road"}};
    REQUIRE(store::migrate(value, 1, 3, steps).ok());
    CHECK(value["title"] == "Salt Road");
    SUBCASE("a version without a step is refused") {
        const auto outcome = store::migrate(value, 1, 4, steps);
        REQUIRE(!outcome.ok());
        CHECK(outcome.error().message == "File version 3 was never given out.");
    }
    SUBCASE("a newer version is refused in a clear sentence") {
        const auto outcome = store::migrate(value, 4, 3, steps);
        REQUIRE(!outcome.ok());
        CHECK(outcome.error().kind == base::ErrorKind::newer_version);
        CHECK(
            base::to_text(outcome.error()) ==
            "(/version): This campaign was written by a newer version of the program (file "
            "version 4, this program reads up to 3). Open it with the newer version."
        );
    }
}
