// What treating wounds and resting share. Nobody else needs it.
#pragma once

#include "game/resting.h"

namespace game {

// The combatant of this character, or nullptr.
Combatant* resting_combatant(Campaign& campaign, Id character);

base::Error cannot(std::string why);

// "; " between what is not empty.
std::string joined_lines(const std::vector<std::string>& lines);

inline constexpr int seconds_a_minute = 60;
inline constexpr int seconds_an_hour = 3600;

} // namespace game
