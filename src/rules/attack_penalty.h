// The multiple-attack penalty: what the next attack of a turn suffers for those already made.
#pragma once

#include "rules/rulebook.h"

namespace rules {

// 0 or less; past the last figure of the rulebook it stays at that one. 0 if there is no such rule.
int attack_penalty(const TurnRules& turn, bool is_agile, int attacks_made);

} // namespace rules
