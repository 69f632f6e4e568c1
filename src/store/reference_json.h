// Reads the rules to look up: assets/reference/{four_degree,srd5}.json. Their figures stand in the
// rulebook once: {/rest/hours} in a text is the value at this pointer of it, house rules laid over
// it; in a row of one of its tables {name} is the value of the row. A + behind the brace writes the
// sign. A list is written with commas, a missing value of a row as "-".
//
//     {"format": "tablewick-reference", "family": "srd5", "about": "...",
//      "chapters": [
//        {"title": "Travel", "entries": [
//          {"key": "falling", "title": "Falling", "text": "{/falling/die} for every ...",
//           "source": "SRD 5.1: Adventuring / Falling"}]},
//        {"title": "Exploration", "rows_of": "/exploration_activities/rows", "entry": {...}}]}
//
// An entry may have "also" (other words it is looked up by), "points" (short lines), "edition"
// (it counts in this edition alone) and "figures": {"titles": [...], "rows": [[...], ...]}, or one
// row for each of a table: {"rows_of": "/cover/rows", "columns": [{"title": "AC", "cell":
// "{+ac}"}]}. A chapter with "rows_of" has one entry for each row, whose key is the row's.
#pragma once

#include "base/result.h"
#include "game/reference.h"
#include "rules/rulebook.h"

#include <nlohmann/json_fwd.hpp>

#include <filesystem>
#include <string>

namespace store {

// `tables`: the rulebook as it stands in its file. Errors carry `file_name` and the pointer of what
// is wrong; line and column stay open.
base::Result<game::Reference> read_reference(
    const nlohmann::json& reference,
    const std::string& file_name,
    const nlohmann::json& tables,
    rules::Family family,
    rules::SrdEdition edition
);

// An error names file, line and pointer. House rules that cannot be read are left out here: the
// rulebook says what is wrong with them.
base::Result<game::Reference> load_reference(
    const std::filesystem::path& assets_folder,
    rules::Family family,
    rules::SrdEdition edition,
    const std::filesystem::path& house_rules_file = {}
);

} // namespace store
