#include "game/odds_text.h"

#include <cmath>

namespace game {

namespace {

// `hundredths` of something with at most two decimals, without trailing zeros.
std::string decimals(long hundredths) {
    constexpr long whole = 100;
    constexpr long ten = 10;
    std::string text = std::to_string(hundredths / whole);
    const long rest = hundredths % whole;
    if (rest == 0) return text;
    text += "." + std::to_string(rest / ten);
    if (rest % ten != 0) text += std::to_string(rest % ten);
    return text;
}

} // namespace

std::string exact_percent(int ways, int of) {
    constexpr long hundredths_of_percent = 10'000;
    return decimals(ways * hundredths_of_percent / of) + " %";
}

std::string percent_text(double chance) {
    constexpr double hundred = 100;
    // Sums of many products are a hair off 0 and 1.
    constexpr double hair = 1e-12;
    if (chance <= hair) return "0 %";
    if (chance >= 1 - hair) return "100 %";
    const double percent = chance * hundred;
    if (percent < 1) return "<1 %";
    if (percent > hundred - 1) return ">99 %";
    return std::to_string(std::lround(percent)) + " %";
}

std::string count_text(double count) {
    constexpr long ten = 10;
    // A half that a sum of twentieths misses by a hair rounds up all the same.
    constexpr double hair = 1e-9;
    return decimals(std::lround(count * static_cast<double>(ten) + hair) * ten);
}

std::string needed_text(int needed_roll) {
    constexpr int faces = 20;
    if (needed_roll <= 0) return "fails";
    if (needed_roll == 1) return "any";
    if (needed_roll > faces) return "never";
    return needed_roll == faces ? "20" : std::to_string(needed_roll) + "+";
}

const char* mode_words(rules::Family family, rules::RollMode mode) {
    const bool is_srd5 = family == rules::Family::srd5;
    switch (mode) {
    case rules::RollMode::normal: return "normal";
    case rules::RollMode::advantage: return is_srd5 ? "advantage" : "fortune";
    case rules::RollMode::disadvantage: return is_srd5 ? "disadvantage" : "misfortune";
    }
    return "normal";
}

const char* degree_words(rules::Degree degree) {
    switch (degree) {
    case rules::Degree::critical_failure: return "critical failure";
    case rules::Degree::failure: return "failure";
    case rules::Degree::success: return "success";
    case rules::Degree::critical_success: return "critical success";
    }
    return "failure";
}

} // namespace game
