#include "game/places_edit.h"

#include <algorithm>
#include <utility>

namespace game {

const Place* place_with(const Places& places, Id id) {
    for (const Place& place : places.places)
        if (place.id == id) return &place;
    return nullptr;
}

Place* place_with(Places& places, Id id) {
    return const_cast<Place*>(place_with(std::as_const(places), id)); // NOLINT: same list
}

const Place* current_place(const Places& places) {
    return places.current == base::no_id ? nullptr : place_with(places, places.current);
}

const Place& weather_place(const Places& places, const Place& place) {
    const Place* found = &place;
    // A chain without a circle is no longer than the list.
    for (std::size_t steps = places.places.size(); steps > 0; --steps) {
        if (found->weather_of == base::no_id) break;
        const Place* next = place_with(places, found->weather_of);
        if (next == nullptr) break;
        found = next;
    }
    return *found;
}

bool follows_weather(const Places& places, Id other, Id place) {
    const Place* found = place_with(places, other);
    for (std::size_t steps = places.places.size(); found != nullptr && steps > 0; --steps) {
        if (found->id == place) return true;
        found = place_with(places, found->weather_of);
    }
    return found != nullptr;
}

Id add_place(Places& places, Place place, std::string_view campaign_title) {
    if (places.weather_seed == 0) places.weather_seed = weather_seed_of(campaign_title);
    place.id = places.next_id++;
    places.places.push_back(std::move(place));
    const Id id = places.places.back().id;
    if (places.places.size() == 1) places.current = id;
    return id;
}

void remove_place(Places& places, Id id) {
    const Place* gone = place_with(std::as_const(places), id);
    if (gone == nullptr) return;
    const std::string climate = weather_place(places, *gone).climate;
    for (Place& place : places.places) {
        if (place.weather_of != id) continue;
        place.weather_of = base::no_id;
        place.climate = climate;
    }
    std::erase_if(places.places, [id](const Place& place) { return place.id == id; });
    if (places.current == id) places.current = base::no_id;
}

const WeatherOverrule* overrule_on(const Place& place, std::int64_t day) {
    for (const WeatherOverrule& overrule : place.overrules)
        if (overrule.day == day) return &overrule;
    return nullptr;
}

void overrule_weather(Place& place, WeatherOverrule overrule) {
    const auto same_day = [day = overrule.day](const WeatherOverrule& each) {
        return each.day == day;
    };
    const bool says_nothing = !overrule.sky && !overrule.high_c && !overrule.wind &&
                              overrule.note.empty() && overrule.unknown.empty();
    std::erase_if(place.overrules, same_day);
    using Limits = PlaceLimits;
    if (overrule.high_c)
        overrule.high_c = std::clamp(*overrule.high_c, Limits::celsius_min, Limits::celsius_max);
    if (says_nothing) return;
    const auto before = std::lower_bound(
        place.overrules.begin(),
        place.overrules.end(),
        overrule.day,
        [](const WeatherOverrule& each, std::int64_t day) { return each.day < day; }
    );
    place.overrules.insert(before, std::move(overrule));
}

std::uint32_t weather_seed_of(std::string_view title) {
    std::uint32_t hash = 2166136261U;
    for (const char letter : title) {
        hash ^= static_cast<unsigned char>(letter);
        hash *= 16777619U;
    }
    return hash == 0 ? 1 : hash;
}

} // namespace game
