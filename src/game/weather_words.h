// The words that weather is told in: shared by what is saved, the model and the screen.
#pragma once

namespace game {

// What a day is like overhead. The first eight are what the walk goes through; the last four are
// the same with frost: what falls as rain falls as snow.
enum class Sky {
    clear,
    fair,
    overcast,
    fog,
    light_rain,
    rain,
    heavy_rain,
    thunderstorm,
    sleet,
    light_snow,
    snow,
    heavy_snow,
};

inline constexpr int walked_skies = 8;
inline constexpr int sky_count = 12;

// By the greatest steady speed of the day, in steps of our own: below 2, 12, 29, 50, 75 km/h, and
// more.
enum class WindStrength { still, light, breeze, strong, gale, storm };

inline constexpr int wind_count = 6;

} // namespace game
