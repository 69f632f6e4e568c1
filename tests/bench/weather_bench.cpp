// What the weather of one day costs when it is asked for out of order, as a ratio to a walk from
// day 1 that keeps only the last day. Prints and never fails; run it by hand from a release build.
#include "bench/measure.h"
#include "game/weather_report.h"
#include "store/climate_json.h"

#include <cstdio>

int main() {
    const store::ClimateReading reading = store::load_climates(TABLEWICK_SOURCE_DIR "/assets");
    const game::Climate* coast = game::find_climate(reading.climates, "temperate_coast");
    if (coast == nullptr) {
        std::puts("The climate of the temperate coast cannot be read.");
        return 1;
    }
    const std::vector<game::WeatherOverrule> none;
    const game::Calendar no_calendar;
    const game::WeatherSource source{
        *coast, reading.climates.figures, 42, 0.0, 0.0, none, game::year_clock(no_calendar)};
    constexpr int ten_years = 3652;
    const game::About about;
    int asked = 0;
    const auto any_day = [&asked] { return (asked++ * 7919) % ten_years; };
    const auto from_day_1 = [&] { return game::walk_weather(source, 1, ten_years).back().high_c; };
    measure::compare(
        "one day, out of order",
        [&] { return game::walk_weather(source, any_day(), 1).front().high_c; },
        "a walk of ten years from day 1",
        from_day_1
    );
    measure::compare(
        "a day's report with the week ahead",
        [&] {
            return game::report_weather(reading.climates, source, about, any_day())
                .days.front()
                .high_c;
        },
        "a walk of ten years from day 1",
        from_day_1
    );
    return 0;
}
