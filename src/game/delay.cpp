// Delay and return. Source: Player Core (ORC), Delay; the wording of its costs is from memory:
// persistent damage of the turn's end happens at once, helpful effects of the GM's own wording that
// would end at the end of this turn end at once, everything else waits for the real end of the
// turn.
#include "game/conditions.h"
#include "game/effects.h"
#include "game/turn_steps.h"
#include "game/turns.h"

#include <algorithm>

namespace game {

using rules::Rulebook;

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
    const std::vector<ActiveCondition> before = combatant->conditions;
    for (const ActiveCondition& active : before) {
        const bool ends_now = active.key.empty() && !active.is_paused &&
                              active.duration.whose_turn == id &&
                              active.duration.kind == DurationKind::until_turn &&
                              active.duration.edge == TurnEdge::end;
        if (!ends_now) continue;
        notice(encounter, id, condition_text(rulebook, active) + " ends");
        end_condition(encounter, rulebook, id, active.id);
    }
    // Whoever delays behind another that delays comes back behind that one.
    const std::size_t place = position_in_order(encounter, id);
    Id behind = place == 0 ? base::no_id : encounter.order[place - 1];
    for (bool is_found = true; is_found;) {
        is_found = false;
        for (const Combatant& other : encounter.combatants) {
            if (other.standing != Standing::delaying || other.delayed_after != behind) continue;
            behind = other.id;
            is_found = true;
            break;
        }
    }
    leave_order(encounter, rulebook, id, Standing::delaying);
    find_combatant(encounter, id)->delayed_after = behind;
    return true;
}

bool return_from_delay(Encounter& encounter, const Rulebook& rulebook, Id id) {
    Combatant* combatant = find_combatant(encounter, id);
    Combatant* current = find_combatant(encounter, encounter.current);
    if (encounter.phase != Phase::running || combatant == nullptr ||
        combatant->standing != Standing::delaying)
        return false;
    encounter.notices.clear();
    const Id followed = encounter.current;
    if (current != nullptr) end_of_turn(encounter, rulebook, *current);
    combatant = find_combatant(encounter, id);
    for (Combatant& other : encounter.combatants) {
        if (other.standing == Standing::delaying && other.delayed_after == id)
            other.delayed_after = combatant->delayed_after;
    }
    const std::size_t place = position_in_order(encounter, followed);
    const std::size_t behind = place == encounter.order.size() ? place : place + 1;
    encounter.order.insert(encounter.order.begin() + static_cast<std::ptrdiff_t>(behind), id);
    combatant->standing = Standing::in_order;
    combatant->delayed_after = base::no_id;
    combatant->group = base::no_id;
    if (current != nullptr) combatant->initiative = find_combatant(encounter, followed)->initiative;
    combatant->has_acted = false;
    encounter.current = id;
    notice(
        encounter,
        id,
        "Returns from delaying with " + std::to_string(combatant->actions_left) + " actions"
    );
    return true;
}

} // namespace game
