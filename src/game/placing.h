// A creature of the library or of the builder goes straight into the fight, or onto the shelf.
#pragma once

#include "game/campaign.h"
#include "rules/dice.h"
#include "rules/rulebook.h"

#include <optional>
#include <string>
#include <vector>

namespace game {

enum class HitPointsBy {
    average, // as its numbers say
    rolled,  // each for itself from its hit dice, 1 or more; average where it has none
};

struct Placing {
    int count = 1;
    bool shares_initiative = false;
    bool is_hidden = false;
    std::optional<int> initiative; // a typed total; none: rolled, or open while the fight gathers
    HitPointsBy hit_points = HitPointsBy::average;

    bool operator==(const Placing&) const = default;
};

// Adds so many, numbered on from those of that name, and opens a fight with the party where none is
// on. Nothing happens and no ids come back without a name or with a count outside 1 to
// Limits::count_max. Section encounter.
std::vector<Id> place_creature(
    Campaign& campaign,
    const rules::Rulebook& rulebook,
    const std::string& name,
    const Statistics& statistics,
    const Placing& placing,
    rules::Dice& dice
);

// Puts it on the shelf under its name, or "NAME 2" where that is taken. Returns its id; no_id
// without a name.
Id keep_on_shelf(CreatureShelf& shelf, const std::string& name, const Statistics& statistics);

} // namespace game
