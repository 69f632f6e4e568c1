// An answer to a question in words, as a plain value: what the terminal prints, a search box shows
// and a script reads.
#pragma once

#include "rules/fraction.h"

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace game {

// A chance or a mean; `exact` where the fraction is known.
struct Quantity {
    double decimal = 0;
    std::optional<rules::Fraction> exact;

    Quantity() = default;

    explicit Quantity(double value) : decimal(value) {}

    explicit Quantity(const rules::Fraction& fraction)
        : decimal(rules::value_of(fraction)), exact(fraction) {}

    // A multiple of 1/denominator, exact where the value tells it.
    Quantity(double value, double denominator)
        : decimal(value), exact(rules::exact_multiple(value, denominator)) {}

    bool operator==(const Quantity&) const = default;
};

struct NamedValue;
using NamedValues = std::vector<NamedValue>; // no name twice

// One number, flag or text of an answer under its lasting name ("xp_to_next"), a group of them, or
// rows of such groups.
struct NamedValue {
    using Content = std::variant<
        int,
        std::int64_t, // money
        bool,
        Quantity,
        std::string,
        std::vector<std::string>,
        NamedValues,
        std::vector<NamedValues>>;

    std::string name;
    Content content;

    bool operator==(const NamedValue&) const = default;
};

struct Answer {
    std::string title;              // the answer in one line: "DC 25"
    std::vector<std::string> lines; // the rest; a tab stands between the cells of a table
    std::string source;             // document titles; may be empty
    NamedValues values;

    bool operator==(const Answer&) const = default;
};

// The value under this name, or nullptr.
const NamedValue* find_value(const NamedValues& values, std::string_view name);

// The lines for letters of one width: cells of lines that follow each other stand in columns.
std::vector<std::string> aligned_lines(const Answer& answer);

} // namespace game
