// Every kind of page that can be printed: a function each that turns campaign values into blocks.
#pragma once

#include "base/result.h"
#include "game/campaign.h"
#include "game/climate.h"
#include "game/library_creature.h"
#include "game/name_lists.h"
#include "print/blocks.h"
#include "rules/prices.h"
#include "rules/rulebook.h"

#include <string>
#include <string_view>
#include <vector>

namespace print {

// What pages are made of; it must outlive the call alone.
struct PrintSource {
    const game::Campaign& campaign;
    const rules::Rulebook& rulebook;
    const std::vector<game::ReadyNameList>& name_lists;
    const std::vector<game::LibraryCreature>& library;
    const game::Climates& climates;
    const rules::PriceBook& prices;
    // The bytes of a picture of the GM's own; none where there are no files to read.
    ReadFile read_file{};
};

struct PageKind {
    std::string_view key;    // as typed: "session-plan"
    std::string_view title;  // "Session plan"
    std::string_view about;  // one line
    std::string_view detail; // what may stand behind a colon: "number of the session"; may be empty
    // Errors: not_found, bad_text - the detail names nothing that is there.
    base::Result<Blocks> (*make)(const PrintSource& source, const std::string& detail);
};

// In the order they are offered.
const std::vector<PageKind>& page_kinds();

// By key; nullptr: there is no such page.
const PageKind* find_page_kind(std::string_view key);

} // namespace print
