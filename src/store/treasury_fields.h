// How the Treasure Ledger stands in the campaign file. Keys are the member names.
#pragma once

#include "game/treasure_limits.h"
#include "game/treasury.h"
#include "store/statistics_fields.h"

namespace store {

// Ten thousand million of a coin worth 100: beyond every treasure, and safe to add up.
inline constexpr Whole coins_range{-game::money_max, game::money_max};
inline constexpr Whole worth_range{0, game::money_max};

template <class Fields>
void describe(Fields& fields, Described<game::Coin> /*type*/) {
    using C = game::Coin;
    fields.text("abbreviation", &C::abbreviation, name_limit, Presence::required);
    fields.text("name", &C::name, name_limit, Presence::shown);
    fields.whole("worth", &C::worth, {1, game::coin_worth_max}, Presence::required);
    fields.flag("is_counted_in", &C::is_counted_in);
    fields.unknown(&C::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::LedgerLine> /*type*/) {
    using L = game::LedgerLine;
    fields.whole("id", &L::id, id_range, Presence::required);
    fields.word("kind", &L::kind, Presence::shown);
    fields.text("text", &L::text, text_limit, Presence::shown);
    fields.whole("amount", &L::amount, coins_range);
    fields.whole("day", &L::day, day_range);
    fields.whole("session", &L::session, reference_range);
    fields.ids("characters", &L::characters);
    fields.whole("note", &L::note, reference_range);
    fields.unknown(&L::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::TreasureItem> /*type*/) {
    using I = game::TreasureItem;
    fields.whole("id", &I::id, id_range, Presence::required);
    fields.text("name", &I::name, name_limit, Presence::required);
    fields.whole("count", &I::count, {1, game::item_count_max});
    fields.whole("value", &I::value, worth_range);
    fields.whole("weight_thousandths_lb", &I::weight_thousandths_lb, {0, game::item_load_max});
    fields.whole("bulk_tenths", &I::bulk_tenths, {0, game::item_load_max});
    fields.whole("carrier", &I::carrier, reference_range);
    fields.flag("is_identified", &I::is_identified);
    fields.flag("sells_in_full", &I::sells_in_full);
    fields.word("fate", &I::fate);
    fields.whole("day", &I::day, day_range);
    fields.whole("session", &I::session, reference_range);
    fields.whole("note", &I::note, reference_range);
    fields.unknown(&I::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Treasury> /*type*/) {
    using T = game::Treasury;
    fields.list("coins", &T::coins);
    fields.list("lines", &T::lines, Presence::shown);
    fields.list("items", &T::items);
    fields.whole("next_id", &T::next_id, id_range);
    fields.unknown(&T::unknown);
}

} // namespace store
