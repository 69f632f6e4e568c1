// Reads one JSON file of assets and turns what is wrong in it into one Error with file, line,
// column and JSON pointer.
#pragma once

#include "base/result.h"
#include "store/rulebook_spot.h"

#include <filesystem>
#include <functional>
#include <string>

namespace store {

// The Error for a Wrong: `what` is "the creature library", for instance. Line and column stay open.
base::Error error_of(const Wrong& wrong, const std::string& what, const std::string& file_name);

// Opens the file, parses it and hands its top to `read`, which throws Wrong at the first slip.
base::Result<base::Nothing> read_asset_file(
    const std::filesystem::path& path,
    const std::string& what,
    const std::function<void(const Spot&)>& read
);

} // namespace store
