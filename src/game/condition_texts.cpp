// How conditions and durations are said, short enough for a chip.
#include "game/conditions.h"

namespace game {

namespace {

std::string name_of(const Encounter& encounter, Id id) {
    const Combatant* combatant = find_combatant(encounter, id);
    return combatant == nullptr ? "the round" : combatant->name;
}

std::string edge_text(TurnEdge edge) {
    return edge == TurnEdge::start ? "start" : "end";
}

std::string span_text(int seconds) {
    constexpr int minute = 60;
    constexpr int hour = 3600;
    if (seconds >= hour && seconds % hour == 0) return std::to_string(seconds / hour) + " h";
    if (seconds >= hour)
        return std::to_string(seconds / hour) + " h " + std::to_string(seconds % hour / minute) +
               " min";
    if (seconds >= minute && seconds % minute == 0)
        return std::to_string(seconds / minute) + " min";
    if (seconds >= minute)
        return std::to_string(seconds / minute) + " min " + std::to_string(seconds % minute) + " s";
    return std::to_string(seconds) + " s";
}

// "DC 15 flat", "DC 18 Fortitude save", "DC 20 Athletics".
std::string end_check_text(const rules::Rulebook& rulebook, const EndCheck& check) {
    const std::string dc = "DC " + std::to_string(check.dc) + " ";
    if (check.stat.empty()) return dc + "flat";
    for (const rules::StatName& save : rulebook.saves)
        if (save.key == check.stat) return dc + save.name + " save";
    const rules::StatName* stat = rules::find_stat(rulebook, check.stat);
    return dc + (stat == nullptr ? check.stat : stat->name);
}

} // namespace

std::string condition_text(const rules::Rulebook& rulebook, const ActiveCondition& condition) {
    if (condition.key.empty()) return condition.name;
    const rules::ConditionRule* rule = rules::find_condition(rulebook, condition.key);
    if (rule != nullptr && rule->fading == rules::Fading::persistent_damage) {
        std::string text = "persistent " + condition.damage;
        if (!condition.damage_type.empty()) text += " " + condition.damage_type;
        return text;
    }
    std::string text = rule == nullptr ? condition.key : rule->name;
    if (condition.value > 0) text += " " + std::to_string(condition.value);
    return text;
}

std::string duration_text(
    const Encounter& encounter, const rules::Rulebook& rulebook, const ActiveCondition& condition
) {
    const Duration& duration = condition.duration;
    std::string text;
    switch (duration.kind) {
    case DurationKind::until_removed: text = condition.check ? "" : "until ended"; break;
    case DurationKind::until_turn:
        text = edge_text(duration.edge) + " of " +
               (duration.whose_turn == base::no_id
                    ? "the round"
                    : name_of(encounter, duration.whose_turn) + "'s turn");
        break;
    case DurationKind::rounds:
        text = std::to_string(duration.rounds_left) +
               (duration.rounds_left == 1 ? " round" : " rounds");
        break;
    case DurationKind::timed: text = span_text(duration.seconds_left); break;
    case DurationKind::until_rest: text = "until rest"; break;
    case DurationKind::until_check: break;
    }
    if (condition.check)
        text += (text.empty() ? "" : ", ") + end_check_text(rulebook, *condition.check);
    if (text.empty()) text = "until ended";
    if (condition.is_paused) text += ", paused";
    return text;
}

} // namespace game
