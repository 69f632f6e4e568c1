#include "game/campaign_rules.h"

namespace game {

std::string why_family_stays(const Campaign& campaign) {
    const bool has_numbers = !campaign.party.characters.empty() ||
                             !campaign.shelf.creatures.empty() ||
                             !campaign.encounter.combatants.empty();
    if (!has_numbers) return {};
    return "Characters and creatures are written in these rules; start another campaign for "
           "others.";
}

std::string rules_text(const About& about) {
    if (about.rules == rules::Family::four_degree) return "four-degree";
    return about.srd_edition == rules::SrdEdition::srd_5_1 ? "srd5, SRD 5.1" : "srd5, SRD 5.2.1";
}

} // namespace game
