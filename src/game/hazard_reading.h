// A hazard before it acts: who finds it and who makes it harmless (four-degree).
#pragma once

#include "game/campaign.h"
#include "rules/hazard_building.h"
#include "rules/rulebook.h"

#include <string>
#include <vector>

namespace game {

// One character's chances against the hazard's Stealth and disable DCs, 0..1; `needed` as in
// MemberOdds.
struct HazardChance {
    std::string name;
    int find_needed = 21;
    double find_chance = 0;
    int disable_needed = 21; // by Thievery; other skills as the GM allows
    double disable_chance = 0;

    bool operator==(const HazardChance&) const = default;
};

// Of those who play tonight, in the order of the party. DCs that the statistics do not name: none.
std::vector<HazardChance>
hazard_chances(const Campaign& campaign, const rules::Rulebook& rulebook, const Statistics& hazard);

// "Ysolde Marr finds it on 12+ (45 %), disables it on 15+ (30 %)".
std::string hazard_chance_text(const HazardChance& chance);

// A choice to begin with: the party's level, 1 without a party.
rules::HazardChoice first_hazard(const Campaign& campaign);

} // namespace game
