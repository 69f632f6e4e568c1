#include "game/hurt.h"
#include "game/secret_roll.h"
#include "game/turns.h"
#include "store/campaign_json.h"
#include "store/document.h"
#include "store/json_text.h"
#include "store/samples.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <stdexcept>
#include <vector>

using game::Campaign;
using game::Encounter;
using store::CampaignDocument;

namespace {

game::Edit note_edit(const std::string& text, const std::string& merge_key = {}) {
    game::Edits edits;
    edits.add(
        &Campaign::about,
        "Write the note",
        [text](game::About& about) { about.note = text; },
        merge_key
    );
    return edits.take().front();
}

void require_edit(CampaignDocument& document, const game::Edit& edit) {
    const auto done = document.edit(edit);
    if (!done) FAIL(base::to_text(done.error()));
}

// The campaign without its history, which undo leaves alone.
Campaign without_history(Campaign campaign) {
    campaign.history = {};
    return campaign;
}

} // namespace

TEST_CASE("document: an edit changes the campaign, counts the revision and stands in the history") {
    CampaignDocument document(samples::demo(), 6);
    document.set_time_source([] { return "2026-02-03T20:00:00Z"; });
    const auto label = document.edit(note_edit("Wet boots"));
    REQUIRE(label.ok());
    CHECK(label.value() == "Write the note");
    CHECK(document.view().about.note == "Wet boots");
    CHECK(document.revision() == 7);
    const game::HistoryLine& line = document.view().history.lines.back();
    CHECK(line.revision == 7);
    CHECK(line.label == "Write the note");
    CHECK(line.day == 12);
    CHECK(line.second_of_day == 63600);
    CHECK(line.written_at == "2026-02-03T20:00:00Z");
}

TEST_CASE("document: a history line says round and in-world time of the fight") {
    CampaignDocument document(samples::crowded_fight(10));
    for (int turn = 0; turn < 10; ++turn) {
        game::Edits edits;
        edits.add(&Campaign::encounter, "Next turn", [](Encounter& encounter) {
            return game::advance_turn(encounter, samples::rulebook());
        });
        REQUIRE(document.carry_out(edits).ok());
    }
    const game::HistoryLine& line = document.view().history.lines.back();
    CHECK(line.round == 2);
    CHECK(line.second_of_day == document.view().clock.second_of_day + 6);
    CHECK(line.label.find("Round 2") == 0);
}

TEST_CASE("document: a secret roll is one line of the history, undone and done again with its dice"
) {
    CampaignDocument document(samples::demo(), 6);
    rules::Dice dice(4);
    const auto roll = [&] {
        game::Edits edits;
        edits.add({game::Section::table_rolls}, "Roll in secret", [&](Campaign& campaign) {
            return game::roll_in_secret(campaign, samples::rulebook(), {}, dice);
        });
        REQUIRE(document.carry_out(edits).ok());
    };
    const Campaign before = without_history(document.view());
    roll();
    const Campaign after = without_history(document.view());
    const std::string line = document.view().history.lines.back().label;
    CHECK(line.find("Secret Perception, DC 19: Ysolde Marr ") == 0);
    document.undo();
    CHECK(without_history(document.view()) == before);
    document.redo();
    CHECK(without_history(document.view()) == after);
    CHECK(document.view().history.lines.back().label == "Redid: " + line);
    for (std::size_t count = 1; count < game::TableRolls::kept; ++count)
        roll();
    std::size_t bytes = 0;
    document.set_sink([&](const store::JournalEntry& entry) { bytes = entry.patch.size(); });
    roll();
    CHECK(document.view().table_rolls.rolls.size() == game::TableRolls::kept);
    CHECK(bytes < 2500); // one roll of five and its line, not all of those kept
}

TEST_CASE("document: an edit that changes nothing leaves no trace") {
    CampaignDocument document(samples::demo(), 6);
    const Campaign before = document.view();
    int written = 0;
    document.set_sink([&](const store::JournalEntry& /*entry*/) { written += 1; });
    require_edit(document, note_edit(before.about.note));
    CHECK(document.view() == before);
    CHECK(document.revision() == 6);
    CHECK(!document.can_undo());
    CHECK(written == 0);
}

TEST_CASE("document: a change that throws leaves everything as it was") {
    CampaignDocument document(samples::demo(), 6);
    require_edit(document, note_edit("one"));
    document.undo();
    const Campaign before = document.view();
    const auto done = document.edit(
        {{game::Section::encounter, game::Section::about},
         "Break",
         [](Campaign& campaign) -> std::string {
             campaign.about.title = "gone";
             campaign.encounter.combatants.clear();
             throw std::runtime_error("The well is dry.");
         },
         {}}
    );
    REQUIRE(!done.ok());
    CHECK(done.error().kind == base::ErrorKind::not_possible);
    CHECK(done.error().message == "The well is dry.");
    CHECK(document.view() == before);
    CHECK(document.can_redo());
}

TEST_CASE("document: what could not be loaded again is refused and nothing changes") {
    CampaignDocument document(samples::demo(), 6);
    const Campaign before = document.view();
    const auto edit = [&](auto change) {
        game::Edits edits;
        edits.add(
            {game::Section::encounter, game::Section::about},
            "Odd",
            [change](Campaign& campaign) {
                change(campaign);
                return std::string();
            }
        );
        return document.carry_out(edits);
    };
    SUBCASE("hit points no creature has") {
        const auto done = edit([](Campaign& c) { c.encounter.combatants[0].hp = 1000000; });
        REQUIRE(!done.ok());
        CHECK(done.error().message == "Hit points must be a whole number from 0 to 9999.");
        CHECK(done.error().place.pointer == "/encounter/combatants/0/hp");
    }
    SUBCASE("bytes that are no text") {
        const auto done = edit([](Campaign& c) { c.about.note = "\xC3("; });
        REQUIRE(!done.ok());
        CHECK(done.error().kind == base::ErrorKind::bad_text);
    }
    SUBCASE("an id given twice") {
        const auto done =
            edit([](Campaign& c) { c.encounter.combatants[7].id = c.encounter.combatants[8].id; });
        REQUIRE(!done.ok());
        CHECK(done.error().kind == base::ErrorKind::duplicate);
    }
    CHECK(document.view() == before);
    CHECK(document.revision() == 6);
}

TEST_CASE("document: undo and redo say what they will do, and a new edit ends redo") {
    CampaignDocument document(samples::demo(), 6);
    const Campaign before = document.view();
    require_edit(document, note_edit("one"));
    require_edit(document, note_edit("two"));
    CHECK(document.undo_label() == "Write the note");
    document.undo();
    CHECK(document.view().about.note == "one");
    CHECK(document.redo_label() == "Write the note");
    CHECK(document.view().history.lines.back().label == "Undid: Write the note");
    document.redo();
    CHECK(document.view().about.note == "two");
    CHECK(document.view().history.lines.back().label == "Redid: Write the note");
    document.undo();
    document.undo();
    CHECK(without_history(document.view()) == without_history(before));
    CHECK(!document.can_undo());
    document.undo();
    CHECK(document.undo_label() == "");
    require_edit(document, note_edit("three"));
    CHECK(!document.can_redo());
    CHECK(document.revision() == 13);
}

TEST_CASE("document: typing in one field is undone as one and is one line of history") {
    CampaignDocument document(samples::demo(), 6);
    const std::string start = document.view().about.note;
    const std::size_t lines = document.view().history.lines.size();
    for (const char* text : {"W", "We", "Wet", "Wet boots"})
        require_edit(document, note_edit(text, "about.note"));
    CHECK(document.view().history.lines.size() == lines + 1);
    CHECK(document.view().history.lines.back().revision == 10);
    SUBCASE("undo and redo") {
        document.undo();
        CHECK(document.view().about.note == start);
        document.redo();
        CHECK(document.view().about.note == "Wet boots");
    }
    SUBCASE("another field in between starts anew") {
        require_edit(document, note_edit("x", "about.other"));
        require_edit(document, note_edit("y", "about.note"));
        document.undo();
        CHECK(document.view().about.note == "x");
    }
    SUBCASE("typing after an undo starts anew") {
        document.undo();
        require_edit(document, note_edit("later", "about.note"));
        document.undo();
        CHECK(document.view().about.note == start);
    }
}

TEST_CASE("document: the history keeps the last 5,000 lines") {
    Campaign campaign = samples::demo();
    campaign.history.lines.assign(5000, campaign.history.lines.front());
    CampaignDocument document(campaign, 6000);
    require_edit(document, note_edit("one"));
    CHECK(document.view().history.lines.size() == 5000);
    CHECK(document.view().history.lines.back().revision == 6001);
}

TEST_CASE("document: a renamed character is renamed in the fight, also after undo") {
    CampaignDocument document(samples::demo(), 6);
    game::Edits edits;
    edits.add(&Campaign::party, "Rename", [](game::Party& party) {
        party.characters[0].name = "Yso";
    });
    REQUIRE(document.carry_out(edits).ok());
    CHECK(document.view().encounter.combatants[0].name == "Yso");
    document.undo();
    CHECK(document.view().encounter.combatants[0].name == "Ysolde Marr");
}

TEST_CASE("document: undoing everything leads back to the start, redoing to the end") {
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        CAPTURE(seed);
        CampaignDocument document(samples::demo(), 6);
        const Campaign start = without_history(document.view());
        samples::play(document, 150, seed);
        while (document.can_redo())
            document.redo();
        const Campaign end = without_history(document.view());
        while (document.can_undo())
            document.undo();
        CHECK(without_history(document.view()) == start);
        while (document.can_redo())
            document.redo();
        CHECK(without_history(document.view()) == end);
    }
}

TEST_CASE("document: the journal's patches, replayed on the start, give the same campaign") {
    for (std::uint64_t seed = 11; seed <= 16; ++seed) {
        CAPTURE(seed);
        CampaignDocument document(samples::demo(), 6);
        store::Json replayed = store::campaign_value(document.view(), 6);
        std::uint64_t revision = 6;
        document.set_sink([&](const store::JournalEntry& entry) {
            CHECK(entry.revision == revision + 1);
            revision = entry.revision;
            replayed.patch_inplace(store::Json::parse(entry.patch));
            replayed["revision"] = entry.revision;
        });
        samples::play(document, 150, seed);
        const auto reading = store::read_campaign_value(replayed, "", "replayed");
        REQUIRE(reading.loaded.has_value());
        CHECK(reading.loaded->campaign == document.view());
        CHECK(reading.loaded->revision == document.revision());
        CHECK(reading.problems.empty());
    }
}
