// Find: what is typed, what comes first, and what is forgiven.
#include "base/unicode.h"
#include "game/finding.h"
#include "game/name_distance.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <random>
#include <string>
#include <tuple>
#include <vector>

using game::FindEntry;
using game::FindHit;
using game::FindIndex;
using game::FindKind;
using game::FindMatch;

namespace {

FindEntry entry_of(const std::string& text, std::int64_t recency = 0) {
    FindEntry entry;
    entry.text = text;
    entry.recency = recency;
    return entry;
}

FindIndex index_of(std::vector<std::vector<FindEntry>> sections) {
    FindIndex index;
    for (std::vector<FindEntry>& entries : sections)
        index.sections.push_back(std::make_shared<game::FindSection>(std::move(entries)));
    return index;
}

FindIndex index_of(const std::vector<std::string>& texts) {
    std::vector<FindEntry> entries;
    entries.reserve(texts.size());
    for (const std::string& text : texts)
        entries.push_back(entry_of(text));
    return index_of({std::vector<std::vector<FindEntry>>{entries}});
}

std::vector<std::string> found(const FindIndex& index, std::string_view typed, std::size_t most) {
    std::vector<std::string> texts;
    for (const FindHit& hit : index.find(typed, most))
        texts.push_back(index.entry(hit).text);
    return texts;
}

using Texts = std::vector<std::string>;

// What an entry answers, by walking through its words one by one.
std::size_t slow_match(std::u32string_view typed, std::u32string_view word, bool is_last) {
    if (word == typed) return 0;
    if (word.substr(0, typed.size()) == typed) return 1;
    if (typed.size() >= 2 && word.find(typed) != std::u32string::npos) return 2;
    const std::size_t slips = game::forgiven_slips(typed.size());
    if (slips == 0) return 4;
    for (std::size_t letters = 0; letters <= word.size(); ++letters) {
        const bool counts = is_last || letters == word.size();
        if (counts && game::edit_distance(typed, word.substr(0, letters)) <= slips) return 3;
    }
    return 4;
}

std::vector<FindHit> slow_find(const FindIndex& index, std::string_view typed, std::size_t most) {
    const std::vector<std::u32string> words = base::search_words(typed);
    using Rank = std::tuple<std::size_t, std::size_t, std::size_t, std::int64_t, std::size_t>;
    std::map<Rank, std::vector<FindHit>> ranked;
    std::size_t better = 0;
    for (std::size_t section = 0; section < index.sections.size(); ++section) {
        const auto& entries = index.sections[section]->entries();
        for (std::size_t at = 0; at < entries.size(); ++at) {
            const auto own = base::search_words(entries[at].text);
            const auto beside = base::search_words(entries[at].also);
            std::size_t worst = 0;
            std::size_t sum = 0;
            for (std::size_t i = 0; i < words.size(); ++i) {
                const bool is_last = i + 1 == words.size();
                std::size_t best = 8;
                for (const std::u32string& word : own)
                    best = std::min(best, 2 * slow_match(words[i], word, is_last));
                for (const std::u32string& word : beside)
                    best = std::min(best, 2 * slow_match(words[i], word, is_last) + 1);
                worst = std::max(worst, best / 2);
                sum += best;
            }
            if (worst >= 4) continue;
            better += worst < 3 ? 1 : 0;
            ranked[{worst, sum, own.size(), -entries[at].recency, section}].push_back({section, at}
            );
        }
    }
    const bool is_forgiving = better < std::min(most, FindIndex::forgiving_below);
    std::vector<FindHit> hits;
    for (const auto& [rank, same] : ranked)
        for (const FindHit& hit : same)
            if (hits.size() < most && (is_forgiving || std::get<0>(rank) < 3)) hits.push_back(hit);
    return hits;
}

} // namespace

TEST_CASE("finding: the word itself comes before its beginning, its inside and a misspelling") {
    const FindIndex index =
        index_of(Texts{"A furry hound", "The wherry", "Ferryman Brack", "The old ferry", "Ferrys"});
    CHECK(
        found(index, "ferry", 9) ==
        Texts{"The old ferry", "Ferrys", "Ferryman Brack", "A furry hound"}
    );
    CHECK(
        found(index, "erry", 9) == Texts{"Ferrys", "The wherry", "Ferryman Brack", "The old ferry"}
    );
}

TEST_CASE("finding: short before long, then recent before old") {
    const FindIndex index = index_of(std::vector<std::vector<FindEntry>>{
        {entry_of("The toll of Salt Ferry", 9),
         entry_of("Salt Ferry", 1),
         entry_of("Mud Ferry", 2)}});
    CHECK(found(index, "ferry", 9) == Texts{"Mud Ferry", "Salt Ferry", "The toll of Salt Ferry"});
    CHECK(found(index, "ferry", 1) == Texts{"Mud Ferry"});
    CHECK(found(index, "ferry", 0).empty());
}

TEST_CASE("finding: every typed word counts, in any order, as far as it is typed") {
    const FindIndex index = index_of(Texts{"Ysolde Marr owes the toll", "Ysolde Tace", "Marr"});
    CHECK(found(index, "toll yso", 9) == Texts{"Ysolde Marr owes the toll"});
    CHECK(found(index, "yso", 9).size() == 2);
    CHECK(found(index, "yso gold", 9).empty());
    CHECK(found(index, "  ", 9).empty());
    CHECK(found(index, "?!", 9).empty());
}

TEST_CASE("finding: capitals, marks and apostrophes do not matter") {
    const FindIndex index = index_of(Texts{"Ña O'Rhé", "Straße nach Süden", "МАЯК"});
    CHECK(found(index, "na orhe", 9) == Texts{"Ña O'Rhé"});
    CHECK(found(index, "O’RHÉ", 9) == Texts{"Ña O'Rhé"});
    CHECK(found(index, "strasse", 9) == Texts{"Straße nach Süden"});
    CHECK(found(index, "маяк", 9) == Texts{"МАЯК"});
}

TEST_CASE("finding: a name comes before what mentions it beside its own") {
    FindEntry keeper = entry_of("Keeper");
    keeper.also = "of the ferry";
    const FindIndex index = index_of(std::vector<std::vector<FindEntry>>{
        {keeper, entry_of("The long toll of the ferry")}});
    CHECK(found(index, "ferry", 9) == Texts{"The long toll of the ferry", "Keeper"});
}

TEST_CASE("finding: what stands beside an entry is searched as well") {
    FindEntry entry = entry_of("Old Marta");
    entry.also = "ferrywoman with one eye";
    const FindIndex index = index_of(std::vector<std::vector<FindEntry>>{{entry}});
    CHECK(found(index, "ferrywoman", 9) == Texts{"Old Marta"});
}

TEST_CASE("finding: misspellings are looked for only while there is little else") {
    Texts texts{"The lantren guild"};
    for (int i = 0; i < 4; ++i)
        texts.push_back("lantern " + std::to_string(i));
    CHECK(found(index_of(texts), "lantern", 9).size() == 5);
    texts.push_back("lantern 5");
    const FindIndex index = index_of(texts);
    CHECK(found(index, "lantern", 9).size() == 5);
    CHECK(found(index, "lantren", 9).front() == "The lantren guild");
    CHECK(found(index, "lantren", 9).size() == 6);
    CHECK(found(index, "lantrrn", 9).size() == 6);
}

TEST_CASE("finding: bytes that are no text are not looked for and break nothing") {
    const FindIndex index = index_of(Texts{"\xff\xfe broken", "whole"});
    CHECK(found(index, "broken", 9).size() == 1);
    CHECK(found(index, "\xc3", 9).empty());
    CHECK(found(index, std::string(4000, 'a'), 9).empty());
    CHECK(found(FindIndex{}, "a", 9).empty());
}

TEST_CASE("finding: the index answers as a walk through every word of every entry would") {
    std::mt19937 engine(11);
    const auto random_text = [&engine](std::size_t words_most, std::size_t letters_most) {
        std::string text;
        const std::size_t words = 1 + engine() % words_most;
        for (std::size_t i = 0; i < words; ++i) {
            if (!text.empty()) text += ' ';
            const std::size_t letters = 1 + engine() % letters_most;
            for (std::size_t k = 0; k < letters; ++k)
                text += static_cast<char>('a' + engine() % 3);
        }
        return text;
    };
    std::size_t hits = 0;
    for (int round = 0; round < 300; ++round) {
        std::vector<std::vector<FindEntry>> sections(1 + engine() % 3);
        for (std::vector<FindEntry>& entries : sections)
            for (std::size_t i = 0; i < engine() % 25; ++i) {
                entries.push_back(entry_of(random_text(4, 7), static_cast<int>(engine() % 4)));
                if (engine() % 3 == 0) entries.back().also = random_text(2, 5);
            }
        const FindIndex index = index_of(std::move(sections));
        const std::string typed = random_text(engine() % 2 == 0 ? 1 : 3, 9);
        const std::size_t most = engine() % 12;
        CAPTURE(typed);
        CAPTURE(most);
        const std::vector<FindHit> expected = slow_find(index, typed, most);
        CHECK(index.find(typed, most) == expected);
        hits += expected.size();
    }
    CHECK(hits > 150);
}
