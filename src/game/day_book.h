// The Day Book: what stands on the page of each in-world day, and the timers the GM sets in days.
#pragma once

#include "base/id.h"
#include "base/unknown_fields.h"

#include <cstdint>
#include <string>
#include <vector>

namespace game {

using base::Id;

struct DayPage {
    Id id = base::no_id;
    std::int64_t day = 1; // running day of the campaign; one page a day
    std::string text;     // what happened, by hand
    base::UnknownFields unknown{};

    bool operator==(const DayPage&) const = default;
};

// Something that is due at a time of the world: fish that spoils, a debt, an arrival.
struct DayTimer {
    Id id = base::no_id;
    std::string text;
    std::int64_t ends_day = 1; // running day
    int ends_second_of_day = 0;
    bool is_done = false;
    base::UnknownFields unknown{};

    bool operator==(const DayTimer&) const = default;
};

struct DayBook {
    std::vector<DayPage> pages;   // sorted by day; only days on which something stands
    std::vector<DayTimer> timers; // soonest first
    Id next_id = 1;               // for pages and timers
    base::UnknownFields unknown{};

    bool operator==(const DayBook&) const = default;
};

} // namespace game
