#include "rules/natural_dice.h"

#include <doctest/doctest.h>

#include <cmath>

TEST_CASE("natural dice: few dice, a plain constant, the mean or up to a half more") {
    for (int quarters = 8; quarters <= 320; ++quarters) {
        const double wanted = quarters / 4.0;
        CAPTURE(wanted);
        const rules::DiceExpression dice = rules::natural_dice(wanted, wanted - 1, wanted + 1, 4);
        REQUIRE(dice.terms.size() == 1);
        const double missed = wanted >= 5 ? 0 : 0.5; // below, not every half has its dice
        CHECK(rules::mean(dice) >= wanted - missed);
        CHECK(rules::mean(dice) <= wanted + 0.5 + missed);
        CHECK(dice.constant >= 0);
        CHECK(dice.terms[0].sides >= 4);
        CHECK(dice.terms[0].sides <= 12);
        CHECK(std::abs(dice.constant - 4) <= 4); // near the usual 4
    }
}

TEST_CASE("natural dice: the constant stays near what such attacks usually add") {
    // A bite of 2d6+4 has a mean of 11, a blow of 1d8+3 one of 7.5: SRD 5.1, Monsters, any page.
    CHECK(rules::to_text(rules::natural_dice(11, 10, 12, 4)) == "2d6+4");
    CHECK(rules::to_text(rules::natural_dice(7.5, 7, 8, 3)) == "1d8+3");
    CHECK(rules::to_text(rules::natural_dice(2.5, 2, 3, 0)) == "1d4");
}

TEST_CASE("natural dice: the wanted range counts more than the mean") {
    const rules::DiceExpression dice = rules::natural_dice(10, 10, 10.4, 4);
    CHECK(rules::mean(dice) == 10);
    CHECK(rules::mean(rules::natural_dice(10.2, 10.3, 11, 4)) >= 10.3);
}

TEST_CASE("natural dice: next to nothing is a plain number, nonsense is brought into range") {
    CHECK(rules::to_text(rules::natural_dice(1, 1, 2, 0)) == "1");
    CHECK(rules::to_text(rules::natural_dice(-5, 0, 0, 0)) == "1");
    CHECK(rules::mean(rules::natural_dice(1e9, 0, 1e9, 9)) == doctest::Approx(500).epsilon(0.01));
}
