// The menus of the top bar: which panels are open, and how everything looks.
#pragma once

namespace app {

struct ShellState;

// Popups "panels menu" and "settings menu" of the window that is open now.
void draw_panels_menu(ShellState& state);
void draw_settings_menu(ShellState& state);

} // namespace app
