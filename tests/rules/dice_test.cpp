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
    for (const auto& [text, canonical] : rows) {
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

TEST_CASE("dice: twenty sides come up evenly") {
    // Pearson's chi-square with 19 degrees of freedom: 43.8 is the published 0.999 quantile
    // (statistical tables, from memory).
    rules::Dice dice(20260131);
    constexpr int rolls = 20000;
    std::map<int, int> seen;
    for (int roll = 0; roll < rolls; ++roll)
        seen[dice.d20()] += 1;
    CHECK(seen.size() == 20);
    double chi_square = 0.0;
    for (const auto& [side, count] : seen)
        chi_square += std::pow(count - rolls / 20.0, 2) / (rolls / 20.0);
    CHECK(chi_square < 43.8);
}

TEST_CASE("dice: the same seed rolls the same") {
    rules::Dice one(42);
    rules::Dice other(42);
    for (int roll = 0; roll < 50; ++roll)
        CHECK(one.roll(100) == other.roll(100));
}
