// Which rules a campaign is played by, and whether that can still be chosen.
#pragma once

#include "game/campaign.h"

#include <string>

namespace game {

// Why the rule family stays as it is: numbers of characters and creatures are written in it. Empty
// while it can be chosen.
std::string why_family_stays(const Campaign& campaign);

// "four-degree", "srd5, SRD 5.1".
std::string rules_text(const About& about);

} // namespace game
