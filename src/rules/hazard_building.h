// A hazard made up on the spot from its level (four-degree). Source: GM Core (ORC), Building
// Hazards.
#pragma once

#include "rules/creature_building.h"
#include "rules/dice.h"
#include "rules/difficulty.h"
#include "rules/rulebook.h"

#include <string>
#include <vector>

namespace rules {

// A simple hazard acts once; a complex one rolls initiative and acts every round.
struct HazardChoice {
    std::string name;
    int level = 1; // levels outside the tables take the nearest
    bool is_complex = false;
    NumberChoices numbers;

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
    int reflex = 0; // hazards make no Will saves
    int hardness = 0;
    int hit_points = 1;
    int broken_threshold = 0; // broken at this many HP or fewer
    int attack = 0;
    DiceExpression damage;
    int effect_dc = 0; // of a save it asks for instead of attacking

    bool operator==(const BuiltHazard&) const = default;
};

// Every number with its bands, in the order of a sheet. Keys: stealth_dc, disable_dc, armor_class,
// hardness, hit_points, save_fortitude, save_reflex, attack, damage (mean of a hit), effect_dc;
// hardness, hit_points, attack and damage have no bands. Usual: high, a low Reflex save (our own).
// Empty for a rulebook without hazard tables.
std::vector<NumberOffer> hazard_offers(const Rulebook& rulebook, const HazardChoice& choice);

// The finished hazard from the same numbers: where the table prints a range, the middle of it,
// rounded down. Zeros for a rulebook without hazard tables.
BuiltHazard built_hazard(const Rulebook& rulebook, const HazardChoice& choice);

// The DCs of hazards of this level, moved by `adjustment`: to find or to disable one, and of the
// save it asks for. Pointers lead to the row of the level. Empty for a rulebook without hazard
// tables.
std::vector<DcList> hazard_dcs(const Rulebook& rulebook, int level, int adjustment = 0);

} // namespace rules
