#include "rules/distribution.h"
#include "rules/fraction.h"

#include <doctest/doctest.h>

#include <cmath>
#include <vector>

TEST_CASE("fractions: lowest terms, as text and as a number") {
    CHECK(rules::fraction_of(8, 20) == rules::Fraction{2, 5});
    CHECK(rules::to_text(rules::fraction_of(8, 20)) == "2/5");
    CHECK(rules::to_text(rules::fraction_of(-6, 4)) == "-3/2");
    CHECK(rules::to_text(rules::fraction_of(0, 400)) == "0");
    CHECK(rules::to_text(rules::fraction_of(40, 20)) == "2");
    CHECK(rules::value_of(rules::fraction_of(7, 20)) == 0.35);
}

TEST_CASE("fractions: the exact chances of many dice, against whole-number counting") {
    // Counted here with whole numbers: the ways in which 8d6 gives each total, of 6^8.
    std::vector<long long> ways{1};
    for (int die = 0; die < 8; ++die) {
        std::vector<long long> more(ways.size() + 5, 0);
        for (std::size_t at = 0; at < ways.size(); ++at)
            for (std::size_t face = 0; face < 6; ++face)
                more[at + face] += ways[at];
        ways = more;
    }
    const rules::Distribution totals = rules::distribution_of({{{8, 6}}, 0});
    const double all = std::pow(6.0, 8);
    long long above = 0;
    for (std::size_t at = ways.size(); at-- > 0;) {
        above += ways[at];
        const int total = 8 + static_cast<int>(at);
        CAPTURE(total);
        CHECK(
            rules::exact_multiple(rules::chance_at_least(totals, total), all) ==
            rules::fraction_of(above, 1679616)
        );
    }
}

TEST_CASE("fractions: what cannot be told apart has none") {
    CHECK_FALSE(rules::exact_multiple(0.5, 1e13).has_value());
    CHECK_FALSE(rules::exact_multiple(1e9, 1e9).has_value());
    CHECK_FALSE(rules::exact_multiple(0.5, std::pow(20.0, 400)).has_value());
    CHECK_FALSE(rules::exact_multiple(std::nan(""), 20).has_value());
    CHECK(rules::exact_multiple(0.35, 20) == rules::Fraction{7, 20});
}
