// Weather Walk: the weather where the party is, with the line to read aloud, and the week ahead.
#pragma once

#include "widgets/form.h"
#include "widgets/panel.h"

namespace widgets {

struct WeatherWalkView {
    int ahead = 0; // the day shown: 0 today, up to 7 days ahead
    FormDrafts drafts;
    bool is_overruling = false; // the form is open
};

extern const PanelInfo weather_walk_info;

void draw_weather_walk(const PanelContext& context, WeatherWalkView& view);

} // namespace widgets
