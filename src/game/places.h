// Places the party travels between, each with its climate and its own weather.
#pragma once

#include "base/id.h"
#include "base/unknown_fields.h"
#include "game/weather_words.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace game {

using base::Id;

// What the GM decided about the weather of one day; what is left open stays as rolled.
struct WeatherOverrule {
    std::int64_t day = 1; // running day of the campaign
    std::optional<Sky> sky;
    std::optional<double> high_c; // of the day, degrees Celsius
    std::optional<WindStrength> wind;
    std::string note;
    base::UnknownFields unknown{};

    bool operator==(const WeatherOverrule&) const = default;
};

struct Place {
    Id id = base::no_id; // also what makes its weather its own
    std::string name;
    std::string climate;         // key of assets/climates; empty: no weather here (below ground)
    std::string note;            // of the GM
    int warmer_by = 0;           // degrees Celsius against its climate, or the place below
    Id weather_of = base::no_id; // another place: the same weather as there, its climate too
    std::vector<WeatherOverrule> overrules; // sorted by day, one a day
    base::UnknownFields unknown{};

    bool operator==(const Place&) const = default;
};

struct Places {
    std::vector<Place> places;
    Id current = base::no_id;       // where the party is
    std::uint32_t weather_seed = 0; // of the campaign's weather; 0: not drawn yet
    bool in_fahrenheit = false;     // how temperatures are told
    Id next_id = 1;
    base::UnknownFields unknown{};

    bool operator==(const Places&) const = default;
};

} // namespace game
