// A built creature or hazard as the numbers of a creature in a fight; see
// rules/creature_building.h.
#pragma once

#include "game/statistics.h"
#include "rules/creature_building.h"
#include "rules/hazard_building.h"

namespace game {

// Every number of the choice; area damage and the archetype's remark stand in the notes.
Statistics built_statistics(const rules::Rulebook& rulebook, const rules::BuildChoice& choice);

// A hazard as something that can be attacked and that attacks; how to notice and disable it stands
// in the notes. Initiative is its Stealth.
Statistics hazard_statistics(const rules::Rulebook& rulebook, const rules::HazardChoice& choice);

} // namespace game
