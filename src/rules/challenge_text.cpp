#include "rules/challenge_text.h"

#include <cmath>

namespace rules {

std::string challenge_text(double challenge) {
    for (const int parts : {2, 4, 8})
        if (challenge * parts == 1.0) return "1/" + std::to_string(parts);
    if (challenge == std::floor(challenge)) return std::to_string(std::lround(challenge));
    std::string text = std::to_string(challenge);
    while (text.back() == '0')
        text.pop_back();
    return text;
}

} // namespace rules
