// The strip of tabs above a tile: press to show, press twice to fill the window and back, drag to
// another place, close with the cross. Tabs that would be cut too short stand in a menu at its end.
#pragma once

#include "app/tiles_view.h"

namespace app {

float tab_strip_height();

// Position and size of its window are set by the caller. `number` tells the strips apart.
void draw_tab_strip(const TileBox& tile, int number, Tiles& tiles, TilesView& view);

} // namespace app
