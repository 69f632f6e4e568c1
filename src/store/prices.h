// Reads the price tables beside a rulebook: assets/rules/*_prices.json, with the GM's
// "replace_prices" of the house rules laid over.
#pragma once

#include "base/result.h"
#include "rules/prices.h"

#include <nlohmann/json_fwd.hpp>

#include <filesystem>
#include <string>

namespace store {

// The prices of this edition. Errors with the pointer: a wrong type, a missing field, a price out
// of range, a key that stands twice, a lower end of a band above its upper end.
base::Result<rules::PriceBook>
read_prices(const nlohmann::json& tables, const std::string& file_name, rules::SrdEdition edition);

// The same from the file of this family. An empty name: no house rules. What is wrong only through
// a house rule names the house-rules file, line and pointer.
base::Result<rules::PriceBook> load_prices(
    const std::filesystem::path& assets_folder,
    rules::Family family,
    rules::SrdEdition edition,
    const std::filesystem::path& house_rules_file = {}
);

} // namespace store
