// Walking over the effects that hold on a combatant right now. Only for the files of `game`.
#pragma once

#include "game/effects.h"

namespace game {

inline int amount_of(const rules::Effect& effect, int value) {
    return effect.amount + effect.amount_per_value * value;
}

// Some effects hold only from a value on (the levels of exhaustion).
inline bool holds_at(const rules::Effect& effect, int value) {
    return effect.from_value == 0 || value >= effect.from_value;
}

// Calls visit(holding condition, effect) for each effect of each condition that holds.
template <class Visit>
void each_effect(const rules::Rulebook& rulebook, const Combatant& combatant, Visit visit) {
    for (const HoldingCondition& holding : holding_conditions(rulebook, combatant)) {
        for (const rules::Effect& effect : holding.rule->effects) {
            if (holds_at(effect, holding.value)) visit(holding, effect);
        }
    }
}

} // namespace game
