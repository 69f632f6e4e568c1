// What a fight is worth and how hard it is meant to be for this very party, by the tables of the
// rulebook. Sources: GM Core (ORC), tables Encounter Budget, Creature XP and XP Awards; SRD 5.1,
// Monsters / Experience Points; SRD 5.2.1, Gameplay Toolbox / Combat Encounters (SRD 5.1 has no
// budget: its parties are measured by the one of 5.2.1, which is said).
#pragma once

#include "base/result.h"
#include "rules/rulebook.h"

#include <optional>
#include <string>
#include <vector>

namespace rules {

// Several opponents of one kind.
struct Opponents {
    double level = 0; // four-degree: level, a whole number; srd5: challenge (0.125 for 1/8)
    int count = 1;    // 0..1000
    bool is_hazard = false;
    bool is_complex = false; // of a hazard

    bool operator==(const Opponents&) const = default;
};

// What the party's budget is at one threat (four-degree) or difficulty (srd5).
struct ThreatBudget {
    std::string key;
    std::string name;
    int xp = 0;

    bool operator==(const ThreatBudget&) const = default;
};

struct EncounterRating {
    int party_level = 0; // four-degree; 0 in srd5, where each character has an own budget
    int xp = 0;          // of all that the tables rate
    std::vector<std::optional<int>> xp_each; // of one, in the order asked; none: not in the tables
    std::vector<ThreatBudget> budgets;       // lightest first, for this party
    std::string threat; // name: "severe"; "beyond extreme"; empty as long as nothing is worth XP
    bool is_beyond = false; // harder than the tables can say
    // The budget ahead and the XP up to it; empty and none past the last one. four-degree: where
    // the next threat begins. srd5: what the present difficulty still allows.
    std::string next_budget;
    std::optional<int> xp_to_next;
    int xp_award_each = 0;            // XP that each character gains by winning
    std::vector<std::string> remarks; // whole sentences: what is not counted, and cautions

    bool operator==(const EncounterRating&) const = default;
};

// The level that stands for a party of mixed levels (four-degree): the average, rounded to the
// nearest, halves up. Common practice, no source. At least one level.
int party_level(const std::vector<int>& levels);

// XP of one such opponent, or none if the tables do not rate it: four-degree more than 4 levels
// away from the party; srd5 a challenge outside of the list, and every hazard. `party_level` is
// only read in four-degree.
std::optional<int>
opponent_xp(const Rulebook& rulebook, int party_level, const Opponents& opponents);

// The party's budgets, lightest first. four-degree: each threat's budget, changed by its amount for
// each character above or below the usual size; for a lone character no threat falls below the one
// before it (our reading; the table's own arithmetic would). srd5: the sum of what each character
// adds by level. `levels` of those who are present. Errors: not_possible without a character,
// out_of_range for a level outside 1..20.
base::Result<std::vector<ThreatBudget>>
threat_budgets(const Rulebook& rulebook, const std::vector<int>& levels);

// The whole rating. four-degree: the threat is the highest whose budget is reached, the lightest
// one below that (our reading). Each character is awarded the value that the fight would have for a
// party of the usual size, exact where a budget is met and in proportion between (our reading).
// srd5: the difficulty is the lowest whose budget is not exceeded, since the document has the sum
// stay within it; the award is an equal share, rounded down (common practice, no source). Errors as
// above, and out_of_range for a count outside 0..1000, a level that is not whole in four-degree, or
// more XP than one billion.
base::Result<EncounterRating> rate_encounter(
    const Rulebook& rulebook,
    const std::vector<int>& levels,
    const std::vector<Opponents>& opponents
);

} // namespace rules
