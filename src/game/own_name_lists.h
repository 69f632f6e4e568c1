// The lists of names that the GM writes, pastes or takes from a file.
#pragma once

#include "game/campaign.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace game {

// The names in a text: one a line, or with commas or semicolons between. Spaces around them go, so
// do bullets and numbers before them, empty ones, too long ones, and those that came before (case
// aside). Composed.
std::vector<std::string> split_names(std::string_view text);

inline constexpr std::size_t list_names_max = 20000; // more than a person will read

// Adds a list with a free name ("Own names", "Own names 2"). Returns its id.
Id add_name_list(NameBook& book, const std::string& name, Kind kind);
NameList* find_name_list(NameBook& book, Id list);
const NameList* find_name_list(const NameBook& book, Id list);

// Adds the names that are not in the list yet; says how many.
std::size_t add_to_name_list(NameBook& book, Id list, const std::vector<std::string>& names);
void remove_from_name_list(NameBook& book, Id list, const std::string& name);
void rename_name_list(NameBook& book, Id list, const std::string& name); // used names follow
void set_name_list_kind(NameBook& book, Id list, Kind kind);
void remove_name_list(NameBook& book, Id list);

} // namespace game
