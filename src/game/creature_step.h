// A creature made elite or weak from its finished numbers (four-degree). Source: Monster Core
// (ORC), Adjusting Creatures.
#pragma once

#include "game/statistics.h"
#include "rules/creature_building.h"
#include "rules/rulebook.h"

#include <optional>
#include <string>

namespace game {

// None where the rules have no such form: for hazards, in srd5, and for levels without a row.
// Damage changes by its flat amount on every attack; what the notes say stays as it is.
std::optional<Statistics> stepped_statistics(
    const rules::Rulebook& rulebook, const Statistics& statistics, rules::BuildStep step
);

// "Elite Reed Lurker", "Weak Reed Lurker".
std::string stepped_name(const std::string& name, rules::BuildStep step);

} // namespace game
