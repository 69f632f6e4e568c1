// The bar on top: campaign, round and in-world time, scenes, undo and redo, how it is saved, menus.
#pragma once

namespace app {

struct ShellState;

// Draws into a window of its own at the top and returns the height it takes.
float draw_top_bar(ShellState& state, float width);

} // namespace app
