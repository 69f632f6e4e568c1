#include "app/tiles.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

namespace app {

namespace {

bool has(const std::vector<std::string>& panels, const std::string& panel) {
    return std::find(panels.begin(), panels.end(), panel) != panels.end();
}

void collect(const Tile& tile, std::vector<std::string>& panels) {
    panels.insert(panels.end(), tile.panels.begin(), tile.panels.end());
    for (const Tile& part : tile.parts)
        collect(part, panels);
}

Tile* find_leaf(Tile& tile, const std::string& panel) {
    if (has(tile.panels, panel)) return &tile;
    for (Tile& part : tile.parts)
        if (Tile* found = find_leaf(part, panel)) return found;
    return nullptr;
}

Tile* find_leaf(Tiles& tiles, const std::string& panel) {
    return tiles.root.empty() ? nullptr : find_leaf(tiles.root.front(), panel);
}

Tile& last_leaf(Tile& tile) {
    return tile.parts.empty() ? tile : last_leaf(tile.parts.back());
}

void take_from_leaf(Tile& tile, const std::string& panel) {
    const auto found = std::find(tile.panels.begin(), tile.panels.end(), panel);
    if (found == tile.panels.end()) return;
    const auto at = found - tile.panels.begin();
    tile.panels.erase(found);
    if (tile.panels.empty() || tile.front != panel) return;
    const auto last = static_cast<std::ptrdiff_t>(tile.panels.size()) - 1;
    tile.front = tile.panels[static_cast<std::size_t>(std::min(at, last))];
}

// A split with an empty part becomes its other part. True: the tile itself is empty now.
bool drop_empty(Tile& tile) {
    if (tile.parts.empty()) return tile.panels.empty();
    const bool is_first_empty = drop_empty(tile.parts[0]);
    const bool is_second_empty = drop_empty(tile.parts[1]);
    if (is_first_empty && is_second_empty) return true;
    if (is_first_empty || is_second_empty) {
        Tile rest = std::move(tile.parts[is_first_empty ? 1 : 0]);
        tile = std::move(rest);
    }
    return false;
}

void take_out(Tiles& tiles, const std::string& panel) {
    Tile* tile = find_leaf(tiles, panel);
    if (tile == nullptr) return;
    take_from_leaf(*tile, panel);
    if (drop_empty(tiles.root.front())) tiles.root.clear();
}

// The panel that a closed one comes back to: another tab of its tile, else any of the tree.
std::string neighbour_of(Tiles& tiles, const std::string& panel) {
    const Tile* tile = find_leaf(tiles, panel);
    if (tile != nullptr)
        for (const std::string& other : tile->panels)
            if (other != panel) return other;
    return {};
}

void put_beside(Tile& tile, const std::string& panel, Zone zone) {
    if (zone == Zone::centre) {
        Tile& target = last_leaf(tile);
        target.panels.push_back(panel);
        target.front = panel;
        return;
    }
    const Axis axis = zone == Zone::left || zone == Zone::right ? Axis::columns : Axis::rows;
    const bool is_first = zone == Zone::left || zone == Zone::top;
    Tile before = std::move(tile);
    Tile added = leaf({panel});
    tile = is_first ? split(axis, 0.5F, std::move(added), std::move(before))
                    : split(axis, 0.5F, std::move(before), std::move(added));
}

} // namespace

Tile leaf(std::vector<std::string> panels) {
    assert(!panels.empty() && "a tile holds at least one panel");
    Tile tile;
    tile.front = panels.front();
    tile.panels = std::move(panels);
    return tile;
}

Tile split(Axis axis, float ratio, Tile first, Tile second) {
    Tile tile;
    tile.axis = axis;
    tile.ratio = std::clamp(ratio, ratio_min, ratio_max);
    tile.parts.push_back(std::move(first));
    tile.parts.push_back(std::move(second));
    return tile;
}

std::vector<std::string> open_panels(const Tile& tile) {
    std::vector<std::string> panels;
    collect(tile, panels);
    return panels;
}

std::vector<std::string> open_panels(const Tiles& tiles) {
    return tiles.root.empty() ? std::vector<std::string>() : open_panels(tiles.root.front());
}

bool is_open(const Tiles& tiles, const std::string& panel) {
    return has(open_panels(tiles), panel);
}

void place_panel(Tiles& tiles, const std::string& panel, const std::string& beside, Zone zone) {
    std::string target = beside;
    if (target == panel) {
        // Beside itself: the other tabs of its tile are what it goes beside; alone, it stays.
        target = neighbour_of(tiles, panel);
        if (target.empty()) {
            show_panel(tiles, panel);
            return;
        }
    }
    take_out(tiles, panel);
    tiles.filling.clear();
    tiles.focused = panel;
    tiles.neighbours.erase(panel);
    if (tiles.root.empty()) {
        tiles.root.push_back(leaf({panel}));
        return;
    }
    Tile* tile = find_leaf(tiles, target);
    put_beside(tile == nullptr ? tiles.root.front() : *tile, panel, zone);
}

void close_panel(Tiles& tiles, const std::string& panel) {
    if (!is_open(tiles, panel)) return;
    const std::string neighbour = neighbour_of(tiles, panel);
    take_out(tiles, panel);
    tiles.neighbours[panel] = neighbour;
    if (tiles.filling == panel) tiles.filling.clear();
    if (tiles.focused == panel) tiles.focused = neighbour;
}

void show_panel(Tiles& tiles, const std::string& panel) {
    if (Tile* tile = find_leaf(tiles, panel)) {
        tile->front = panel;
        tiles.focused = panel;
        if (!tiles.filling.empty()) tiles.filling = panel;
        return;
    }
    const auto known = tiles.neighbours.find(panel);
    const std::string beside = known == tiles.neighbours.end() ? std::string() : known->second;
    place_panel(tiles, panel, beside, Zone::centre);
}

void toggle_filling(Tiles& tiles, const std::string& panel) {
    if (tiles.filling == panel) {
        tiles.filling.clear();
        return;
    }
    if (!is_open(tiles, panel)) return;
    show_panel(tiles, panel);
    tiles.filling = panel;
}

Tile* tile_at(Tiles& tiles, const TilePath& path) {
    if (tiles.root.empty()) return nullptr;
    Tile* tile = &tiles.root.front();
    for (const int step : path) {
        if (tile->parts.empty() || step < 0 || step > 1) return nullptr;
        tile = &tile->parts[static_cast<std::size_t>(step)];
    }
    return tile;
}

void set_ratio(Tiles& tiles, const TilePath& path, float ratio) {
    Tile* tile = tile_at(tiles, path);
    if (tile == nullptr || tile->parts.empty() || !std::isfinite(ratio)) return;
    tile->ratio = std::clamp(ratio, ratio_min, ratio_max);
}

} // namespace app
