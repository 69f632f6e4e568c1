// What the rulebook expects a party to find and to own.
#pragma once

#include "base/result.h"
#include "rules/rulebook.h"

#include <vector>

namespace rules {

struct TreasureOverLevel {
    int total_gp = 0;
    int currency_gp = 0;

    bool operator==(const TreasureOverLevel&) const = default;
};

// What so many characters find in the course of a level. Each beyond the table's party size adds
// money; each one missing takes as much away (the latter is common practice, no source), never
// below 0. Errors: not_found without a table or a row, out_of_range without a party.
base::Result<TreasureOverLevel>
treasure_over_level(const Rulebook& rulebook, int level, int characters);

// What characters of these levels own when they are made new. Errors as above.
base::Result<int> new_party_wealth_gp(const Rulebook& rulebook, const std::vector<int>& levels);

// The pounds that a small or medium creature with this Strength modifier carries at least: the
// lower of the two scores that have the modifier. 0: the rulebook has no figure.
int least_carrying_capacity_lb(const Rulebook& rulebook, int strength_modifier);

} // namespace rules
