#include "game/opponent_rating.h"

#include "rules/challenge_text.h"

namespace game {

rules::Opponents opponents_of(const Statistics& statistics, rules::Family family, int count) {
    const bool is_srd = family == rules::Family::srd5;
    rules::Opponents opponents;
    opponents.level = is_srd ? statistics.challenge : statistics.level;
    opponents.count = count;
    opponents.is_hazard = statistics.hazard != Hazard::none;
    opponents.is_complex = statistics.hazard == Hazard::complex;
    return opponents;
}

std::string rating_text(const rules::Opponents& opponents, rules::Family family) {
    std::string level = "level " + rules::challenge_text(opponents.level);
    if (opponents.is_hazard)
        return (opponents.is_complex ? "complex hazard, " : "simple hazard, ") + level;
    if (family == rules::Family::four_degree) return level;
    return "CR " + rules::challenge_text(opponents.level);
}

} // namespace game
