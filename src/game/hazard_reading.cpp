#include "game/hazard_reading.h"

#include "game/builder_reading.h"
#include "game/odds_text.h"
#include "game/party_odds.h"

#include <cstddef>
#include <optional>

namespace game {

namespace {

std::optional<PartyOdds> odds_against(
    const Campaign& campaign,
    const rules::Rulebook& rulebook,
    const Statistics& hazard,
    const char* stat,
    const char* dc
) {
    const auto found = hazard.difficulty_classes.find(dc);
    if (found == hazard.difficulty_classes.end()) return {};
    OddsQuestion question;
    question.stat = stat;
    question.dc = found->second;
    return party_odds(campaign, rulebook, question);
}

double success_chance(const MemberOdds& member) {
    return rules::chance_of_success(member.odds);
}

} // namespace

std::vector<HazardChance> hazard_chances(
    const Campaign& campaign, const rules::Rulebook& rulebook, const Statistics& hazard
) {
    const auto finding = odds_against(campaign, rulebook, hazard, "perception", "stealth_dc");
    const auto disabling = odds_against(campaign, rulebook, hazard, "thievery", "disable_dc");
    if (!finding || !disabling) return {};
    std::vector<HazardChance> chances;
    for (std::size_t at = 0; at < finding->members.size(); ++at) {
        const MemberOdds& finder = finding->members[at];
        const MemberOdds& disabler = disabling->members[at];
        chances.push_back(
            {finder.name,
             finder.needed_roll,
             success_chance(finder),
             disabler.needed_roll,
             success_chance(disabler)}
        );
    }
    return chances;
}

std::string hazard_chance_text(const HazardChance& chance) {
    return chance.name + " finds it on " + needed_text(chance.find_needed) + " (" +
           percent_text(chance.find_chance) + "), disables it on " +
           needed_text(chance.disable_needed) + " (" + percent_text(chance.disable_chance) + ")";
}

rules::HazardChoice first_hazard(const Campaign& campaign) {
    rules::HazardChoice choice;
    choice.name = "Hazard";
    const std::vector<int> levels = present_levels(campaign.party);
    if (!levels.empty()) choice.level = rules::party_level(levels);
    return choice;
}

} // namespace game
