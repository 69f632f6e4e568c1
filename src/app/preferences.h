// What the person prefers, apart from any campaign. Pure values and JSON text.
#pragma once

#include "widgets/ui.h"

#include <string>
#include <string_view>
#include <vector>

namespace app {

constexpr int text_scale_min = 80; // per cent
constexpr int text_scale_max = 250;
constexpr int text_scale_step = 10;

struct Preferences {
    widgets::ThemeName theme = widgets::ThemeName::dark;
    int text_scale_percent = 100;
    bool is_touch = false;
    int width = 0; // of the window, in screen units; 0: the usual size
    int height = 0;

    bool operator==(const Preferences&) const = default;
};

struct ReadPreferences {
    Preferences preferences;
    std::vector<std::string> complaints; // one sentence each; what is wrong keeps its default
};

std::string to_json(const Preferences& preferences);
ReadPreferences preferences_from_json(std::string_view json);

// One step larger (+1) or smaller (-1), within the limits.
int text_scale_after(int percent, int steps);

} // namespace app
