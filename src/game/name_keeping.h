// What is remembered of names: which were given to whom, favourites.
#pragma once

#include "game/campaign.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace game {

// A name that is given away now.
struct NameGiven {
    std::string name;
    std::string list; // key of a ready list or name of an own one; may be empty
    Kind kind = Kind::person;
    std::string who; // may be empty
    std::string where;
};

// Marks the name used on this in-world day and enters it in the Register, or ties it to the entry
// of that name that is there already. The new entry's summary is who; a where that is the name of a
// place in the Register becomes the place of the entry, another one joins the summary. A favourite
// of that name goes. Sections names and registered. Returns the id of the used name.
Id use_name(Campaign& campaign, const NameGiven& given);

// Takes it back. Its entry of the Register goes along if nothing was added to it since. Sections
// names and registered.
void unuse_name(Campaign& campaign, Id used);

// Who bears it and where, told later; an entry that nobody touched since learns it too. Sections
// names and registered.
void tell_used_name(Campaign& campaign, Id used, const std::string& who, const std::string& where);

const UsedName* find_used_name(const NameBook& book, Id used);

// Places in book.used of those that hold this text in name, who or where (case and marks aside),
// newest first.
std::vector<std::size_t> search_used_names(const NameBook& book, std::string_view text);

bool is_favourite_name(const NameBook& book, std::string_view name);
void toggle_favourite_name(NameBook& book, const std::string& name, const std::string& list);

} // namespace game
