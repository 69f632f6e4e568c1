#include "rules/dice.h"

#include <doctest/doctest.h>

#include <cmath>
#include <map>

TEST_CASE("dice: expressions in the trade's notation are read and written back") {
    const std::map<std::string, std::string> rows = {
        {"2d8+7", "2d8+7"},
        {"d6", "1d6"},
        {" 1D6 + 2d4 - 1 ", "1d6+2d4-1"},
        {"5", "5"},
        {"1d6-1d4", "1d6-1d4"},
        {"100d1000", "100d1000"},
        {"1d4+0", "1d4"},
    };
    for (const auto& row : rows) {
        const std::string& text = row.first;
        const std::string& canonical = row.second;
        CAPTURE(text);
        const auto dice = rules::parse_dice(text);
        REQUIRE(dice.ok());
        CHECK(rules::to_text(dice.value()) == canonical);
        CHECK(rules::parse_dice(canonical).value() == dice.value());
    }
}

TEST_CASE("dice: nonsense is refused in one sentence") {
    for (const char* text :
         {"",
          "  ",
          "3d0",
          "0d6",
          "d",
          "2d",
          "2d6+",
          "+",
          "2d6 7",
          "1e9",
          "101d6",
          "1d1001",
          "99999",
          "abc",
          "2d6+x",
          "1d6++2",
          "-"}) {
        CAPTURE(std::string(text));
        const auto dice = rules::parse_dice(text);
        REQUIRE_FALSE(dice.ok());
        CHECK(dice.error().kind == base::ErrorKind::bad_text);
        CHECK(dice.error().message.back() == '.');
    }
    CHECK(
        base::to_text(rules::parse_dice("3d0").error()) ==
        "\"3d0\" is no dice expression: there are no zero dice and no dice without sides. Write it "
        "like 2d8+7."
    );
}

TEST_CASE("dice: each slip is told for what it is") {
    const std::map<std::string, std::string> rows = {
        {"", "it is empty."},
        {"d", "the sides of a die are missing or too many."},
        {"2d6+", "a number or die is missing."},
        {"0d6", "there are no zero dice and no dice without sides."},
        {"1e9", "a + or - is missing."},
        {"101d6", "it has more than 100 dice."},
        {"60d6+60d6", "it has more than 100 dice."},
        {"1d1001", "a die has more than 1000 sides."},
        {"99999", "a number is too large."},
        {"9999+1", "a number is too large."},
        {"2d6 7", "a + or - is missing."},
    };
    for (const auto& row : rows) {
        const std::string& text = row.first;
        CAPTURE(text);
        std::string expected = "\"";
        expected.append(text).append("\" is no dice expression: ").append(row.second);
        CHECK(rules::parse_dice(text).error().message == expected);
    }
    // A pasted page is not repeated in full.
    CHECK(rules::parse_dice(std::string(500, 'x')).error().message.size() < 100);
}

TEST_CASE("dice: the mean is exact") {
    CHECK(rules::mean(rules::parse_dice("2d8+7").value()) == doctest::Approx(16.0));
    CHECK(rules::mean(rules::parse_dice("1d6").value()) == doctest::Approx(3.5));
    CHECK(rules::mean(rules::parse_dice("1d6-1d4-1").value()) == doctest::Approx(0.0));
}

TEST_CASE("dice: a roll is never negative and stays in range") {
    rules::Dice dice(7);
    const auto expression = rules::parse_dice("1d4-3").value();
    for (int roll = 0; roll < 200; ++roll) {
        const int total = rules::roll(expression, dice);
        CHECK(total >= 0);
        CHECK(total <= 1);
    }
}

TEST_CASE("dice: every side comes up as often as any other") {
    // Pearson's chi-square test. The 0.999 quantiles by degrees of freedom (sides - 1) stand in the
    // chi-square table of the NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.6.7.4
    // (figures from memory).
    const std::map<int, double> quantiles = {
        {4, 16.266}, {6, 20.515}, {8, 24.322}, {10, 27.877}, {20, 43.820}, {100, 148.230}};
    for (const auto& row : quantiles) {
        const int sides = row.first;
        CAPTURE(sides);
        rules::Dice dice(20260131);
        const int rolls = sides * 2000;
        std::map<int, int> seen;
        for (int roll = 0; roll < rolls; ++roll)
            seen[dice.roll(sides)] += 1;
        CHECK(static_cast<int>(seen.size()) == sides);
        CHECK(seen.begin()->first == 1);
        CHECK(seen.rbegin()->first == sides);
        double chi_square = 0.0;
        for (const auto& [side, count] : seen)
            chi_square += std::pow(count - 2000.0, 2) / 2000.0;
        CHECK(chi_square < row.second);
    }
}

TEST_CASE("dice: many rolls of an expression come to its mean") {
    // The mean of n dice of s sides has the standard error sqrt(n (s^2 - 1) / 12 / rolls); five of
    // them are passed by chance once in about two million tries.
    rules::Dice dice(7);
    const auto expression = rules::parse_dice("2d8+7").value();
    constexpr int rolls = 20000;
    double sum = 0.0;
    for (int roll = 0; roll < rolls; ++roll)
        sum += rules::roll(expression, dice);
    const double error = std::sqrt(2 * (64 - 1) / 12.0 / rolls);
    CHECK(std::abs(sum / rolls - rules::mean(expression)) < 5 * error);
}

TEST_CASE("dice: the same seed rolls the same") {
    rules::Dice one(42);
    rules::Dice other(42);
    for (int roll = 0; roll < 50; ++roll)
        CHECK(one.roll(100) == other.roll(100));
}
