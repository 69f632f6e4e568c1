#include "game/turns.h"

#include "game/effects.h"
#include "game/reminding.h"
#include "game/turn_steps.h"

#include <algorithm>

namespace game {

namespace {

using rules::RollMode;
using rules::Rulebook;

constexpr int attacks_max = 9;

// A whole round has passed: the delayed turn is lost, and it is back at its old place with a new
// turn. Source: Player Core (ORC), Delay (from memory).
void take_back(Encounter& encounter, const Rulebook& rulebook, Id id) {
    const std::vector<Id> line = line_of(encounter);
    find_combatant(encounter, id)->standing = Standing::in_order;
    set_line(encounter, line);
    notice(encounter, id, "Delayed a whole round: that turn is lost");
    end_of_turn(encounter, rulebook, *find_combatant(encounter, id));
    encounter.current = id;
    start_of_turn(encounter, rulebook, *find_combatant(encounter, id));
}

bool is_running(const Encounter& encounter) {
    return encounter.phase == Phase::running;
}

std::optional<Id> first_of_group(const Encounter& encounter, Id group) {
    for (const Combatant& combatant : encounter.combatants) {
        if (combatant.group == group && group != base::no_id) return combatant.id;
    }
    return std::nullopt;
}

} // namespace

int initiative_modifier(const Rulebook& rulebook, const Combatant& combatant) {
    return effective_check(rulebook, combatant, "initiative").total;
}

int roll_initiative(Encounter& encounter, const Rulebook& rulebook, Id id, rules::Dice& dice) {
    const Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr) return 0;
    // A group rolls once, with the numbers of its first member.
    combatant = find_combatant(encounter, first_of_group(encounter, combatant->group).value_or(id));
    const EffectiveNumber number = effective_check(rulebook, *combatant, "initiative");
    int rolled = dice.d20();
    if (number.mode != RollMode::normal) {
        const int second = dice.d20();
        rolled = number.mode == RollMode::advantage ? std::max(rolled, second)
                                                    : std::min(rolled, second);
    }
    const int total = rolled + number.total;
    set_initiative(encounter, rulebook, id, total);
    return total;
}

void roll_missing_initiative(
    Encounter& encounter, const Rulebook& rulebook, rules::Dice& dice, std::optional<Side> only
) {
    std::vector<Id> missing;
    for (const Combatant& combatant : encounter.combatants) {
        const bool is_wanted = !only || combatant.side == *only;
        if (is_wanted && combatant.standing == Standing::in_order && !combatant.initiative)
            missing.push_back(combatant.id);
    }
    for (const Id id : missing) {
        if (!find_combatant(encounter, id)->initiative)
            roll_initiative(encounter, rulebook, id, dice);
    }
}

void set_initiative_stat(Encounter& encounter, Id id, const std::string& stat) {
    if (Combatant* combatant = find_combatant(encounter, id)) combatant->initiative_stat = stat;
}

bool begin_fight(Encounter& encounter, const Rulebook& rulebook) {
    if (is_running(encounter)) return false;
    bool is_ready = false;
    for (const Combatant& combatant : encounter.combatants) {
        if (combatant.standing != Standing::in_order) continue;
        if (!combatant.initiative) return false;
        is_ready = true;
    }
    if (!is_ready) return false;
    sort_order(encounter, rulebook);
    encounter.phase = Phase::running;
    encounter.round = 1;
    encounter.elapsed_seconds = 0;
    encounter.notices.clear();
    encounter.called.clear();
    for (Combatant& combatant : encounter.combatants)
        combatant.has_acted = false;
    encounter.current = encounter.order.front();
    start_of_turn(encounter, rulebook, *find_combatant(encounter, encounter.current));
    return true;
}

void next_turn(Encounter& encounter, const Rulebook& rulebook) {
    encounter.current = base::no_id;
    for (const bool is_this_round : {true, false}) {
        if (!is_this_round) begin_round(encounter, rulebook);
        const std::vector<Id> line = line_of(encounter);
        if (line.empty()) return;
        for (const Id id : line) {
            Combatant& next = *find_combatant(encounter, id);
            if (next.has_acted) continue;
            if (next.standing == Standing::delaying) {
                take_back(encounter, rulebook, id);
                return;
            }
            encounter.current = id;
            start_of_turn(encounter, rulebook, next);
            return;
        }
    }
}

std::string advance_turn(Encounter& encounter, const Rulebook& rulebook) {
    if (!is_running(encounter) || line_of(encounter).empty()) return {};
    encounter.notices.clear();
    encounter.called.clear();
    const Id ended = encounter.current;
    if (Combatant* combatant = find_combatant(encounter, ended))
        end_of_turn(encounter, rulebook, *combatant);
    if (encounter.current == ended) next_turn(encounter, rulebook);
    const Combatant* current = find_combatant(encounter, encounter.current);
    return current == nullptr ? std::string()
                              : "Round " + std::to_string(encounter.round) + ": " + current->name;
}

Id upcoming(const Encounter& encounter, int steps) {
    if (steps < 0) return base::no_id;
    if (steps == 0) return encounter.current;
    // Those that delay count at their old places, since they come back there.
    const std::vector<Id> line = line_of(encounter);
    if (line.empty()) return base::no_id;
    auto left = static_cast<std::size_t>(steps);
    for (const Id id : line) {
        if (id == encounter.current || find_combatant(encounter, id)->has_acted) continue;
        left -= 1;
        if (left == 0) return id;
    }
    return line[(left - 1) % line.size()]; // in a round to come everybody acts
}

void ready_action(Encounter& encounter, Id id, const std::string& text) {
    if (Combatant* combatant = find_combatant(encounter, id)) combatant->readied = text;
}

bool use_readied(Encounter& encounter, const Rulebook& rulebook, Id id) {
    Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr || combatant->readied.empty() || combatant->reaction_used)
        return false;
    if (!can_react(rulebook, *combatant)) return false;
    combatant->readied.clear();
    combatant->reaction_used = true;
    return true;
}

void spend_action(Encounter& encounter, Id id, int actions) {
    Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr) return;
    combatant->actions_left =
        std::clamp(combatant->actions_left - actions, 0, std::max(combatant->actions_total, 0));
}

void set_reaction_used(Encounter& encounter, Id id, bool is_used) {
    if (Combatant* combatant = find_combatant(encounter, id)) combatant->reaction_used = is_used;
}

void set_attacks_made(Encounter& encounter, Id id, int attacks) {
    if (Combatant* combatant = find_combatant(encounter, id))
        combatant->attacks_made = std::clamp(attacks, 0, attacks_max);
}

void use_reminder(Encounter& encounter, Id id, Id reminder, int change) {
    Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr) return;
    int most = 0;
    for (const Reminder& each : combatant->reminders) {
        if (each.id == reminder) most = each.uses;
    }
    int& used = combatant->reminders_used[reminder];
    used = std::clamp(used + change, 0, most);
    if (used == 0) combatant->reminders_used.erase(reminder);
    if (change > 0) set_reminder_aside(encounter, id, reminder);
}

void set_hidden(Encounter& encounter, Id id, bool is_hidden) {
    if (Combatant* combatant = find_combatant(encounter, id)) combatant->is_hidden = is_hidden;
}

void set_note(Encounter& encounter, Id id, const std::string& note) {
    if (Combatant* combatant = find_combatant(encounter, id)) combatant->note = note;
}

void rename_combatant(Encounter& encounter, Id id, const std::string& name) {
    Combatant* combatant = find_combatant(encounter, id);
    if (combatant != nullptr && !name.empty()) combatant->name = name;
}

void set_defeated(Encounter& encounter, const Rulebook& rulebook, Id id, bool is_defeated) {
    Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr) return;
    if (!is_defeated) combatant->is_dead = false; // between fights too
    if ((combatant->standing == Standing::defeated) == is_defeated) return;
    if (is_defeated)
        leave_order(encounter, rulebook, id, Standing::defeated);
    else
        enter_order(encounter, rulebook, id);
}

void remove_combatant(Encounter& encounter, const Rulebook& rulebook, Id id) {
    Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr) return;
    const bool is_party = combatant->character != base::no_id;
    leave_order(encounter, rulebook, id, Standing::absent);
    leave_group(encounter, id);
    if (is_party) return;
    std::erase_if(encounter.combatants, [id](const Combatant& each) { return each.id == id; });
    std::erase_if(encounter.notices, [id](const Notice& each) { return each.combatant == id; });
    std::erase_if(encounter.called, [id](const CalledReminder& each) {
        return each.combatant == id;
    });
    forget_gone(encounter);
}

} // namespace game
