#include "game/damage_taking.h"

#include "game/effects.h"

#include <algorithm>

namespace game {

namespace {

using rules::Rulebook;

bool names_type(const std::string& named, const std::string& type) {
    return !type.empty() && (named == type || named == "all");
}

// The strongest of those that name the type; nullptr if none does.
const DamageTrait* strongest(const std::vector<DamageTrait>& traits, const std::string& type) {
    const DamageTrait* found = nullptr;
    for (const DamageTrait& trait : traits) {
        if (!names_type(trait.type, type)) continue;
        if (found == nullptr || trait.amount > found->amount) found = &trait;
    }
    return found;
}

// What its conditions say.
void count_conditions(
    const Rulebook& rulebook,
    const Combatant& combatant,
    const std::string& type,
    DamageTaking& taking
) {
    for (const HoldingCondition& holding : holding_conditions(rulebook, combatant)) {
        for (const rules::Effect& effect : holding.rule->effects) {
            if (effect.kind == rules::EffectKind::immune_to && names_type(effect.condition, type))
                taking.is_immune = true;
            if (effect.kind == rules::EffectKind::resists_all && rulebook.damage.halves_and_doubles)
                taking.is_halved = true;
        }
    }
}

} // namespace

DamageTaking
damage_taking(const Rulebook& rulebook, const Combatant& combatant, const std::string& type) {
    const Statistics& statistics = combatant.statistics;
    DamageTaking taking;
    taking.is_immune = std::any_of(
        statistics.immunities.begin(),
        statistics.immunities.end(),
        [&](const std::string& named) { return names_type(named, type); }
    );
    const DamageTrait* weakness = strongest(statistics.weaknesses, type);
    const DamageTrait* resistance = strongest(statistics.resistances, type);
    if (rulebook.damage.halves_and_doubles) {
        taking.is_doubled = weakness != nullptr;
        taking.is_halved = resistance != nullptr;
    } else {
        taking.is_weak = weakness != nullptr;
        taking.resists = resistance != nullptr;
        if (weakness != nullptr) taking.weakness = weakness->amount;
        if (resistance != nullptr) taking.resistance = resistance->amount;
    }
    taking.hardness = statistics.hardness;
    count_conditions(rulebook, combatant, type, taking);
    return taking;
}

int taken_amount(const DamageTaking& taking, int amount) {
    if (taking.is_immune || amount <= 0) return 0;
    if (taking.is_halved) amount /= 2;
    if (taking.is_doubled) amount *= 2;
    return std::max(amount + taking.weakness - taking.resistance - taking.hardness, 0);
}

rules::Distribution taken_damage(const DamageTaking& taking, const rules::Distribution& damage) {
    if (taking == DamageTaking{}) return rules::floored_at(damage, 0);
    rules::Distribution taken;
    taken.chances.assign(
        static_cast<std::size_t>(taken_amount(taking, rules::highest(damage))) + 1, 0.0
    );
    for (std::size_t at = 0; at < damage.chances.size(); ++at) {
        const int amount = damage.lowest + static_cast<int>(at);
        taken.chances[static_cast<std::size_t>(taken_amount(taking, amount))] += damage.chances[at];
    }
    return taken;
}

} // namespace game
