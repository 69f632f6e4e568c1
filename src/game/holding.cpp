// Which conditions hold: stored ones and those they imply, the strongest value of each, without the
// ones that another overrides.
#include "game/effect_walk.h"
#include "game/effects.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace game {

using rules::ConditionRule;
using rules::Effect;
using rules::EffectKind;
using rules::Rulebook;

namespace {

using ByKey = std::map<std::string, HoldingCondition>; // the strongest of each

// A condition gained twice counts once, with the higher value (Player Core (ORC), conditions).
ByKey strongest_of_each(const Rulebook& rulebook, const Combatant& combatant) {
    ByKey holding;
    std::vector<HoldingCondition> waiting;
    for (const ActiveCondition& active : combatant.conditions) {
        const ConditionRule* rule = rules::find_condition(rulebook, active.key);
        if (rule != nullptr) waiting.push_back({rule, active.value, {}});
    }
    for (std::size_t at = 0; at < waiting.size(); ++at) {
        const HoldingCondition found = waiting[at];
        const auto known = holding.find(found.rule->key);
        if (known != holding.end() && known->second.value >= found.value) continue;
        holding[found.rule->key] = found;
        for (const Effect& effect : found.rule->effects) {
            if (effect.kind != EffectKind::implies || !holds_at(effect, found.value)) continue;
            const ConditionRule* implied = rules::find_condition(rulebook, effect.condition);
            if (implied != nullptr)
                waiting.push_back({implied, amount_of(effect, found.value), found.rule->name});
        }
    }
    return holding;
}

// Overridden by another, or one that another makes immune to: a poison in petrified flesh stands
// still (SRD 5.1, Appendix PH-A, petrified).
std::set<std::string> suppressed_keys(const ByKey& holding) {
    std::set<std::string> suppressed;
    for (const auto& [key, found] : holding) {
        for (const Effect& effect : found.rule->effects) {
            const bool suppresses =
                effect.kind == EffectKind::overrides || effect.kind == EffectKind::immune_to;
            if (suppresses && holds_at(effect, found.value)) suppressed.insert(effect.condition);
        }
    }
    return suppressed;
}

const HoldingCondition*
find_holding(const std::vector<HoldingCondition>& list, std::string_view key) {
    const auto found = std::find_if(list.begin(), list.end(), [key](const HoldingCondition& each) {
        return each.rule->key == key;
    });
    return found == list.end() ? nullptr : &*found;
}

} // namespace

std::vector<HoldingCondition>
holding_conditions(const Rulebook& rulebook, const Combatant& combatant) {
    if (combatant.conditions.empty()) return {};
    const ByKey holding = strongest_of_each(rulebook, combatant);
    const std::set<std::string> suppressed = suppressed_keys(holding);
    std::vector<HoldingCondition> result;
    for (const auto& [key, found] : holding) {
        if (suppressed.count(key) == 0) result.push_back(found);
    }
    return result;
}

bool has_condition(const Rulebook& rulebook, const Combatant& combatant, std::string_view key) {
    return find_holding(holding_conditions(rulebook, combatant), key) != nullptr;
}

int condition_value(const Rulebook& rulebook, const Combatant& combatant, std::string_view key) {
    const std::vector<HoldingCondition> list = holding_conditions(rulebook, combatant);
    const HoldingCondition* holding = find_holding(list, key);
    return holding == nullptr ? 0 : holding->value;
}

} // namespace game
