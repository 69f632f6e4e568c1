// What the odds cost, as ratios to a straightforward reference measured in the same run. Prints and
// never fails; run it by hand from a release build.
#include "bench/measure.h"
#include "bench/subsets.h"
#include "rules/attack_odds.h"
#include "rules/distribution.h"
#include "rules/group_odds.h"

#include <boost/math/tools/polynomial.hpp>
#include <cstddef>
#include <cstdio>
#include <string>
#include <vector>

using measure::compare;

namespace {

// A plain convolution, die by die, with the polynomials of Boost.Math.
double polynomial_pool(int count, std::size_t sides) {
    using boost::math::tools::polynomial;
    const polynomial<double> die(std::vector<double>(sides, 1.0 / static_cast<double>(sides)));
    polynomial<double> product(std::vector<double>{1.0});
    for (int at = 0; at < count; ++at)
        product *= die;
    return product[product.size() / 2];
}

double own_pool(int count, int sides) {
    const rules::Distribution pool = rules::distribution_of({{{count, sides}}, 0});
    return pool.chances[pool.chances.size() / 2];
}

// Every way in which each member succeeds or fails.
double counted_group(const std::vector<rules::GroupMember>& members, int dc) {
    std::vector<double> chances;
    chances.reserve(members.size());
    for (const rules::GroupMember& member : members)
        chances.push_back(
            rules::chance_of_success(rules::member_odds(rules::CheckKind::four_degree, member, dc))
        );
    return measure::half_by_subsets(chances);
}

// The chance to drop by adding up whole distributions, without a limit at the hit points.
double summed_drop(const std::vector<rules::Attack>& routine, int ac, int hp, int rounds) {
    rules::Distribution total;
    for (int round = 0; round < rounds; ++round)
        for (const rules::Attack& attack : routine)
            total = rules::sum_of(total, rules::attack_damage(attack, ac));
    return rules::chance_at_least(total, hp);
}

void bench_pools() {
    for (const int sides : {6, 20, 100})
        compare(
            "distribution of 100d" + std::to_string(sides),
            [sides] { return own_pool(100, sides); },
            "Boost.Math polynomials",
            [sides] { return polynomial_pool(100, static_cast<std::size_t>(sides)); }
        );
}

void bench_groups() {
    const std::vector<rules::GroupMember> party = {{12}, {9}, {7}, {4}, {3}};
    compare(
        "odds of a party of five at one DC",
        [&] {
            return rules::group_odds(rules::CheckKind::four_degree, party, 18)
                .at_least_half_succeed;
        },
        "every outcome written out",
        [&] { return counted_group(party, 18); }
    );
    compare(
        "the DC at which two of five fail",
        [&] {
            return rules::dc_for_number_failing(rules::CheckKind::four_degree, party, 2)
                .failing_share;
        },
        "one such odds",
        [&] {
            return rules::group_odds(rules::CheckKind::four_degree, party, 18)
                .at_least_half_succeed;
        }
    );
}

void bench_drops() {
    rules::Attack strike;
    strike.modifier = 15;
    strike.damage = {{{2, 8}}, 7};
    const std::vector<rules::Attack> routine = rules::attack_routine(strike, {0, -5, -10});
    compare(
        "chance to drop 78 hit points in 10 rounds",
        [&] { return rules::chance_to_drop(routine, 22, 78, 10); },
        "sums of whole distributions",
        [&] { return summed_drop(routine, 22, 78, 10); }
    );
}

} // namespace

int main() {
    bench_pools();
    bench_groups();
    bench_drops();
    std::printf("(sum kept: %g)\n", measure::kept);
    return 0;
}
