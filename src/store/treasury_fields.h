// How the Treasure Ledger stands in the campaign file. Keys are the member names.
#pragma once

#include "game/treasury.h"
#include "store/statistics_fields.h"

namespace store {

inline constexpr Whole coins_range{-1'000'000'000'000, 1'000'000'000'000};

template <class Fields>
void describe(Fields& fields, Described<game::LedgerLine> /*type*/) {
    using L = game::LedgerLine;
    fields.whole("id", &L::id, id_range, Presence::required);
    fields.text("text", &L::text, text_limit, Presence::shown);
    fields.whole("amount", &L::amount, coins_range);
    fields.whole("day", &L::day, day_range);
    fields.unknown(&L::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Treasury> /*type*/) {
    using T = game::Treasury;
    fields.list("lines", &T::lines);
    fields.whole("next_id", &T::next_id, id_range);
    fields.unknown(&T::unknown);
}

} // namespace store
