// Where every tile and splitter lies: rectangles from a tree and a window. Pure; never draws.
#pragma once

#include "app/tiles.h"

#include <functional>

namespace app {

struct Box {
    float x = 0.0F;
    float y = 0.0F;
    float width = 0.0F;
    float height = 0.0F;

    bool operator==(const Box&) const = default;
    bool contains(float at_x, float at_y) const;
};

struct Length2 {
    float width = 0.0F;
    float height = 0.0F;
};

struct TileBox {
    Box box;
    std::vector<std::string> panels;
    std::string front;
};

struct SplitterBox {
    Box box; // the gap itself
    TilePath path;
    Axis axis = Axis::columns;
    Box around;             // of the split tile
    float first_min = 0.0F; // smallest ratio that leaves the first part its minimum
    float first_max = 1.0F;
};

struct Layout {
    std::vector<TileBox> tiles;
    std::vector<SplitterBox> splitters;
    bool is_folded = false; // some columns or rows became tabs because the window is too small
};

struct LayoutNeeds {
    float gap = 6.0F;
    std::function<Length2(const std::string& panel)> minimum; // of a tile that shows this panel
};

// Tiles that do not find their minimum size beside each other become one tile with tabs; the panel
// used last is in front.
Layout lay_out(const Tiles& tiles, const Box& window, const LayoutNeeds& needs);

// Where a panel dropped at this point of a tile lands: the outer quarters split, the rest joins.
Zone zone_at(const Box& tile, float x, float y);
// The part of the tile that the panel will take.
Box zone_preview(const Box& tile, Zone zone);

} // namespace app
