// A day's weather as the GM needs it: what is worth telling, the line to read aloud, what the open
// rules say about it, and the week ahead. All of it follows from the walk, whoever looks first.
#pragma once

#include "game/campaign.h"
#include "game/climate.h"
#include "game/places_edit.h"
#include "game/weather.h"

#include <optional>
#include <string>
#include <vector>

namespace game {

enum class WeatherEvent {
    first_snow, // snow for the first time since midsummer
    fog,
    thunderstorm,
    gale,      // gale or storm wind
    dust,      // the same on a dry day over dry ground
    dry_spell, // so many days without rain
    heat,
    hard_frost,
};

// "first snow of the winter"
std::string_view event_words(WeatherEvent event);

// What is worth telling about the day, in the order of the enum. Looks back as far as midsummer
// on a day with snow, else a dry spell's length.
std::vector<WeatherEvent> weather_events(const WeatherSource& source, const DayWeather& day);

// Two short sentences at most, 20 words: to be spoken in eight seconds. No line is that of one of
// the ten days before, because opening and closing take turns by the day and their numbers have
// no common divisor.
std::string line_to_read(
    const WeatherSource& source,
    const WeatherPhrases& phrases,
    const DayWeather& yesterday,
    const DayWeather& today,
    const std::vector<WeatherEvent>& events
);

// The rules of the campaign's rulebook that the day falls under, in the order of the file.
std::vector<const WeatherRule*> rules_for_weather(
    const std::vector<WeatherRule>& rules,
    const WeatherSource& source,
    const About& about,
    const DayWeather& day
);

inline constexpr std::size_t days_ahead = 7;

struct WeatherReport {
    DayWeather yesterday;
    std::vector<DayWeather> days; // today and the days ahead
    std::vector<WeatherEvent> events;
    std::string line;
    std::vector<const WeatherRule*> rules; // of the climates given
};

WeatherReport report_weather(
    const Climates& climates, const WeatherSource& source, const About& about, std::int64_t day
);

// Where a place's weather comes from; nothing below ground or where its climate cannot be read.
// It points into `places` and `climates`.
std::optional<WeatherSource>
weather_source(const Places& places, const Place& place, const Climates& climates, YearClock year);

// Degrees Celsius in the unit that temperatures are told in, and back (to a tenth of a degree).
double in_unit(double celsius, bool in_fahrenheit);
double celsius_of(double degrees, bool in_fahrenheit);

// Words for the screen and the terminal.
std::string temperature_text(double celsius, bool in_fahrenheit); // "-3 C", "54 F"
std::string_view compass_words(int octant);                       // "north-east"
std::string
wind_text(const WeatherPhrases& phrases, const DayWeather& day); // "strong wind from the west"
// "light rain 12 C": the sky and the day's high.
std::string short_weather(const WeatherPhrases& phrases, const DayWeather& day, bool in_fahrenheit);

} // namespace game
