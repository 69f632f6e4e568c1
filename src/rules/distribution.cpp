#include "rules/distribution.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>
#include <optional>

namespace rules {

namespace {

// Sums that should meet a chance exactly may miss it by this much in double precision.
constexpr double rounding = 1e-12;

std::size_t offset(int from, int to) {
    return static_cast<std::size_t>(to - from);
}

// Room for the sliding sums of one expression, kept between dice.
struct Workspace {
    std::vector<double> heads; // sums from the start of a block up to here
    std::vector<double> tails; // sums from here to the end of a block
};

// Adds one die of `sides` to the totals in `chances`: each new chance is the sum of `sides` old
// neighbours, divided by sides. The sums come from blocks of that length: a window is the tail of
// one block and the head of the next. A plain running sum would subtract what leaves the window,
// and lose the digits of small chances.
// All dice are symmetric, so the sum is too: the lower half is computed and mirrored.
void add_die(std::vector<double>& chances, std::size_t sides, Workspace& work) {
    if (sides == 1) return;
    const std::size_t size = chances.size() + sides - 1;
    const std::size_t half = (size + 1) / 2;
    chances.resize(size, 0.0);
    work.heads.resize(std::max(work.heads.size(), half + sides));
    work.tails.resize(std::max(work.tails.size(), half + sides));
    for (std::size_t start = 0; start < half; start += sides) {
        const std::size_t end = std::min(start + sides, size);
        double head = 0;
        for (std::size_t at = start; at < std::min(end, half); ++at) {
            head += chances[at];
            work.heads[at] = head;
        }
        double tail = 0;
        for (std::size_t at = end; at-- > start;) {
            tail += chances[at];
            work.tails[at] = tail;
        }
    }
    const double share = 1.0 / static_cast<double>(sides);
    for (std::size_t at = 0; at < half; ++at) {
        // The window from..at: inside one block it starts that block, else it spans two.
        const std::size_t from = at + 1 >= sides ? at + 1 - sides : 0;
        const bool is_whole_block = from % sides == 0;
        const double sum = is_whole_block ? work.heads[at] : work.tails[from] + work.heads[at];
        chances[at] = sum * share;
    }
    for (std::size_t at = half; at < size; ++at)
        chances[at] = chances[size - 1 - at];
}

} // namespace

Distribution distribution_of(const DiceExpression& expression) {
    Distribution result;
    result.lowest = expression.constant;
    Workspace work;
    for (const DiceTerm& term : expression.terms) {
        assert(term.sides >= 1 && "a die has at least one side");
        const int dice = std::abs(term.count);
        // A subtracted die runs from -sides to -1, as evenly as an added one from 1 to sides.
        result.lowest += term.count > 0 ? dice : -dice * term.sides;
        for (int die = 0; die < dice; ++die)
            add_die(result.chances, static_cast<std::size_t>(term.sides), work);
    }
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
