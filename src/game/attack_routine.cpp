#include "game/attack_routine.h"

#include "game/effects.h"
#include "rules/dice.h"

#include <algorithm>
#include <utility>

namespace game {

namespace {

using rules::Family;
using rules::Rulebook;

std::string counted(int count, const std::string& name) {
    return std::to_string(count) + " " + name;
}

// The attack as the odds take it, conditions counted; no damage in it when its text is none.
rules::Attack
as_rolled(const Rulebook& rulebook, const Combatant& combatant, const Attack& attack) {
    const EffectiveNumber bonus = effective_attack(rulebook, combatant, attack);
    rules::Attack rolled;
    rolled.kind = rulebook.family == Family::four_degree ? rules::CheckKind::four_degree
                                                         : rules::CheckKind::srd5_attack;
    rolled.modifier = bonus.total;
    rolled.mode = bonus.mode;
    const auto dice = rules::parse_dice(effective_damage_text(rulebook, combatant, attack));
    if (dice.ok()) rolled.damage = dice.value();
    return rolled;
}

bool has_damage(const Attack& attack) {
    return rules::parse_dice(attack.damage).ok();
}

// Strikes of one attack, each at the penalty of its place in the turn.
Routine
strikes(const Rulebook& rulebook, const Combatant& combatant, const Attack& attack, int actions) {
    const std::vector<int>& penalties =
        attack.is_agile ? rulebook.turn.agile_attack_penalty : rulebook.turn.attack_penalty;
    const int count = std::min(actions, std::max(static_cast<int>(penalties.size()), 1));
    Routine routine;
    routine.text = counted(count, attack.name);
    Combatant then = combatant;
    for (int made = 0; made < count; ++made) {
        then.attacks_made = made;
        routine.attacks.push_back(as_rolled(rulebook, then, attack));
        routine.damage_types.push_back(attack.damage_type);
    }
    return routine;
}

// The attacks that its sheet puts together into one turn.
Routine usual_turn(const Rulebook& rulebook, const Combatant& combatant) {
    Routine routine;
    for (const Attack& attack : combatant.statistics.attacks) {
        if (attack.per_turn <= 0 || !has_damage(attack)) continue;
        routine.text += (routine.text.empty() ? "" : ", ") + counted(attack.per_turn, attack.name);
        const rules::Attack rolled = as_rolled(rulebook, combatant, attack);
        for (int made = 0; made < attack.per_turn; ++made) {
            routine.attacks.push_back(rolled);
            routine.damage_types.push_back(attack.damage_type);
        }
    }
    return routine;
}

// srd5 attack of the library.
void add_attacks(Routine& routine, const LibraryAttack& attack, int count) {
    rules::Attack rolled;
    rolled.kind = rules::CheckKind::srd5_attack;
    rolled.modifier = attack.bonus;
    const auto dice = rules::parse_dice(damage_text(attack.damage));
    if (dice.ok()) rolled.damage = dice.value();
    for (int made = 0; made < count; ++made) {
        routine.attacks.push_back(rolled);
        routine.damage_types.push_back(attack.damage.front().type);
    }
}

} // namespace

std::vector<Routine> turn_routines(const Rulebook& rulebook, const Combatant& combatant) {
    std::vector<Routine> routines;
    const int actions = actions_at_turn_start(rulebook, combatant);
    if (actions <= 0 || combatant.is_dead) return routines;
    Combatant fresh = combatant;
    fresh.attacks_made = 0;
    if (Routine usual = usual_turn(rulebook, fresh);
        rulebook.family == Family::srd5 && !usual.attacks.empty())
        routines.push_back(std::move(usual));
    for (const Attack& attack : fresh.statistics.attacks) {
        if (has_damage(attack)) routines.push_back(strikes(rulebook, fresh, attack, actions));
    }
    return routines;
}

std::vector<Routine> turn_routines(const Rulebook& rulebook, const Statistics& statistics) {
    Combatant fresh;
    fresh.statistics = statistics;
    fresh.hp = statistics.hit_points;
    return turn_routines(rulebook, fresh);
}

std::vector<Routine> turn_routines(const LibraryCreature& creature) {
    std::vector<Routine> routines;
    for (const std::vector<RoutinePart>& option : creature.routines) {
        Routine routine;
        routine.text = routine_text(option);
        for (const RoutinePart& part : option) {
            const LibraryAttack* attack = find_attack(creature, part.attack);
            if (attack != nullptr && !attack->damage.empty())
                add_attacks(routine, *attack, part.count);
        }
        if (!routine.attacks.empty()) routines.push_back(std::move(routine));
    }
    for (const LibraryAttack& attack : creature.attacks) {
        if (attack.damage.empty()) continue;
        Routine alone;
        alone.text = counted(1, attack.name);
        add_attacks(alone, attack, 1);
        routines.push_back(std::move(alone));
    }
    return routines;
}

const Routine* best_routine(const std::vector<Routine>& routines, int ac) {
    const Routine* best = nullptr;
    double most = 0;
    for (const Routine& routine : routines) {
        const double damage = rules::expected_damage(routine.attacks, ac);
        if (best != nullptr && damage <= most) continue;
        best = &routine;
        most = damage;
    }
    return best;
}

} // namespace game
