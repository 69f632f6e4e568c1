#include "rules/distribution.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>
#include <optional>
#include <utility>

namespace rules {

namespace {

// Sums that should meet a chance exactly may miss it by this much in double precision.
constexpr double rounding = 1e-12;

std::size_t offset(int from, int to) {
    return static_cast<std::size_t>(to - from);
}

// Adds dice one by one to a total. Each new chance is the sum of `sides` old neighbours, divided by
// sides. The sums come from blocks of that length: a window is the tail of one block and the head
// of the next. A plain running sum would subtract what leaves the window, and lose the digits of
// small chances. All dice are symmetric, so the total is too: the lower half is computed and
// mirrored.
class DicePool {
public:
    // Room for `totals` different totals of dice with up to `sides_max` sides.
    DicePool(std::size_t totals, std::size_t sides_max)
        : chances_(totals + sides_max, 0.0), next_(totals + sides_max, 0.0),
          tails_(sides_max + 1, 0.0), last_tails_(sides_max + 1, 0.0) {
        chances_[0] = 1;
    }

    void add_die(std::size_t sides) {
        const std::size_t size = size_ + sides - 1;
        const std::size_t half = (size + 1) / 2;
        std::fill(last_tails_.begin(), last_tails_.end(), 0.0);
        tails_[sides] = 0;
        for (std::size_t start = 0; start < half; start += sides) {
            add_block(start, sides);
            std::swap(tails_, last_tails_);
        }
        for (std::size_t at = half; at < size; ++at)
            next_[at] = next_[size - 1 - at];
        std::swap(chances_, next_);
        size_ = size;
    }

    std::vector<double> take_chances() {
        chances_.resize(size_);
        return std::move(chances_);
    }

private:
    // The new chances of one block, and its tails for the block after it. Both sums run in one loop
    // because neither waits for the other.
    void add_block(std::size_t start, std::size_t sides) {
        const double share = 1.0 / static_cast<double>(sides);
        const double* old = chances_.data() + start;
        double* fresh = next_.data() + start;
        double head = 0;
        double tail = 0;
        for (std::size_t at = 0; at < sides; ++at) {
            head += old[at];
            fresh[at] = (head + last_tails_[at + 1]) * share;
            const std::size_t back = sides - 1 - at;
            tail += old[back];
            tails_[back] = tail;
        }
    }

    std::vector<double> chances_; // zero from size_ on
    std::vector<double> next_;
    std::vector<double> tails_;      // tails_[i]: from place i to the end of the block
    std::vector<double> last_tails_; // the same of the block before
    std::size_t size_ = 1;
};

} // namespace

Distribution distribution_of(const DiceExpression& expression) {
    std::size_t totals = 1;
    std::size_t sides_max = 1;
    for (const DiceTerm& term : expression.terms) {
        assert(term.sides >= 1 && "a die has at least one side");
        const auto sides = static_cast<std::size_t>(term.sides);
        totals += static_cast<std::size_t>(std::abs(term.count)) * (sides - 1);
        sides_max = std::max(sides_max, sides);
    }
    Distribution result;
    result.lowest = expression.constant;
    DicePool pool(totals, sides_max);
    for (const DiceTerm& term : expression.terms) {
        const int dice = std::abs(term.count);
        // A subtracted die runs from -sides to -1, as evenly as an added one from 1 to sides.
        result.lowest += term.count > 0 ? dice : -dice * term.sides;
        for (int die = 0; die < dice; ++die)
            pool.add_die(static_cast<std::size_t>(term.sides));
    }
    result.chances = pool.take_chances();
    return result;
}

Distribution certain(int value) {
    return {value, {1.0}};
}

Distribution sum_of(const Distribution& left, const Distribution& right) {
    Distribution sum;
    sum.lowest = left.lowest + right.lowest;
    sum.chances.assign(left.chances.size() + right.chances.size() - 1, 0.0);
    for (std::size_t one = 0; one < left.chances.size(); ++one) {
        const double chance = left.chances[one];
        if (chance == 0.0) continue;
        for (std::size_t other = 0; other < right.chances.size(); ++other)
            sum.chances[one + other] += chance * right.chances[other];
    }
    return sum;
}

Distribution mixture_of(const std::vector<WeightedDistribution>& parts) {
    // A part without weight never happens, and its totals are none of the mixture's.
    std::optional<int> from;
    std::optional<int> to;
    for (const WeightedDistribution& part : parts) {
        if (part.weight <= 0) continue;
        from = std::min(from.value_or(part.distribution.lowest), part.distribution.lowest);
        to = std::max(to.value_or(highest(part.distribution)), highest(part.distribution));
    }
    assert(from && to && "a mixture has at least one part that happens");
    if (!from || !to) return certain(0);
    Distribution mixture;
    mixture.lowest = *from;
    mixture.chances.assign(offset(*from, *to) + 1, 0.0);
    for (const WeightedDistribution& part : parts) {
        if (part.weight <= 0) continue;
        std::size_t at = offset(*from, part.distribution.lowest);
        for (const double chance : part.distribution.chances) {
            mixture.chances[at] += part.weight * chance;
            at += 1;
        }
    }
    return mixture;
}

Distribution floored_at(const Distribution& distribution, int floor) {
    if (distribution.lowest >= floor) return distribution;
    if (highest(distribution) <= floor) return certain(floor);
    Distribution raised;
    raised.lowest = floor;
    const auto first =
        distribution.chances.begin() + static_cast<std::ptrdiff_t>(floor - distribution.lowest);
    raised.chances.assign(first, distribution.chances.end());
    raised.chances.front() += std::accumulate(distribution.chances.begin(), first, 0.0);
    return raised;
}

Distribution halved(const Distribution& distribution) {
    // An arithmetic shift rounds down for negative totals as well.
    const auto half = [](int total) { return total >> 1; };
    Distribution result;
    result.lowest = half(distribution.lowest);
    result.chances.assign(offset(result.lowest, half(highest(distribution))) + 1, 0.0);
    int total = distribution.lowest;
    for (const double chance : distribution.chances) {
        result.chances[offset(result.lowest, half(total))] += chance;
        total += 1;
    }
    return result;
}

Distribution doubled(const Distribution& distribution) {
    Distribution result;
    result.lowest = 2 * distribution.lowest;
    result.chances.assign(2 * distribution.chances.size() - 1, 0.0);
    for (std::size_t at = 0; at < distribution.chances.size(); ++at)
        result.chances[2 * at] = distribution.chances[at];
    return result;
}

Distribution shifted(const Distribution& distribution, int amount) {
    return {distribution.lowest + amount, distribution.chances};
}

int highest(const Distribution& distribution) {
    return distribution.lowest + static_cast<int>(distribution.chances.size()) - 1;
}

double mean(const Distribution& distribution) {
    // Counted from the lowest total, so that a large constant costs no digits.
    double above = 0;
    for (std::size_t at = 0; at < distribution.chances.size(); ++at)
        above += static_cast<double>(at) * distribution.chances[at];
    return distribution.lowest + above;
}

double variance(const Distribution& distribution) {
    const double middle = mean(distribution) - distribution.lowest;
    double sum = 0;
    for (std::size_t at = 0; at < distribution.chances.size(); ++at) {
        const double distance = static_cast<double>(at) - middle;
        sum += distance * distance * distribution.chances[at];
    }
    return sum;
}

double standard_deviation(const Distribution& distribution) {
    return std::sqrt(variance(distribution));
}

double chance_of_total(const Distribution& distribution, int total) {
    if (total < distribution.lowest || total > highest(distribution)) return 0;
    return distribution.chances[offset(distribution.lowest, total)];
}

double chance_at_least(const Distribution& distribution, int total) {
    if (total <= distribution.lowest) return 1;
    if (total > highest(distribution)) return 0;
    // From the far end, small chances first.
    double sum = 0;
    for (std::size_t at = distribution.chances.size(); at-- > offset(distribution.lowest, total);)
        sum += distribution.chances[at];
    return std::min(sum, 1.0);
}

double chance_at_most(const Distribution& distribution, int total) {
    if (total < distribution.lowest) return 0;
    if (total >= highest(distribution)) return 1;
    const auto end =
        distribution.chances.begin() + static_cast<std::ptrdiff_t>(total - distribution.lowest) + 1;
    return std::min(std::accumulate(distribution.chances.begin(), end, 0.0), 1.0);
}

int quantile(const Distribution& distribution, double chance) {
    double sum = 0;
    int total = distribution.lowest;
    for (const double share : distribution.chances) {
        sum += share;
        if (share > 0 && sum >= chance - rounding) return total;
        total += 1;
    }
    return highest(distribution);
}

} // namespace rules
