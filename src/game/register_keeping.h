// What becomes of entries of the Register: entered, renamed, merged, gone. Finding them:
// registering.h.
#pragma once

#include "game/campaign.h"
#include "game/mentions.h"

#include <string>
#include <string_view>
#include <vector>

namespace game {

// Enters it under its name, met on the in-world day of now. Where an entry of that name is there
// already, nothing is entered and its id comes back; no_id without a name. Section registered.
Id enter(Campaign& campaign, const std::string& name, Kind kind);

// Changes the entry with this id. Section registered.
void update_entry(Register& registered, const RegisterEntry& changed);

// The new name takes the place of the old one wherever the entry is spoken of: notes, plans, pages
// of the Day Book, used names, other entries. Nothing happens without a name, or where another
// entry has it. Sections registered, sessions, day_book and names. Returns how many texts changed.
int rename_entry(Campaign& campaign, Id entry, const std::string& name);

// Two entries that turned out to be one: `into` stays, keeps what it knows and gains what only the
// other one knew; what spoke of the other one speaks of it. Sections as above.
void merge_entries(Campaign& campaign, Id from, Id into);

// Takes the entry out; what is written stays as it is. Sections registered, sessions and names.
void remove_entry(Campaign& campaign, Id entry);

// Places in the list that answer what was typed (by name as a creature is found, or anywhere in
// summary and notes), of the kinds asked for; best first, then by name.
struct RegisterQuery {
    std::string text;
    std::vector<Kind> kinds; // empty: all

    bool operator==(const RegisterQuery&) const = default;
};

std::vector<std::size_t> search_register(const Register& registered, const RegisterQuery& query);

} // namespace game
