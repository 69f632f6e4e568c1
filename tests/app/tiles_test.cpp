#include "app/tiles.h"
#include "app/tiles_layout.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <random>

using app::Axis;
using app::leaf;
using app::split;
using app::Tile;
using app::Tiles;
using app::Zone;

namespace {

Tiles two_columns() {
    Tiles tiles;
    tiles.root.push_back(split(Axis::columns, 0.6F, leaf({"order"}), leaf({"timers", "notes"})));
    tiles.focused = "order";
    return tiles;
}

std::vector<std::string> sorted(std::vector<std::string> panels) {
    std::sort(panels.begin(), panels.end());
    return panels;
}

void check_tile(const Tile& tile) {
    if (tile.parts.empty()) {
        CHECK_FALSE(tile.panels.empty());
        CHECK(std::count(tile.panels.begin(), tile.panels.end(), tile.front) == 1);
        return;
    }
    CHECK(tile.parts.size() == 2);
    CHECK(tile.panels.empty());
    CHECK(tile.ratio >= app::ratio_min);
    CHECK(tile.ratio <= app::ratio_max);
    for (const Tile& part : tile.parts)
        check_tile(part);
}

// What must hold after every operation.
void check_tree(const Tiles& tiles) {
    for (const Tile& root : tiles.root)
        check_tile(root);
    const std::vector<std::string> panels = sorted(app::open_panels(tiles));
    CHECK(std::adjacent_find(panels.begin(), panels.end()) == panels.end());
    if (!tiles.filling.empty()) CHECK(app::is_open(tiles, tiles.filling));
    for (const auto& [closed, beside] : tiles.neighbours)
        CHECK_FALSE(app::is_open(tiles, closed));
}

} // namespace

TEST_CASE("tiles: a panel dropped in the middle of a tile becomes its front tab") {
    Tiles tiles = two_columns();
    app::place_panel(tiles, "order", "timers", Zone::centre);
    REQUIRE(tiles.root.size() == 1);
    CHECK(tiles.root[0].panels == std::vector<std::string>{"timers", "notes", "order"});
    CHECK(tiles.root[0].front == "order");
    check_tree(tiles);
}

TEST_CASE("tiles: a panel dropped at an edge stands beside the tile on that side") {
    struct Row {
        Zone zone;
        Axis axis;
        bool is_first;
    };

    for (const Row& row : std::array<Row, 4>{
             {{Zone::left, Axis::columns, true},
              {Zone::right, Axis::columns, false},
              {Zone::top, Axis::rows, true},
              {Zone::bottom, Axis::rows, false}}}) {
        CAPTURE(static_cast<int>(row.zone));
        Tiles tiles = two_columns();
        app::place_panel(tiles, "notes", "order", row.zone);
        const Tile& left = tiles.root.at(0).parts.at(0);
        REQUIRE(left.parts.size() == 2);
        CHECK(left.axis == row.axis);
        CHECK(left.parts[row.is_first ? 0 : 1].panels == std::vector<std::string>{"notes"});
        CHECK(left.parts[row.is_first ? 1 : 0].panels == std::vector<std::string>{"order"});
        check_tree(tiles);
    }
}

TEST_CASE("tiles: a tab dropped at the edge of its own tile leaves the other tabs and stands beside"
) {
    Tiles tiles = two_columns();
    app::place_panel(tiles, "notes", "notes", Zone::bottom);
    const Tile& right = tiles.root.at(0).parts.at(1);
    REQUIRE(right.parts.size() == 2);
    CHECK(right.parts[0].panels == std::vector<std::string>{"timers"});
    CHECK(right.parts[1].panels == std::vector<std::string>{"notes"});
}

TEST_CASE("tiles: a panel alone in its tile, dropped on itself, stays") {
    Tiles tiles = two_columns();
    const Tiles before = tiles;
    app::place_panel(tiles, "order", "order", Zone::left);
    CHECK(tiles == before);
}

TEST_CASE("tiles: closing the last panel of a tile gives its room to the neighbour") {
    Tiles tiles = two_columns();
    app::close_panel(tiles, "order");
    REQUIRE(tiles.root.size() == 1);
    CHECK(tiles.root[0].panels == std::vector<std::string>{"timers", "notes"});
    app::close_panel(tiles, "timers");
    app::close_panel(tiles, "notes");
    CHECK(tiles.root.empty());
    app::show_panel(tiles, "order");
    CHECK(app::open_panels(tiles) == std::vector<std::string>{"order"});
}

TEST_CASE("tiles: a closed tab comes back as a tab where it stood") {
    Tiles tiles = two_columns();
    app::close_panel(tiles, "notes");
    CHECK_FALSE(app::is_open(tiles, "notes"));
    app::show_panel(tiles, "notes");
    CHECK(tiles.root.at(0).parts.at(1).panels == std::vector<std::string>{"timers", "notes"});
    CHECK(tiles.root.at(0).parts.at(1).front == "notes");
}

TEST_CASE("tiles: a panel fills the window and gives the room back") {
    Tiles tiles = two_columns();
    const Tiles before = tiles;
    app::toggle_filling(tiles, "timers");
    CHECK(tiles.filling == "timers");
    app::toggle_filling(tiles, "timers");
    CHECK(tiles.filling.empty());
    CHECK(tiles.root == before.root);
    app::toggle_filling(tiles, "no such panel");
    CHECK(tiles.filling.empty());
}

TEST_CASE("tiles: a splitter does not leave its range") {
    Tiles tiles = two_columns();
    app::set_ratio(tiles, {}, 7.0F);
    CHECK(tiles.root[0].ratio == app::ratio_max);
    app::set_ratio(tiles, {}, -1.0F);
    CHECK(tiles.root[0].ratio == app::ratio_min);
    app::set_ratio(tiles, {1, 0}, 0.5F); // no split there
    app::set_ratio(tiles, {}, std::numeric_limits<float>::quiet_NaN());
    CHECK(tiles.root[0].ratio == app::ratio_min);
}

TEST_CASE("tiles: whatever is dragged, closed and opened, each open panel stands exactly once") {
    const std::array<std::string, 6> panels{"a", "b", "c", "d", "e", "f"};
    const std::array<Zone, 5> zones{Zone::centre, Zone::left, Zone::right, Zone::top, Zone::bottom};
    for (unsigned seed = 1; seed <= 60; ++seed) {
        CAPTURE(seed);
        std::mt19937 engine(seed);
        const auto below = [&engine](std::size_t count) { return engine() % count; };
        Tiles tiles;
        std::vector<std::string> expected;
        for (int step = 0; step < 120; ++step) {
            const std::string panel = panels[below(panels.size())];
            const auto found = std::find(expected.begin(), expected.end(), panel);
            const std::size_t what = below(6);
            if (what == 0) {
                app::close_panel(tiles, panel);
                if (found != expected.end()) expected.erase(found);
            } else if (what == 1) {
                app::toggle_filling(tiles, panel);
            } else if (what == 2) {
                const float ratio = static_cast<float>(below(100)) / 100.0F;
                app::set_ratio(tiles, {static_cast<int>(below(2))}, ratio);
            } else if (what == 3) {
                app::show_panel(tiles, panel);
                if (found == expected.end()) expected.push_back(panel);
            } else {
                app::place_panel(tiles, panel, panels[below(panels.size())], zones[below(5)]);
                if (found == expected.end()) expected.push_back(panel);
            }
            check_tree(tiles);
            CHECK(sorted(app::open_panels(tiles)) == sorted(expected));
        }
    }
}
