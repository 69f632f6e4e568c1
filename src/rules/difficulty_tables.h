// The difficulty classes of a rulebook as plain values. Part of Rulebook; rules/difficulty.h asks
// them.
#pragma once

#include "rules/dice.h"

#include <string>
#include <vector>

namespace rules {

// A DC with the words it is shown by: "expert" 20, "very hard" 25.
struct NamedDc {
    std::string key;
    std::string name;
    int dc = 0;

    bool operator==(const NamedDc&) const = default;
};

struct NumberedDc {
    int number = 0; // a level or a spell rank
    int dc = 0;

    bool operator==(const NumberedDc&) const = default;
};

// A step or a rarity that moves a DC: "hard" +2, "rare" +5.
struct DcAdjustment {
    std::string key;
    std::string name;
    int amount = 0;

    bool operator==(const DcAdjustment&) const = default;
};

// How bad a trap is: the DC of the save against it and its attack bonus, from the mildest to the
// worst of its kind.
struct TrapDanger {
    std::string key; // "deadly"
    std::string name;
    int save_dc_min = 0;
    int save_dc_max = 0;
    int attack_min = 0;
    int attack_max = 0;

    bool operator==(const TrapDanger&) const = default;
};

// What a trap does to characters of these levels.
struct TrapDamage {
    int level_min = 1;
    int level_max = 1;
    std::vector<DiceExpression> damage; // as TrapTables::dangers

    bool operator==(const TrapDamage&) const = default;
};

struct TrapTables {
    std::vector<TrapDanger> dangers; // mildest first
    std::vector<TrapDamage> damage;  // levels 1 to 20 without a gap
    std::string source;

    bool operator==(const TrapTables&) const = default;
};

struct DifficultyTables {
    std::vector<NumberedDc> by_level;      // four-degree: levels 0 to 25 without a gap
    std::vector<NumberedDc> by_spell_rank; // four-degree: ranks 1 to 10 without a gap
    std::vector<NamedDc>
        simple; // four-degree: by proficiency rank; srd5: typical DCs; easiest first
    std::vector<DcAdjustment> steps;    // four-degree: easiest first
    std::vector<DcAdjustment> rarities; // four-degree: most common first
    TrapTables traps;                   // srd5
    std::string by_level_source;        // document titles
    std::string by_spell_rank_source;
    std::string simple_source;
    std::string adjustments_source;

    bool operator==(const DifficultyTables&) const = default;
};

} // namespace rules
