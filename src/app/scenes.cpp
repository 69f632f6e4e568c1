#include "app/scenes.h"

#include "app/panels.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <optional>
#include <set>

namespace app {

using nlohmann::json;

namespace {

constexpr int depth_max = 16; // more tiles than a screen can show

json tile_json(const Tile& tile) {
    if (tile.parts.empty()) return {{"panels", tile.panels}, {"front", tile.front}};
    return {
        {"axis", tile.axis == Axis::columns ? "columns" : "rows"},
        {"ratio", std::round(static_cast<double>(tile.ratio) * 10000.0) / 10000.0},
        {"parts", {tile_json(tile.parts[0]), tile_json(tile.parts[1])}}};
}

std::string text_in(const json& object, const char* key) {
    const auto found = object.find(key);
    return found != object.end() && found->is_string() ? found->get<std::string>() : std::string();
}

// Unknown and repeated panels are left out, and tiles that are empty then. Nothing: no tile at all.
std::optional<Tile> tile_from(const json& value, std::set<std::string>& seen, int depth) {
    if (!value.is_object() || depth > depth_max) return std::nullopt;
    const auto parts = value.find("parts");
    if (parts != value.end() && parts->is_array() && parts->size() == 2) {
        std::optional<Tile> first = tile_from((*parts)[0], seen, depth + 1);
        std::optional<Tile> second = tile_from((*parts)[1], seen, depth + 1);
        if (!first.has_value()) return second;
        if (!second.has_value()) return first;
        const auto ratio = value.find("ratio");
        const bool has_ratio = ratio != value.end() && ratio->is_number();
        const Axis axis = text_in(value, "axis") == "rows" ? Axis::rows : Axis::columns;
        const float share = has_ratio ? ratio->get<float>() : 0.5F;
        return split(
            axis, std::isfinite(share) ? share : 0.5F, std::move(*first), std::move(*second)
        );
    }
    const auto panels = value.find("panels");
    if (panels == value.end() || !panels->is_array()) return std::nullopt;
    std::vector<std::string> known;
    for (const json& panel : *panels) {
        if (!panel.is_string()) continue;
        const auto key = panel.get<std::string>();
        if (find_panel(key) != nullptr && seen.insert(key).second) known.push_back(key);
    }
    if (known.empty()) return std::nullopt;
    Tile tile = leaf(std::move(known));
    const std::string front = text_in(value, "front");
    if (std::find(tile.panels.begin(), tile.panels.end(), front) != tile.panels.end())
        tile.front = front;
    return tile;
}

json tiles_json(const Tiles& tiles) {
    json value{{"filling", tiles.filling}, {"focused", tiles.focused}};
    value["tree"] = tiles.root.empty() ? json(nullptr) : tile_json(tiles.root.front());
    value["neighbours"] = tiles.neighbours;
    return value;
}

std::optional<Tiles> tiles_from(const json& value) {
    if (!value.is_object() || !value.contains("tree")) return std::nullopt;
    Tiles tiles;
    std::set<std::string> seen;
    if (!value["tree"].is_null()) {
        std::optional<Tile> root = tile_from(value["tree"], seen, 0);
        if (!root.has_value()) return std::nullopt;
        tiles.root.push_back(std::move(*root));
    }
    const auto open_or_none = [&](const std::string& key) {
        return seen.count(key) > 0 ? key : std::string();
    };
    tiles.filling = open_or_none(text_in(value, "filling"));
    tiles.focused = open_or_none(text_in(value, "focused"));
    const auto neighbours = value.find("neighbours");
    if (neighbours != value.end() && neighbours->is_object())
        for (const auto& [closed, beside] : neighbours->items())
            if (beside.is_string() && find_panel(closed) != nullptr && seen.count(closed) == 0)
                tiles.neighbours[closed] = beside.get<std::string>();
    return tiles;
}

} // namespace

const SceneInfo* find_scene(std::string_view key) {
    for (const SceneInfo& info : scene_infos)
        if (key == info.key) return &info;
    return nullptr;
}

Tiles default_tiles(std::string_view scene) {
    Tiles tiles;
    if (scene == "fight") {
        Tile right = split(
            Axis::rows,
            0.55F,
            leaf({"close_up", "party_defences", "creature_builder", "dice"}),
            leaf({"condition_timers", "reminders", "session_sheet", "reference", "happenings"})
        );
        tiles.root.push_back(split(Axis::columns, 0.6F, leaf({"turn_order"}), std::move(right)));
        tiles.focused = "turn_order";
    } else if (scene == "prep") {
        Tile left = leaf(
            {"party_roster",
             "creature_shelf",
             "creature_builder",
             "hazard_builder",
             "open_creatures"}
        );
        Tile right = leaf(
            {"encounter_budget",
             "encounter_preparation",
             "session_sheet",
             "name_picker",
             "treasure_ledger",
             "print",
             "campaign"}
        );
        tiles.root.push_back(split(Axis::columns, 0.5F, std::move(left), std::move(right)));
        tiles.focused = "party_roster";
    } else if (scene == "roam") {
        Tile left = leaf(
            {"party_defences",
             "party_roster",
             "session_sheet",
             "register",
             "recovery",
             "price_book",
             "happenings"}
        );
        Tile right = split(
            Axis::rows,
            0.5F,
            leaf(
                {"difficulty",
                 "name_picker",
                 "creature_builder",
                 "hazard_builder",
                 "open_creatures"}
            ),
            leaf({"day_book", "weather_walk", "places", "condition_timers", "dice"})
        );
        tiles.root.push_back(split(Axis::columns, 0.58F, std::move(left), std::move(right)));
        tiles.focused = "party_defences";
    } else {
        tiles.root.push_back(split(
            Axis::columns,
            0.5F,
            leaf({"session_sheet", "day_book", "treasure_ledger", "happenings"}),
            leaf(
                {"recap_page",
                 "register",
                 "encounter_budget",
                 "weather_walk",
                 "print",
                 "party_roster"}
            )
        ));
        tiles.focused = "session_sheet";
    }
    return tiles;
}

Scenes default_scenes() {
    Scenes scenes;
    for (const SceneInfo& info : scene_infos)
        scenes.arrangements[info.key] = default_tiles(info.key);
    return scenes;
}

std::string to_json(const Scenes& scenes) {
    json value{{"format", "tablewick scenes"}, {"version", 1}, {"current", scenes.current}};
    for (const auto& [key, tiles] : scenes.arrangements)
        value["scenes"][key] = tiles_json(tiles);
    return value.dump(4) + "\n";
}

ReadScenes scenes_from_json(std::string_view text) {
    ReadScenes read{default_scenes(), {}};
    const json value = json::parse(text, nullptr, false);
    if (!value.is_object()) {
        read.complaints.emplace_back(
            "The saved scenes cannot be read, so all scenes start from their usual arrangement."
        );
        return read;
    }
    const std::string current = text_in(value, "current");
    if (find_scene(current) != nullptr) read.scenes.current = current;
    const auto scenes = value.find("scenes");
    for (const SceneInfo& info : scene_infos) {
        const bool is_saved =
            scenes != value.end() && scenes->is_object() && scenes->contains(info.key);
        if (!is_saved) continue;
        if (std::optional<Tiles> tiles = tiles_from((*scenes)[info.key]))
            read.scenes.arrangements[info.key] = std::move(*tiles);
        else
            read.complaints.push_back(
                "The saved scene " + std::string(info.title) +
                " cannot be read, so it starts from its usual arrangement."
            );
    }
    return read;
}

} // namespace app
