// The words of many texts: what a typed word starts, stands in, and is a misspelling of.
#include "game/name_distance.h"
#include "game/word_list.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>
#include <set>
#include <string>

using game::forgiven_slips;
using game::WordList;

namespace {

// Optimal string alignment distance, from its definition: F. J. Damerau, "A technique for computer
// detection and correction of spelling errors", Communications of the ACM 7 (1964), and B. J.
// Oommen and R. K. S. Loke, "Pattern recognition of strings with substitutions, insertions,
// deletions and generalized transpositions", Pattern Recognition 30 (1997). Tries every way.
std::size_t slow_distance(std::u32string_view one, std::u32string_view other) {
    if (one.empty() || other.empty()) return one.size() + other.size();
    std::size_t least =
        slow_distance(one.substr(1), other.substr(1)) + (one.front() == other.front() ? 0 : 1);
    least = std::min(least, slow_distance(one.substr(1), other) + 1);
    least = std::min(least, slow_distance(one, other.substr(1)) + 1);
    const bool is_swap =
        one.size() > 1 && other.size() > 1 && one[0] == other[1] && one[1] == other[0];
    if (is_swap) least = std::min(least, slow_distance(one.substr(2), other.substr(2)) + 1);
    return least;
}

WordList list_of(const std::set<std::u32string>& words) {
    return WordList({words.begin(), words.end()});
}

std::u32string random_word(std::mt19937& engine, std::size_t most) {
    std::u32string word;
    const std::size_t letters = 1 + engine() % most;
    for (std::size_t i = 0; i < letters; ++i)
        word += static_cast<char32_t>(U'a' + engine() % 2);
    return word;
}

} // namespace

TEST_CASE("word list: three letters must be right, up to seven may have one slip, longer ones two"
) {
    CHECK(forgiven_slips(1) == 0);
    CHECK(forgiven_slips(3) == 0);
    CHECK(forgiven_slips(4) == 1);
    CHECK(forgiven_slips(7) == 1);
    CHECK(forgiven_slips(8) == 2);
    CHECK(forgiven_slips(30) == 2);
}

TEST_CASE("word list: words with the same beginning stand together, the word itself first") {
    const WordList words = list_of({U"ferry", U"ferryman", U"fern", U"fer", U"fight"});
    CHECK(words.starting_with(U"ferr") == WordList::Range{2, 4});
    CHECK(words.starting_with(U"fer") == WordList::Range{0, 4});
    CHECK(words.word(words.starting_with(U"fer").first) == U"fer");
    CHECK(words.starting_with(U"x") == WordList::Range{5, 5});
    CHECK(words.starting_with(U"").last == 5);
    CHECK(WordList().starting_with(U"a") == WordList::Range{0, 0});
}

TEST_CASE("word list: a word inside others is found once in each") {
    const WordList words = list_of({U"banana", U"lantern", U"tern", U"turn"});
    CHECK(words.containing(U"tern") == std::vector<std::size_t>{1, 2});
    CHECK(words.containing(U"an") == std::vector<std::size_t>{0, 1});
    CHECK(words.containing(U"a").empty());  // a letter stands in nearly everything
    CHECK(words.containing(U"nl").empty()); // not over the edge of two words
}

TEST_CASE("word list: one letter wrong, missing, too much or swapped is forgiven") {
    const WordList words = list_of({U"lantern"});
    for (const char32_t* typed : {U"lentern", U"lanern", U"lantterns", U"lanetrn"}) {
        const std::u32string_view word(typed);
        CAPTURE(word.size());
        CHECK(words.misspelt(word, false).size() == 1);
    }
    CHECK(words.misspelt(U"lentrrn", false).empty());      // two in seven letters
    CHECK(words.misspelt(U"lantrens", false).size() == 1); // two in eight
    CHECK(words.misspelt(U"lan", false).empty());
}

TEST_CASE("word list: an unfinished word may be misspelt too") {
    const WordList words = list_of({U"harbourmaster", U"harvest"});
    CHECK(words.misspelt(U"habrour", true) == std::vector<std::size_t>{0});
    CHECK(words.misspelt(U"habrour", false).empty());
}

TEST_CASE("word list: letters of any script count as one each") {
    const WordList words = list_of({U"маяк", U"море"});
    CHECK(words.misspelt(U"маяг", false) == std::vector<std::size_t>{0});
}

TEST_CASE("word list: misspellings are those that the definition of the distance gives") {
    std::mt19937 engine(7);
    std::size_t matches = 0;
    for (int round = 0; round < 60; ++round) {
        std::set<std::u32string> all;
        for (int i = 0; i < 40; ++i)
            all.insert(random_word(engine, 9));
        const std::vector<std::u32string> sorted(all.begin(), all.end());
        const WordList words(sorted);
        const std::u32string typed = random_word(engine, 10);
        std::vector<std::size_t> whole;
        std::vector<std::size_t> begun;
        for (std::size_t at = 0; at < sorted.size(); ++at) {
            const std::size_t slips = forgiven_slips(typed.size());
            if (slips == 0) continue;
            REQUIRE(words.word(at) == sorted[at]);
            const std::size_t distance = slow_distance(typed, sorted[at]);
            CHECK(distance == game::edit_distance(typed, sorted[at]));
            if (distance <= slips) whole.push_back(at);
            bool is_begun = false;
            for (std::size_t letters = 0; letters <= sorted[at].size(); ++letters)
                is_begun |= game::edit_distance(typed, sorted[at].substr(0, letters)) <= slips;
            if (is_begun) begun.push_back(at);
        }
        matches += whole.size();
        CHECK(words.misspelt(typed, false) == whole);
        CHECK(words.misspelt(typed, true) == begun);
    }
    CHECK(matches > 20);
}
