// Bands per challenge rating for srd5, which has no published building table in its open document:
// made from the statistics of its creatures, and never falling as the challenge rises.
//
// First quartile, median and third quartile are each fitted with isotonic_fit, weighted by the
// number of creatures. Challenge ratings without creatures are interpolated in a straight line.
// Then all is rounded to whole numbers, and kept within the quartiles of every challenge rating
// that has `trusted_count` creatures or more.
#pragma once

#include "rules/creature_tables.h"

#include <cstddef>
#include <vector>

namespace rules {

// Few creatures say little: from this many on their quartiles bind. Our own choice.
inline constexpr int trusted_count = 8;

struct ChallengeBand {
    int low = 0;     // around the first quartile
    int typical = 0; // around the median
    int high = 0;    // around the third quartile

    bool operator==(const ChallengeBand&) const = default;
};

// One for each of statistics.steps; low <= typical <= high, and none below the one before it.
// Empty when no row has the number.
std::vector<ChallengeBand>
challenge_bands(const ChallengeStatistics& statistics, Quartiles ChallengeRow::*number);

// The place in statistics.steps of the rating nearest to this one; 0 when there are none.
std::size_t step_of(const ChallengeStatistics& statistics, double challenge);

} // namespace rules
