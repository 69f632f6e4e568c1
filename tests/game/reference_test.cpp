// Rules to look up: conditions, what the reference says, the GM's own pages; asked for in words.
#include "game/asking.h"
#include "game/own_page_keeping.h"
#include "game/reference.h"
#include "store/reference_json.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

using game::ReferenceEntry;

namespace {

game::Reference read(rules::Family family, rules::SrdEdition edition) {
    const auto loaded = store::load_reference(TABLEWICK_SOURCE_DIR "/assets", family, edition);
    REQUIRE_MESSAGE(loaded.ok(), base::to_text(loaded.error()));
    return loaded.value();
}

const game::Reference& four() {
    static const game::Reference reference =
        read(rules::Family::four_degree, rules::SrdEdition::srd_5_1);
    return reference;
}

const game::Reference& srd_5_2() {
    static const game::Reference reference =
        read(rules::Family::srd5, rules::SrdEdition::srd_5_2_1);
    return reference;
}

std::string first_title(const std::vector<ReferenceEntry>& entries, std::string_view typed) {
    const auto found = game::search_reference(entries, typed);
    return found.empty() ? std::string() : entries[found.front()].title;
}

base::Result<game::Answer>
ask(std::string_view words, const game::Campaign* campaign = nullptr, bool is_srd = false) {
    const rules::Rulebook& book = is_srd ? asking::srd() : asking::four();
    return game::answer({book, campaign, nullptr, nullptr, is_srd ? &srd_5_2() : &four()}, words);
}

} // namespace

TEST_CASE("reference: every entry has a title, words, a source and a key of its own") {
    for (const bool is_srd : {false, true}) {
        const auto entries = game::reference_pages(
            is_srd ? asking::srd() : asking::four(), is_srd ? &srd_5_2() : &four(), nullptr
        );
        CHECK(entries.size() > 40);
        std::set<std::string> keys;
        for (const ReferenceEntry& entry : entries) {
            CAPTURE(entry.key);
            CHECK(keys.insert(entry.key).second);
            CHECK_FALSE(entry.title.empty());
            CHECK_FALSE(entry.text.empty());
            CHECK_FALSE(entry.source.empty());
            for (const auto& row : entry.rows)
                CHECK(row.size() == entry.columns.size());
        }
    }
}

TEST_CASE("reference: each subject a game master looks up is there in both families") {
    for (const bool is_srd : {false, true}) {
        CAPTURE(is_srd);
        const auto entries = game::reference_pages(
            is_srd ? asking::srd() : asking::four(), is_srd ? &srd_5_2() : &four(), nullptr
        );
        for (const std::pair<const char*, const char*>& asked :
             {std::pair{"cover", "Cover"},
              std::pair{"prone", "Prone"},
              std::pair{"falling", "Falling"},
              std::pair{"sizes", "Sizes"},
              std::pair{"torch", is_srd ? "Light and sight" : "Light"},
              std::pair{"travel", is_srd ? "Travel pace" : "Travel speed"},
              std::pair{"exhaustion", is_srd ? "Exhaustion" : ""},
              std::pair{"stabilise", is_srd ? "" : "First aid"},
              std::pair{"long rest", is_srd ? "Long rest" : ""}}) {
            const std::string typed = asked.first;
            const std::string title = asked.second;
            CAPTURE(typed);
            if (!title.empty()) CHECK(first_title(entries, typed) == title);
        }
    }
}

TEST_CASE("reference: misspelt words and words of the text find it too") {
    const auto entries = game::reference_pages(asking::four(), &four(), nullptr);
    CHECK(first_title(entries, "frightend") == "Frightened");
    CHECK(first_title(entries, "persistant damage") == "Persistent damage");
    CHECK(first_title(entries, "tall reach") == "Sizes");
    CHECK(game::search_reference(entries, "zqzqzq").empty());
    CHECK(game::search_reference(entries, " ").size() == entries.size());
}

TEST_CASE("reference: a condition says what it does by the rulebook") {
    const auto entries = game::reference_pages(asking::four(), nullptr, nullptr);
    CHECK(entries.size() == asking::four().conditions.size());
    const auto found = game::search_reference(entries, "frightened");
    REQUIRE_FALSE(found.empty());
    const ReferenceEntry& entry = entries[found.front()];
    CHECK(entry.chapter == "Conditions");
    CHECK(entry.key == "condition/frightened");
    CHECK_FALSE(entry.points.empty());
}

TEST_CASE("own pages: written, found by what stands on them, removed; numbers are not used twice") {
    game::OwnPages pages;
    const base::Id first = game::add_own_page(pages, "Tolls of the Salt Road");
    game::find_own_page(pages, first)->text = "Two coppers a mule, a silver a wagon.";
    const base::Id second = game::add_own_page(pages, "House customs");
    CHECK(second == first + 1);
    const auto entries = game::reference_pages(asking::four(), &four(), &pages);
    CHECK(first_title(entries, "wagon mule") == "Tolls of the Salt Road");
    CHECK(entries.back().chapter == "Own pages");
    CHECK(game::own_page_of(entries.back().key) == second);
    game::remove_own_page(pages, second);
    game::remove_own_page(pages, 99);
    CHECK(pages.pages.size() == 1);
    CHECK(game::add_own_page(pages, "Another") == second + 1);
    CHECK(game::own_page_of("own/") == base::no_id);
    CHECK(game::own_page_of("own/7x") == base::no_id);
    CHECK(game::own_page_of("cover") == base::no_id);
}

TEST_CASE("ask: a rule in words, with its figures, and what else could be meant") {
    const auto cover = ask("rule cover");
    REQUIRE(cover.ok());
    CHECK(cover.value().title == "Cover");
    CHECK(asking::says(cover.value(), "Standard") == false);
    CHECK(asking::says(cover.value(), "standard cover\t+2\t+2\t+2\tyes"));
    CHECK(cover.value().source == "Player Core (ORC), Cover");
    CHECK(asking::text(cover.value().values, "key") == "cover");
    CHECK(asking::rows(cover.value().values, "rows").size() == 3);
    const auto pace = ask("rule travel pace", nullptr, true);
    REQUIRE(pace.ok());
    CHECK(asking::says(pace.value(), "normal\t300\t3\t24")); // SRD 5.2.1, Travel Pace
    CHECK(asking::says(pace.value(), "See also: "));
}

TEST_CASE("ask: the GM's own page is answered like a rule") {
    game::Campaign campaign;
    const base::Id id = game::add_own_page(campaign.own_pages, "Tolls of the Salt Road");
    game::find_own_page(campaign.own_pages, id)->text = "Two coppers a mule.";
    const auto tolls = ask("rule tolls", &campaign);
    REQUIRE(tolls.ok());
    CHECK(tolls.value().title == "Tolls of the Salt Road");
    CHECK(tolls.value().lines.front() == "Two coppers a mule.");
}

TEST_CASE("ask: all rules by chapter, and a clear sentence where nothing answers") {
    const auto all = ask("rule");
    REQUIRE(all.ok());
    CHECK(asking::says(all.value(), "Conditions\tBlinded, "));
    CHECK(asking::says(all.value(), "Recovery\t"));
    CHECK(asking::rows(all.value().values, "rules").size() > 100);
    const auto none = ask("rule zqzqzq");
    REQUIRE_FALSE(none.ok());
    CHECK(
        none.error().message ==
        "Nothing to look up answers \"zqzqzq\"; \"rule\" alone lists everything."
    );
}
