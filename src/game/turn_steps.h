// The steps that turns are made of, shared by the files of the turn logic (turns, delay, dying,
// timers). Nothing outside src/game needs them.
#pragma once

#include "game/encounter.h"
#include "rules/rulebook.h"

#include <string>
#include <vector>

namespace game {

struct Damage;

// Adds a notice to those of the current change of turn.
void notice(Encounter& encounter, Id combatant, const std::string& text);

// ", at advantage", ", at disadvantage", or nothing: how a roll is asked for.
std::string mode_words(rules::RollMode mode);

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

// Makes the next one current and starts its turn: the first in the line that has not acted this
// round, or the first of the next round. So whoever is moved by hand, by a new initiative or into a
// group loses no turn and gets no second one. A delaying one whose whole round has passed is taken
// back into the order when its old place comes up.
void next_turn(Encounter& encounter, const rules::Rulebook& rulebook);

// The line: the order, and those that delay at the places they left. Setting it writes `order` and
// `delayed_after`; who is neither in the order nor delaying is left out.
std::vector<Id> line_of(const Encounter& encounter);
void set_line(Encounter& encounter, const std::vector<Id>& line);

// Moves it directly before that one in the line (no_id or nobody in it: to the end).
void put_in_line(Encounter& encounter, Id combatant, Id before);

// Hands the timers counted on this combatant's turn to its neighbours before it leaves the order
// for good.
void hand_over_timers(Encounter& encounter, Id leaving);

// Forgets everything in conditions that points at combatants which are gone: who caused them, and
// whose turn they count (then the top of the round counts).
void forget_gone(Encounter& encounter);

// Takes it out of the order and, unless it delays, drops what is asked of it; if it was its turn,
// the next one becomes current and starts its turn.
void leave_order(
    Encounter& encounter, const rules::Rulebook& rulebook, Id combatant, Standing standing
);

// Puts it (back) into the order where its initiative stands; if nobody's turn was running, one
// starts.
void enter_order(Encounter& encounter, const rules::Rulebook& rulebook, Id combatant);

// Drops prompts about this combatant (and about one condition, unless no_id).
void drop_prompts(Encounter& encounter, Id combatant, Id condition);

// hurt() for damage that belongs to the turn of `whose_turn`, even if it is rolled later: the
// persistent damage of its own turn's end.
std::string hurt_in_turn_of(
    Encounter& encounter,
    const rules::Rulebook& rulebook,
    Id combatant,
    const Damage& damage,
    Id whose_turn
);

// Falls to 0 HP in the turn of `whose_turn`, dying and death: see hurt.h.
struct Fall {
    bool is_critical = false;
    bool is_nonlethal = false;
    Id whose_turn = base::no_id;
};

std::string fall_at_zero(
    Encounter& encounter, const rules::Rulebook& rulebook, Combatant& combatant, const Fall& fall
);
// Gains dying (four-degree): 1 or 2, and the wounded value on top. Returns "is dying 2" or "dies".
std::string
gain_dying(Encounter& encounter, const rules::Rulebook& rulebook, Id combatant, bool is_critical);
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
