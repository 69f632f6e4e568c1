#include "game/word_list.h"

#include <algorithm>
#include <array>
#include <cstdint>

namespace game {

namespace {

constexpr std::size_t slips_from_letters = 4;
constexpr std::size_t two_slips_from_letters = 8;
constexpr std::size_t inside_from_letters = 2;

// One row of the table of distances: cell i is the distance between the beginning of the word that
// was walked so far and the first i letters of the typed one.
using Row = std::array<std::uint8_t, WordList::letters_max + 1>;

// Walks the words like a tree: words with the same beginning share its rows, and a beginning that
// is too far off already is left with all its words.
class SlipWalk {
public:
    SlipWalk(const WordList& words, std::u32string_view typed, bool is_unfinished)
        : words_(words), typed_(typed), slips_(forgiven_slips(typed.size())),
          is_unfinished_(is_unfinished) {}

    std::vector<std::size_t> found() {
        Row row{};
        for (std::size_t i = 0; i <= typed_.size(); ++i)
            row[i] = static_cast<std::uint8_t>(i);
        walk({0, words_.size()}, 0, row, row);
        return std::move(found_);
    }

private:
    // `row` belongs to the first `depth` letters, which all words of the range share, `before` to
    // one letter less.
    // NOLINTNEXTLINE(misc-no-recursion): as deep as the typed word is long and two letters more
    void walk(WordList::Range range, std::size_t depth, const Row& before, const Row& row) {
        const bool is_close = row[typed_.size()] <= slips_;
        if (is_close && is_unfinished_) {
            for (std::size_t at = range.first; at < range.last; ++at)
                found_.push_back(at);
            return;
        }
        if (range.first < range.last && words_.word(range.first).size() == depth) {
            if (is_close) found_.push_back(range.first);
            range.first += 1;
        }
        while (range.first < range.last) {
            const char32_t letter = words_.word(range.first)[depth];
            const WordList::Range same{range.first, end_of_letter(range, depth, letter)};
            range.first = same.last;
            const Row next = next_row(before, row, depth, words_.word(same.first));
            // A swap may still come from the row before.
            if (least(next) <= slips_ || least(row) < slips_) walk(same, depth + 1, row, next);
        }
    }

    std::size_t end_of_letter(WordList::Range range, std::size_t depth, char32_t letter) const {
        std::size_t step = 1; // most letters have few words behind them
        while (range.first + step < range.last && words_.word(range.first + step)[depth] == letter)
            step *= 2;
        std::size_t low = range.first + step / 2;
        std::size_t high = std::min(range.first + step, range.last);
        while (low < high) {
            const std::size_t middle = low + (high - low) / 2;
            if (words_.word(middle)[depth] == letter)
                low = middle + 1;
            else
                high = middle;
        }
        return low;
    }

    Row
    next_row(const Row& before, const Row& row, std::size_t depth, std::u32string_view word) const {
        Row next{};
        next[0] = static_cast<std::uint8_t>(depth + 1);
        for (std::size_t i = 1; i <= typed_.size(); ++i) {
            const int replaced = row[i - 1] + (typed_[i - 1] == word[depth] ? 0 : 1);
            int least = std::min({row[i] + 1, next[i - 1] + 1, replaced});
            const bool is_swap = i > 1 && depth > 0 && typed_[i - 1] == word[depth - 1] &&
                                 typed_[i - 2] == word[depth];
            if (is_swap) least = std::min(least, before[i - 2] + 1);
            next[i] = static_cast<std::uint8_t>(least);
        }
        return next;
    }

    std::size_t least(const Row& row) const {
        return *std::min_element(
            row.begin(), row.begin() + static_cast<std::ptrdiff_t>(typed_.size()) + 1
        );
    }

    const WordList& words_;
    std::u32string_view typed_;
    std::size_t slips_;
    bool is_unfinished_;
    std::vector<std::size_t> found_;
};

} // namespace

std::size_t forgiven_slips(std::size_t letters) {
    if (letters < slips_from_letters) return 0;
    return letters < two_slips_from_letters ? 1 : 2;
}

WordList::WordList(const std::vector<std::u32string>& words) {
    std::size_t length = 0;
    for (const std::u32string& word : words)
        length += word.size() + 1;
    joined_.reserve(length);
    starts_.reserve(words.size() + 1);
    for (const std::u32string& word : words) {
        starts_.push_back(joined_.size());
        joined_ += word;
        joined_ += U'\0';
    }
    starts_.push_back(joined_.size());
}

std::u32string_view WordList::word(std::size_t at) const {
    return std::u32string_view(joined_).substr(starts_[at], starts_[at + 1] - starts_[at] - 1);
}

WordList::Range WordList::starting_with(std::u32string_view typed) const {
    const auto first_not = [this](auto is_before) {
        std::size_t low = 0;
        std::size_t high = size();
        while (low < high) {
            const std::size_t middle = low + (high - low) / 2;
            if (is_before(word(middle)))
                low = middle + 1;
            else
                high = middle;
        }
        return low;
    };
    return {
        first_not([&](std::u32string_view word) { return word < typed; }),
        first_not([&](std::u32string_view word) { return word.substr(0, typed.size()) <= typed; })};
}

std::vector<std::size_t> WordList::containing(std::u32string_view typed) const {
    std::vector<std::size_t> found;
    if (typed.size() < inside_from_letters) return found;
    std::size_t at = joined_.find(typed);
    while (at != std::u32string::npos) {
        const auto after = std::upper_bound(starts_.begin(), starts_.end(), at);
        found.push_back(static_cast<std::size_t>(after - starts_.begin()) - 1);
        at = joined_.find(typed, *after);
    }
    return found;
}

std::vector<std::size_t> WordList::misspelt(std::u32string_view typed, bool is_unfinished) const {
    if (forgiven_slips(typed.size()) == 0 || typed.size() > letters_max) return {};
    return SlipWalk(*this, typed, is_unfinished).found();
}

} // namespace game
