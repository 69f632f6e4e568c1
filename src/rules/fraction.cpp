#include "rules/fraction.h"

#include <cassert>
#include <cmath>
#include <numeric>

namespace rules {

namespace {

// Multiples up to here are told apart by a value of 13 digits, with a margin of ten.
constexpr double multiple_max = 1e12;

int ways_of(const DegreeOdds& odds, Degree degree) {
    switch (degree) {
    case Degree::critical_failure: return odds.critical_failure;
    case Degree::failure: return odds.failure;
    case Degree::success: return odds.success;
    case Degree::critical_success: return odds.critical_success;
    }
    return 0;
}

} // namespace

Fraction fraction_of(std::int64_t numerator, std::int64_t denominator) {
    assert(denominator >= 1);
    const std::int64_t common = std::gcd(numerator, denominator);
    return {numerator / common, denominator / common};
}

double value_of(const Fraction& fraction) {
    return static_cast<double>(fraction.numerator) / static_cast<double>(fraction.denominator);
}

std::string to_text(const Fraction& fraction) {
    std::string numerator = std::to_string(fraction.numerator);
    if (fraction.denominator == 1) return numerator;
    return numerator + "/" + std::to_string(fraction.denominator);
}

Fraction exact_chance(const DegreeOdds& odds, Degree degree) {
    return fraction_of(ways_of(odds, degree), odds.of);
}

Fraction exact_chance_of_success(const DegreeOdds& odds) {
    return fraction_of(odds.success + odds.critical_success, odds.of);
}

std::optional<Fraction> exact_multiple(double value, double denominator) {
    const double multiple = value * denominator;
    if (!(denominator >= 1 && denominator <= multiple_max)) return {};
    if (!(std::abs(multiple) <= multiple_max)) return {};
    return fraction_of(std::llround(multiple), std::llround(denominator));
}

} // namespace rules
