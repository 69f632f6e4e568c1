// The Treasure Ledger: what was found, given, sold and spent. Money counts in the smallest coin.
#pragma once

#include "base/id.h"
#include "base/unknown_fields.h"

#include <cstdint>
#include <string>
#include <vector>

namespace game {

using base::Id;

struct LedgerLine {
    Id id = base::no_id;
    std::string text;
    std::int64_t amount = 0; // in the smallest coin; spent: below 0
    std::int64_t day = 0;    // in-world, running day of the campaign
    base::UnknownFields unknown{};

    bool operator==(const LedgerLine&) const = default;
};

struct Treasury {
    std::vector<LedgerLine> lines; // oldest first
    Id next_id = 1;                // for lines and items
    base::UnknownFields unknown{};

    bool operator==(const Treasury&) const = default;
};

} // namespace game
