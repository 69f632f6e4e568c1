// Keeping the creature shelf: copies, and taking an entry away without leaving a fight that names
// it.
#pragma once

#include "game/campaign.h"

namespace game {

// Returns the id of the copy, "Copy of Reed Lurker"; no_id if there is no such creature.
Id copy_creature(CreatureShelf& shelf, Id creature);

// Off the shelf and out of every prepared encounter. Sections shelf and preparation.
void take_off_shelf(Campaign& campaign, Id creature);

// "3 Reed Lurker, 1 Mudcaller"; "no creatures yet".
std::string creatures_text(const CreatureShelf& shelf, const PreparedEncounter& prepared);

// A name that is not taken yet: "New character", "New character 2".
template <class List>
std::string free_name(const List& list, const std::string& stem) {
    const auto is_taken = [&](const std::string& name) {
        for (const auto& each : list) {
            if (each.name == name) return true;
        }
        return false;
    };
    std::string name = stem;
    for (int number = 2; is_taken(name); ++number)
        name = stem + " " + std::to_string(number);
    return name;
}

} // namespace game
