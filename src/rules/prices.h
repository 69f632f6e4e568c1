// What things cost by the rulebook, as plain values. Filled by store from
// assets/rules/*_prices.json.
#pragma once

#include "rules/rulebook.h"

#include <cstdint>
#include <string>
#include <vector>

namespace rules {

struct CoinRule {
    std::string key; // "gp", as amounts are written
    std::string name;
    std::int64_t worth = 1;    // in the smallest coin
    bool is_counted_in = true; // amounts are shown in it

    bool operator==(const CoinRule&) const = default;
};

struct Price {
    std::string key; // "adventuring_gear/rope": lasting
    std::string name;
    std::string kind;           // key of a PriceKind
    std::int64_t worth = 0;     // in the smallest coin; the lower end of a band
    std::int64_t worth_max = 0; // the same as worth where there is no band
    int level = -1;             // of the item; -1: none
    std::string rarity;         // "rare"; may be empty
    std::string per;            // "day", "mile", "lb"; empty: for one
    std::int64_t weight_thousandths_lb = 0;
    std::int64_t bulk_tenths = 0;

    bool operator==(const Price&) const = default;
};

struct PriceKind {
    std::string key;  // "adventuring_gear"
    std::string name; // "adventuring gear"
    std::string source;
    bool is_carried = true;     // a thing; no service
    bool sells_in_full = false; // trade goods

    bool operator==(const PriceKind&) const = default;
};

struct PriceBook {
    std::string title; // document titles
    std::string licence;
    std::vector<CoinRule> coins; // smallest first
    int selling_percent = 50;
    int selling_percent_in_full = 100; // gems, art and trade goods
    std::vector<PriceKind> kinds;      // in the order of the file
    std::vector<Price> prices;         // by kind, in the order of the file
    std::vector<HouseRule> house_ruled;

    bool operator==(const PriceBook&) const = default;
};

// The kind with this key, or nullptr.
const PriceKind* find_price_kind(const PriceBook& book, const std::string& key);
// The price with this key, or nullptr.
const Price* find_price(const PriceBook& book, const std::string& key);

} // namespace rules
