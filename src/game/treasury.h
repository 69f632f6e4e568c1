// The Treasure Ledger: what was found, given, sold, spent and split, and what the party carries.
// Money counts in the smallest coin, in whole numbers.
#pragma once

#include "base/id.h"
#include "base/unknown_fields.h"

#include <cstdint>
#include <string>
#include <vector>

namespace game {

using base::Id;

// A coin of the campaign's currency.
struct Coin {
    std::string abbreviation;  // "gp": letters only, as it is typed and shown
    std::string name;          // "gold"
    std::int64_t worth = 1;    // in the smallest coin, 1 and more
    bool is_counted_in = true; // amounts are shown in it; the others are only read
    base::UnknownFields unknown{};

    bool operator==(const Coin&) const = default;
};

// found: lying about or taken; given: rewards and gifts, below 0 what the party gave away; sold:
// for items; spent: below 0; split: below 0, handed out among characters.
enum class LedgerKind { found, given, sold, spent, split };

struct LedgerLine {
    Id id = base::no_id;
    LedgerKind kind = LedgerKind::found;
    std::string text;
    std::int64_t amount = 0;    // what the party's purse gained, in the smallest coin; spent and
                                // split: below 0
    std::int64_t day = 0;       // in-world, running day of the campaign
    Id session = base::no_id;   // of Sessions; may be gone meanwhile
    std::vector<Id> characters; // split: who got the same each; may be gone meanwhile
    Id note = base::no_id;      // of Sessions: the line of loot that it was taken from
    base::UnknownFields unknown{};

    bool operator==(const LedgerLine&) const = default;
};

enum class ItemFate { held, sold, given_away };

struct TreasureItem {
    Id id = base::no_id;
    std::string name;
    int count = 1;                          // 1..item_count_max
    std::int64_t value = 0;                 // of one, in the smallest coin
    std::int64_t weight_thousandths_lb = 0; // of one; srd5
    std::int64_t bulk_tenths = 0;           // of one; four-degree: light is 1, a Bulk of 1 is 10
    Id carrier = base::no_id;               // of Party; none: the party
    bool is_identified = true;
    bool sells_in_full = false; // gems, art and trade goods
    ItemFate fate = ItemFate::held;
    std::int64_t day = 0;     // in-world, when it came
    Id session = base::no_id; // of Sessions, when it came; may be gone meanwhile
    Id note = base::no_id;    // of Sessions: the line of loot that it was taken from
    base::UnknownFields unknown{};

    bool operator==(const TreasureItem&) const = default;
};

struct Treasury {
    std::vector<Coin> coins;         // the GM's own; empty: those of the rulebook
    std::vector<LedgerLine> lines;   // oldest first
    std::vector<TreasureItem> items; // oldest first; what was sold or given away stays as a record
    Id next_id = 1;                  // for lines and items
    base::UnknownFields unknown{};

    bool operator==(const Treasury&) const = default;
};

} // namespace game
