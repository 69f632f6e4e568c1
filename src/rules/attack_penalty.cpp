#include "rules/attack_penalty.h"

#include <algorithm>

namespace rules {

int attack_penalty(const TurnRules& turn, bool is_agile, int attacks_made) {
    const std::vector<int>& penalties = is_agile ? turn.agile_attack_penalty : turn.attack_penalty;
    if (penalties.empty()) return 0;
    const int last = static_cast<int>(penalties.size()) - 1;
    return penalties[static_cast<std::size_t>(std::clamp(attacks_made, 0, last))];
}

} // namespace rules
