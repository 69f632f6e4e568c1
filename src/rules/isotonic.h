// The closest sequence that never falls: smooths figures that should rise but, in a small sample,
// do not always.
#pragma once

#include <vector>

namespace rules {

// Weighted least squares under the condition that no value is below the one before it; neighbours
// that contradict each other become their weighted mean. Both lists are of one length, weights
// above 0. Method: pool adjacent violators (Barlow, Bartholomew, Bremner and Brunk, Statistical
// Inference under Order Restrictions).
std::vector<double>
isotonic_fit(const std::vector<double>& values, const std::vector<double>& weights);

} // namespace rules
