// Places the party travels between, each with its climate and its own weather.
#pragma once

#include "base/id.h"
#include "base/unknown_fields.h"

#include <cstdint>
#include <string>
#include <vector>

namespace game {

using base::Id;

struct Place {
    Id id = base::no_id;
    std::string name;
    std::string climate; // key of assets/climates; empty: no weather here (below ground)
    base::UnknownFields unknown{};

    bool operator==(const Place&) const = default;
};

struct Places {
    std::vector<Place> places;
    Id current = base::no_id;       // where the party is
    std::uint32_t weather_seed = 1; // of the campaign's weather
    Id next_id = 1;
    base::UnknownFields unknown{};

    bool operator==(const Places&) const = default;
};

} // namespace game
