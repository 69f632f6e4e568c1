// Scenes: a saved arrangement of panels for each moment of the evening. Pure values and JSON text;
// files are kept by the settings file.
#pragma once

#include "app/tiles.h"
#include "base/result.h"

#include <array>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace app {

struct SceneInfo {
    const char* key;   // "fight": stable, in files and on the command line
    const char* title; // "Fight"
    const char* help;  // one line: what it is for
};

constexpr std::array<SceneInfo, 4> scene_infos{{
    {"prep", "Prep", "Ready the party, the creatures and the fights of the evening."},
    {"fight", "Fight", "Turn by turn: who is up, what runs on whom."},
    {"roam", "Roam", "Between fights: the party, what still runs, what happened."},
    {"wrap-up", "Wrap-up", "After the game: what happened, and how the party stands."},
}};

const SceneInfo* find_scene(std::string_view key);

// The arrangement a scene starts with.
Tiles default_tiles(std::string_view scene);

struct Scenes {
    std::map<std::string, Tiles> arrangements; // by scene key; all four are there
    std::string current = "fight";

    bool operator==(const Scenes&) const = default;
};

Scenes default_scenes();

struct ReadScenes {
    Scenes scenes;
    std::vector<std::string> complaints; // one sentence each; what is wrong starts from its default
};

std::string to_json(const Scenes& scenes);
ReadScenes scenes_from_json(std::string_view json);

} // namespace app
