// The straightforward reference for a group: every outcome written out.
#pragma once

#include <cstddef>
#include <vector>

namespace measure {

// The chance that at least half succeed, from each one's chance (0..1), over all 2^n outcomes.
inline double half_by_subsets(const std::vector<double>& chances) {
    double half = 0;
    for (std::size_t subset = 0; subset < (std::size_t{1} << chances.size()); ++subset) {
        double product = 1;
        std::size_t succeeding = 0;
        for (std::size_t at = 0; at < chances.size(); ++at) {
            const bool succeeds = ((subset >> at) & 1) != 0;
            product *= succeeds ? chances[at] : 1 - chances[at];
            succeeding += succeeds ? 1 : 0;
        }
        if (2 * succeeding >= chances.size()) half += product;
    }
    return half;
}

} // namespace measure
