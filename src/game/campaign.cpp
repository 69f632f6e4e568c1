#include "game/campaign.h"

#include <algorithm>
#include <utility>

namespace game {

namespace {

template <class List>
auto* find_by_id(List& list, Id id) {
    const auto found =
        std::find_if(list.begin(), list.end(), [id](const auto& entry) { return entry.id == id; });
    return id == base::no_id || found == list.end() ? nullptr : &*found;
}

Combatant make_party_combatant(const Character& character, Id id) {
    Combatant combatant;
    combatant.id = id;
    combatant.side = Side::party;
    combatant.character = character.id;
    combatant.hp = character.statistics.hit_points;
    combatant.standing = Standing::absent;
    combatant.dies_at_zero = false;
    return combatant;
}

// Forgets everything that points at combatants which are gone.
void drop_references_to_gone(Encounter& encounter) {
    const auto is_gone = [&](Id id) { return find_combatant(encounter, id) == nullptr; };
    std::erase_if(encounter.order, is_gone);
    std::erase_if(encounter.prompts, [&](const Prompt& prompt) {
        return is_gone(prompt.combatant);
    });
    std::erase_if(encounter.notices, [&](const Notice& notice) {
        return is_gone(notice.combatant);
    });
    std::erase_if(encounter.called, [&](const CalledReminder& called) {
        return is_gone(called.combatant);
    });
}

} // namespace

const Character* find_character(const Party& party, Id id) {
    return find_by_id(party.characters, id);
}

Character* find_character(Party& party, Id id) {
    return find_by_id(party.characters, id);
}

const Creature* find_creature(const CreatureShelf& shelf, Id id) {
    return find_by_id(shelf.creatures, id);
}

Creature* find_creature(CreatureShelf& shelf, Id id) {
    return find_by_id(shelf.creatures, id);
}

const PreparedEncounter* find_prepared(const Preparation& preparation, Id id) {
    return find_by_id(preparation.encounters, id);
}

PreparedEncounter* find_prepared(Preparation& preparation, Id id) {
    return find_by_id(preparation.encounters, id);
}

void link_party(Campaign& campaign) {
    Encounter& encounter = campaign.encounter;
    std::erase_if(encounter.combatants, [&](const Combatant& combatant) {
        return combatant.character != base::no_id &&
               find_character(std::as_const(campaign.party), combatant.character) == nullptr;
    });
    for (const Character& character : campaign.party.characters) {
        if (find_party_combatant(encounter, character.id) == nullptr) {
            encounter.combatants.push_back(make_party_combatant(character, encounter.next_id++));
        }
        for (Combatant& combatant : encounter.combatants) {
            if (combatant.character != character.id) continue;
            combatant.name = character.name;
            combatant.statistics = character.statistics;
            combatant.reminders = character.reminders;
        }
    }
    drop_references_to_gone(encounter);
}

} // namespace game
