#include "rules/ability_modifier.h"

#include <doctest/doctest.h>

#include <array>

TEST_CASE("ability modifier: every score against the published table") {
    // SRD 5.1 (CC-BY-4.0), Using Ability Scores, Ability Scores and Modifiers, scores 1 to 30.
    constexpr std::array published = {-5, -4, -4, -3, -3, -2, -2, -1, -1, 0, 0, 1, 1, 2, 2,
                                      3,  3,  4,  4,  5,  5,  6,  6,  7,  7, 8, 8, 9, 9, 10};
    for (int score = 1; score <= 30; ++score) {
        CAPTURE(score);
        CHECK(rules::ability_modifier(score) == published.at(static_cast<std::size_t>(score - 1)));
    }
}
