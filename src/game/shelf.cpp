#include "game/shelf.h"

#include "game/roster.h"

#include <utility>

namespace game {

Id copy_creature(CreatureShelf& shelf, Id creature) {
    const Creature* found = find_creature(std::as_const(shelf), creature);
    if (found == nullptr) return base::no_id;
    Creature copy = *found;
    copy.name = free_name(shelf.creatures, "Copy of " + found->name);
    return add_creature(shelf, std::move(copy));
}

void take_off_shelf(Campaign& campaign, Id creature) {
    remove_creature(campaign.shelf, creature);
    for (PreparedEncounter& prepared : campaign.preparation.encounters) {
        std::erase_if(prepared.creatures, [creature](const PreparedCreatures& part) {
            return part.creature == creature;
        });
    }
}

std::string creatures_text(const CreatureShelf& shelf, const PreparedEncounter& prepared) {
    std::string words;
    for (const PreparedCreatures& part : prepared.creatures) {
        const Creature* creature = find_creature(shelf, part.creature);
        if (!words.empty()) words += ", ";
        words += std::to_string(part.count) + " ";
        words += creature == nullptr ? std::string("unknown") : creature->name;
    }
    return words.empty() ? "no creatures yet" : words;
}

} // namespace game
