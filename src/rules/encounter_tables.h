// What opponents are worth and what a party is meant to face, as plain values. Part of Rulebook;
// rules/encounter_budget.h asks them.
#pragma once

#include <string>
#include <vector>

namespace rules {

// four-degree: one threat of GM Core (ORC), table Encounter Budget.
struct Threat {
    std::string key;
    std::string name;
    int budget = 0;        // XP for a party of the usual size
    int per_character = 0; // XP more or less for each character more or less

    bool operator==(const Threat&) const = default;
};

// four-degree: XP by level minus party level.
struct XpByDifference {
    int difference = 0;
    int creature = 0;
    int simple_hazard = 0;
    int complex_hazard = 0;

    bool operator==(const XpByDifference&) const = default;
};

struct XpByChallenge {    // srd5
    double challenge = 0; // 0, 0.125, 0.25, 0.5, 1..30
    int xp = 0;

    bool operator==(const XpByChallenge&) const = default;
};

struct Difficulty { // srd5
    std::string key;
    std::string name;

    bool operator==(const Difficulty&) const = default;
};

struct CharacterBudget { // srd5
    int level = 0;
    std::vector<int> xp; // by difficulty, in the order of EncounterTables::difficulties

    bool operator==(const CharacterBudget&) const = default;
};

struct EncounterTables {
    int party_size = 4;                           // four-degree: the size the budgets are meant for
    std::vector<Threat> threats;                  // four-degree: lightest first, budgets rising
    std::vector<XpByDifference> xp_by_difference; // four-degree: -4 to +4 without a gap
    std::vector<Difficulty> difficulties;         // srd5: lightest first
    std::vector<CharacterBudget> character_budgets; // srd5: levels 1 to 20 without a gap
    std::vector<XpByChallenge> xp_by_challenge;     // srd5: 0 to 30, rising
    int crowd_per_character = 0; // srd5: more creatures a character than this ask for caution; 0:
                                 // no such limit
    std::string budget_source;   // document titles
    std::string xp_source;

    bool operator==(const EncounterTables&) const = default;
};

} // namespace rules
