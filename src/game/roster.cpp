#include "game/roster.h"

#include "game/turn_steps.h"
#include "game/turns.h"

#include <algorithm>
#include <utility>

namespace game {

namespace {

template <class List>
void replace_by_id(List& list, const typename List::value_type& changed) {
    for (auto& entry : list) {
        if (entry.id == changed.id) entry = changed;
    }
}

void number_reminders(Party& party, Character& character) {
    for (Reminder& reminder : character.reminders) {
        if (reminder.id == base::no_id) reminder.id = party.next_id++;
    }
}

} // namespace

Id add_character(Campaign& campaign, Character character) {
    character.id = campaign.party.next_id++;
    number_reminders(campaign.party, character);
    const Id id = character.id;
    campaign.party.characters.push_back(std::move(character));
    link_party(campaign);
    return id;
}

void update_character(Campaign& campaign, const Character& character) {
    const Character* known = find_character(std::as_const(campaign.party), character.id);
    if (known == nullptr) return;
    const int maximum_before = known->statistics.hit_points;
    Character changed = character;
    number_reminders(campaign.party, changed);
    replace_by_id(campaign.party.characters, changed);
    link_party(campaign);
    for (Combatant& combatant : campaign.encounter.combatants) {
        if (combatant.character != character.id) continue;
        const int maximum = combatant.statistics.hit_points;
        // Unhurt stays unhurt when the maximum grows; a lower maximum caps what is there.
        if (combatant.hp == maximum_before && !combatant.is_dead) combatant.hp = maximum;
        combatant.hp = std::min(combatant.hp, maximum);
        std::erase_if(combatant.reminders_used, [&](const auto& used) {
            return std::none_of(
                changed.reminders.begin(),
                changed.reminders.end(),
                [&](const Reminder& reminder) { return reminder.id == used.first; }
            );
        });
    }
}

void remove_character(Campaign& campaign, const rules::Rulebook& rulebook, Id character) {
    std::erase_if(campaign.party.characters, [character](const Character& each) {
        return each.id == character;
    });
    // Out of a running fight by its rules first, so that the next turn starts properly.
    Encounter& encounter = campaign.encounter;
    if (const Combatant* combatant = find_party_combatant(encounter, character))
        remove_combatant(encounter, rulebook, combatant->id);
    link_party(campaign);
    forget_gone(encounter);
}

void set_present(Campaign& campaign, Id character, bool is_present) {
    if (Character* known = find_character(campaign.party, character))
        known->is_present = is_present;
}

Id add_creature(CreatureShelf& shelf, Creature creature) {
    creature.id = shelf.next_id++;
    shelf.creatures.push_back(std::move(creature));
    return shelf.creatures.back().id;
}

void update_creature(CreatureShelf& shelf, const Creature& creature) {
    replace_by_id(shelf.creatures, creature);
}

void remove_creature(CreatureShelf& shelf, Id creature) {
    std::erase_if(shelf.creatures, [creature](const Creature& each) {
        return each.id == creature;
    });
}

Id add_prepared(Preparation& preparation, PreparedEncounter encounter) {
    encounter.id = preparation.next_id++;
    preparation.encounters.push_back(std::move(encounter));
    return preparation.encounters.back().id;
}

void update_prepared(Preparation& preparation, const PreparedEncounter& encounter) {
    replace_by_id(preparation.encounters, encounter);
}

void remove_prepared(Preparation& preparation, Id encounter) {
    std::erase_if(preparation.encounters, [encounter](const PreparedEncounter& each) {
        return each.id == encounter;
    });
}

} // namespace game
