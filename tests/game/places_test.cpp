// Places: added, chosen, following each other's weather, removed.
#include "game/places_edit.h"
#include "game/weather_table.h"

using game::Place;
using game::Places;

namespace {

Place called(const std::string& name, const std::string& climate) {
    Place place;
    place.name = name;
    place.climate = climate;
    return place;
}

// Salt Ferry (1) on the coast, the sluice (2) with the weather of Salt Ferry, the pass (3).
Places three_places() {
    Places places;
    game::add_place(places, called("Salt Ferry", "temperate_coast"), "Salt Road Charter");
    Place sluice = called("The sluice", "desert");
    sluice.weather_of = 1;
    sluice.warmer_by = -4;
    game::add_place(places, sluice, "Salt Road Charter");
    game::add_place(places, called("The pass", "mountains"), "Salt Road Charter");
    return places;
}

game::DayWeather weather_on(const Places& places, game::Id place, std::int64_t day) {
    const auto source = game::weather_source(
        places,
        *game::place_with(places, place),
        weather_table::climates(),
        weather_table::usual_year()
    );
    REQUIRE(source.has_value());
    return weather_table::day_of(*source, day);
}

} // namespace

TEST_CASE("places: the first one is where the party is, and the campaign gets its own weather") {
    const Places places = three_places();
    CHECK(places.current == 1);
    CHECK(places.next_id == 4);
    CHECK(places.weather_seed == game::weather_seed_of("Salt Road Charter"));
    CHECK(game::weather_seed_of("Salt Road Charter") != game::weather_seed_of("Lantern Quay"));
    // FNV-1a, 32 bit: the published test vector for "a".
    CHECK(game::weather_seed_of("a") == 0xE40C292CU);
}

TEST_CASE("places: another title later leaves the weather as it is") {
    Places places = three_places();
    const auto before = places.weather_seed;
    game::add_place(places, called("Harrowmouth", "steppe"), "A new title");
    CHECK(places.weather_seed == before);
}

TEST_CASE("places: the same weather as there, only colder") {
    const Places places = three_places();
    for (std::int64_t day = -3; day < 60; ++day) {
        const auto ferry = weather_on(places, 1, day);
        const auto sluice = weather_on(places, 2, day);
        CHECK(sluice.high_c == doctest::Approx(ferry.high_c - 4.0));
        CHECK(sluice.wind == ferry.wind);
        CHECK(game::is_wet(sluice.sky) == game::is_wet(ferry.sky));
    }
}

TEST_CASE("places: what the GM says at one place holds where its weather is followed") {
    Places places = three_places();
    game::WeatherOverrule fog;
    fog.day = 5;
    fog.sky = game::Sky::fog;
    game::overrule_weather(*game::place_with(places, 1), fog);
    CHECK(weather_on(places, 1, 5).sky == game::Sky::fog);
    CHECK(weather_on(places, 2, 5).sky == game::Sky::fog);
}

TEST_CASE("places: following in a circle is found, and a broken chain ends where it breaks") {
    Places places = three_places();
    CHECK(game::follows_weather(places, 2, 1)); // the sluice already follows Salt Ferry
    CHECK(game::follows_weather(places, 1, 1));
    CHECK_FALSE(game::follows_weather(places, 3, 1));
    // Only a file edited by hand can hold these.
    game::place_with(places, 1)->weather_of = 2;
    CHECK(game::weather_place(places, *game::place_with(places, 1)).id != 3);
    game::place_with(places, 1)->weather_of = 99;
    CHECK(game::weather_place(places, *game::place_with(places, 2)).id == 1);
}

TEST_CASE("places: who followed a removed place keeps its climate, with a weather of its own") {
    Places places = three_places();
    game::remove_place(places, 1);
    REQUIRE(places.places.size() == 2);
    const Place* sluice = game::place_with(places, 2);
    CHECK(sluice->weather_of == base::no_id);
    CHECK(sluice->climate == "temperate_coast");
    CHECK(places.current == base::no_id);
    CHECK(game::current_place(places) == nullptr);
    game::remove_place(places, 77);
    CHECK(places.places.size() == 2);
}

TEST_CASE("places: below ground there is no weather, nor where the climate is unknown") {
    Places places = three_places();
    game::add_place(places, called("The cellars", ""), "Salt Road Charter");
    game::add_place(places, called("The moon", "airless"), "Salt Road Charter");
    for (const game::Id place : {4U, 5U})
        CHECK_FALSE(game::weather_source(
                        places,
                        *game::place_with(places, place),
                        weather_table::climates(),
                        weather_table::usual_year()
        )
                        .has_value());
}

TEST_CASE("places: overrules stand by day, one a day") {
    Place place;
    for (const std::int64_t day : {7, -2, 3, 7}) {
        game::WeatherOverrule overrule;
        overrule.day = day;
        overrule.high_c = static_cast<double>(day);
        game::overrule_weather(place, overrule);
    }
    REQUIRE(place.overrules.size() == 3);
    CHECK(place.overrules[0].day == -2);
    CHECK(place.overrules[1].day == 3);
    CHECK(place.overrules[2].day == 7);
    CHECK(game::overrule_on(place, 3)->high_c == 3.0);
    CHECK(game::overrule_on(place, 4) == nullptr);
    game::WeatherOverrule furnace;
    furnace.day = 9;
    furnace.high_c = 300.0; // such a file could not be read again
    game::overrule_weather(place, furnace);
    CHECK(game::overrule_on(place, 9)->high_c == game::PlaceLimits::celsius_max);
}
