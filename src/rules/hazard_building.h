// A hazard made up on the spot from its level (four-degree). Source: GM Core (ORC), Building
// Hazards.
#pragma once

#include "rules/creature_tables.h"
#include "rules/dice.h"
#include "rules/rulebook.h"

#include <map>
#include <string>

namespace rules {

// A simple hazard acts once; a complex one rolls initiative and acts every round.
struct HazardChoice {
    std::string name;
    int level = 1; // levels outside the tables take the nearest
    bool is_complex = false;
    Band stealth = Band::high;     // how well it is hidden
    Band disable = Band::high;     // how hard it is to disable
    Band armor_class = Band::high; // and hit points and hardness, which have one band
    Band good_save = Band::high;   // Fortitude
    Band poor_save = Band::low;    // Reflex; hazards make no Will saves
    Band effect_dc = Band::high;
    std::map<std::string, int> typed; // by member name of BuiltHazard; stands as typed

    bool operator==(const HazardChoice&) const = default;
};

struct BuiltHazard {
    std::string name;
    int level = 0;
    bool is_complex = false;
    int stealth_dc = 0;
    int stealth_modifier = 0; // complex ones roll it for initiative
    int disable_dc = 0;
    int armor_class = 0;
    int fortitude = 0;
    int reflex = 0;
    int hardness = 0;
    int hit_points = 1;
    int broken_threshold = 0; // broken at this many HP or fewer
    int attack = 0;
    DiceExpression damage;
    int effect_dc = 0; // of a save it asks for instead of attacking

    bool operator==(const BuiltHazard&) const = default;
};

// Where the table prints a range, the middle of it, rounded down. Zeros for a rulebook without
// hazard tables.
BuiltHazard built_hazard(const Rulebook& rulebook, const HazardChoice& choice);

} // namespace rules
