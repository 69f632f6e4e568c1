#include "rules/odds.h"

#include <algorithm>
#include <cassert>

namespace rules {

namespace {

constexpr int faces = 20;
// Far beyond any number of the game; keeps sums of typed numbers inside an int.
constexpr int number_max = 1'000'000;

// In how many of the 20 (one die) or 400 (two dice) rolls this face counts.
int ways_of_face(int natural, RollMode mode) {
    switch (mode) {
    case RollMode::normal: return 1;
    case RollMode::advantage: return 2 * natural - 1;
    case RollMode::disadvantage: return 2 * (faces - natural) + 1;
    }
    return 1;
}

int& ways_in(DegreeOdds& odds, Degree degree) {
    switch (degree) {
    case Degree::critical_failure: return odds.critical_failure;
    case Degree::failure: return odds.failure;
    case Degree::success: return odds.success;
    case Degree::critical_success: return odds.critical_success;
    }
    return odds.failure;
}

Degree attack_degree(int natural, int modifier, int dc) {
    if (natural == faces) return Degree::critical_success;
    if (natural == 1) return Degree::failure;
    return meets_dc(natural, modifier, dc) ? Degree::success : Degree::failure;
}

} // namespace

Degree check_degree(CheckKind kind, int natural, int modifier, int dc) {
    assert(natural >= 1 && natural <= faces && "a d20 shows 1 to 20");
    const int bonus = std::clamp(modifier, -number_max, number_max);
    const int target = std::clamp(dc, -number_max, number_max);
    switch (kind) {
    case CheckKind::four_degree: return four_degree_result(natural, bonus, target);
    case CheckKind::srd5_check:
        return meets_dc(natural, bonus, target) ? Degree::success : Degree::failure;
    case CheckKind::srd5_attack: return attack_degree(natural, bonus, target);
    }
    return Degree::failure;
}

DegreeOdds check_odds(CheckKind kind, int modifier, int dc, RollMode mode) {
    DegreeOdds odds;
    odds.of = mode == RollMode::normal ? faces : faces * faces;
    for (int natural = 1; natural <= faces; ++natural)
        ways_in(odds, check_degree(kind, natural, modifier, dc)) += ways_of_face(natural, mode);
    return odds;
}

DegreeOdds flat_check_odds(int dc, RollMode mode) {
    if (dc <= 1) return certain_odds(Degree::success);
    if (dc > faces) return certain_odds(Degree::failure);
    return check_odds(CheckKind::four_degree, 0, dc, mode);
}

DegreeOdds certain_odds(Degree degree) {
    DegreeOdds odds;
    ways_in(odds, degree) = odds.of;
    return odds;
}

double chance_of(const DegreeOdds& odds, Degree degree) {
    DegreeOdds copy = odds;
    return static_cast<double>(ways_in(copy, degree)) / odds.of;
}

double chance_of_success(const DegreeOdds& odds) {
    return static_cast<double>(odds.success + odds.critical_success) / odds.of;
}

double chance_of_failure(const DegreeOdds& odds) {
    return static_cast<double>(odds.failure + odds.critical_failure) / odds.of;
}

RollMode both_modes(RollMode one, RollMode other) {
    if (one == RollMode::normal) return other;
    if (other == RollMode::normal || one == other) return one;
    return RollMode::normal;
}

int needed_roll(CheckKind kind, int modifier, int dc) {
    for (int natural = 1; natural <= faces; ++natural)
        if (check_degree(kind, natural, modifier, dc) >= Degree::success) return natural;
    return faces + 1;
}

double expected_value(const DegreeOdds& odds, const DegreeValues& values) {
    const double total = odds.critical_failure * values.critical_failure +
                         odds.failure * values.failure + odds.success * values.success +
                         odds.critical_success * values.critical_success;
    return total / odds.of;
}

} // namespace rules
