#include "game/conditions.h"

#include "game/effects.h"
#include "game/turn_steps.h"
#include "rules/dice.h"

#include <algorithm>

namespace game {

namespace {

using rules::ConditionRule;
using rules::Effect;
using rules::EffectKind;
using rules::Fading;
using rules::Rulebook;

bool is_persistent(const Rulebook& rulebook, const ActiveCondition& active) {
    const ConditionRule* rule = rules::find_condition(rulebook, active.key);
    return rule != nullptr && rule->fading == Fading::persistent_damage;
}

double mean_damage(const ActiveCondition& active) {
    const auto dice = rules::parse_dice(active.damage);
    return dice.ok() ? rules::mean(dice.value()) : 0.0;
}

bool is_listed(const std::vector<std::string>& words, const std::string& word) {
    return !word.empty() && std::find(words.begin(), words.end(), word) != words.end();
}

bool is_immune(
    const Rulebook& rulebook, const Combatant& combatant, const ActiveCondition& condition
) {
    const std::vector<std::string>& immunities = combatant.statistics.immunities;
    if (is_listed(immunities, condition.key)) return true;
    if (is_persistent(rulebook, condition) && is_listed(immunities, condition.damage_type))
        return true;
    for (const HoldingCondition& holding : holding_conditions(rulebook, combatant)) {
        for (const Effect& effect : holding.rule->effects) {
            if (effect.kind == EffectKind::immune_to && effect.condition == condition.key &&
                !condition.key.empty()) {
                return true;
            }
        }
    }
    return false;
}

// How long a duration lasts, coarsely, to keep the longer of two.
long long length_of(const Duration& duration) {
    constexpr long long seconds_a_round = 6;
    switch (duration.kind) {
    case DurationKind::until_turn: return seconds_a_round;
    case DurationKind::rounds: return duration.rounds_left * seconds_a_round;
    case DurationKind::timed: return duration.seconds_left;
    case DurationKind::until_check: return 1LL << 40;
    case DurationKind::until_rest: return 1LL << 41;
    case DurationKind::until_removed: return 1LL << 42;
    }
    return 0;
}

// The one already there that the new one merges with.
ActiveCondition*
same_as(const Rulebook& rulebook, Combatant& combatant, const ActiveCondition& condition) {
    if (condition.key.empty()) return nullptr;
    for (ActiveCondition& active : combatant.conditions) {
        if (active.key != condition.key) continue;
        if (!is_persistent(rulebook, condition) || active.damage_type == condition.damage_type)
            return &active;
    }
    return nullptr;
}

// What a condition's value can be: at least 1 where it has one (stunned may have none and a
// duration instead), none where the rule knows none.
int sound_value(const ConditionRule* rule, int value) {
    if (rule == nullptr) return std::max(value, 0);
    if (!rule->has_value) return 0;
    const int least = rule->fading == Fading::lost_with_actions ? 0 : 1;
    return rule->max_value > 0 ? std::clamp(value, least, rule->max_value) : std::max(value, least);
}

int hp_lost_with(const ConditionRule& rule, const Combatant& combatant, int value) {
    int lost = 0;
    for (const Effect& effect : rule.effects) {
        if (effect.kind != EffectKind::hp_lost_when_set) continue;
        lost += effect.amount_per_value * value * std::max(1, combatant.statistics.level);
    }
    return lost;
}

void gain_companions(
    Encounter& encounter, const Rulebook& rulebook, Id id, const ConditionRule& rule, int depth
) {
    constexpr int depth_max = 8; // a rulebook that implies in a circle must not hang
    if (depth > depth_max) return;
    for (const Effect& effect : rule.effects) {
        if (effect.kind == EffectKind::gains_when_set) {
            ActiveCondition gained;
            gained.key = effect.condition;
            gained.value = effect.amount;
            add_condition(encounter, rulebook, id, gained);
        }
        if (effect.kind != EffectKind::implies) continue;
        const ConditionRule* implied = rules::find_condition(rulebook, effect.condition);
        if (implied != nullptr) gain_companions(encounter, rulebook, id, *implied, depth + 1);
    }
}

// What a new or stronger condition does at once: HP lost, death, concentration.
void apply_consequences(Encounter& encounter, const Rulebook& rulebook, Id id, int hp_lost) {
    Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr || combatant->is_dead) return;
    const int hp_before = combatant->hp;
    combatant->hp =
        std::clamp(combatant->hp - std::max(hp_lost, 0), 0, effective_hp_max(rulebook, *combatant));
    if (hp_before > 0 && combatant->hp == 0)
        fall_at_zero(encounter, rulebook, *combatant, {false, false, encounter.current});
    combatant = find_combatant(encounter, id);
    bool dies = false;
    bool loses_concentration = false;
    bool loses_actions = false;
    for (const HoldingCondition& holding : holding_conditions(rulebook, *combatant)) {
        for (const Effect& effect : holding.rule->effects) {
            if (effect.from_value > 0 && holding.value < effect.from_value) continue;
            dies = dies || effect.kind == EffectKind::dies;
            loses_concentration = loses_concentration ||
                                  effect.kind == EffectKind::ends_concentration ||
                                  effect.kind == EffectKind::cannot_act;
            // Stunned with a value takes its actions when they are regained.
            const bool is_counted_stun =
                holding.rule->fading == Fading::lost_with_actions && holding.value > 0;
            loses_actions =
                loses_actions || (effect.kind == EffectKind::cannot_act && !is_counted_stun);
        }
    }
    if (rulebook.family == rules::Family::four_degree) {
        const int threshold = death_threshold(rulebook, *combatant);
        dies =
            dies || threshold == 0 || condition_value(rulebook, *combatant, "dying") >= threshold;
    }
    if (loses_actions) combatant->actions_left = 0;
    if (loses_concentration) end_concentration(encounter, *combatant, "incapacitated");
    if (dies) die(encounter, rulebook, *combatant);
}

void raise_wounded(Encounter& encounter, const Rulebook& rulebook, Id id) {
    Combatant* combatant = find_combatant(encounter, id);
    ActiveCondition wounded;
    wounded.key = "wounded";
    wounded.value =
        condition_value(rulebook, *combatant, "wounded") + rulebook.dying.wounded_gained;
    add_condition(encounter, rulebook, id, wounded);
}

} // namespace

bool add_condition(
    Encounter& encounter, const Rulebook& rulebook, Id id, ActiveCondition condition
) {
    Combatant* combatant = find_combatant(encounter, id);
    const ConditionRule* rule = rules::find_condition(rulebook, condition.key);
    if (combatant == nullptr ||
        (rule == nullptr && (!condition.key.empty() || condition.name.empty())))
        return false;
    if (combatant->is_dead || is_immune(rulebook, *combatant, condition)) return false;
    condition.value = sound_value(rule, condition.value);
    int hp_lost = rule == nullptr ? 0 : hp_lost_with(*rule, *combatant, condition.value);
    if (ActiveCondition* present = same_as(rulebook, *combatant, condition)) {
        if (rule != nullptr)
            hp_lost = hp_lost_with(*rule, *combatant, condition.value - present->value);
        if (is_persistent(rulebook, condition)) {
            if (mean_damage(condition) > mean_damage(*present)) {
                present->damage = condition.damage;
                present->source = condition.source;
            }
        } else {
            present->value = std::max(present->value, condition.value);
        }
        if (length_of(condition.duration) > length_of(present->duration)) {
            present->duration = condition.duration;
            present->check = condition.check;
        }
    } else {
        condition.id = encounter.next_id++;
        combatant->conditions.push_back(std::move(condition));
        if (rule != nullptr) gain_companions(encounter, rulebook, id, *rule, 0);
    }
    apply_consequences(encounter, rulebook, id, hp_lost);
    return true;
}

void set_condition_value(
    Encounter& encounter, const Rulebook& rulebook, Id id, Id condition, int value
) {
    Combatant* combatant = find_combatant(encounter, id);
    ActiveCondition* active = combatant == nullptr ? nullptr : find_active(*combatant, condition);
    if (active == nullptr) return;
    if (value <= 0) {
        end_condition(encounter, rulebook, id, condition);
        return;
    }
    const ConditionRule* rule = rules::find_condition(rulebook, active->key);
    value = sound_value(rule, value);
    const int hp_lost =
        rule == nullptr ? 0 : hp_lost_with(*rule, *combatant, value - active->value);
    active->value = value;
    apply_consequences(encounter, rulebook, id, hp_lost);
}

void end_condition(Encounter& encounter, const Rulebook& rulebook, Id id, Id condition) {
    Combatant* combatant = find_combatant(encounter, id);
    const ActiveCondition* active =
        combatant == nullptr ? nullptr : find_active(*combatant, condition);
    if (active == nullptr) return;
    const ConditionRule* rule = rules::find_condition(rulebook, active->key);
    const bool was_dying = rule != nullptr && rule->fading == Fading::recovery_check;
    std::erase_if(combatant->conditions, [condition](const ActiveCondition& each) {
        return each.id == condition;
    });
    drop_prompts(encounter, id, condition);
    if (!was_dying || combatant->is_dead) return;
    // Player Core (ORC), Dying and Wounded: losing dying gives wounded; at 0 HP one stays
    // unconscious.
    raise_wounded(encounter, rulebook, id);
    if (find_combatant(encounter, id)->hp == 0) {
        ActiveCondition unconscious;
        unconscious.key = "unconscious";
        add_condition(encounter, rulebook, id, unconscious);
    }
}

void pause_condition(Encounter& encounter, Id id, Id condition, bool is_paused) {
    Combatant* combatant = find_combatant(encounter, id);
    ActiveCondition* active = combatant == nullptr ? nullptr : find_active(*combatant, condition);
    if (active != nullptr) active->is_paused = is_paused;
}

void set_condition_duration(Encounter& encounter, Id id, Id condition, const Duration& duration) {
    Combatant* combatant = find_combatant(encounter, id);
    ActiveCondition* active = combatant == nullptr ? nullptr : find_active(*combatant, condition);
    if (active != nullptr) active->duration = duration;
}

void extend_condition(
    Encounter& encounter, const Rulebook& rulebook, Id id, Id condition, int rounds
) {
    Combatant* combatant = find_combatant(encounter, id);
    ActiveCondition* active = combatant == nullptr ? nullptr : find_active(*combatant, condition);
    if (active == nullptr) return;
    Duration& duration = active->duration;
    if (duration.kind == DurationKind::timed) {
        duration.seconds_left =
            std::max(duration.seconds_left + rounds * rulebook.turn.round_seconds, 1);
    } else if (duration.kind == DurationKind::rounds) {
        duration.rounds_left = std::max(duration.rounds_left + rounds, 1);
    } else if (duration.kind == DurationKind::until_turn && rounds > 0) {
        duration.kind =
            DurationKind::rounds; // one edge was left, so that many more are counted now
        duration.rounds_left = 1 + rounds;
    }
}

} // namespace game
