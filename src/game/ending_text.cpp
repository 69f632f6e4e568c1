#include "game/ending_text.h"

#include "game/conditions.h"

namespace game {

static std::string fading_text(const rules::Rulebook& rulebook, const ActiveCondition& condition) {
    const rules::ConditionRule* rule = rules::find_condition(rulebook, condition.key);
    if (rule == nullptr) return {};
    switch (rule->fading) {
    case rules::Fading::stays: return {};
    case rules::Fading::drops_at_turn_end: return "falls by 1 at the end of its turn";
    case rules::Fading::recovery_check: return "recovery check each turn";
    case rules::Fading::persistent_damage:
        return "each turn, then flat check DC " + std::to_string(rulebook.dying.persistent_flat_dc);
    case rules::Fading::lost_with_actions:
        return condition.value > 0 ? "falls by the actions it takes" : "";
    }
    return {};
}

std::string ending_text(
    const Encounter& encounter, const rules::Rulebook& rulebook, const ActiveCondition& condition
) {
    std::string timer = duration_text(encounter, rulebook, condition);
    const std::string fading = fading_text(rulebook, condition);
    if (fading.empty()) return timer;
    const bool has_timer =
        condition.duration.kind != DurationKind::until_removed || condition.check.has_value();
    if (has_timer) return fading + "; " + timer;
    return fading + (condition.is_paused ? ", paused" : "");
}

} // namespace game
