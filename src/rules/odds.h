// Odds: the exact chances of one d20 check against a DC, counted face by face, never sampled.
// Knows no campaign: modifiers arrive with every condition already counted in.
#pragma once

#include "rules/checks.h"
#include "rules/rulebook.h"

namespace rules {

// How a d20 check is read.
enum class CheckKind {
    four_degree, // steps of 10 and the shift by a natural 20 or 1. Source: Player Core (ORC),
                 // Checks
    srd5_check,  // saves and ability checks: 20 and 1 mean nothing. Source: SRD 5.1, Using Ability
                 // Scores
    srd5_attack, // 20 always hits, critically; 1 always misses. Source: SRD 5.1, Combat, Rolling 1
                 // or 20
};

// Ways out of `of`: twentieths for one d20, 400ths when two are rolled and one is kept. srd5 has no
// critical failure, and its checks have no critical success.
struct DegreeOdds {
    int critical_failure = 0;
    int failure = 0;
    int success = 0;
    int critical_success = 0;
    int of = 20;

    bool operator==(const DegreeOdds&) const = default;
};

// Something that each degree leads to: damage, healing, progress.
struct DegreeValues {
    double critical_failure = 0;
    double failure = 0;
    double success = 0;
    double critical_success = 0;
};

// The degree of one natural roll (1..20) under this reading.
Degree check_degree(CheckKind kind, int natural, int modifier, int dc);

// The odds of d20 + modifier against a DC. Advantage is two d20 of which the higher counts,
// disadvantage the lower (four-degree calls these fortune and misfortune). Modifier and DC may be
// any number.
DegreeOdds check_odds(CheckKind kind, int modifier, int dc, RollMode mode = RollMode::normal);

// A flat check: no modifier, four degrees (recovery checks use them all). DC 1 or less succeeds and
// DC 21 or more fails without a roll. Source: Player Core (ORC), Checks, flat checks; the two
// limits from memory.
DegreeOdds flat_check_odds(int dc, RollMode mode = RollMode::normal);

// All ways in one degree: a roll that a rule decides (a paralysed target fails its save).
DegreeOdds certain_odds(Degree degree);

// Chances, 0..1.
double chance_of(const DegreeOdds& odds, Degree degree);
double chance_of_success(const DegreeOdds& odds); // success or better
double chance_of_failure(const DegreeOdds& odds); // failure or worse

// Both at once: an advantage and a disadvantage leave an ordinary roll, two of a kind are no more
// than one. Sources: SRD 5.1, Advantage and Disadvantage; Player Core (ORC), fortune and misfortune
// (from memory).
RollMode both_modes(RollMode one, RollMode other);

// The lowest natural roll that succeeds, 1..20; 21 when none does.
int needed_roll(CheckKind kind, int modifier, int dc);

// The mean of what the degrees lead to, in the unit of the values.
double expected_value(const DegreeOdds& odds, const DegreeValues& values);

} // namespace rules
