#include "game/recovery_words.h"

#include "game/answer_words.h"
#include "rules/distribution.h"

#include <array>
#include <utility>

namespace game {

std::string degrees_text(const rules::DegreeOdds& odds) {
    using rules::Degree;
    const std::array<std::pair<Degree, const char*>, 4> degrees{
        std::pair{Degree::critical_success, "critical success "},
        std::pair{Degree::success, "success "},
        std::pair{Degree::failure, "failure "},
        std::pair{Degree::critical_failure, "critical failure "}};
    std::string text;
    for (const auto& [degree, name] : degrees) {
        const double chance = rules::chance_of(odds, degree);
        if (chance <= 0) continue;
        text += (text.empty() ? "" : ", ") + std::string(name) + precise_percent(chance);
    }
    return text;
}

std::string outlook_text(const rules::TreatWoundsOutlook& outlook) {
    return precise_percent(rules::chance_of_success(outlook.odds)) + " succeed, about " +
           decimal_text(rules::net_hp(outlook), 1) + " HP";
}

std::string hp_text(const rules::Distribution& hp) {
    return "about " + decimal_text(rules::mean(hp), 1) + " HP, " + std::to_string(hp.lowest) +
           " to " + std::to_string(rules::highest(hp));
}

std::string hit_dice_text(int count) {
    return std::to_string(count) + (count == 1 ? " hit die" : " hit dice");
}

std::string rest_text(const RestOutlook& outlook) {
    if (!outlook.why_not.empty()) return outlook.why_not;
    std::string text = "+" + std::to_string(outlook.hp_gained) + ", to " +
                       std::to_string(outlook.hp + outlook.hp_gained) + " of " +
                       std::to_string(outlook.hp_max);
    if (outlook.hit_dice_regained > 0) text += "; " + hit_dice_text(outlook.hit_dice_regained);
    return text;
}

} // namespace game
