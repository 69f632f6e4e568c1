// The numbers of one creature or character, as written on its sheet, before any condition.
#pragma once

#include "base/unknown_fields.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace game {

// Stat key of the rulebook ("fortitude", "stealth") to modifier.
using Modifiers = std::map<std::string, int>;

struct Attack {
    std::string name;
    int bonus = 0;
    std::string damage; // dice expression: "2d8+7"
    std::string damage_type;
    bool is_ranged = false;
    bool is_agile = false; // four-degree: smaller multiple-attack penalty
    std::string traits;
    int per_turn = 0; // srd5: how often it stands in the usual attacks of one turn; 0 everywhere:
                      // one attack a turn, whichever is best
    base::UnknownFields unknown{};

    bool operator==(const Attack&) const = default;
};

// Resistance or weakness to a damage type. srd5 halves or doubles and leaves amount at 0.
// The type "all" stands for every damage type.
struct DamageTrait {
    std::string type;
    int amount = 0;
    base::UnknownFields unknown{};

    bool operator==(const DamageTrait&) const = default;
};

// four-degree: a trap or another danger of a place. A simple one acts once, a complex one every
// round.
enum class Hazard { none, simple, complex };

struct Statistics {
    int level = 1;          // four-degree creatures -1..24(30); characters 1..20
    double challenge = 0.0; // srd5 opponents: 0, 0.125, 0.25, 0.5, 1..30
    int armor_class = 10;
    int hit_points = 1;            // the maximum
    std::string hit_dice;          // srd5: a dice expression for rolled HP; may be empty
    int perception = 0;            // modifier
    std::optional<int> initiative; // when it differs from the rulebook's usual one
    Modifiers abilities;           // modifiers, not scores
    Modifiers saves;
    Modifiers skills;
    std::map<std::string, int> difficulty_classes; // "class_dc", "spell_dc"
    std::map<std::string, int> speeds_ft;          // "land", "fly", "swim", "climb", "burrow"
    std::string senses;
    std::string creature_type; // "dragon"; free text
    Hazard hazard = Hazard::none;
    int hardness = 0; // taken off every damage that a hazard takes
    std::vector<Attack> attacks;
    std::vector<DamageTrait> resistances;
    std::vector<DamageTrait> weaknesses;
    std::vector<std::string> immunities; // damage types and condition keys
    std::string notes;
    base::UnknownFields unknown{};

    bool operator==(const Statistics&) const = default;
};

} // namespace game
