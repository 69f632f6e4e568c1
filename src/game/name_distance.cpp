#include "game/name_distance.h"

#include <algorithm>
#include <numeric>
#include <utility>
#include <vector>

namespace game {

std::size_t edit_distance(std::u32string_view one, std::u32string_view other) {
    // Three rows of the table: that of the letter before last, of the last and of this one.
    std::vector<std::size_t> before_last(other.size() + 1);
    std::vector<std::size_t> last(other.size() + 1);
    std::vector<std::size_t> row(other.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 1; i <= one.size(); ++i) {
        std::swap(before_last, last);
        std::swap(last, row);
        row[0] = i;
        for (std::size_t j = 1; j <= other.size(); ++j) {
            const std::size_t replaced = last[j - 1] + (one[i - 1] == other[j - 1] ? 0 : 1);
            row[j] = std::min({last[j] + 1, row[j - 1] + 1, replaced});
            const bool is_swap =
                i > 1 && j > 1 && one[i - 1] == other[j - 2] && one[i - 2] == other[j - 1];
            if (is_swap) row[j] = std::min(row[j], before_last[j - 2] + 1);
        }
    }
    return row[other.size()];
}

// Equal beginnings cost nothing, so the first difference decides; each of the four slips is tried
// there. With s slips that is at most 4 to the power of s ways.
// NOLINTNEXTLINE(misc-no-recursion): as deep as there are slips
bool are_within_slips(std::u32string_view one, std::u32string_view other, std::size_t slips) {
    while (!one.empty() && !other.empty() && one.front() == other.front()) {
        one.remove_prefix(1);
        other.remove_prefix(1);
    }
    if (one.empty() || other.empty()) return one.size() + other.size() <= slips;
    if (slips == 0) return false;
    const bool is_swap =
        one.size() > 1 && other.size() > 1 && one[0] == other[1] && one[1] == other[0];
    return (is_swap && are_within_slips(one.substr(2), other.substr(2), slips - 1)) ||
           are_within_slips(one.substr(1), other.substr(1), slips - 1) ||
           are_within_slips(one.substr(1), other, slips - 1) ||
           are_within_slips(one, other.substr(1), slips - 1);
}

} // namespace game
