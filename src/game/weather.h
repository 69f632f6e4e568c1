// The Weather Walk: the weather of any in-world day of a place.
//
// A day's weather is a function of (seed, climate, time of year, day, overrules) alone. It can be
// asked for in any order and for any day, before day 1 too, and no walk starts at day 1.
//
// Random numbers are counted, not drawn: number k of a day is a hash of (seed, day, k). So every
// day has its own fixed numbers, whoever looks first.
//
// The sky is a Markov chain over eight states in two steps: wet or dry given yesterday's, then
// which sky of that kind: yesterday's again with the chance `lingers`, otherwise by the weights.
// Yesterday only matters where the day's first number falls between the two chances of rain, or
// where its second falls below `lingers`. Where neither is so, all eight possible yesterdays lead
// to one and the same today: such a day starts the chain anew. To know day d, go back to the
// nearest such day (at least a tenth of all days are, so it is a few days away; a climate that
// would have fewer is refused) and walk forward. What comes out is the value that a walk begun
// infinitely long ago has on day d (coupling from the past), so there are no block borders and
// the frequencies are exactly those of the chain, also while the seasons change its chances.
//
// Deviations of temperature, wind and wind direction are autoregressive: x(d) = keeps * x(d-1) +
// news(d). Written out that is a sum over the news of the days before with falling weights; it is
// cut where the weight falls below 1/500,000, so random access is exact here too.
//
// A day that the GM overrules is where both recursions start for the days after it: the chain goes
// on from the sky that was said, until a day that starts anew in any case, and the deviation fades.
// Days before it, and days far after it, stay what they were.
#pragma once

#include "game/calendar_dates.h"
#include "game/climate.h"
#include "game/places.h"

#include <array>
#include <cstdint>
#include <vector>

namespace game {

struct DayWeather {
    std::int64_t day = 0;
    Sky sky = Sky::clear;
    double high_c = 0.0;
    double low_c = 0.0;
    WindStrength wind = WindStrength::light;
    double wind_kmh = 0.0;
    int wind_from = 0;                         // 0 north, 1 north-east ... 7 north-west
    const WeatherOverrule* overrule = nullptr; // in the list that was given

    bool operator==(const DayWeather&) const = default;
};

struct WeatherSource {
    const Climate& climate;
    const WeatherFigures& figures;
    std::uint64_t seed = 0;
    double warmer_by_c = 0.0; // of the place, against its climate
    double shift_c = 0.0;     // of a place that has the weather of another, against that
    const std::vector<WeatherOverrule>& overrules; // sorted by day
    YearClock year;
};

// The weather of `count` days from `first` on.
std::vector<DayWeather>
walk_weather(const WeatherSource& source, std::int64_t first, std::size_t count);

// The seed of a place's own walk.
std::uint64_t weather_seed(std::uint32_t campaign_seed, Id place);

// Below this chance of starting anew a climate is refused.
inline constexpr double renewal_least = 0.1;

bool is_wet(Sky sky);
bool is_snow(Sky sky); // snow that lies: not sleet

// The figures of a climate at a share of the year.
ClimateSeason season_at(const Climate& climate, double share);
// The mean temperature of the season, dry and wet days together; degrees Celsius.
double seasonal_mean_c(const Climate& climate, double share);

// Chance of each sky the day after `before` while the figures hold, without frost; sums to 1.
std::array<double, walked_skies> next_sky_chances(const ClimateSeason& season, Sky before);
// Chance that a day starts the chain anew.
double renewal_chance(const ClimateSeason& season);
// Share of wet days in the long run while the figures hold.
double wet_share(const ClimateSeason& season);

} // namespace game
