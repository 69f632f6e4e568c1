#include "rules/isotonic.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>

namespace {

double weighted_mean(
    const std::vector<double>& values,
    const std::vector<double>& weights,
    std::size_t from,
    std::size_t to
) {
    double sum = 0;
    double weight = 0;
    for (std::size_t at = from; at <= to; ++at) {
        sum += values[at] * weights[at];
        weight += weights[at];
    }
    return sum / weight;
}

} // namespace

TEST_CASE("isotonic: neighbours that contradict each other become their weighted mean") {
    using Values = std::vector<double>;
    CHECK(rules::isotonic_fit({1, 3, 2, 4}, {1, 1, 1, 1}) == Values{1, 2.5, 2.5, 4});
    CHECK(rules::isotonic_fit({1, 3, 2, 4}, {1, 3, 1, 1}) == Values{1, 2.75, 2.75, 4});
    CHECK(rules::isotonic_fit({3, 2, 1}, {1, 1, 1}) == Values{2, 2, 2});
    CHECK(rules::isotonic_fit({1, 2, 2, 7}, {5, 1, 9, 2}) == Values{1, 2, 2, 7});
    CHECK(rules::isotonic_fit({}, {}).empty());
}

TEST_CASE("isotonic: every value is the max-min of the means around it") {
    // The max-min formula: Robertson, Wright and Dykstra, Order Restricted Statistical Inference,
    // section 1.4.
    std::mt19937 engine(7);
    std::uniform_real_distribution<double> any(0, 10);
    for (int turn = 0; turn < 200; ++turn) {
        std::vector<double> values(static_cast<std::size_t>(1 + turn % 9));
        std::vector<double> weights(values.size());
        for (std::size_t at = 0; at < values.size(); ++at) {
            values[at] = any(engine);
            weights[at] = 0.1 + any(engine);
        }
        const std::vector<double> fit = rules::isotonic_fit(values, weights);
        REQUIRE(fit.size() == values.size());
        for (std::size_t at = 0; at < values.size(); ++at) {
            double best = -1;
            for (std::size_t from = 0; from <= at; ++from) {
                double least = 1e9;
                for (std::size_t to = at; to < values.size(); ++to)
                    least = std::min(least, weighted_mean(values, weights, from, to));
                best = std::max(best, least);
            }
            CHECK(fit[at] == doctest::Approx(best));
        }
    }
}
