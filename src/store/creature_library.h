// Reads the library of ready creatures: assets/creatures/srd51.json, one creature a line.
// A wrong entry ends in an Error with file, JSON pointer and what was expected; nothing is guessed.
#pragma once

#include "base/result.h"
#include "game/library_creature.h"
#include "rules/rulebook.h"

#include <nlohmann/json_fwd.hpp>

#include <filesystem>
#include <string>
#include <vector>

namespace store {

// `rulebook` must be of the family the creatures are for: abilities, saves, skills, damage types
// and conditions are checked against it. `file_name` only says where something is wrong.
base::Result<std::vector<game::LibraryCreature>> read_creature_library(
    const nlohmann::json& library, const std::string& file_name, const rules::Rulebook& rulebook
);

// Loads assets_folder/creatures/srd51.json, in the order of the file (by name). Empty for the
// four-degree family, which has no open list of creatures here.
base::Result<std::vector<game::LibraryCreature>>
load_creature_library(const std::filesystem::path& assets_folder, const rules::Rulebook& rulebook);

} // namespace store
