// Effective numbers: what a combatant's AC, saves, attacks, speed and actions are right now, with
// every condition counted. Bonuses and penalties stack by type: per type only the highest bonus and
// the worst penalty count, untyped ones add up (Player Core (ORC), bonuses and penalties).
#pragma once

#include "game/encounter.h"
#include "rules/rulebook.h"

#include <string>
#include <string_view>
#include <vector>

namespace game {

// One bonus or penalty, and whether it counts or is beaten by a stronger one of its type.
struct Contribution {
    std::string source; // "frightened 2"
    int amount = 0;
    rules::BonusType bonus_type = rules::BonusType::untyped;
    bool counts = true;
    bool is_situational = false;
    std::string note;

    bool operator==(const Contribution&) const = default;
};

struct EffectiveNumber {
    int base = 0;
    int total = 0;
    rules::RollMode mode = rules::RollMode::normal; // advantage and disadvantage cancel (srd5)
    bool fails = false;                             // automatically failed
    std::vector<Contribution> contributions;
    std::vector<std::string> notes; // situational phrases, no repeats

    bool operator==(const EffectiveNumber&) const = default;
};

// A condition that holds, stored or implied by another, strongest value only; those that another
// overrides or makes immune to are left out. A paused condition holds: only its timer stands still.
struct HoldingCondition {
    const rules::ConditionRule* rule = nullptr;
    int value = 0;
    std::string because; // the stored condition that implies it; empty if it is stored itself
};

std::vector<HoldingCondition>
holding_conditions(const rules::Rulebook& rulebook, const Combatant& combatant);

// Does it have this condition, stored or implied? Value 1 or more if it has a value; 0 if it does
// not hold or has none.
bool has_condition(
    const rules::Rulebook& rulebook, const Combatant& combatant, std::string_view key
);
int condition_value(
    const rules::Rulebook& rulebook, const Combatant& combatant, std::string_view key
);

EffectiveNumber effective_ac(const rules::Rulebook& rulebook, const Combatant& combatant);

// `stat` is a save, skill or ability key, or "perception", "initiative" or "death_save". Where a
// save carries the key of its ability (srd5: "dex"), "dex_check" is the plain ability check.
EffectiveNumber
effective_check(const rules::Rulebook& rulebook, const Combatant& combatant, std::string_view stat);

// With the multiple-attack penalty for attacks already made this turn, if the rulebook has one.
EffectiveNumber
effective_attack(const rules::Rulebook& rulebook, const Combatant& combatant, const Attack& attack);

// What the attack adds to its damage dice: `base` is the number as written, "2d8+7" has 7. 0 where
// the text is no dice expression.
EffectiveNumber
effective_damage(const rules::Rulebook& rulebook, const Combatant& combatant, const Attack& attack);

// The damage with it: "2d8+5" for a creature that is enfeebled 2; as written if nothing changes it.
std::string effective_damage_text(
    const rules::Rulebook& rulebook, const Combatant& combatant, const Attack& attack
);

// `name` is a key of Statistics::difficulty_classes.
EffectiveNumber
effective_dc(const rules::Rulebook& rulebook, const Combatant& combatant, std::string_view name);

// Feet; `kind` is a key of Statistics::speeds_ft. What halves a speed or sets it stands in the
// notes.
EffectiveNumber
effective_speed(const rules::Rulebook& rulebook, const Combatant& combatant, std::string_view kind);
int effective_speed_ft(
    const rules::Rulebook& rulebook, const Combatant& combatant, std::string_view kind
);

// Maximum HP after drained and the like; at least 1.
int effective_hp_max(const rules::Rulebook& rulebook, const Combatant& combatant);

// Actions it gets at the start of its turn: base, quickened, slowed; stunned takes from what is
// left (see start_of_turn). 0 when it cannot act.
int actions_at_turn_start(const rules::Rulebook& rulebook, const Combatant& combatant);

bool can_react(const rules::Rulebook& rulebook, const Combatant& combatant);
bool can_delay(const rules::Rulebook& rulebook, const Combatant& combatant);

// Advantage or disadvantage of attacks against it (srd5), with the situations that decide.
EffectiveNumber attacks_against(const rules::Rulebook& rulebook, const Combatant& combatant);

// Dying value at which it dies: the rulebook's, less doomed; at least 0 (four-degree).
int death_threshold(const rules::Rulebook& rulebook, const Combatant& combatant);

} // namespace game
