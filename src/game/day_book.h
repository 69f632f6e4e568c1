// The Day Book: what stands on the page of each in-world day.
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

struct DayBook {
    std::vector<DayPage> pages; // sorted by day; only days on which something stands
    Id next_id = 1;
    base::UnknownFields unknown{};

    bool operator==(const DayBook&) const = default;
};

} // namespace game
