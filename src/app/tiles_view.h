// The tiles on the screen: tab strips, the content of the panels in front, splitters, and dragging
// a tab to another place. What happens to the tree is done by tiles.h.
#pragma once

#include "app/tiles_layout.h"

#include <functional>
#include <string>

namespace app {

struct TilesView {
    std::string dragged; // the panel whose tab is on the way; empty: none
    TilePath splitter;   // being dragged
    bool drags_splitter = false;
};

// Draws the content of one panel; the window is open.
using DrawPanel = std::function<void(const std::string& panel)>;

void draw_tiles(Tiles& tiles, TilesView& view, const Box& area, const DrawPanel& draw_panel);

} // namespace app
