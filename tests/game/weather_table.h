// The real climates, and walks through them, for the tests of the weather.
#pragma once

#include "game/weather_report.h"
#include "store/climate_json.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

namespace weather_table {

inline const game::Climates& climates() {
    static const store::ClimateReading reading =
        store::load_climates(TABLEWICK_SOURCE_DIR "/assets");
    for (const base::Error& problem : reading.problems)
        FAIL(base::to_text(problem));
    return reading.climates;
}

inline const game::Climate& climate(const std::string& key) {
    const game::Climate* found = game::find_climate(climates(), key);
    REQUIRE_MESSAGE(found != nullptr, key);
    return *found;
}

inline const std::vector<game::WeatherOverrule>& nothing_said() {
    static const std::vector<game::WeatherOverrule> none;
    return none;
}

inline game::YearClock usual_year() {
    static const game::Calendar no_calendar;
    return game::year_clock(no_calendar);
}

// It is always the same time of year.
inline game::YearClock standing_year(double share) {
    return [share](std::int64_t) { return share; };
}

inline game::WeatherSource
source_of(const game::Climate& climate, game::YearClock year, std::uint64_t seed = 42) {
    return {climate, climates().figures, seed, 0.0, 0.0, nothing_said(), std::move(year)};
}

inline game::DayWeather day_of(const game::WeatherSource& source, std::int64_t day) {
    return game::walk_weather(source, day, 1).front();
}

inline double mean_of(const game::DayWeather& day) {
    return (day.high_c + day.low_c) / 2.0;
}

} // namespace weather_table
