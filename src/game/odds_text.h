// Chances as a game master reads them.
#pragma once

#include "rules/odds.h"

#include <string>

namespace game {

// "45 %", "20.25 %": exact, since odds come in twentieths or 400ths.
std::string exact_percent(int ways, int of);

// "61 %", rounded; "<1 %" and ">99 %" for what is not certain. `chance` is 0..1.
std::string percent_text(double chance);

// A mean number of people to one decimal: "2.3", "2".
std::string count_text(double count);

// "12+", "any", "never" for 21, "fails" for 0 (by a rule).
std::string needed_text(int needed_roll);

// "normal"; "advantage" and "disadvantage" in srd5, "fortune" and "misfortune" in four-degree.
const char* mode_words(rules::Family family, rules::RollMode mode);

// "critical success"; "failure".
const char* degree_words(rules::Degree degree);

} // namespace game
