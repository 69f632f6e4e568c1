// Find with 200,000 entries: one key press on the index against a scan of all entries, and what
// building a section costs.
#include "base/unicode.h"
#include "bench/measure.h"
#include "game/finding.h"
#include "rules/dice.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace {

constexpr int entries_max = 200'000;
constexpr int words_known = 60'000;
constexpr int note_words = 9;
constexpr std::size_t shown = 12;

std::string made_up(rules::Dice& dice) {
    constexpr std::string_view heads = "bdfgklmnprstvz";
    constexpr std::string_view cores = "aeiou";
    std::string name;
    for (int left = 1 + dice.roll(3); left > 0; --left) {
        name += heads[static_cast<std::size_t>(dice.roll(static_cast<int>(heads.size())) - 1)];
        name += cores[static_cast<std::size_t>(dice.roll(static_cast<int>(cores.size())) - 1)];
        if (dice.roll(2) == 1)
            name += heads[static_cast<std::size_t>(dice.roll(static_cast<int>(heads.size())) - 1)];
    }
    return name;
}

// Notes in which few words are frequent and many are rare, as in every language (Zipf's law).
std::vector<game::FindEntry> many_notes() {
    rules::Dice dice(1);
    std::vector<std::string> words;
    words.reserve(words_known);
    for (int i = 0; i < words_known; ++i)
        words.push_back(made_up(dice));
    std::vector<game::FindEntry> entries(entries_max);
    for (std::size_t at = 0; at < entries.size(); ++at) {
        const int count = dice.roll(2 * note_words);
        for (int i = 0; i < count; ++i) {
            const double share = dice.roll(1'000'000) / 1'000'000.0;
            const double place = std::pow(static_cast<double>(words.size()), share) - 1.0;
            entries[at].text += (i == 0 ? "" : " ") + words[static_cast<std::size_t>(place)];
        }
        entries[at].recency = static_cast<std::int64_t>(at);
    }
    return entries;
}

// The least that a scan has to do: every entry is looked through for what is typed.
double scanned(const std::vector<std::string>& folded, const std::string& typed) {
    return static_cast<double>(std::count_if(
        folded.begin(),
        folded.end(),
        [&typed](const std::string& text) { return text.find(typed) != std::string::npos; }
    ));
}

} // namespace

int main() {
    const std::vector<game::FindEntry> entries = many_notes();
    std::vector<std::string> folded;
    folded.reserve(entries.size());
    for (const game::FindEntry& entry : entries)
        folded.push_back(base::folded(entry.text));
    game::FindIndex index;
    index.sections.push_back(std::make_shared<game::FindSection>(entries));
    // Of a longer word: each key press on the way, a slip in it, and several words.
    const std::string rare = [&entries] {
        std::string longest;
        for (std::size_t at = 0; at < 2000; ++at)
            for (const std::u32string& word : base::search_words(entries[at].text))
                if (word.size() > longest.size()) longest = base::to_utf8(word);
        return longest;
    }();
    std::vector<std::string> all;
    for (std::size_t letters = 1; letters <= rare.size(); ++letters)
        all.push_back(rare.substr(0, letters));
    std::string slipped = rare;
    std::swap(slipped[2], slipped[3]);
    slipped[slipped.size() - 2] = 'x';
    all.insert(
        all.end(),
        {slipped, "zqxzqxzq", "xara", "a b c d e f g h", "ra ta sa ba na", rare + " ba ta"}
    );
    for (const std::string& typed : all)
        measure::compare(
            "find \"" + typed + "\"",
            [&] { return static_cast<double>(index.find(typed, shown).size()); },
            "a scan",
            [&] { return scanned(folded, typed); }
        );
    measure::compare(
        "a section of 20,000 notes built",
        [&] {
            const game::FindSection section({entries.begin(), entries.begin() + 20'000});
            return static_cast<double>(section.entries().size());
        },
        "copying its texts",
        [&] {
            const std::vector<game::FindEntry> copy(entries.begin(), entries.begin() + 20'000);
            return static_cast<double>(copy.size());
        }
    );
}
