// The Weather Walk as a GM sees it: the same whoever looks first, and it minds what the GM says.
#include "game/weather_table.h"

#include <algorithm>
#include <cmath>

using game::DayWeather;
using game::Sky;
using game::WeatherOverrule;
using game::WindStrength;
using weather_table::day_of;
using weather_table::mean_of;
using weather_table::source_of;
using weather_table::usual_year;

namespace {

WeatherOverrule said(std::int64_t day) {
    WeatherOverrule overrule;
    overrule.day = day;
    return overrule;
}

game::WeatherSource overruled(
    const game::Climate& climate,
    const std::vector<WeatherOverrule>& overrules,
    std::uint64_t seed = 42
) {
    return {
        climate,
        weather_table::climates().figures,
        seed,
        0.0,
        0.0,
        overrules,
        weather_table::usual_year()};
}

// What a GM can see of two days is the same to the last digit.
bool same(const DayWeather& one, const DayWeather& two) {
    return one.day == two.day && one.sky == two.sky && one.high_c == two.high_c &&
           one.low_c == two.low_c && one.wind == two.wind && one.wind_kmh == two.wind_kmh &&
           one.wind_from == two.wind_from;
}

} // namespace

TEST_CASE("weather: looking at day 500 first and then at day 3 gives what the other way gives") {
    WeatherOverrule storm = said(37);
    storm.sky = Sky::thunderstorm;
    storm.wind = WindStrength::storm;
    WeatherOverrule warm = said(40);
    warm.high_c = 24.0;
    WeatherOverrule snow = said(-20);
    snow.sky = Sky::heavy_snow;
    const std::vector<WeatherOverrule> overrules{snow, storm, warm};
    for (const game::Climate& climate : weather_table::climates().climates) {
        CAPTURE(climate.key);
        const auto source = overruled(climate, overrules);
        constexpr std::int64_t first = -400;
        constexpr std::size_t count = 1200;
        const auto in_a_row = game::walk_weather(source, first, count);
        REQUIRE(in_a_row.size() == count);
        for (std::size_t step = 0; step < count; ++step) {
            const std::size_t at = (step * 509) % count; // every day once, out of order
            const std::int64_t day = first + static_cast<std::int64_t>(at);
            CAPTURE(day);
            CHECK(same(in_a_row[at], day_of(source, day)));
        }
    }
}

TEST_CASE("weather: another seed and another place have another weather") {
    const auto& coast = weather_table::climate("temperate_coast");
    const auto one = game::walk_weather(source_of(coast, usual_year(), 1), 1, 100);
    const auto two = game::walk_weather(source_of(coast, usual_year(), 2), 1, 100);
    int equal = 0;
    for (std::size_t at = 0; at < one.size(); ++at)
        equal += one[at].high_c == two[at].high_c ? 1 : 0;
    CHECK(equal == 0);
    CHECK(game::weather_seed(5, 1) != game::weather_seed(5, 2));
    CHECK(game::weather_seed(5, 1) != game::weather_seed(6, 1));
}

TEST_CASE("weather: days before day 1 and far away are as good as any") {
    const auto source = source_of(weather_table::climate("continental"), usual_year());
    for (const std::int64_t far : {-1'000'000'000LL, -5LL, 0LL, 1'000'000'000LL}) {
        const auto days = game::walk_weather(source, far, 30);
        CHECK(days.front().day == far);
        for (const DayWeather& day : days) {
            CHECK(std::isfinite(day.high_c));
            CHECK(day.high_c > day.low_c);
            CHECK(day.wind_from >= 0);
            CHECK(day.wind_from < 8);
        }
    }
}

TEST_CASE("weather: what the GM says holds, the days after follow on, other days stay") {
    const auto& coast = weather_table::climate("temperate_coast");
    const auto plain = game::walk_weather(source_of(coast, usual_year()), 60, 140);
    WeatherOverrule overrule = said(100);
    overrule.sky = Sky::thunderstorm;
    overrule.high_c = 26.0;
    overrule.wind = WindStrength::gale;
    overrule.note = "the hag is angry";
    const std::vector<WeatherOverrule> overrules{overrule};
    const auto changed = game::walk_weather(overruled(coast, overrules), 60, 140);
    const auto at = [](std::int64_t day) { return static_cast<std::size_t>(day - 60); };
    for (std::int64_t day = 60; day < 100; ++day)
        CHECK(same(plain[at(day)], changed[at(day)]));
    CHECK(changed[at(100)].sky == Sky::thunderstorm);
    CHECK(changed[at(100)].high_c == doctest::Approx(26.0));
    CHECK(changed[at(100)].wind == WindStrength::gale);
    REQUIRE(changed[at(100)].overrule != nullptr);
    CHECK(changed[at(100)].overrule->note == "the hag is angry");
    // Warmth fades by `keeps_warmth` a day: after 60 days under a millionth is left.
    const double gap = mean_of(changed[at(101)]) - mean_of(plain[at(101)]);
    CHECK(gap > 3.0);
    CHECK(same(plain[at(190)], changed[at(190)]));
}

TEST_CASE("weather: the warmth that the GM said fades at the climate's own pace") {
    game::Climate calm = weather_table::climate("temperate_coast");
    for (game::ClimateSeason& season : calm.seasons)
        season.wet_warmer_c = 0.0; // so that only the deviation differs
    WeatherOverrule overrule = said(100);
    overrule.high_c = 30.0;
    const std::vector<WeatherOverrule> overrules{overrule};
    game::WeatherSource with = overruled(calm, overrules);
    with.year = weather_table::standing_year(0.25);
    game::WeatherSource without = with;
    const game::WeatherSource plain{
        calm,
        weather_table::climates().figures,
        42,
        0.0,
        0.0,
        weather_table::nothing_said(),
        with.year};
    const double first = mean_of(day_of(with, 100)) - mean_of(day_of(plain, 100));
    // Up to the 1/500,000 of a deviation at which the sum over the past is cut.
    for (int after = 1; after < 8; ++after) {
        const double left =
            mean_of(day_of(with, 100 + after)) - mean_of(day_of(plain, 100 + after));
        CHECK(left == doctest::Approx(first * std::pow(calm.keeps_warmth, after)).epsilon(1e-5));
    }
}

TEST_CASE("weather: taken back, a day is as rolled again, and so is what follows") {
    game::Place place;
    WeatherOverrule overrule = said(12);
    overrule.sky = Sky::fog;
    game::overrule_weather(place, overrule);
    REQUIRE(place.overrules.size() == 1);
    game::overrule_weather(place, said(12));
    CHECK(place.overrules.empty());
}

TEST_CASE("weather: what falls in frost is snow, and rain needs a thaw") {
    const auto& figures = weather_table::climates().figures;
    int snow_days = 0;
    for (const char* key : {"subarctic", "mountains", "temperate_coast"}) {
        const auto source = source_of(weather_table::climate(key), usual_year());
        for (const DayWeather& day : game::walk_weather(source, 1, 4000)) {
            CAPTURE(day.day);
            if (game::is_snow(day.sky)) {
                snow_days += 1;
                CHECK(mean_of(day) < figures.snow_below_c);
            } else if (day.sky == Sky::sleet) {
                CHECK(mean_of(day) >= figures.snow_below_c);
                CHECK(mean_of(day) < figures.sleet_below_c);
            } else if (game::is_wet(day.sky)) {
                CHECK(mean_of(day) >= figures.sleet_below_c);
            }
        }
    }
    CHECK(snow_days > 500);
}

TEST_CASE("weather: climates over a year are what their names promise") {
    struct Year {
        double wet = 0, high = 0, summer = 0, winter = 0, snow = 0, wet_summer = 0, wet_winter = 0;
    };

    const auto year_of = [](const char* key) {
        Year year;
        const auto clock = usual_year();
        const auto days =
            game::walk_weather(source_of(weather_table::climate(key), clock), 1, 7305);
        int summer_days = 0;
        int winter_days = 0;
        for (const DayWeather& day : days) {
            const double share = clock(day.day);
            const bool is_wet = game::is_wet(day.sky);
            year.wet += is_wet ? 1 : 0;
            year.snow += game::is_snow(day.sky) ? 1 : 0;
            if (share > 0.42 && share < 0.67) {
                summer_days += 1;
                year.summer += mean_of(day);
                year.wet_summer += is_wet ? 1 : 0;
            } else if (share < 0.17 || share > 0.92) {
                winter_days += 1;
                year.winter += mean_of(day);
                year.wet_winter += is_wet ? 1 : 0;
            }
        }
        const auto all = static_cast<double>(days.size());
        year.wet /= all;
        year.snow /= all;
        year.summer /= summer_days;
        year.winter /= winter_days;
        year.wet_summer /= summer_days;
        year.wet_winter /= winter_days;
        return year;
    };

    const Year coast = year_of("temperate_coast");
    const Year inland = year_of("continental");
    const Year mountains = year_of("mountains");
    const Year steppe = year_of("steppe");
    const Year desert = year_of("desert");
    const Year north = year_of("subarctic");
    const Year monsoon = year_of("monsoon");
    const Year dry_summer = year_of("dry_summer");
    for (const Year& year : {coast, inland, mountains, steppe, desert, north, monsoon, dry_summer})
        CHECK(year.summer > year.winter);
    CHECK(desert.wet < coast.wet / 4.0);
    CHECK(desert.wet < steppe.wet);
    CHECK(steppe.wet < inland.wet);
    CHECK(inland.summer - inland.winter > coast.summer - coast.winter + 5.0);
    CHECK(north.winter < -12.0);
    CHECK(north.snow > 0.15);
    CHECK(coast.snow < 0.02);
    CHECK(desert.snow == 0.0);
    CHECK(monsoon.snow == 0.0);
    CHECK(monsoon.summer - monsoon.winter < 8.0);
    CHECK(monsoon.wet_summer > 2.5 * monsoon.wet_winter);
    CHECK(dry_summer.wet_winter > 2.5 * dry_summer.wet_summer);
    CHECK(coast.wet_winter > 2.0 * coast.wet_summer);
    CHECK(mountains.summer < inland.summer - 5.0);
}
