// What conditions do to hit points, actions, reactions and the nearness of death.
#include "game/effect_walk.h"
#include "game/effects.h"

#include <algorithm>
#include <cmath>

namespace game {

using rules::Effect;
using rules::EffectKind;
using rules::Rulebook;

int effective_hp_max(const Rulebook& rulebook, const Combatant& combatant) {
    int change = 0;
    double factor = 1.0;
    each_effect(rulebook, combatant, [&](const HoldingCondition& holding, const Effect& effect) {
        // A creature below level 1 counts as level 1 (Player Core (ORC), conditions, drained).
        if (effect.kind == EffectKind::hp_max_changes)
            change +=
                effect.amount_per_value * holding.value * std::max(1, combatant.statistics.level);
        if (effect.kind == EffectKind::hp_max_factor) factor = std::min(factor, effect.factor);
    });
    const double maximum = std::floor((combatant.statistics.hit_points + change) * factor);
    return std::max(static_cast<int>(maximum), 1);
}

int actions_at_turn_start(const Rulebook& rulebook, const Combatant& combatant) {
    int actions = rulebook.turn.actions;
    bool can_act = true;
    each_effect(rulebook, combatant, [&](const HoldingCondition& holding, const Effect& effect) {
        // Stunned with a value takes actions from turn to turn instead of all of them (start of
        // turn).
        const bool is_counted_stun =
            holding.rule->fading == rules::Fading::lost_with_actions && holding.value > 0;
        if (effect.kind == EffectKind::cannot_act && !is_counted_stun) can_act = false;
        if (effect.kind == EffectKind::actions) actions += amount_of(effect, holding.value);
    });
    return can_act ? std::max(actions, 0) : 0;
}

static bool is_kept_from(const Rulebook& rulebook, const Combatant& combatant, EffectKind kind) {
    bool is_kept = false;
    each_effect(rulebook, combatant, [&](const HoldingCondition&, const Effect& effect) {
        is_kept = is_kept || effect.kind == kind || effect.kind == EffectKind::cannot_act;
    });
    return is_kept;
}

bool can_react(const Rulebook& rulebook, const Combatant& combatant) {
    return !is_kept_from(rulebook, combatant, EffectKind::cannot_react);
}

bool can_delay(const Rulebook& rulebook, const Combatant& combatant) {
    return rulebook.turn.has_delay && !is_kept_from(rulebook, combatant, EffectKind::cannot_delay);
}

int death_threshold(const Rulebook& rulebook, const Combatant& combatant) {
    int threshold = rulebook.dying.death_at;
    each_effect(rulebook, combatant, [&](const HoldingCondition& holding, const Effect& effect) {
        if (effect.kind == EffectKind::death_threshold)
            threshold += effect.amount_per_value * holding.value;
    });
    return std::max(threshold, 0);
}

} // namespace game
