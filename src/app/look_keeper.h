// Keeps style and typefaces in step with the preferences and the display, between two frames.
#pragma once

#include "app/preferences.h"
#include "app/shell.h"

namespace app {

class LookKeeper {
public:
    // Needs a current ImGui context with its OpenGL renderer. Not during a frame.
    void update(const Preferences& preferences, float display_scale, Messages& messages);

private:
    float scale_ = 0.0F;
    widgets::Fonts fonts_;
};

} // namespace app
