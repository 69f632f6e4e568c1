#include "rules/natural_dice.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace rules {

namespace {

constexpr std::array usual_sides = {4, 6, 8, 10, 12};
constexpr int count_max = 60;
constexpr double mean_max = 500;

// How far an expression is from what one would write. Being outside the wanted range weighs most,
// then missing the mean, then an odd constant, then many dice; our own choice of weights. Averages
// are printed rounded down, so a mean up to a half above the wanted one does not miss it.
double strangeness(
    const DiceExpression& dice, double wanted, double least, double most, int usual_constant
) {
    const double reached = mean(dice);
    const double outside = std::max({least - reached, reached - most, 0.0});
    const double missed = std::max({wanted - reached, reached - wanted - 0.5, 0.0});
    const int count = dice.terms.front().count;
    return 1000 * outside + 100 * missed + std::abs(dice.constant - usual_constant) +
           0.4 * (count - 1);
}

} // namespace

DiceExpression natural_dice(double wanted, double least, double most, int usual_constant) {
    constexpr double smallest_rolled = 2; // the mean of 1d4 is 2.5
    wanted = std::clamp(wanted, 1.0, mean_max);
    DiceExpression best;
    if (wanted < smallest_rolled) {
        best.constant = 1;
        return best;
    }
    double least_strange = std::numeric_limits<double>::infinity();
    for (const int sides : usual_sides) {
        for (int count = 1; count <= count_max; ++count) {
            const double rolled = count * (sides + 1) / 2.0;
            const int base = static_cast<int>(std::floor(wanted - rolled));
            if (base < -1) break;
            for (const int constant : {base, base + 1}) {
                if (constant < 0) continue;
                const DiceExpression dice{{{count, sides}}, constant};
                const double strange = strangeness(dice, wanted, least, most, usual_constant);
                if (strange >= least_strange) continue;
                least_strange = strange;
                best = dice;
            }
        }
    }
    return best;
}

} // namespace rules
