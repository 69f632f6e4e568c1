#include "game/price_search.h"

#include "game/creature_search.h"
#include "game/money.h"
#include "game/treasure.h"

#include <algorithm>
#include <utility>

namespace game {

namespace {

using base::Error;
using base::ErrorKind;
using base::Result;

} // namespace

std::vector<std::size_t> search_prices(const rules::PriceBook& book, const PriceQuery& query) {
    std::vector<std::pair<NameMatch, std::size_t>> found;
    for (std::size_t at = 0; at < book.prices.size(); ++at) {
        const rules::Price& price = book.prices[at];
        if (!query.kind.empty() && price.kind != query.kind) continue;
        if (query.level >= 0 && price.level != query.level) continue;
        if (!query.rarity.empty() && price.rarity != query.rarity) continue;
        if (const auto match = name_match(price.name, query.text)) found.emplace_back(*match, at);
    }
    std::stable_sort(found.begin(), found.end(), [](const auto& one, const auto& other) {
        return one.first < other.first;
    });
    // A slip of the finger is only guessed at where nothing is spelt so.
    const bool has_exact = !found.empty() && found.front().first != NameMatch::one_slip;
    std::vector<std::size_t> places;
    for (const auto& [match, at] : found)
        if (!has_exact || match != NameMatch::one_slip) places.push_back(at);
    return places;
}

std::string price_text(const rules::Price& price, const std::vector<Coin>& coins) {
    std::string text = money_text(price.worth, coins);
    if (price.worth_max != price.worth) text += " to " + money_text(price.worth_max, coins);
    if (!price.per.empty()) text += " a " + price.per;
    return text;
}

Result<std::int64_t>
basket_cost(const rules::PriceBook& book, const Basket& basket, int haggled_percent) {
    std::int64_t sum = 0;
    for (const auto& [key, count] : basket) {
        const rules::Price* price = rules::find_price(book, key);
        if (price == nullptr)
            return Error{ErrorKind::not_found, "The Price Book no longer has " + key + "."};
        auto worth = money_times(price->worth, count);
        if (!worth.ok()) return worth;
        auto added = money_sum(sum, worth.value());
        if (!added.ok()) return added;
        sum = added.value();
    }
    return money_share(sum, haggled_percent);
}

std::string basket_text(const rules::PriceBook& book, const Basket& basket) {
    std::string text;
    for (const auto& [key, count] : basket) {
        const rules::Price* price = rules::find_price(book, key);
        if (price == nullptr) continue;
        if (!text.empty()) text += ", ";
        if (count != 1) text += std::to_string(count) + " ";
        text += price->name;
    }
    return text;
}

Result<std::int64_t> charge_basket(
    Campaign& campaign,
    const rules::PriceBook& book,
    const Basket& basket,
    int haggled_percent,
    bool keeps_items
) {
    if (basket.empty()) return Error{ErrorKind::not_possible, "Nothing is in the basket."};
    auto cost = basket_cost(book, basket, haggled_percent);
    if (!cost.ok()) return cost;
    auto purse = purse_of(campaign.treasury);
    if (!purse.ok()) return purse;
    if (cost.value() > purse.value())
        return Error{ErrorKind::not_possible, "The purse does not hold that much."};
    if (cost.value() > 0) {
        const auto line =
            add_ledger_line(campaign, LedgerKind::spent, basket_text(book, basket), cost.value());
        if (!line.ok()) return line.error();
    }
    if (!keeps_items) return cost;
    for (const auto& [key, count] : basket) {
        const rules::Price* price = rules::find_price(book, key);
        const rules::PriceKind* kind = rules::find_price_kind(book, price->kind);
        if (kind == nullptr || !kind->is_carried) continue;
        TreasureItem item;
        item.name = price->name;
        item.count = count;
        item.value = price->worth;
        item.weight_thousandths_lb = price->weight_thousandths_lb;
        item.bulk_tenths = price->bulk_tenths;
        item.sells_in_full = kind->sells_in_full;
        auto added = add_item(campaign, std::move(item));
        if (!added.ok()) return added.error();
    }
    return cost;
}

} // namespace game
