#include "app/panels.h"
#include "app/scenes.h"

#include <doctest/doctest.h>

#include <random>

using app::default_scenes;
using app::ReadScenes;
using app::Scenes;
using app::scenes_from_json;
using app::Zone;

TEST_CASE("scenes: the Fight scene opens with the Turn Order on the left of everything else") {
    const app::Tiles fight = app::default_tiles("fight");
    REQUIRE(fight.root.size() == 1);
    CHECK(fight.root[0].ratio == doctest::Approx(0.6));
    CHECK(fight.root[0].parts.at(0).panels == std::vector<std::string>{"turn_order"});
    CHECK(app::is_open(fight, "close_up"));
    CHECK(app::is_open(fight, "condition_timers"));
    CHECK(app::is_open(fight, "happenings"));
}

TEST_CASE("scenes: every panel of every usual arrangement exists") {
    for (const app::SceneInfo& info : app::scene_infos) {
        CAPTURE(info.key);
        const std::vector<std::string> panels = app::open_panels(app::default_tiles(info.key));
        CHECK_FALSE(panels.empty());
        for (const std::string& panel : panels)
            CHECK(app::find_panel(panel) != nullptr);
    }
}

TEST_CASE("scenes: what is arranged comes back as it was") {
    for (unsigned seed = 1; seed <= 40; ++seed) {
        CAPTURE(seed);
        std::mt19937 engine(seed);
        const auto any_panel = [&engine] {
            return std::string(app::panel_infos()[engine() % app::panel_infos().size()]->key);
        };
        Scenes scenes = default_scenes();
        scenes.current = app::scene_infos[seed % 4].key;
        for (int step = 0; step < 30; ++step) {
            app::Tiles& tiles = scenes.arrangements[app::scene_infos[engine() % 4].key];
            const std::string panel = any_panel();
            if (engine() % 4 == 0)
                app::close_panel(tiles, panel);
            else if (engine() % 5 == 0)
                app::toggle_filling(tiles, panel);
            else
                app::place_panel(tiles, panel, any_panel(), static_cast<Zone>(engine() % 5));
            app::set_ratio(tiles, {}, static_cast<float>(engine() % 1000) / 1000.0F);
        }
        const ReadScenes read = scenes_from_json(app::to_json(scenes));
        CHECK(read.complaints.empty());
        CHECK(app::to_json(read.scenes) == app::to_json(scenes));
        for (const app::SceneInfo& info : app::scene_infos)
            CHECK(
                app::open_panels(read.scenes.arrangements.at(info.key)) ==
                app::open_panels(scenes.arrangements.at(info.key))
            );
    }
}

TEST_CASE("scenes: a file that is no JSON gives the usual scenes and a sentence") {
    for (const char* text : {"", "{", "[1, 2]", "null", "\"fight\"", "\xff\xfe"}) {
        CAPTURE(text);
        const ReadScenes read = scenes_from_json(text);
        CHECK(read.scenes == default_scenes());
        REQUIRE(read.complaints.size() == 1);
        CHECK(
            read.complaints[0] ==
            "The saved scenes cannot be read, so all scenes start from their usual arrangement."
        );
    }
}

TEST_CASE("scenes: one broken scene starts as usual, the others keep their arrangement") {
    Scenes scenes = default_scenes();
    app::close_panel(scenes.arrangements["roam"], "happenings");
    std::string text = app::to_json(scenes);
    const std::size_t at = text.find("\"fight\": {");
    REQUIRE(at != std::string::npos);
    text.replace(at, std::string("\"fight\": {").size(), "\"fight\": 7, \"fight_was\": {");
    const ReadScenes read = scenes_from_json(text);
    CHECK(read.complaints.size() == 1);
    CHECK(read.scenes.arrangements.at("fight") == app::default_tiles("fight"));
    CHECK_FALSE(app::is_open(read.scenes.arrangements.at("roam"), "happenings"));
}

TEST_CASE("scenes: unknown and repeated panels are left out, empty tiles vanish") {
    const ReadScenes read = scenes_from_json(R"({"scenes": {"fight": {"tree": {
        "axis": "columns", "ratio": 40, "parts": [
            {"panels": ["turn_order", "turn_order", "from a later version"], "front": "gone"},
            {"axis": "rows", "ratio": 0.5, "parts": [
                {"panels": ["turn_order"]}, {"panels": ["happenings", 7]}]}]}}}})");
    CHECK(read.complaints.empty());
    const app::Tiles& fight = read.scenes.arrangements.at("fight");
    CHECK(app::open_panels(fight) == std::vector<std::string>{"turn_order", "happenings"});
    CHECK(fight.root.at(0).ratio == app::ratio_max);
    CHECK(fight.root.at(0).parts.at(0).front == "turn_order");
    CHECK(read.scenes.current == "fight");
}

TEST_CASE("scenes: a scene with every panel closed stays empty") {
    Scenes scenes = default_scenes();
    for (const std::string& panel : app::open_panels(scenes.arrangements["prep"]))
        app::close_panel(scenes.arrangements["prep"], panel);
    const ReadScenes read = scenes_from_json(app::to_json(scenes));
    CHECK(read.complaints.empty());
    CHECK(read.scenes.arrangements.at("prep").root.empty());
}

TEST_CASE("scenes: a tree nested without end is refused") {
    std::string text = "{\"panels\": [\"turn_order\"]}";
    for (int level = 0; level < 200; ++level)
        text = "{\"parts\": [" + text + ", {\"panels\": []}]}";
    const ReadScenes read = scenes_from_json("{\"scenes\": {\"fight\": {\"tree\": " + text + "}}}");
    CHECK(read.complaints.size() == 1);
    CHECK(read.scenes == default_scenes());
}
