// Reads the ready lists of names: every file of assets/names. Each stands for itself, so that a
// broken one leaves the others usable.
#pragma once

#include "base/result.h"
#include "game/name_lists.h"

#include <nlohmann/json_fwd.hpp>

#include <filesystem>
#include <string>
#include <vector>

namespace store {

// One list. Wrong: another format, a missing key, a kind there is no word for, no names, a name
// that is empty, too long or stands twice (upper and lower case alike). `file_name` only says where
// something is wrong.
base::Result<game::ReadyNameList>
read_name_list(const nlohmann::json& list, const std::string& file_name);

struct NameListReading {
    std::vector<game::ReadyNameList> lists; // by kind, then by title
    std::vector<base::Error> problems;      // one a file that was left out
};

// All files assets_folder/names/*.json. Two files with one key: the later by file name is left out.
NameListReading load_name_lists(const std::filesystem::path& assets_folder);

} // namespace store
