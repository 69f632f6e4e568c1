// Reads a rulebook from its JSON tables: the only way figures of the rules enter the program.
// A wrong table ends in an Error with file, JSON pointer and what was expected; nothing is guessed.
#pragma once

#include "base/result.h"
#include "rules/rulebook.h"

#include <nlohmann/json_fwd.hpp>

#include <filesystem>
#include <string>

namespace store {

// `file_name` is only used to say where something is wrong.
base::Result<rules::Rulebook> read_rulebook(
    const nlohmann::json& tables, const std::string& file_name, rules::SrdEdition edition
);

// Loads assets_folder/rules/four_degree.json or srd5.json. With a house-rules file (its form stands
// in store/house_rules.h) the values that it replaces are read instead, and listed in
// Rulebook::house_ruled. Whatever is wrong with it, the rulebook with it included, is an error that
// names that file, the line and the pointer.
base::Result<rules::Rulebook> load_rulebook(
    const std::filesystem::path& assets_folder,
    rules::Family family,
    rules::SrdEdition edition,
    const std::filesystem::path& house_rules_file = {}
);

} // namespace store
