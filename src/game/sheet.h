// The numbers of a combatant as its sheet lists them, each with every condition counted: what the
// close-up shows and what a preview compares.
#pragma once

#include "game/effects.h"
#include "game/encounter.h"
#include "rules/rulebook.h"

#include <string>
#include <vector>

namespace game {

enum class SheetPart { armor_class, save, perception, skill, attack, difficulty_class };

struct SheetNumber {
    SheetPart part = SheetPart::armor_class;
    std::string key;   // stat key, key of a DC; of an attack its place in the list: "0"
    std::string name;  // "Fortitude", "spell DC", "longsword"
    std::string brief; // "Fort"; otherwise the name
    EffectiveNumber number;
};

// AC, saves, perception, the skills written on the sheet, attacks, DCs, in this order.
std::vector<SheetNumber> sheet_numbers(const rules::Rulebook& rulebook, const Combatant& combatant);

// The bonuses of the first, second and third attack of a turn; one number where the rulebook has no
// multiple-attack penalty.
std::vector<int>
attack_series(const rules::Rulebook& rulebook, const Combatant& combatant, const Attack& attack);

// "spell DC" for "spell_dc".
std::string dc_name(const std::string& key);

// "+7", "-1", "+0".
std::string signed_text(int number);

} // namespace game
