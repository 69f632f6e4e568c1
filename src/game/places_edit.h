// What happens to places: added, changed, removed, chosen; and what the GM decides about a day's
// weather. The change that edits carry out.
#pragma once

#include "game/places.h"

#include <string>
#include <string_view>

namespace game {

struct PlaceLimits {
    static constexpr std::int64_t day_min = -1'000'000'000;
    static constexpr std::int64_t day_max = 1'000'000'000;
    static constexpr double celsius_min = -90.0;
    static constexpr double celsius_max = 60.0;
    static constexpr int warmer_by_max = 40;
};

const Place* place_with(const Places& places, Id id);
Place* place_with(Places& places, Id id);

// Where the party is, or nullptr.
const Place* current_place(const Places& places);

// The place whose weather and overrules hold at `place`: itself, or at the end of its chain of
// weather_of. A broken or circular chain ends where it breaks.
const Place& weather_place(const Places& places, const Place& place);

// Would `place` following the weather of `other` end in a circle?
bool follows_weather(const Places& places, Id other, Id place);

// Adds a place and returns its id; the first one becomes the current one. Fixes the campaign's
// weather, if it is not yet, from its title, so that two campaigns have weathers of their own.
Id add_place(Places& places, Place place, std::string_view campaign_title);

// Takes it away; who followed its weather has the climate it showed and a weather of its own from
// now on. The party is then at no place.
void remove_place(Places& places, Id id);

// The overrule of that day in the place's own list, or nullptr.
const WeatherOverrule* overrule_on(const Place& place, std::int64_t day);

// Puts the overrule in the list, in place of an earlier one of that day. One that says nothing is
// taken out: the day is as rolled again. A temperature outside the limits becomes the nearest one.
void overrule_weather(Place& place, WeatherOverrule overrule);

// A number for the title, never 0 and below 2^32: FNV-1a, 32 bit.
std::uint32_t weather_seed_of(std::string_view title);

} // namespace game
