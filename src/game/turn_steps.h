// The steps that turns are made of, shared by the files of the turn logic (turns, delay, dying,
// timers). Nothing outside src/game needs them.
#pragma once

#include "game/encounter.h"
#include "rules/rulebook.h"

#include <string>

namespace game {

// Adds a notice to those of the current change of turn.
void notice(Encounter& encounter, Id combatant, const std::string& text);

// Position in `order`, or order.size().
std::size_t position_in_order(const Encounter& encounter, Id combatant);

// What the rules do at the start / the end of this combatant's turn: timers, fading values,
// prompts, actions.
void start_of_turn(Encounter& encounter, const rules::Rulebook& rulebook, Combatant& combatant);
void end_of_turn(Encounter& encounter, const rules::Rulebook& rulebook, Combatant& combatant);

// What delaying does not spare it: the persistent damage of this turn's end, now.
void end_of_turn_costs(Encounter& encounter, const rules::Rulebook& rulebook, Combatant& combatant);

// Runs down the timers counted at this edge of that combatant's turn, on everybody.
void run_turn_timers(
    Encounter& encounter, const rules::Rulebook& rulebook, Id whose, TurnEdge edge
);

// Runs down what counts at the top of the round, and timed ones by a round's seconds.
void run_round_timers(Encounter& encounter, const rules::Rulebook& rulebook);

// The next round: the count, the clock, its timers; nobody has acted yet.
void begin_round(Encounter& encounter, const rules::Rulebook& rulebook);

// Makes the one that follows `from` current and starts its turn: a delaying one whose whole round
// has passed, the next in the order, or the first of the next round. Whoever has acted this round
// is passed over.
void step_on(Encounter& encounter, const rules::Rulebook& rulebook, Id from);

// The same from a place in the order on; `except` has only just begun to delay and does not come
// back yet.
void continue_at(
    Encounter& encounter, const rules::Rulebook& rulebook, std::size_t place, Id except
);

// Hands the timers counted on this combatant's turn to somebody else before it leaves the order for
// good.
void hand_over_timers(Encounter& encounter, Id leaving);

// Takes it out of the order; if it was its turn, the next one becomes current and starts its turn.
void leave_order(
    Encounter& encounter, const rules::Rulebook& rulebook, Id combatant, Standing standing
);

// Puts it back into the order where its initiative stands.
void enter_order(Encounter& encounter, const rules::Rulebook& rulebook, Id combatant);

// Drops prompts about this combatant (and about one condition, unless no_id).
void drop_prompts(Encounter& encounter, Id combatant, Id condition);

// Falls to 0 HP, dying and death: see hurt.h.
std::string fall_at_zero(
    Encounter& encounter,
    const rules::Rulebook& rulebook,
    Combatant& combatant,
    bool is_critical,
    bool is_nonlethal
);
// Dying rises; dead at the threshold. Returns what is to be said ("dying 2", "dies").
std::string
raise_dying(Encounter& encounter, const rules::Rulebook& rulebook, Combatant& combatant, int by);
void die(Encounter& encounter, const rules::Rulebook& rulebook, Combatant& combatant);
std::string add_failed_death_saves(
    Encounter& encounter, const rules::Rulebook& rulebook, Combatant& combatant, int failures
);
void end_concentration(Encounter& encounter, Combatant& combatant, const std::string& why);

// Removes stored conditions with this key, without any rule attached.
void erase_conditions(Combatant& combatant, const std::string& key);

} // namespace game
