// How a condition ends, for people: its timer, and what the rules do by themselves.
#pragma once

#include "game/encounter.h"
#include "rules/rulebook.h"

#include <string>

namespace game {

// "falls by 1 at the end of its turn", "3 rounds", "recovery check each turn, paused".
std::string ending_text(
    const Encounter& encounter, const rules::Rulebook& rulebook, const ActiveCondition& condition
);

} // namespace game
