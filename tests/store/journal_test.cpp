#include "game/places_edit.h"
#include "game/session_keeping.h"
#include "game/treasure.h"
#include "store/checksum.h"
#include "store/journal_replay.h"
#include "store/samples.h"

#include <doctest/doctest.h>

#include <functional>
#include <string>
#include <vector>

namespace {

struct Recorded {
    store::LoadedCampaign start;
    store::FileMark mark;
    std::string base;
    std::vector<std::string> lines;
    game::Campaign end;

    std::string text() const {
        std::string all = base;
        for (const std::string& line : lines)
            all += line;
        return all;
    }
};

Recorded recorded(int edits) {
    Recorded made;
    store::CampaignDocument document(samples::demo(), 6);
    made.start = {document.view(), 6, 1};
    made.mark = store::mark_of(store::write_campaign(document.view(), 6), 6);
    made.base = store::journal_line(made.mark);
    document.set_sink([&](const store::JournalEntry& entry) {
        made.lines.push_back(store::journal_line(entry));
    });
    for (std::uint64_t seed = 1; made.lines.size() < static_cast<std::size_t>(edits); ++seed)
        samples::play(document, 1, seed);
    made.end = document.view();
    return made;
}

store::Replay replayed(const Recorded& made, const std::string& text) {
    return store::replay_journal(made.start, made.mark, store::read_journal(text));
}

} // namespace

TEST_CASE("checksum: CRC-32 gives the check value of its definition") {
    // Check value 0xCBF43926 of "123456789": Catalogue of parametrised CRC algorithms,
    // CRC-32/ISO-HDLC (also the worked example in ECMA-182's companion literature); from memory.
    CHECK(store::crc32("123456789") == 0xCBF43926);
    CHECK(store::crc32_text("123456789") == "cbf43926");
    CHECK(store::crc32_text("") == "00000000");
}

TEST_CASE("journal: every line is replayed") {
    const Recorded made = recorded(8);
    const store::Replay replay = replayed(made, made.text());
    CHECK(replay.end == store::ReplayEnd::complete);
    CHECK(replay.replayed == 8);
    CHECK(replay.loaded.revision == 14);
    CHECK(replay.loaded.campaign == made.end);
}

TEST_CASE("journal: a line torn at any byte is dropped, what stands before it is replayed") {
    const Recorded made = recorded(3);
    const std::string text = made.text();
    const std::size_t last = text.size() - made.lines.back().size();
    for (std::size_t size = last + 1; size < text.size(); ++size) {
        CAPTURE(size);
        const auto journal = store::read_journal(text.substr(0, size));
        CHECK(journal.is_torn);
        CHECK(!journal.is_damaged);
        CHECK(journal.good_bytes == last);
        CHECK(journal.entries.size() == 2);
    }
}

TEST_CASE("journal: a flipped bit anywhere in a line is noticed") {
    const Recorded made = recorded(3);
    const std::string text = made.text();
    const std::size_t from = made.base.size() + made.lines[0].size();
    for (std::size_t at = from; at < from + made.lines[1].size(); at += 3) {
        CAPTURE(at);
        std::string spoiled = text;
        spoiled[at] = static_cast<char>(spoiled[at] ^ 4);
        const auto journal = store::read_journal(spoiled);
        CHECK(journal.is_damaged);
        CHECK(journal.entries.size() == 1);
    }
}

TEST_CASE("journal: lines of another state of the file are not replayed") {
    Recorded made = recorded(3);
    made.mark.crc32 = "00000000";
    const store::Replay replay = replayed(made, made.text());
    CHECK(replay.end == store::ReplayEnd::other_chain);
    CHECK(replay.loaded.campaign == made.start.campaign);
}

TEST_CASE("journal: lines that the file already holds are no reason to worry") {
    const Recorded made = recorded(3);
    const auto journal = store::read_journal(made.text());
    const store::LoadedCampaign newer{made.end, 9, 1};
    const store::FileMark mark = store::mark_of(store::write_campaign(made.end, 9), 9);
    CHECK(store::replay_journal(newer, mark, journal).end == store::ReplayEnd::complete);
}

TEST_CASE("journal: a second base line makes it fit the newer file as well") {
    const Recorded made = recorded(6);
    const store::Replay middle = replayed(made, made.base + made.lines[0] + made.lines[1]);
    const std::string file = store::write_campaign(middle.loaded.campaign, 8);
    const store::FileMark mark = store::mark_of(file, 8);
    std::string text = made.base + made.lines[0] + made.lines[1] + store::journal_line(mark);
    for (std::size_t i = 2; i < 6; ++i)
        text += made.lines[i];
    const auto journal = store::read_journal(text);
    const store::Replay on_new =
        store::replay_journal({middle.loaded.campaign, 8, 1}, mark, journal);
    CHECK(on_new.replayed == 4);
    CHECK(on_new.loaded.campaign == made.end);
    const store::Replay on_old = replayed(made, text);
    CHECK(on_old.replayed == 6);
    CHECK(on_old.loaded.campaign == made.end);
}

TEST_CASE("journal: a missing line ends the replay before it") {
    const Recorded made = recorded(4);
    const store::Replay replay =
        replayed(made, made.base + made.lines[0] + made.lines[2] + made.lines[3]);
    CHECK(replay.end == store::ReplayEnd::missing_lines);
    CHECK(replay.replayed == 1);
    CHECK(replay.loaded.revision == 7);
}

TEST_CASE("journal: a line that does not fit ends the replay before it") {
    const Recorded made = recorded(2);
    const std::string odd = store::journal_line(store::JournalEntry{
        9, "odd", R"([{"op":"remove","path":"/nothing/here"}])", "2026-02-03T20:00:00Z"});
    const store::Replay replay = replayed(made, made.text() + odd);
    CHECK(replay.end == store::ReplayEnd::does_not_apply);
    CHECK(replay.replayed == 2);
    CHECK(replay.loaded.campaign == made.end);
}

TEST_CASE("journal: a patch that would make the campaign unusable ends the replay before it") {
    const Recorded made = recorded(2);
    const std::string odd = store::journal_line(store::JournalEntry{
        9,
        "odd",
        R"([{"op":"replace","path":"/clock/day","value":"soon"}])",
        "2026-02-03T20:00:00Z"});
    const store::Replay replay = replayed(made, made.text() + odd);
    CHECK(replay.end == store::ReplayEnd::does_not_apply);
    CHECK(replay.loaded.revision == made.start.revision);
}

TEST_CASE("bug: the first entry of an empty section could not be done again or replayed") {
    using game::Campaign;
    using game::Section;
    Recorded made;
    store::CampaignDocument document(Campaign{}, 0);
    made.start = {document.view(), 0, 1};
    made.mark = store::mark_of(store::write_campaign(document.view(), 0), 0);
    made.base = store::journal_line(made.mark);
    document.set_sink([&](const store::JournalEntry& entry) {
        made.lines.push_back(store::journal_line(entry));
    });
    const auto edit = [&](Section section, const std::function<void(Campaign&)>& change) {
        game::Edits edits;
        edits.add({section}, "First entry", [change](Campaign& campaign) {
            change(campaign);
            return std::string();
        });
        REQUIRE(document.carry_out(edits).ok());
        Campaign after = document.view();
        document.undo();
        document.redo();
        Campaign again = document.view();
        after.history = again.history = {};
        CHECK(again == after);
    };
    edit(Section::treasury, [](Campaign& campaign) {
        CHECK(game::add_ledger_line(campaign, game::LedgerKind::found, "a chest", 12).ok());
    });
    edit(Section::sessions, [](Campaign& campaign) {
        game::begin_session(campaign, "2026-01-31");
    });
    edit(Section::places, [](Campaign& campaign) {
        game::Place place;
        place.name = "Salt Ferry";
        game::add_place(campaign.places, place, "seed");
    });
    edit(Section::day_book, [](Campaign& campaign) {
        campaign.day_book.pages.emplace_back().id = 1;
        campaign.day_book.next_id = 2;
    });
    edit(Section::own_pages, [](Campaign& campaign) {
        campaign.own_pages.pages.emplace_back().id = 1;
        campaign.own_pages.next_id = 2;
    });
    const store::Replay replay = replayed(made, made.text());
    CHECK(replay.end == store::ReplayEnd::complete);
    CHECK(replay.loaded.campaign == document.view());
}
