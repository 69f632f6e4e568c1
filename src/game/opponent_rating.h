// What the numbers of an opponent count as in the tables of encounters, and how that is written.
#pragma once

#include "game/statistics.h"
#include "rules/encounter_budget.h"
#include "rules/rulebook.h"

#include <string>

namespace game {

// Level (four-degree) or challenge rating (srd5) of so many of them; hazards as such.
rules::Opponents opponents_of(const Statistics& statistics, rules::Family family, int count);

// "level 2", "CR 1/4", "complex hazard, level 5".
std::string rating_text(const rules::Opponents& opponents, rules::Family family);

} // namespace game
