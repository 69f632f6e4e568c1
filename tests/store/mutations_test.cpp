// Property: a spoiled file, whatever was done to it, ends in an Error with a place, or in a
// campaign that saves and loads to itself. Never in a crash. The same for a spoiled journal.
#include "store/campaign_json.h"
#include "store/journal_replay.h"
#include "store/samples.h"

#include <doctest/doctest.h>

#include <random>
#include <string>

namespace {

class Spoiler {
public:
    explicit Spoiler(std::uint64_t seed) : random_(seed) {}

    std::size_t below(std::size_t limit) { return limit == 0 ? 0 : random_() % limit; }

    std::string spoiled(std::string text, const std::string& other) {
        static const std::vector<std::string> pieces = {
            "{",
            "}",
            "[",
            "]",
            "\"",
            ",",
            ":",
            "null",
            "-1",
            "1e999",
            "0",
            "99999999999999999999",
            "3.0",
            "true",
            "\\u0000",
            "\xFF",
            "\xEF\xBB\xBF",
            "\"id\": 1,",
            "\"next_id\": 0",
            "\\",
            "\n",
            "{}",
            "[]",
            "1.5",
            "\"standing\": \"absent\",",
            "\"party\"",
            "\"running\""};
        for (std::size_t times = 1 + below(3); times > 0; --times) {
            const std::size_t at = below(text.size());
            switch (below(6)) {
            case 0: text.erase(at, 1 + below(30)); break;
            case 1: text.insert(at, pieces[below(pieces.size())]); break;
            case 2: text[at] = static_cast<char>(random_()); break;
            case 3: text.replace(at, below(8), pieces[below(pieces.size())]); break;
            case 4: text.insert(at, other.substr(below(other.size()), below(200))); break;
            default: replace_digit(text, at);
            }
            if (text.empty()) text = "{";
        }
        return text;
    }

private:
    // Keeps the JSON whole and changes what it says.
    void replace_digit(std::string& text, std::size_t from) {
        const std::size_t at = text.find_first_of("0123456789", from);
        if (at != std::string::npos) text[at] = static_cast<char>('0' + below(10));
    }

    std::mt19937_64 random_;
};

void check_property(const std::string& text, int& loaded) {
    const store::CampaignReading reading = store::read_campaign(text, "camp.json");
    if (!reading.loaded) {
        REQUIRE(!reading.problems.empty());
        CHECK(reading.error().place.line >= 1);
        CHECK(reading.error().place.column >= 1);
        return;
    }
    loaded += 1;
    const std::string saved = store::write_campaign(reading.loaded->campaign, 1);
    const store::CampaignReading again = store::read_campaign(saved, "camp.json");
    REQUIRE(again.loaded.has_value());
    CHECK(again.loaded->campaign == reading.loaded->campaign);
    CHECK(again.problems.empty());
}

} // namespace

TEST_CASE("spoiled files: every mutation ends in an error or in a campaign that loads to itself") {
    Spoiler spoiler(4711);
    const std::string small = store::write_campaign(samples::everything(), 3);
    const std::string fight = store::write_campaign(samples::crowded_fight(7), 3);
    int loaded = 0;
    for (int i = 0; i < 3000; ++i) {
        CAPTURE(i);
        const bool is_small = i % 4 != 0;
        check_property(spoiler.spoiled(is_small ? small : fight, small), loaded);
    }
    CHECK(loaded > 100);
}

TEST_CASE("spoiled journals: what is replayed is a state that was recorded, or nothing") {
    store::CampaignDocument document(samples::demo(), 6);
    const store::LoadedCampaign start{document.view(), 6, 1};
    const std::string file = store::write_campaign(document.view(), 6);
    const store::FileMark mark = store::mark_of(file, 6);
    std::string journal = store::journal_line(mark);
    std::map<std::uint64_t, game::Campaign> states = {{6, document.view()}};
    document.set_sink([&](const store::JournalEntry& entry) {
        journal += store::journal_line(entry);
    });
    for (std::uint64_t seed = 1; seed <= 15; ++seed) {
        samples::play(document, 1, seed);
        states[document.revision()] = document.view();
    }
    Spoiler spoiler(42);
    int replayed = 0;
    for (int i = 0; i < 300; ++i) {
        CAPTURE(i);
        const std::string text = spoiler.spoiled(journal, journal);
        const auto replay = store::replay_journal(start, mark, store::read_journal(text));
        REQUIRE(states.count(replay.loaded.revision) == 1);
        CHECK(replay.loaded.campaign == states.at(replay.loaded.revision));
        replayed += replay.replayed > 0 ? 1 : 0;
    }
    CHECK(replayed > 100);
}
