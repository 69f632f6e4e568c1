// The numbers of something that is being built, a line each: nudged between the bands of its level,
// typed, and back to what is usual. Shared by the builders.
#pragma once

#include "rules/creature_building.h"

#include <vector>

namespace widgets {

// Changes `choices` as the GM does; true: something was changed.
bool draw_number_offers(
    rules::NumberChoices& choices, const std::vector<rules::NumberOffer>& offers
);

} // namespace widgets
