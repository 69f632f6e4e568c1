// Finding a price, haggling, and what is charged to the Treasure Ledger.
#pragma once

#include "base/result.h"
#include "game/campaign.h"
#include "rules/prices.h"

#include <cstddef>
#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace game {

// Empty and unset parts let every price pass.
struct PriceQuery {
    std::string text;
    std::string kind; // key
    int level = -1;
    std::string rarity;

    bool operator==(const PriceQuery&) const = default;
};

// Places in PriceBook::prices: the best match of the name first, in the order of the book among
// equals. Under 1 ms for a whole book.
std::vector<std::size_t> search_prices(const rules::PriceBook& book, const PriceQuery& query);

// "4 cp", "10 gp to 20 gp", "2 sp a day".
std::string price_text(const rules::Price& price, const std::vector<Coin>& coins);

// What to buy: how many of which price, by key.
using Basket = std::map<std::string, int>;

// What it costs after haggling to so many percent (0..1000) of the price, rounded down to the
// smallest coin at the very end; of a band its lower end. Errors: not_found, out_of_range.
base::Result<std::int64_t>
basket_cost(const rules::PriceBook& book, const Basket& basket, int haggled_percent);

// "2 rope, torch".
std::string basket_text(const rules::PriceBook& book, const Basket& basket);

// One line that is spent, and with `keeps_items` everything that can be carried put among the
// items, to the party. Errors as above; empty baskets and more than the purse holds are refused.
base::Result<std::int64_t> charge_basket(
    Campaign& campaign,
    const rules::PriceBook& book,
    const Basket& basket,
    int haggled_percent,
    bool keeps_items
);

} // namespace game
