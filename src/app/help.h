// The help overlay: every key, and one line about each scene and panel.
#pragma once

namespace app {

void draw_help(bool& is_open);

} // namespace app
