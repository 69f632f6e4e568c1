// The reference: rules in short words of our own with their figures, to be looked up at the table,
// and the GM's own pages beside them.
#pragma once

#include "game/own_pages.h"
#include "rules/rulebook.h"

#include <string>
#include <string_view>
#include <vector>

namespace game {

struct ReferenceEntry {
    std::string key;                  // "cover": lasting, unlike any other of the reference
    std::string chapter;              // "Fighting"
    std::string title;                // "Cover"
    std::string text;                 // a few short sentences; a page of the GM may be long
    std::vector<std::string> points;  // one short line each
    std::vector<std::string> columns; // titles of the figures; empty: there are none
    std::vector<std::vector<std::string>> rows; // figures: as many cells a row as there are titles
    std::vector<std::string> also;              // other words it is looked up by
    // Document title and place, "from memory" where it was not held against the text; empty on own
    // pages.
    std::string source;

    bool operator==(const ReferenceEntry&) const = default;
};

struct Reference {
    std::vector<ReferenceEntry> entries; // chapter by chapter

    bool operator==(const Reference&) const = default;
};

// "own/7" for the page with this id, as if it were an entry.
std::string own_page_key(Id page);

// The page that a key of own_page_key names, or no_id.
Id own_page_of(std::string_view key);

// Everything that can be looked up: conditions with what they do, as the rulebook has them, the
// reference, and the GM's own pages under "Own pages".
std::vector<ReferenceEntry> reference_pages(
    const rules::Rulebook& rulebook, const Reference* reference, const OwnPages* own_pages
);

// Places in the list, best first: by title, other words, text, points and figures, one or two slips
// of the finger forgiven. Nothing typed: all, as they stand.
std::vector<std::size_t>
search_reference(const std::vector<ReferenceEntry>& entries, std::string_view typed);

} // namespace game
