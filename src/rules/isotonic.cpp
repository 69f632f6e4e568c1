#include "rules/isotonic.h"

#include <cassert>
#include <cstddef>

namespace rules {

std::vector<double>
isotonic_fit(const std::vector<double>& values, const std::vector<double>& weights) {
    assert(values.size() == weights.size() && "every value has its weight");

    struct Block {
        double mean = 0;
        double weight = 0;
        std::size_t length = 0;
    };

    std::vector<Block> blocks;
    for (std::size_t at = 0; at < values.size(); ++at) {
        Block next{values[at], weights[at], 1};
        while (!blocks.empty() && blocks.back().mean > next.mean) {
            const Block& before = blocks.back();
            const double weight = before.weight + next.weight;
            next.mean = (before.mean * before.weight + next.mean * next.weight) / weight;
            next.weight = weight;
            next.length += before.length;
            blocks.pop_back();
        }
        blocks.push_back(next);
    }
    std::vector<double> fit;
    fit.reserve(values.size());
    for (const Block& block : blocks)
        fit.insert(fit.end(), block.length, block.mean);
    return fit;
}

} // namespace rules
