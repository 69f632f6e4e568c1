#include "game/creature_step.h"

#include "game/roster.h"
#include "rules/dice.h"

#include <algorithm>

namespace game {

namespace {

using rules::BuildStep;
using rules::CreatureStep;

void change_all(Modifiers& modifiers, int by) {
    for (auto& [key, modifier] : modifiers)
        modifier = std::clamp(modifier + by, int{Limits::modifier_min}, int{Limits::modifier_max});
}

void change_attack(Attack& attack, const CreatureStep& step) {
    attack.bonus += step.attack;
    auto damage = rules::parse_dice(attack.damage);
    if (attack.damage.empty() || !damage.ok()) return;
    damage.value().constant += step.damage;
    attack.damage = rules::to_text(damage.value());
}

} // namespace

std::optional<Statistics>
stepped_statistics(const rules::Rulebook& rulebook, const Statistics& statistics, BuildStep step) {
    if (rulebook.family != rules::Family::four_degree || statistics.hazard != Hazard::none)
        return {};
    const CreatureStep* change =
        rules::find_step(rulebook.creature_building, step, statistics.level);
    if (change == nullptr) return {};
    Statistics stepped = statistics;
    stepped.level = rules::stepped_level(*change, statistics.level);
    stepped.armor_class += change->armor_class;
    stepped.hit_points =
        std::max(stepped.hit_points + rules::stepped_hit_points(*change, statistics.level), 1);
    stepped.perception += change->perception;
    if (stepped.initiative) *stepped.initiative += change->perception;
    change_all(stepped.saves, change->saves);
    change_all(stepped.skills, change->skills);
    for (auto& [key, dc] : stepped.difficulty_classes)
        dc += change->dc;
    for (Attack& attack : stepped.attacks)
        change_attack(attack, *change);
    return stepped;
}

std::string stepped_name(const std::string& name, BuildStep step) {
    return (step == BuildStep::elite ? "Elite " : "Weak ") + name;
}

} // namespace game
