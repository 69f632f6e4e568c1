// What recovery leads to, in short words for a row on the screen.
#pragma once

#include "game/resting.h"
#include "rules/recovery.h"

#include <string>

namespace game {

// "critical success 20 %, success 50 %, failure 25 %, critical failure 5 %"; what cannot happen is
// left out.
std::string degrees_text(const rules::DegreeOdds& odds);

// "70 % succeed, about 14.9 HP"
std::string outlook_text(const rules::TreatWoundsOutlook& outlook);

// "about 13 HP, 6 to 20"
std::string hp_text(const rules::Distribution& hp);

std::string hit_dice_text(int count); // "1 hit die", "2 hit dice"

// "+12, to 32 of 58"; why nothing is gained; srd5 with "2 hit dice".
std::string rest_text(const RestOutlook& outlook);

} // namespace game
