// Reads the climates and the words of the weather: assets/climates/*.json, one climate a file, and
// assets/weather/{phrases,figures,rules}.json. A file with a slip is left out and said with file,
// line and JSON pointer; the rest works.
#pragma once

#include "base/result.h"
#include "game/climate.h"

#include <filesystem>
#include <string>
#include <vector>

namespace store {

struct ClimateReading {
    game::Climates climates;           // what could be read
    std::vector<base::Error> problems; // one a file
};

ClimateReading load_climates(const std::filesystem::path& assets_folder);

} // namespace store
