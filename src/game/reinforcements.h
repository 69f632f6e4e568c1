// Creatures that come into a fight from the shelf or from a prepared encounter, a fight being
// opened first where none is on.
#pragma once

#include "game/campaign.h"
#include "rules/dice.h"
#include "rules/rulebook.h"

#include <optional>
#include <string>
#include <vector>

namespace game {

// `count` of a creature of the shelf. Where no fight is on, one with the party is opened first.
// `initiative`: a typed total; none: rolled, or left open while the fight gathers. Section
// encounter. Returns the ids.
std::vector<Id> drop_in(
    Campaign& campaign,
    const rules::Rulebook& rulebook,
    Id creature,
    int count,
    bool shares_initiative,
    std::optional<int> initiative,
    rules::Dice& dice
);

// All creatures of a prepared encounter join the fight that is on, initiative rolled for them where
// it runs. Section encounter. Returns how many came.
int join_prepared(
    Campaign& campaign, const rules::Rulebook& rulebook, Id prepared, rules::Dice& dice
);

} // namespace game
