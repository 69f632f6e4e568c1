// What becomes of damage of one type on a creature: immunity, weakness and resistance, with its
// conditions counted. Both the number pad and the odds ask here.
#pragma once

#include "game/encounter.h"
#include "rules/distribution.h"
#include "rules/rulebook.h"

#include <string>

namespace game {

struct DamageTaking {
    bool is_immune = false;
    bool is_weak = false; // four-degree: has a weakness, of `weakness`
    bool resists = false; // four-degree: has a resistance, of `resistance`
    int weakness = 0;
    int resistance = 0;
    bool is_halved = false;  // srd5: resists
    bool is_doubled = false; // srd5: vulnerable
    int hardness = 0;        // four-degree: of a hazard, taken off last

    bool operator==(const DamageTaking&) const = default;
};

// An empty type: nothing resists it. Of several entries for a type the strongest counts.
DamageTaking
damage_taking(const rules::Rulebook& rulebook, const Combatant& combatant, const std::string& type);

// What is left of an amount, 0 or more. four-degree: immunity, then weakness, then resistance
// (Player Core (ORC), Damage, step order), then hardness (GM Core (ORC), Hazards). srd5: resistance
// halves, rounded down, then vulnerability doubles (SRD 5.1, Damage Resistance and Vulnerability).
int taken_amount(const DamageTaking& taking, int amount);

// The same for a whole distribution of amounts.
rules::Distribution taken_damage(const DamageTaking& taking, const rules::Distribution& damage);

} // namespace game
