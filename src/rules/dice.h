// Dice: a seeded source of rolls, and dice expressions in the trade's NdM+NdM+K notation.
// Never reads a clock or global state: who rolls, brings the dice.
#pragma once

#include "base/result.h"

#include <cstdint>
#include <random>
#include <string>
#include <string_view>
#include <vector>

namespace rules {

// A source of fair rolls. The same seed gives the same rolls on every machine.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : engine_(seed) {}

    // A roll of one die, 1..sides; sides at least 1.
    int roll(int sides);

    int d20() { return roll(20); }

private:
    std::mt19937_64 engine_;
};

// count dice of the given sides; a negative count subtracts them.
struct DiceTerm {
    int count = 0;
    int sides = 0;

    bool operator==(const DiceTerm&) const = default;
};

struct DiceExpression {
    std::vector<DiceTerm> terms;
    int constant = 0;

    bool operator==(const DiceExpression&) const = default;
};

// Reads "2d8+7", "d6", "1d6+2d4-1", "5". Spaces are ignored, case too. Errors (bad_text): empty
// text, no dice and no number, 0 dice or 0 sides ("3d0"), more than 100 dice or 1000 sides,
// constants past 9999.
base::Result<DiceExpression> parse_dice(std::string_view text);

// The expression in canonical text: "2d8+7".
std::string to_text(const DiceExpression& expression);

// One roll; never below 0 (damage and healing are never negative).
int roll(const DiceExpression& expression, Dice& dice);

// The exact mean of the expression (without the floor at 0).
double mean(const DiceExpression& expression);

} // namespace rules
