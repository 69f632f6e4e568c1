#include "rules/distribution.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <boost/math/tools/polynomial.hpp>
#include <boost/multiprecision/cpp_int.hpp>
#include <cmath>
#include <fstream>
#include <map>
#include <string>
#include <vector>

using rules::DiceExpression;
using rules::Distribution;

namespace {

DiceExpression dice(const std::string& text) {
    const base::Result<DiceExpression> expression = rules::parse_dice(text);
    REQUIRE_MESSAGE(expression.ok(), text);
    return expression.value();
}

Distribution totals(const std::string& text) {
    return rules::distribution_of(dice(text));
}

double sum_of_chances(const Distribution& distribution) {
    double sum = 0;
    for (const double chance : distribution.chances)
        sum += chance;
    return sum;
}

// Every roll of every die, written out; total -> number of rolls.
std::map<int, long long> counted_rolls(const DiceExpression& expression) {
    std::map<int, long long> rolls = {{expression.constant, 1}};
    for (const rules::DiceTerm& term : expression.terms)
        for (int die = 0; die < std::abs(term.count); ++die) {
            std::map<int, long long> next;
            for (const auto& [total, ways] : rolls)
                for (int face = 1; face <= term.sides; ++face)
                    next[total + (term.count < 0 ? -face : face)] += ways;
            rolls = next;
        }
    return rolls;
}

using boost::multiprecision::cpp_int;

// How many of all rolls of count d sides give each total, in whole numbers of any size.
std::vector<cpp_int> exact_ways(int count, int sides) {
    std::vector<cpp_int> ways = {1};
    for (int die = 0; die < count; ++die) {
        std::vector<cpp_int> next(ways.size() + static_cast<std::size_t>(sides) - 1);
        for (std::size_t at = 0; at < ways.size(); ++at)
            for (std::size_t face = 0; face < static_cast<std::size_t>(sides); ++face)
                next[at + face] += ways[at];
        ways = next;
    }
    return ways;
}

} // namespace

TEST_CASE("distribution: 2d6 is the triangle everybody knows") {
    const Distribution two = totals("2d6");
    CHECK(two.lowest == 2);
    REQUIRE(two.chances.size() == 11);
    const std::vector<int> ways = {1, 2, 3, 4, 5, 6, 5, 4, 3, 2, 1};
    for (std::size_t at = 0; at < ways.size(); ++at)
        CHECK(two.chances[at] == doctest::Approx(ways[at] / 36.0).epsilon(1e-14));
    CHECK(rules::mean(two) == doctest::Approx(7));
    CHECK(rules::variance(two) == doctest::Approx(35.0 / 6));
    CHECK(rules::standard_deviation(two) == doctest::Approx(std::sqrt(35.0 / 6)));
    CHECK(rules::chance_at_least(two, 10) == doctest::Approx(1.0 / 6));
    CHECK(rules::chance_at_most(two, 4) == doctest::Approx(1.0 / 6));
    CHECK(rules::chance_of_total(two, 7) == doctest::Approx(1.0 / 6));
}

TEST_CASE("distribution: small expressions equal every roll written out") {
    for (const std::string text :
         {"d6",
          "3d6",
          "1d4+1d6+1d8",
          "2d8+7",
          "4d4-3",
          "1d20-1d4",
          "-2d6+10",
          "1d6-1d6",
          "3d1+1d2",
          "2d2-3d3+5",
          "1d1",
          "5",
          "-7",
          "1d12+2d10-1d6-2",
          "5d5",
          "d6+d6+d6"}) {
        CAPTURE(text);
        const std::map<int, long long> rolls = counted_rolls(dice(text));
        long long all = 0;
        for (const auto& [total, ways] : rolls)
            all += ways;
        const Distribution distribution = totals(text);
        CHECK(distribution.lowest == rolls.begin()->first);
        CHECK(rules::highest(distribution) == rolls.rbegin()->first);
        for (const auto& roll : rolls) {
            const int total = roll.first;
            const auto ways = static_cast<double>(roll.second);
            CAPTURE(total);
            CHECK(
                rules::chance_of_total(distribution, total) ==
                doctest::Approx(ways / static_cast<double>(all)).epsilon(1e-14)
            );
        }
    }
}

TEST_CASE("distribution: a hundred dice are right to the last total, one chance in 6^100 included"
) {
    // Against whole-number arithmetic of any size (Boost.Multiprecision).
    struct Row {
        int count, sides;
    };

    for (const Row row : {Row{100, 6}, Row{100, 2}, Row{40, 20}, Row{20, 12}, Row{3, 100}}) {
        CAPTURE(row.count);
        CAPTURE(row.sides);
        const std::vector<cpp_int> ways = exact_ways(row.count, row.sides);
        cpp_int all = 1;
        for (int die = 0; die < row.count; ++die)
            all *= row.sides;
        const Distribution distribution = rules::distribution_of({{{row.count, row.sides}}, 0});
        REQUIRE(distribution.chances.size() == ways.size());
        double worst = 0;
        for (std::size_t at = 0; at < ways.size(); ++at) {
            const double exact = ways[at].convert_to<double>() / all.convert_to<double>();
            worst = std::max(worst, std::abs(distribution.chances[at] / exact - 1));
        }
        CHECK(worst < 1e-13);
    }
}

TEST_CASE("distribution: equals a plain convolution of a general library") {
    // Boost.Math polynomials: the coefficients of a product are the convolution of its factors'.
    using boost::math::tools::polynomial;
    const auto die = [](std::size_t sides) {
        return polynomial<double>(std::vector<double>(sides, 1.0 / static_cast<double>(sides)));
    };
    polynomial<double> product{{1.0}};
    for (int count = 0; count < 30; ++count)
        product *= die(8);
    for (int count = 0; count < 12; ++count)
        product *= die(6);
    for (int count = 0; count < 8; ++count)
        product *= die(4);
    const Distribution distribution = totals("30d8+12d6+8d4+9");
    CHECK(distribution.lowest == 59);
    REQUIRE(distribution.chances.size() == product.size());
    for (std::size_t at = 0; at < distribution.chances.size(); ++at)
        REQUIRE(distribution.chances[at] == doctest::Approx(product[at]).epsilon(1e-12));
}

TEST_CASE("distribution: mean and variance follow from count and sides") {
    // Sum of uniform variables: mean n (s + 1) / 2, variance n (s^2 - 1) / 12; any textbook.
    for (const int count : {1, 2, 7, 33, 100})
        for (const int sides : {1, 2, 3, 4, 6, 8, 10, 12, 20, 100}) {
            CAPTURE(count);
            CAPTURE(sides);
            const Distribution distribution = rules::distribution_of({{{count, sides}}, 5});
            CHECK(std::abs(sum_of_chances(distribution) - 1) < 1e-12);
            CHECK(
                rules::mean(distribution) ==
                doctest::Approx(5 + count * (sides + 1) / 2.0).epsilon(1e-12)
            );
            CHECK(
                rules::variance(distribution) ==
                doctest::Approx(count * (sides * sides - 1) / 12.0).epsilon(1e-11)
            );
        }
}

TEST_CASE("distribution: the largest pool that can be typed still sums to one") {
    const Distribution distribution = totals("100d1000");
    CHECK(distribution.lowest == 100);
    CHECK(rules::highest(distribution) == 100'000);
    CHECK(std::abs(sum_of_chances(distribution) - 1) < 1e-12);
    CHECK(rules::mean(distribution) == doctest::Approx(50'050).epsilon(1e-12));
    // One roll in 1000^100.
    CHECK(distribution.chances.front() == doctest::Approx(1e-300).epsilon(1e-12));
}

TEST_CASE("distribution: dice are symmetric around their mean") {
    for (const std::string text : {"3d6", "2d8+1d4+3", "10d10-4d6", "100d6"}) {
        CAPTURE(text);
        const std::vector<double> chances = totals(text).chances;
        for (std::size_t at = 0; at < chances.size(); ++at)
            REQUIRE(chances[at] == chances[chances.size() - 1 - at]);
    }
}

TEST_CASE("distribution: hit points of every creature of the open document are the mean of its dice"
) {
    // System Reference Document 5.1 (CC-BY-4.0): the average printed beside the hit dice, rounded
    // down. The file says so as well.
    std::ifstream stream(
        std::string(TABLEWICK_SOURCE_DIR) + "/tests/rules/data/srd51_hit_dice.json"
    );
    REQUIRE(stream.is_open());
    const nlohmann::json document = nlohmann::json::parse(stream);
    CHECK(document.at("creatures").size() == 322);
    for (const nlohmann::json& creature : document.at("creatures")) {
        CAPTURE(creature.at("name").get<std::string>());
        const auto text = creature.at("dice").get<std::string>();
        const double exact = rules::mean(totals(text));
        CHECK(std::floor(exact + 1e-9) == creature.at("average").get<double>());
        CHECK(exact == doctest::Approx(rules::mean(dice(text))).epsilon(1e-12));
    }
}

TEST_CASE("distribution: mean damage of published expressions") {
    // GM Core (ORC), tables Strike Damage, Area Damage and hazard damage: means of the dice.
    struct Row {
        std::string text;
        double mean;
    };

    for (const Row& row :
         {Row{"2d8+7", 16},
          Row{"10d6", 35},
          Row{"8d12+52", 104},
          Row{"3d10+14", 30.5},
          Row{"1d4", 2.5}}) {
        CAPTURE(row.text);
        CHECK(rules::mean(totals(row.text)) == doctest::Approx(row.mean).epsilon(1e-13));
    }
}

TEST_CASE("distribution: quantiles are totals that really come up") {
    const Distribution six = totals("d6");
    CHECK(rules::quantile(six, 0) == 1);
    CHECK(rules::quantile(six, 1.0 / 6) == 1);
    CHECK(rules::quantile(six, 0.17) == 2);
    CHECK(rules::quantile(six, 0.5) == 3);
    CHECK(rules::quantile(six, 0.75) == 5);
    CHECK(rules::quantile(six, 1) == 6);
    CHECK(rules::quantile(totals("3d6"), 0.5) == 10);
    CHECK(rules::quantile(totals("2d6"), 0.5) == 7);
    CHECK(rules::quantile(rules::doubled(six), 0) == 2);
    for (const double chance : {0.01, 0.25, 0.5, 0.75, 0.99}) {
        const Distribution pool = totals("8d6");
        const int total = rules::quantile(pool, chance);
        CHECK(rules::chance_at_most(pool, total) >= chance - 1e-12);
        CHECK(rules::chance_at_most(pool, total - 1) < chance);
    }
}

TEST_CASE("distribution: this or more and less than this are all there is") {
    const Distribution pool = totals("4d6-2d4");
    CHECK(rules::chance_at_least(pool, pool.lowest) == 1);
    CHECK(rules::chance_at_least(pool, pool.lowest - 5) == 1);
    CHECK(rules::chance_at_least(pool, rules::highest(pool) + 1) == 0);
    CHECK(rules::chance_at_most(pool, pool.lowest - 1) == 0);
    CHECK(rules::chance_of_total(pool, rules::highest(pool) + 1) == 0);
    for (int total = pool.lowest; total <= rules::highest(pool); ++total) {
        CHECK(
            rules::chance_at_least(pool, total) + rules::chance_at_most(pool, total - 1) ==
            doctest::Approx(1).epsilon(1e-13)
        );
        CHECK(rules::chance_at_least(pool, total + 1) <= rules::chance_at_least(pool, total));
    }
}

TEST_CASE("distribution: damage below nothing is nothing") {
    const Distribution damage = rules::floored_at(totals("1d6-3"), 0);
    CHECK(damage.lowest == 0);
    REQUIRE(damage.chances.size() == 4);
    CHECK(damage.chances[0] == doctest::Approx(0.5));
    CHECK(rules::mean(damage) == doctest::Approx(1));
    CHECK(rules::floored_at(totals("1d6-9"), 0) == rules::certain(0));
    CHECK(rules::floored_at(totals("1d6"), 0) == totals("1d6"));
}

TEST_CASE("distribution: halves round down roll by roll") {
    const Distribution half = rules::halved(totals("d6")); // 0 1 1 2 2 3
    CHECK(half.lowest == 0);
    REQUIRE(half.chances.size() == 4);
    CHECK(half.chances[0] == doctest::Approx(1.0 / 6));
    CHECK(half.chances[1] == doctest::Approx(2.0 / 6));
    CHECK(half.chances[3] == doctest::Approx(1.0 / 6));
    CHECK(rules::halved(totals("d4-4")).lowest == -2); // -3 -2 -1 0
    // 35 on average; half of the odd totals, one half lost each.
    CHECK(rules::mean(rules::halved(totals("10d6"))) == doctest::Approx(17.25).epsilon(1e-12));
}

TEST_CASE("distribution: sums, shifts and mixtures keep the whole") {
    CHECK(rules::sum_of(totals("1d6"), totals("1d8+2")).lowest == 4);
    const Distribution sum = rules::sum_of(totals("2d6"), totals("1d8+2"));
    const Distribution direct = totals("2d6+1d8+2");
    REQUIRE(sum.chances.size() == direct.chances.size());
    for (std::size_t at = 0; at < sum.chances.size(); ++at)
        CHECK(sum.chances[at] == doctest::Approx(direct.chances[at]).epsilon(1e-14));
    CHECK(rules::shifted(totals("2d6"), 7) == totals("2d6+7"));
    CHECK(rules::mean(rules::doubled(totals("2d8+7"))) == doctest::Approx(32));
    const Distribution mixture =
        rules::mixture_of({{0.25, rules::certain(0)}, {0.75, totals("1d4+8")}});
    CHECK(mixture.lowest == 0);
    CHECK(mixture.chances.size() == 13);
    CHECK(std::abs(sum_of_chances(mixture) - 1) < 1e-12);
    CHECK(rules::mean(mixture) == doctest::Approx(0.75 * 10.5));
    CHECK(rules::chance_of_total(mixture, 5) == 0);
}
