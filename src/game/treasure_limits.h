// What money and items are kept within, in files and fields alike.
#pragma once

#include <cstdint>

namespace game {

inline constexpr std::int64_t money_max = 1'000'000'000'000; // of the smallest coin
inline constexpr std::int64_t coin_worth_max = 1'000'000'000;
inline constexpr int item_count_max = 1'000'000;
inline constexpr std::int64_t item_load_max =
    1'000'000'000; // thousandths of a pound, tenths of Bulk

} // namespace game
