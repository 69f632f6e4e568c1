// The different words of many texts, sorted, and which of them answer a typed word: those it
// starts, those it stands in, those it is a misspelling of.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace game {

// How many letters may be wrong, missing, too much or swapped in a typed word of this many letters:
// none up to three, one up to seven, two from eight on.
std::size_t forgiven_slips(std::size_t letters);

class WordList {
public:
    // From [first, last).
    struct Range {
        std::size_t first = 0;
        std::size_t last = 0;

        bool operator==(const Range&) const = default;
    };

    WordList() = default;
    // Sorted by code points, none twice.
    explicit WordList(const std::vector<std::u32string>& words);

    std::size_t size() const { return starts_.empty() ? 0 : starts_.size() - 1; }

    std::u32string_view word(std::size_t at) const;

    // The words that start with this one; if it is a word itself, it is the first of them.
    Range starting_with(std::u32string_view typed) const;

    // The words it stands in, from left to right. Two letters or more, otherwise none.
    std::vector<std::size_t> containing(std::u32string_view typed) const;

    // The words that lie within the forgiven slips of this one, in order (optimal string
    // alignment distance, see game/name_distance.h). `is_unfinished`: those too whose beginning
    // does. None for words of more than `letters_max` letters.
    std::vector<std::size_t> misspelt(std::u32string_view typed, bool is_unfinished) const;

    static constexpr std::size_t letters_max = 32;

private:
    std::u32string joined_;           // every word with a zero behind it
    std::vector<std::size_t> starts_; // in joined_, and its end
};

} // namespace game
