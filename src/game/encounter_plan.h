// A prepared encounter measured against the party that will meet it, ready to be shown.
#pragma once

#include "base/result.h"
#include "game/campaign.h"
#include "rules/encounter_budget.h"
#include "rules/rulebook.h"

#include <optional>
#include <string>
#include <vector>

namespace game {

// One line of the encounter.
struct PlannedPart {
    std::string name;
    std::string rating; // "level 2", "CR 1/4"
    int count = 1;
    std::optional<int> xp_each; // none: the tables do not rate it
    int xp = 0;                 // of all of them

    bool operator==(const PlannedPart&) const = default;
};

// A bar of XP: how far it is filled and where the budgets stand, as parts of its length, 0..1.
struct BudgetMark {
    std::string name;
    int xp = 0;
    double at = 0;
    bool is_reached = false;

    bool operator==(const BudgetMark&) const = default;
};

struct BudgetBar {
    double filled = 0;
    std::vector<BudgetMark> marks;

    bool operator==(const BudgetBar&) const = default;
};

struct EncounterPlan {
    rules::EncounterRating rating;
    std::vector<PlannedPart> creatures; // in the order of PreparedEncounter::creatures
    std::vector<PlannedPart> hazards;   // likewise
    BudgetBar bar;
    std::string party_text; // "5 characters, level 4"
    // "80 XP: moderate (80); 40 to severe (120)"
    std::string threat_text;

    bool operator==(const EncounterPlan&) const = default;
};

// "80 XP: moderate (80); 40 to severe (120)"; srd5: "525 XP: low (up to 600); 75 left".
std::string threat_line(const rules::Rulebook& rulebook, const rules::EncounterRating& rating);

// The levels of these characters, in the order of the party.
std::vector<int> levels_of(const Party& party, const std::vector<Id>& characters);

// Errors as in rules::rate_encounter; not_possible without characters. Creatures that are gone from
// the shelf stay in the list and count nothing.
base::Result<EncounterPlan> plan_encounter(
    const Campaign& campaign,
    const rules::Rulebook& rulebook,
    const PreparedEncounter& prepared,
    const std::vector<Id>& characters
);

// The threats (four-degree) or difficulties (srd5) that can be aimed at, lightest first, with the
// XP that count as such: from above the one before (srd5) or up to below the next (four-degree).
// The hardest one has room for one more step of the same size. `aim` is the budget itself.
struct ThreatAim {
    std::string key;
    std::string name;
    int xp_min = 0;
    int xp_max = 0;
    int aim = 0;

    bool operator==(const ThreatAim&) const = default;
};

std::vector<ThreatAim>
threat_aims(const rules::Rulebook& rulebook, const std::vector<rules::ThreatBudget>& budgets);

// So many of a creature of the shelf more (or fewer): joins those that are there.
void change_count(PreparedEncounter& prepared, Id creature, int by);

} // namespace game
