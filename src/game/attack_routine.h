// What one turn of attacks is, as lists that the odds are computed with: by the rulebook's
// multiple-attack penalty (four-degree) or by what its sheet says of one turn (srd5).
#pragma once

#include "game/encounter.h"
#include "game/library_creature.h"
#include "rules/attack_odds.h"
#include "rules/rulebook.h"

#include <string>
#include <vector>

namespace game {

struct Routine {
    std::string text;                      // "2 Scimitar, 1 Dagger"
    std::vector<rules::Attack> attacks;    // in the order they are made
    std::vector<std::string> damage_types; // of each attack; may be empty texts

    bool operator==(const Routine&) const = default;
};

// Every routine it can choose on its turn, conditions counted, as if it had not attacked yet.
// four-degree: each attack as often as actions and penalties of the rulebook go (three times).
// srd5: the attacks with `per_turn`, and each attack alone. Attacks without damage dice are left
// out; none at all when it cannot act.
std::vector<Routine> turn_routines(const rules::Rulebook& rulebook, const Combatant& combatant);

// The same for numbers without conditions.
std::vector<Routine> turn_routines(const rules::Rulebook& rulebook, const Statistics& statistics);

// Every option of its Multiattack, and each attack alone. Saves that ride on hits are left out.
std::vector<Routine> turn_routines(const LibraryCreature& creature);

// The one with the highest expected damage against this AC; nullptr when there is none.
const Routine* best_routine(const std::vector<Routine>& routines, int ac);

} // namespace game
