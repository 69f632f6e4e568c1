// Where the weather gets the time of year from: the one place that ties it to the calendar.
#pragma once

#include "game/calendar.h"

#include <cmath>
#include <cstdint>
#include <functional>

namespace game {

// The share of the year that a running day stands at: 0 midwinter, 0.5 midsummer, below 1.
using YearClock = std::function<double(std::int64_t day)>;

inline constexpr double mean_year_days = 365.2425; // mean year of the common solar calendar

// Until a calendar says otherwise, day 1 stands at midwinter and a year has the length of the
// common solar calendar's mean year.
inline YearClock year_clock(const Calendar& /*calendar*/) {
    return [](std::int64_t day) {
        const double years = static_cast<double>(day - 1) / mean_year_days;
        return years - std::floor(years);
    };
}

} // namespace game
