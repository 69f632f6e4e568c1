#include "app/tiles_layout.h"

#include <algorithm>
#include <utility>

namespace app {

namespace {

struct Work {
    const LayoutNeeds& needs;
    const std::string& focused;
    Layout& result;
};

Length2 minimum_of(const Tile& tile, const LayoutNeeds& needs) {
    Length2 size;
    for (const std::string& panel : tile.panels) {
        const Length2 one = needs.minimum(panel);
        size.width = std::max(size.width, one.width);
        size.height = std::max(size.height, one.height);
    }
    if (tile.parts.empty()) return size;
    const Length2 first = minimum_of(tile.parts[0], needs);
    const Length2 second = minimum_of(tile.parts[1], needs);
    if (tile.axis == Axis::columns)
        return {first.width + needs.gap + second.width, std::max(first.height, second.height)};
    return {std::max(first.width, second.width), first.height + needs.gap + second.height};
}

const std::string& first_front(const Tile& tile) {
    return tile.parts.empty() ? tile.front : first_front(tile.parts.front());
}

void add_leaf(const Tile& tile, const Box& box, Work& work) {
    TileBox leaf_box{box, open_panels(tile), first_front(tile)};
    const auto& panels = leaf_box.panels;
    const bool was_used = std::find(panels.begin(), panels.end(), work.focused) != panels.end();
    if (!tile.parts.empty()) {
        work.result.is_folded = true;
        if (was_used) leaf_box.front = work.focused;
    }
    work.result.tiles.push_back(std::move(leaf_box));
}

void place(const Tile& tile, const Box& box, const TilePath& path, Work& work) {
    const float gap = work.needs.gap;
    const bool is_columns = tile.axis == Axis::columns;
    const float length = is_columns ? box.width : box.height;
    const auto along = [is_columns](const Length2& size) {
        return is_columns ? size.width : size.height;
    };
    if (tile.parts.empty()) return add_leaf(tile, box, work);
    const float first_least = along(minimum_of(tile.parts[0], work.needs));
    const float second_least = along(minimum_of(tile.parts[1], work.needs));
    const float room = length - gap;
    if (first_least + second_least > room || room <= 0.0F) return add_leaf(tile, box, work);
    const float first = std::clamp(room * tile.ratio, first_least, room - second_least);
    Box one = box;
    Box bar = box;
    Box two = box;
    if (is_columns) {
        one.width = first;
        bar.x = box.x + first;
        bar.width = gap;
        two.x = bar.x + gap;
        two.width = room - first;
    } else {
        one.height = first;
        bar.y = box.y + first;
        bar.height = gap;
        two.y = bar.y + gap;
        two.height = room - first;
    }
    work.result.splitters.push_back(
        {bar, path, tile.axis, box, first_least / room, 1.0F - second_least / room}
    );
    TilePath deeper = path;
    deeper.push_back(0);
    place(tile.parts[0], one, deeper, work);
    deeper.back() = 1;
    place(tile.parts[1], two, deeper, work);
}

} // namespace

bool Box::contains(float at_x, float at_y) const {
    return at_x >= x && at_y >= y && at_x < x + width && at_y < y + height;
}

Layout lay_out(const Tiles& tiles, const Box& window, const LayoutNeeds& needs) {
    Layout result;
    if (tiles.root.empty()) return result;
    if (!tiles.filling.empty() && is_open(tiles, tiles.filling)) {
        result.tiles.push_back({window, {tiles.filling}, tiles.filling});
        return result;
    }
    Work work{needs, tiles.focused, result};
    place(tiles.root.front(), window, {}, work);
    return result;
}

Zone zone_at(const Box& tile, float x, float y) {
    const float across = (x - tile.x) / std::max(tile.width, 1.0F);
    const float down = (y - tile.y) / std::max(tile.height, 1.0F);
    constexpr float outer = 0.25F;
    const float to_left = across;
    const float to_right = 1.0F - across;
    const float to_top = down;
    const float to_bottom = 1.0F - down;
    const float nearest = std::min({to_left, to_right, to_top, to_bottom});
    if (nearest >= outer) return Zone::centre;
    if (nearest == to_left) return Zone::left;
    if (nearest == to_right) return Zone::right;
    return nearest == to_top ? Zone::top : Zone::bottom;
}

Box zone_preview(const Box& tile, Zone zone) {
    Box part = tile;
    if (zone == Zone::left || zone == Zone::right) part.width /= 2.0F;
    if (zone == Zone::top || zone == Zone::bottom) part.height /= 2.0F;
    if (zone == Zone::right) part.x += part.width;
    if (zone == Zone::bottom) part.y += part.height;
    return part;
}

} // namespace app
