// How hit points come back outside of a fight, as plain values. Part of Rulebook; rules/recovery.h
// asks them.
#pragma once

#include "rules/dice.h"

#include <string>
#include <vector>

namespace rules {

// four-degree: one row of Player Core (ORC), Treat Wounds.
struct TreatWoundsRank {
    std::string key; // "expert"
    std::string name;
    int dc = 0;
    DiceExpression success; // HP restored
    DiceExpression critical_success;

    bool operator==(const TreatWoundsRank&) const = default;
};

struct TreatWoundsRules {
    int minutes = 10;
    int immune_minutes = 60; // before the same patient can be treated again
    int full_minutes = 60;   // a treatment drawn out to this length ...
    int full_factor = 2;     // ... restores this many times as much
    DiceExpression critical_failure_damage;
    std::string ends_condition;         // key of the condition that ends once HP are restored
    std::vector<TreatWoundsRank> ranks; // lowest first
    std::string source;

    bool operator==(const TreatWoundsRules&) const = default;
};

// four-degree: Player Core (ORC), Administer First Aid.
struct FirstAidRules {
    int actions = 2;
    int stabilize_dc_base = 15; // plus the dying value
    int critical_failure_dying = 1;
    std::string source;

    bool operator==(const FirstAidRules&) const = default;
};

// four-degree: Player Core (ORC), Rest and Daily Preparations.
struct NightRestRules {
    int hours = 8;
    int hp_per_level_min = 1;      // the Constitution modifier counts as no less than this
    int full_day_factor = 2;       // from memory
    int rough_comfort_divisor = 2; // from memory
    std::string source;

    bool operator==(const NightRestRules&) const = default;
};

// srd5: Resting, as the edition of the rulebook has it.
struct RestRules {
    int short_hours = 1;
    int hp_per_die_min = 0; // of one hit die with the Constitution modifier
    int long_hours = 8;
    int hit_dice_divisor = 2; // a long rest gives back the total divided by this
    int hit_dice_min = 1;     // and no less than this
    std::string source;

    bool operator==(const RestRules&) const = default;
};

struct RecoveryTables {
    TreatWoundsRules treat_wounds; // four-degree
    FirstAidRules first_aid;       // four-degree
    NightRestRules night_rest;     // four-degree
    RestRules rests;               // srd5

    bool operator==(const RecoveryTables&) const = default;
};

} // namespace rules
