#include "rules/checks.h"

#include <algorithm>

namespace rules {

Degree four_degree_result(int natural, int modifier, int dc) {
    constexpr int critical_margin = 10;
    const int total = natural + modifier;
    int degree = 0;
    if (total >= dc + critical_margin)
        degree = 3;
    else if (total >= dc)
        degree = 2;
    else if (total > dc - critical_margin)
        degree = 1;
    if (natural == 20) degree += 1;
    if (natural == 1) degree -= 1;
    return static_cast<Degree>(std::clamp(degree, 0, 3));
}

bool meets_dc(int natural, int modifier, int dc) {
    return natural + modifier >= dc;
}

} // namespace rules
