// Giving one condition to several combatants at once, and what it would do before it is given.
#pragma once

#include "game/encounter.h"
#include "rules/rulebook.h"

#include <string>
#include <vector>

namespace game {

struct ConditionGift {
    ActiveCondition condition;
    bool counts_on_own_turn = false; // its duration counts on each target's own turn
};

struct ConditionPreview {
    std::string refusal;              // why it is not given: "is immune"; empty when it is
    std::vector<std::string> changes; // "AC 19 -> 17", "falls prone"; may be empty
};

// What it would do to this combatant now, everything else that runs on it counted.
ConditionPreview preview_condition(
    const Encounter& encounter,
    const rules::Rulebook& rulebook,
    Id combatant,
    const ConditionGift& gift
);

// Gives it to each. Returns the line for the history, those who are immune named: "Give frightened
// 2 to Ysolde Marr and Orrin Tace; Mudcaller is immune".
std::string give_condition(
    Encounter& encounter,
    const rules::Rulebook& rulebook,
    const std::vector<Id>& targets,
    const ConditionGift& gift
);

} // namespace game
