#include "game/turns.h"

#include "game/effects.h"
#include "game/turn_steps.h"

#include <algorithm>

namespace game {

namespace {

using rules::RollMode;
using rules::Rulebook;

constexpr int attacks_max = 9;

// The delaying combatant that waits directly behind `from`, or nullptr; `except` has only just
// begun to delay.
Combatant* waiting_behind(Encounter& encounter, Id from, Id except) {
    const auto found = std::find_if(
        encounter.combatants.begin(),
        encounter.combatants.end(),
        [&](const Combatant& each) {
            return each.standing == Standing::delaying && each.delayed_after == from &&
                   each.id != except;
        }
    );
    return found == encounter.combatants.end() ? nullptr : &*found;
}

// A whole round has passed: the delayed turn is lost, and it is back at its old place with a new
// turn. Source: Player Core (ORC), Delay (from memory).
void take_back(
    Encounter& encounter, const Rulebook& rulebook, Combatant& combatant, std::size_t place
) {
    const Id id = combatant.id;
    const Id behind = std::exchange(combatant.delayed_after, base::no_id);
    encounter.order.insert(encounter.order.begin() + static_cast<std::ptrdiff_t>(place), id);
    combatant.standing = Standing::in_order;
    for (Combatant& other : encounter.combatants) {
        if (other.standing == Standing::delaying && other.delayed_after == behind)
            other.delayed_after = id;
    }
    notice(encounter, id, "Delayed a whole round: that turn is lost");
    end_of_turn(encounter, rulebook, combatant);
    encounter.current = id;
    start_of_turn(encounter, rulebook, combatant);
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
    for (Combatant& combatant : encounter.combatants)
        combatant.has_acted = false;
    encounter.current = encounter.order.front();
    start_of_turn(encounter, rulebook, *find_combatant(encounter, encounter.current));
    return true;
}

void continue_at(Encounter& encounter, const Rulebook& rulebook, std::size_t place, Id except) {
    encounter.current = base::no_id;
    // Each pass moves on by one place; a round and its wrap are all that can be needed.
    for (std::size_t passes = 2 * encounter.order.size() + 2;
         passes > 0 && !encounter.order.empty();
         --passes) {
        if (place >= encounter.order.size()) {
            begin_round(encounter, rulebook);
            place = 0;
            if (Combatant* first = waiting_behind(encounter, base::no_id, except)) {
                take_back(encounter, rulebook, *first, 0);
                return;
            }
        }
        Combatant& next = *find_combatant(encounter, encounter.order[place]);
        if (!next.has_acted) {
            encounter.current = next.id;
            start_of_turn(encounter, rulebook, next);
            return;
        }
        place += 1;
        if (Combatant* waiting = waiting_behind(encounter, next.id, except)) {
            take_back(encounter, rulebook, *waiting, place);
            return;
        }
    }
}

void step_on(Encounter& encounter, const Rulebook& rulebook, Id from) {
    const std::size_t place =
        std::min(position_in_order(encounter, from) + 1, encounter.order.size());
    if (Combatant* waiting = waiting_behind(encounter, from, base::no_id)) {
        take_back(encounter, rulebook, *waiting, place);
        return;
    }
    continue_at(encounter, rulebook, place, base::no_id);
}

std::string advance_turn(Encounter& encounter, const Rulebook& rulebook) {
    if (!is_running(encounter) || encounter.order.empty()) return {};
    encounter.notices.clear();
    const Id ended = encounter.current;
    if (Combatant* combatant = find_combatant(encounter, ended))
        end_of_turn(encounter, rulebook, *combatant);
    if (encounter.order.empty()) return {};
    if (encounter.current == ended) step_on(encounter, rulebook, ended);
    const Combatant* current = find_combatant(encounter, encounter.current);
    return current == nullptr ? std::string()
                              : "Round " + std::to_string(encounter.round) + ": " + current->name;
}

Id upcoming(const Encounter& encounter, int steps) {
    if (encounter.order.empty() || steps < 0) return base::no_id;
    // The order with those that delay at their old places, since they come back there.
    std::vector<Id> whole;
    const auto add_waiting = [&](Id behind) {
        for (bool is_found = true; is_found;) {
            is_found = false;
            for (const Combatant& combatant : encounter.combatants) {
                const bool is_listed =
                    std::find(whole.begin(), whole.end(), combatant.id) != whole.end();
                if (combatant.standing != Standing::delaying || combatant.delayed_after != behind ||
                    is_listed)
                    continue;
                whole.push_back(combatant.id);
                behind = combatant.id;
                is_found = true;
                break;
            }
        }
    };
    add_waiting(base::no_id);
    for (const Id id : encounter.order) {
        whole.push_back(id);
        add_waiting(id);
    }
    const auto here = std::find(whole.begin(), whole.end(), encounter.current);
    std::size_t place =
        here == whole.end() ? whole.size() - 1 : static_cast<std::size_t>(here - whole.begin());
    if (here == whole.end() && steps == 0) return base::no_id;
    // Whoever has acted this round is passed over until the round ends.
    bool is_this_round = true;
    for (std::size_t guard = 0;
         steps > 0 && guard < whole.size() * static_cast<std::size_t>(steps + 2);
         ++guard) {
        place += 1;
        if (place >= whole.size()) {
            place = 0;
            is_this_round = false;
        }
        const Combatant* combatant = find_combatant(encounter, whole[place]);
        const bool is_delaying = combatant->standing == Standing::delaying;
        if (is_this_round && (is_delaying || combatant->has_acted)) continue;
        steps -= 1;
    }
    return whole[place];
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
    if (combatant == nullptr || (combatant->standing == Standing::defeated) == is_defeated) return;
    if (is_defeated) {
        leave_order(encounter, rulebook, id, Standing::defeated);
        drop_prompts(encounter, id, base::no_id);
    } else {
        combatant->is_dead = false;
        enter_order(encounter, rulebook, id);
    }
}

void remove_combatant(Encounter& encounter, const Rulebook& rulebook, Id id) {
    Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr) return;
    const bool is_party = combatant->character != base::no_id;
    leave_order(encounter, rulebook, id, Standing::absent);
    drop_prompts(encounter, id, base::no_id);
    leave_group(encounter, id);
    if (is_party) return;
    std::erase_if(encounter.combatants, [id](const Combatant& each) { return each.id == id; });
    std::erase_if(encounter.notices, [id](const Notice& each) { return each.combatant == id; });
    for (Combatant& other : encounter.combatants) {
        for (ActiveCondition& active : other.conditions) {
            if (active.source == id) active.source = base::no_id;
        }
    }
}

} // namespace game
