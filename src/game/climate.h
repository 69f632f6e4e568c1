// Climates as they arrive from assets/climates, and the words the weather is told in. What is
// computed from them: weather.h.
#pragma once

#include "game/weather_words.h"
#include "rules/rulebook.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace game {

// One season's figures, in force at its middle; between the middles they change evenly.
struct ClimateSeason {
    double wet_after_dry = 0.3; // chance of a wet day after a dry one, 0..1
    double wet_after_wet = 0.6; // and after a wet one
    double lingers = 0.3;       // chance that the sky stays the very same, within wet or dry
    std::array<double, 4> dry{1, 1, 1, 0}; // weights of clear, fair, overcast, fog
    std::array<double, 4> wet{1, 1, 1, 0}; // weights of light rain, rain, heavy rain, thunderstorm
    double spread_c = 8.0;                 // degrees Celsius between low and high of a fair day
    double wet_warmer_c = 0.0; // a wet day's mean against a dry one's; below 0 in summer
    double restless_c = 3.0;   // standard deviation of the mean from day to day
    double wind_kmh = 14.0;    // usual greatest steady wind of a day
};

struct Climate {
    std::string key;
    std::string title;
    std::string summary; // one line
    std::string source;
    double mean_c = 10.0;       // of the year, of dry and wet days together
    double swing_c = 8.0;       // midsummer is this much above it, midwinter below
    double lag = 0.08;          // share of the year by which the coldest days come after midwinter
    double keeps_warmth = 0.75; // of yesterday's deviation from the season's mean, 0..0.95
    double wind_changes = 0.45; // spread of the wind around the usual, as a logarithm
    double wind_from_deg = 270; // prevailing: 0 north, 90 east
    double wind_turns_deg = 50; // how far it usually turns from that
    bool has_dust = false;      // dry ground that a gale lifts
    std::array<ClimateSeason, 4> seasons;            // midwinter, mid-spring, midsummer, mid-autumn
    std::array<std::vector<std::string>, 4> touches; // sentences for the time of year
};

// Sentences and halves of sentences to read aloud.
struct SkyWords {
    std::string name;                  // "light rain"
    std::vector<std::string> openings; // "A thin rain hangs over the road"
    std::vector<std::string> closings; // "and beads on every sleeve."
};

struct WeatherPhrases {
    std::array<SkyWords, sky_count> skies;
    std::array<std::string, wind_count> winds;              // "strong wind"
    std::array<std::vector<std::string>, wind_count> gusts; // sentences about such a wind
    std::array<std::vector<std::string>, 6> warmth; // of bitter, frosty, cold, mild, warm, hot days
    std::vector<std::string> warmer, colder;        // than yesterday
    std::vector<std::string> cleared, broke;        // wet to dry, dry to wet
    std::vector<std::string> first_snow, dry_spell, dust;
};

// What the open rules say about some weather: applies where every condition that is set holds.
struct WeatherRule {
    rules::Family family = rules::Family::four_degree;
    std::optional<rules::SrdEdition> edition;
    std::vector<Sky> skies;
    std::optional<WindStrength> wind_least;
    std::optional<double> high_least_c, high_below_c; // degrees Celsius, of the day's high
    std::optional<double> low_most_c, low_above_c;    // and of its low
    bool needs_dust = false;
    std::string line;
    std::string source;
    std::string verified;
};

// Figures that all climates share.
struct WeatherFigures {
    std::array<double, walked_skies> spread{1, 1, 1, 1, 1, 1, 1, 1}; // of a fair day's low to high
    std::array<double, walked_skies> wind{1, 1, 1, 1, 1, 1, 1, 1};   // of the usual wind
    std::array<double, wind_count - 1> wind_below_kmh{2, 12, 29, 50, 75};
    std::array<double, wind_count> wind_typical_kmh{1, 7, 20, 38, 60, 90}; // of an overruled day
    double wind_keeps = 0.45;     // of yesterday's deviation
    double wind_turn_keeps = 0.6; // the same of the direction
    double snow_below_c = 0.5;    // the day's mean
    double sleet_below_c = 1.8;
    double heat_c = 32;       // the day's high
    double hard_frost_c = -8; // the day's low
    int dry_spell_days = 14;  // without any rain, the day itself counted
    double change_c = 6;      // of the high since yesterday that is worth telling
    std::array<double, 5> warmth_below_c{
        -8, 2, 10, 19, 28}; // of the high: bitter, frosty, cold ...
};

struct Climates {
    std::vector<Climate> climates; // by title
    WeatherPhrases phrases;
    std::vector<WeatherRule> rules;
    WeatherFigures figures;
};

// The climate with this key, or nullptr.
const Climate* find_climate(const Climates& climates, const std::string& key);

} // namespace game
