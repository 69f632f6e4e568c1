// What the files that compute dates share. Nobody else needs it.
#pragma once

#include <cstdint>

namespace game {

// Division that rounds down, for numbers on both sides of 0; `by` is positive.
constexpr std::int64_t floor_div(std::int64_t number, std::int64_t by) {
    return number / by - (number % by < 0 ? 1 : 0);
}

constexpr std::int64_t floor_mod(std::int64_t number, std::int64_t by) {
    const std::int64_t rest = number % by;
    return rest < 0 ? rest + by : rest;
}

} // namespace game
