// Exact fractions beside the decimals: 7/20 of a d20, 72/5 damage on average.
#pragma once

#include "rules/odds.h"

#include <cstdint>
#include <optional>
#include <string>

namespace rules {

// Always in lowest terms, the denominator 1 or more.
struct Fraction {
    std::int64_t numerator = 0;
    std::int64_t denominator = 1;

    bool operator==(const Fraction&) const = default;
};

// In lowest terms. The denominator is 1 or more.
Fraction fraction_of(std::int64_t numerator, std::int64_t denominator);

double value_of(const Fraction& fraction);

// "7/20", "3" for whole numbers.
std::string to_text(const Fraction& fraction);

// The exact chance of this degree, and of success or better.
Fraction exact_chance(const DegreeOdds& odds, Degree degree);
Fraction exact_chance_of_success(const DegreeOdds& odds);

// The exact value behind a decimal that is known to be a multiple of 1/denominator: chances and
// means of dice are, with the product of their sides. `value` is right to 13 digits; where that
// does not suffice to tell two multiples apart, there is none.
std::optional<Fraction> exact_multiple(double value, double denominator);

} // namespace rules
