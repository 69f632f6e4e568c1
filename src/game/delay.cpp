// Delay and return. Source: Player Core (ORC), Delay; the wording of its costs is from memory:
// persistent damage of the turn's end happens at once, helpful effects that would end at the end of
// this turn end at once, everything else waits for the real end of the turn. Helpful are effects of
// the GM's own wording without a penalty, and conditions of foes.
#include "game/conditions.h"
#include "game/effects.h"
#include "game/turn_steps.h"
#include "game/turns.h"

#include <algorithm>
#include <utility>

namespace game {

using rules::Rulebook;

namespace {

// Good for the one that delays: its own helpful effects of the GM's wording, and what it did to its
// foes.
bool is_helpful_to(
    const Combatant& delaying, const Combatant& holder, const ActiveCondition& active
) {
    if (holder.id != delaying.id) return holder.side != delaying.side;
    if (!active.key.empty()) return false;
    return std::all_of(active.modifiers.begin(), active.modifiers.end(), [](const Modifier& each) {
        return each.amount >= 0;
    });
}

// One cannot delay to make a helpful effect last longer.
void end_helpful_effects(Encounter& encounter, const Rulebook& rulebook, Id id) {
    std::vector<std::pair<Id, Id>> ending;
    const Combatant& delaying = *find_combatant(encounter, id);
    for (const Combatant& holder : encounter.combatants) {
        for (const ActiveCondition& active : holder.conditions) {
            const Duration& duration = active.duration;
            const bool is_last =
                duration.kind == DurationKind::until_turn ||
                (duration.kind == DurationKind::rounds && duration.rounds_left <= 1);
            if (!is_last || duration.whose_turn != id || duration.edge != TurnEdge::end ||
                active.is_paused || !is_helpful_to(delaying, holder, active))
                continue;
            notice(encounter, holder.id, condition_text(rulebook, active) + " ends");
            ending.emplace_back(holder.id, active.id);
        }
    }
    for (const auto& [holder, condition] : ending)
        end_condition(encounter, rulebook, holder, condition);
}

} // namespace

bool delay_turn(Encounter& encounter, const Rulebook& rulebook) {
    Combatant* combatant = find_combatant(encounter, encounter.current);
    if (encounter.phase != Phase::running || combatant == nullptr ||
        !can_delay(rulebook, *combatant))
        return false;
    // Alone in the order there is nobody to wait for.
    if (encounter.order.size() < 2) return false;
    encounter.notices.clear();
    const Id id = combatant->id;
    end_of_turn_costs(encounter, rulebook, *combatant);
    end_helpful_effects(encounter, rulebook, id);
    leave_order(encounter, rulebook, id, Standing::delaying);
    return true;
}

bool return_from_delay(Encounter& encounter, const Rulebook& rulebook, Id id) {
    Combatant* combatant = find_combatant(encounter, id);
    if (encounter.phase != Phase::running || combatant == nullptr ||
        combatant->standing != Standing::delaying)
        return false;
    encounter.notices.clear();
    const Id followed = encounter.current;
    if (Combatant* current = find_combatant(encounter, followed)) {
        end_of_turn(encounter, rulebook, *current);
        combatant->initiative = current->initiative;
    }
    std::vector<Id> line = line_of(encounter);
    std::erase(line, id);
    const auto place = std::find(line.begin(), line.end(), followed);
    line.insert(place == line.end() ? place : place + 1, id);
    combatant->standing = Standing::in_order;
    combatant->has_acted = false;
    leave_group(encounter, id);
    set_line(encounter, line);
    encounter.current = id;
    notice(
        encounter,
        id,
        "Returns from delaying with " + std::to_string(combatant->actions_left) + " actions"
    );
    return true;
}

} // namespace game
