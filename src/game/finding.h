// Find: one index over everything that can be looked for. Texts come in sections, each built once
// and kept until it changes; an index is a handful of pointers to them, cheap to copy and safe to
// ask on one thread while another builds the next.
#pragma once

#include "base/id.h"
#include "game/word_list.h"

#include <cstddef>
#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace game {

// What kind of thing was found, and so where to go.
enum class FindKind {
    action, // of the program; `key` names it
    entry,  // of the Register; `id`
    character,
    creature,      // of the shelf
    open_creature, // ready in the rulebook; `key`
    prepared,      // encounter
    session,
    note, // `id` the session, `line` the line
    place,
    name,     // a used name that is not in the Register
    rule,     // of the reference, own pages too; `key`
    price,    // `key`
    day,      // of the Day Book; `key` is the running day
    treasure, // an item the party has or had; `id`
    ledger,   // a line of the Treasure Ledger
};

struct FindTarget {
    FindKind kind = FindKind::action;
    base::Id id = base::no_id;
    base::Id line = base::no_id;
    std::string key{};

    bool operator==(const FindTarget&) const = default;
};

struct FindEntry {
    std::string text;   // what is shown and searched first: a name, the line of a note
    std::string beside; // shown beside it
    std::string also;   // further words it is found by
    FindTarget target;
    std::int64_t recency = 0; // of two equally good ones the higher comes first

    bool operator==(const FindEntry&) const = default;
};

// How a typed word answers a word of an entry, best first.
enum class FindMatch {
    word,     // it is the word
    start,    // the word starts so
    inside,   // it stands somewhere in the word
    misspelt, // within the forgiven slips (game/word_list.h)
    none,
};

// The best answer of an entry to one typed word: twice the FindMatch, and one more where the word
// stands in `also` alone.
using FindGrade = std::uint8_t;

// The entries of one kind of source with their words. Built once, never changed.
class FindSection {
public:
    explicit FindSection(std::vector<FindEntry> entries);

    const std::vector<FindEntry>& entries() const { return entries_; }

    // How many words the text of entry `at` has.
    std::size_t word_count(std::size_t at) const { return word_counts_[at]; }

    // Lowers `best`, one an entry, to what the typed word answers in this way: `start` looks for
    // whole words too.
    void mark(
        std::u32string_view typed, FindMatch how, bool is_unfinished, std::vector<FindGrade>& best
    ) const;

private:
    void mark_words(WordList::Range range, FindMatch how, std::vector<FindGrade>& best) const;

    std::vector<FindEntry> entries_;
    std::vector<std::uint32_t> word_counts_;
    WordList words_;
    std::vector<std::size_t> first_use_; // of each word in uses_, and the end
    // Where each word stands: twice the entry, and one more for its `also`; ascending.
    std::vector<std::uint32_t> uses_;
};

struct FindHit {
    std::size_t section = 0; // place in FindIndex::sections
    std::size_t entry = 0;   // place in its entries

    bool operator==(const FindHit&) const = default;
};

struct FindIndex {
    std::vector<std::shared_ptr<const FindSection>> sections; // none is null

    const FindEntry& entry(const FindHit& hit) const {
        return sections[hit.section]->entries()[hit.entry];
    }

    // The best entries in which every typed word is answered, in any order: by the worst answer to
    // a typed word, then by all of them (the text before `also`), then short texts before long
    // ones, recent before old, as they stand.
    // At most eight words count. Misspellings are looked for only where fewer than
    // `forgiving_below` entries answer without. At 200,000 entries under 10 ms.
    std::vector<FindHit> find(std::string_view typed, std::size_t most) const;

    static constexpr std::size_t forgiving_below = 5;
    static constexpr std::size_t words_max = 8;
};

} // namespace game
