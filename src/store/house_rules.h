// House rules: a file that a GM lays over a rulebook. It replaces single values by their JSON
// pointers; everything else stays as the rulebook has it.
//
//     {
//       "format": "tablewick-house-rules",
//       "family": "four_degree",
//       "about": "Harder checks at our table",
//       "replace": {"/dc_by_level/rows/7/dc": 24},
//       "replace_prices": {"/adventuring_gear/rows/4/price_cp": 12}
//     }
//
// "replace" speaks of the rulebook, "replace_prices" of the price list beside it; one of them may
// be left out, and "about". Lists count from 0. A replaced value keeps its kind: a number stays a
// number, a text a text.
#pragma once

#include "base/result.h"
#include "rules/rulebook.h"

#include <nlohmann/json_fwd.hpp>

#include <string>
#include <string_view>
#include <vector>

namespace store {

// Replaces the values in `tables`, and returns what was replaced, sorted by pointer. `text` is
// the content of the house-rules file, `file` its name for messages, `family` that of the tables.
// Errors, with file, line and the pointer: no JSON, another format or family, a key that is not
// known, a pointer that leads nowhere or to a whole list, a value of another kind, and a table that
// only repeats figures for looking up ("computed_from" says where they count). `tables` is
// unchanged then.
base::Result<std::vector<rules::HouseRule>> lay_over(
    nlohmann::json& tables, std::string_view text, const std::string& file, rules::Family family
);

// The same with "replace_prices" in the tables of a price list.
base::Result<std::vector<rules::HouseRule>> lay_prices_over(
    nlohmann::json& prices, std::string_view text, const std::string& file, rules::Family family
);

// Where in the text of a house-rules file the value for this pointer stands; where the group of
// replacements stands if it has none.
base::Place place_of_replacement(
    std::string_view text,
    const std::string& file,
    const std::string& pointer,
    const std::string& group = "/replace"
);

} // namespace store
