// How the window is divided: a binary tree whose leaves are stacks of panels shown as tabs. Pure
// values and operations; never draws. Each open panel stands in exactly one tile, no tile is empty.
#pragma once

#include <functional>
#include <map>
#include <string>
#include <vector>

namespace app {

// How a split tile lays out its two parts.
enum class Axis { columns, rows };

// Where a panel lands in a tile: as a tab, or beside what is there.
enum class Zone { centre, left, right, top, bottom };

struct Tile {
    std::vector<std::string> panels; // keys; a leaf has at least one, a split none
    std::string front;               // of a leaf: the panel that shows
    std::vector<Tile> parts;         // of a split: two
    Axis axis = Axis::columns;
    float ratio = 0.5F; // of the length that the first part has

    bool operator==(const Tile&) const = default;
};

struct Tiles {
    std::vector<Tile> root;                        // none when every panel is closed, else one
    std::string filling;                           // the panel that fills the window; empty: none
    std::string focused;                           // the panel that was used last; may be empty
    std::map<std::string, std::string> neighbours; // of closed panels: where they stood

    bool operator==(const Tiles&) const = default;
};

Tile leaf(std::vector<std::string> panels);
Tile split(Axis axis, float ratio, Tile first, Tile second);

// Every open panel, in the order of the tree.
std::vector<std::string> open_panels(const Tiles& tiles);
std::vector<std::string> open_panels(const Tile& tile);
bool is_open(const Tiles& tiles, const std::string& panel);

// Puts a panel, open or not, into the tile of `beside` (or beside the whole tree when that is
// empty or not open) and shows it.
void place_panel(Tiles& tiles, const std::string& panel, const std::string& beside, Zone zone);
void close_panel(Tiles& tiles, const std::string& panel);
// Opens it where it stood before, or as a tab of the last tile; an open one comes to the front.
void show_panel(Tiles& tiles, const std::string& panel);
// Fills the window with one panel, or gives the other tiles back.
void toggle_filling(Tiles& tiles, const std::string& panel);

// The way to a tile: 0 or 1 at every split from the root.
using TilePath = std::vector<int>;
Tile* tile_at(Tiles& tiles, const TilePath& path);
// Clamped so that both parts keep some room; see layout for the minimum sizes.
void set_ratio(Tiles& tiles, const TilePath& path, float ratio);
constexpr float ratio_min = 0.05F;
constexpr float ratio_max = 0.95F;

} // namespace app
