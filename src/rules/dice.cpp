#include "rules/dice.h"

#include "base/text.h"

#include <algorithm>
#include <cassert>
#include <cctype>
#include <cstdlib>

namespace rules {

namespace {

constexpr int dice_max = 100;
constexpr int sides_max = 1000;
constexpr int constant_max = 9999;
constexpr int number_digits_max = 4;

base::Error bad_dice(std::string_view text, const std::string& why) {
    return {
        base::ErrorKind::bad_text,
        "\"" + base::shortened(text, 40) + "\" is no dice expression: " + why,
        {},
        "Write it like 2d8+7."};
}

struct Reader {
    std::string text;
    std::size_t at = 0;

    bool is_at_end() const { return at >= text.size(); }

    bool take(char wanted) {
        if (is_at_end() || text[at] != wanted) return false;
        at += 1;
        return true;
    }

    bool is_at_digit() const {
        return !is_at_end() && std::isdigit(static_cast<unsigned char>(text[at])) != 0;
    }

    // A number of at most four digits, or -1.
    int number() {
        int value = 0;
        int digits = 0;
        while (is_at_digit()) {
            value = digits < number_digits_max ? value * 10 + (text[at] - '0') : -1;
            digits += 1;
            at += 1;
            if (digits > number_digits_max) return -1;
        }
        return digits == 0 ? -1 : value;
    }
};

bool is_digit(char letter) {
    return std::isdigit(static_cast<unsigned char>(letter)) != 0;
}

// Spaces may stand between numbers and signs; one between two digits stays, and is refused later.
std::string without_spaces(std::string_view text) {
    std::string kept;
    bool after_space = false;
    for (const char letter : text) {
        const auto code = static_cast<unsigned char>(letter);
        if (std::isspace(code) != 0) {
            after_space = true;
            continue;
        }
        if (after_space && !kept.empty() && is_digit(kept.back()) && is_digit(letter)) kept += ' ';
        kept += static_cast<char>(std::tolower(code));
        after_space = false;
    }
    return kept;
}

} // namespace

int Dice::roll(int sides) {
    assert(sides >= 1 && "a die has at least one side");
    // Own rejection sampling: the standard distribution may differ from one library to the next.
    const auto range = static_cast<std::uint64_t>(sides);
    const std::uint64_t limit = (std::mt19937_64::max() / range) * range;
    std::uint64_t drawn = engine_();
    while (drawn >= limit)
        drawn = engine_();
    return static_cast<int>(drawn % range) + 1;
}

base::Result<DiceExpression> parse_dice(std::string_view text) {
    Reader reader{without_spaces(text)};
    if (reader.is_at_end()) return bad_dice(text, "it is empty.");
    DiceExpression expression;
    int dice = 0;
    bool is_first = true;
    while (!reader.is_at_end()) {
        int sign = 1;
        if (reader.take('-'))
            sign = -1;
        else if (!reader.take('+') && !is_first)
            return bad_dice(text, "a + or - is missing.");
        is_first = false;
        int count = 1;
        if (reader.is_at_digit()) {
            count = reader.number();
            if (count < 0) return bad_dice(text, "a number is too large.");
        } else if (reader.is_at_end() || reader.text[reader.at] != 'd') {
            return bad_dice(text, "a number or die is missing.");
        }
        if (!reader.take('d')) {
            expression.constant += sign * count;
            if (std::abs(expression.constant) > constant_max)
                return bad_dice(text, "a number is too large.");
            continue;
        }
        const int sides = reader.number();
        if (sides < 0) return bad_dice(text, "the sides of a die are missing or too many.");
        if (count == 0 || sides == 0)
            return bad_dice(text, "there are no zero dice and no dice without sides.");
        dice += count;
        if (dice > dice_max) return bad_dice(text, "it has more than 100 dice.");
        if (sides > sides_max) return bad_dice(text, "a die has more than 1000 sides.");
        expression.terms.push_back({sign * count, sides});
    }
    return expression;
}

std::string to_text(const DiceExpression& expression) {
    std::string text;
    for (const DiceTerm& term : expression.terms) {
        if (term.count < 0)
            text += "-";
        else if (!text.empty())
            text += "+";
        text += std::to_string(std::abs(term.count)) + "d" + std::to_string(term.sides);
    }
    if (text.empty()) return std::to_string(expression.constant);
    if (expression.constant > 0) text += "+" + std::to_string(expression.constant);
    if (expression.constant < 0) text += std::to_string(expression.constant);
    return text;
}

int roll(const DiceExpression& expression, Dice& dice) {
    int total = expression.constant;
    for (const DiceTerm& term : expression.terms) {
        const int sign = term.count < 0 ? -1 : 1;
        for (int die = 0; die < std::abs(term.count); ++die)
            total += sign * dice.roll(term.sides);
    }
    return std::max(total, 0);
}

double mean(const DiceExpression& expression) {
    double total = expression.constant;
    for (const DiceTerm& term : expression.terms)
        total += term.count * (term.sides + 1) / 2.0;
    return total;
}

} // namespace rules
