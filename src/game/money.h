// Amounts of money: read, written, added and split, all in whole numbers of the smallest coin.
#pragma once

#include "base/result.h"
#include "game/treasure_limits.h"
#include "game/treasury.h"
#include "rules/prices.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace game {

// The coins of the campaign: the GM's own, or those of the price list.
std::vector<Coin> coins_of(const Treasury& treasury, const rules::PriceBook* prices);

// Reads "12 gp 3 sp", "12.5 gp", "1,204 cp", "-3 gp", "+4gp2sp"; a number alone counts in the
// largest coin that amounts are shown in. Coins by abbreviation or name. Errors (bad_text): no
// number, an unknown coin, a coin that stands twice, commas that do not part thousands, a part of
// the smallest coin; out_of_range beyond money_max.
base::Result<std::int64_t> parse_money(std::string_view text, const std::vector<Coin>& coins);

// "12 gp 3 sp", "1,204 cp", "-3 gp", "0 gp"; parse_money reads every one of them back.
std::string money_text(std::int64_t amount, const std::vector<Coin>& coins);

// "1,204".
std::string thousands_text(std::int64_t number);

// Sum and product. Errors: out_of_range beyond money_max, in one sentence.
base::Result<std::int64_t> money_sum(std::int64_t one, std::int64_t other);
base::Result<std::int64_t> money_times(std::int64_t amount, std::int64_t factor);

// So many percent of it, rounded down to the smallest coin; percent 0..1000. Errors as above.
base::Result<std::int64_t> money_share(std::int64_t amount, int percent);

struct MoneySplit {
    std::int64_t each = 0;
    std::int64_t remainder = 0; // 0..people-1 of the smallest coin

    bool operator==(const MoneySplit&) const = default;
};

// Errors: out_of_range for an amount below 0 or nobody to split it among.
base::Result<MoneySplit> split_money(std::int64_t amount, std::int64_t people);

// Why the set of coins cannot be used, in one short sentence; empty when it can: abbreviations of
// letters, none twice, one coin worth 1, at least one that amounts are shown in and one of those
// worth 1, so that every amount can be written.
std::string coins_problem(const std::vector<Coin>& coins);

} // namespace game
