#include "app/tiles_layout.h"

#include <doctest/doctest.h>

#include <random>

using app::Axis;
using app::Box;
using app::Layout;
using app::leaf;
using app::Length2;
using app::split;
using app::Tiles;
using app::Zone;

namespace {

app::LayoutNeeds needs_of(float width, float height) {
    return {10.0F, [width, height](const std::string&) { return Length2{width, height}; }};
}

Tiles fight() {
    Tiles tiles;
    tiles.root.push_back(split(
        Axis::columns,
        0.6F,
        leaf({"order"}),
        split(Axis::rows, 0.5F, leaf({"near"}), leaf({"timers", "notes"}))
    ));
    return tiles;
}

} // namespace

TEST_CASE("tiles layout: two columns share the width by their ratio, less the gap") {
    const Layout layout = app::lay_out(fight(), {0, 0, 1010, 810}, needs_of(100, 100));
    REQUIRE(layout.tiles.size() == 3);
    CHECK(layout.tiles[0].box == Box{0, 0, 600, 810});
    CHECK(layout.tiles[1].box == Box{610, 0, 400, 400});
    CHECK(layout.tiles[2].box == Box{610, 410, 400, 400});
    CHECK(layout.splitters.size() == 2);
    CHECK_FALSE(layout.is_folded);
}

TEST_CASE("tiles layout: no tile becomes smaller than its panel needs") {
    Tiles tiles = fight();
    app::set_ratio(tiles, {}, 0.95F);
    const Layout layout = app::lay_out(tiles, {0, 0, 1010, 810}, needs_of(300, 100));
    REQUIRE(layout.tiles.size() == 3);
    CHECK(layout.tiles[1].box.width == doctest::Approx(300.0));
    CHECK(layout.splitters[0].first_min == doctest::Approx(0.3));
    CHECK(layout.splitters[0].first_max == doctest::Approx(0.7));
}

TEST_CASE("tiles layout: columns that do not fit become one with the right-hand panels as tabs") {
    const Layout layout = app::lay_out(fight(), {0, 0, 1010, 810}, needs_of(600, 100));
    REQUIRE(layout.tiles.size() == 1);
    CHECK(layout.is_folded);
    CHECK(layout.tiles[0].panels == std::vector<std::string>{"order", "near", "timers", "notes"});
    CHECK(layout.tiles[0].front == "order");
}

TEST_CASE("tiles layout: in a folded tile the panel used last is in front") {
    Tiles tiles = fight();
    app::show_panel(tiles, "notes");
    const Layout layout = app::lay_out(tiles, {0, 0, 1010, 810}, needs_of(600, 100));
    CHECK(layout.tiles.at(0).front == "notes");
}

TEST_CASE("tiles layout: the panel that fills the window is alone") {
    Tiles tiles = fight();
    app::toggle_filling(tiles, "near");
    const Layout layout = app::lay_out(tiles, {5, 6, 1010, 810}, needs_of(100, 100));
    REQUIRE(layout.tiles.size() == 1);
    CHECK(layout.tiles[0].box == Box{5, 6, 1010, 810});
    CHECK(layout.tiles[0].front == "near");
    CHECK(layout.splitters.empty());
}

TEST_CASE("tiles layout: nothing open is nothing to lay out") {
    CHECK(app::lay_out(Tiles(), {0, 0, 100, 100}, needs_of(10, 10)).tiles.empty());
}

TEST_CASE("tiles layout: the outer quarters of a tile split it, its middle joins") {
    const Box tile{100, 100, 400, 400};
    CHECK(app::zone_at(tile, 300, 300) == Zone::centre);
    CHECK(app::zone_at(tile, 120, 300) == Zone::left);
    CHECK(app::zone_at(tile, 480, 300) == Zone::right);
    CHECK(app::zone_at(tile, 300, 110) == Zone::top);
    CHECK(app::zone_at(tile, 300, 490) == Zone::bottom);
    CHECK(app::zone_preview(tile, Zone::right) == Box{300, 100, 200, 400});
    CHECK(app::zone_preview(tile, Zone::top) == Box{100, 100, 400, 200});
    CHECK(app::zone_preview(tile, Zone::centre) == tile);
}

TEST_CASE("tiles layout: tiles and gaps cover the window and never overlap") {
    for (unsigned seed = 1; seed <= 40; ++seed) {
        CAPTURE(seed);
        std::mt19937 engine(seed);
        Tiles tiles;
        for (int panel = 0; panel < 7; ++panel) {
            const auto zone = static_cast<Zone>(engine() % 5);
            const std::string beside = std::to_string(engine() % 7);
            app::place_panel(tiles, std::to_string(panel), beside, zone);
        }
        const Box window{3, 4, 900, 700};
        const Layout layout = app::lay_out(tiles, window, needs_of(60, 50));
        float area = 0.0F;
        for (const app::TileBox& tile : layout.tiles)
            area += tile.box.width * tile.box.height;
        for (const app::SplitterBox& splitter : layout.splitters)
            area += splitter.box.width * splitter.box.height;
        CHECK(area == doctest::Approx(window.width * window.height).epsilon(0.001));
        for (std::size_t i = 0; i < layout.tiles.size(); ++i) {
            const Box& box = layout.tiles[i].box;
            const float x = box.x + box.width / 2.0F;
            const float y = box.y + box.height / 2.0F;
            for (std::size_t k = 0; k < layout.tiles.size(); ++k)
                CHECK(layout.tiles[k].box.contains(x, y) == (i == k));
        }
    }
}
