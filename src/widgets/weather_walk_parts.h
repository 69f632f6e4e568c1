// What the two files of Weather Walk share. Only they use it.
#pragma once

#include "game/weather_report.h"
#include "widgets/weather_walk.h"

namespace widgets {

// The weather that is shown.
struct ShownWeather {
    const PanelContext& context;
    const game::Place& place;
    const game::WeatherSource& source;
    const game::WeatherReport& report; // of the shown day
};

// Where the GM decides instead of the walk.
void draw_weather_overrule(const ShownWeather& shown, WeatherWalkView& view);

// The sky as a drawn sign beside its word, of this side length.
void draw_sky_sign(game::Sky sky, float size, Ink ink);

} // namespace widgets
