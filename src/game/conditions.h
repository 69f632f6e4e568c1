// Conditions on combatants: giving, changing, ending them, and the timers that run on them.
#pragma once

#include "game/encounter.h"
#include "rules/rulebook.h"

#include <string>
#include <vector>

namespace game {

// Gives a condition (its id is assigned here). A condition gained twice keeps the higher value and
// the longer timer; persistent damage is kept once per damage type, the higher mean replaces the
// lower; effects worded by the GM are kept beside each other. What the condition brings when gained
// happens at once (falls prone, loses HP). Refused (false) when the combatant is immune or unknown.
// Returns true otherwise.
bool add_condition(
    Encounter& encounter, const rules::Rulebook& rulebook, Id combatant, ActiveCondition condition
);

// Sets the value; 0 or less ends it. Dying that ends adds wounded (four-degree).
void set_condition_value(
    Encounter& encounter, const rules::Rulebook& rulebook, Id combatant, Id condition, int value
);

// Ends a condition, with what the rules attach to its end.
void end_condition(
    Encounter& encounter, const rules::Rulebook& rulebook, Id combatant, Id condition
);

void pause_condition(Encounter& encounter, Id combatant, Id condition, bool is_paused);

void set_condition_duration(
    Encounter& encounter, Id combatant, Id condition, const Duration& duration
);

// Adds rounds (or 6-second steps of a timed one) to a running timer; negative shortens it, never
// below 1.
void extend_condition(
    Encounter& encounter, const rules::Rulebook& rulebook, Id combatant, Id condition, int rounds
);

// "frightened 2", "persistent 1d6 fire", "Shield raised".
std::string condition_text(const rules::Rulebook& rulebook, const ActiveCondition& condition);

// How it ends, short: "end of turn", "2 rounds", "1 min", "until rest", "DC 15 flat", "until
// ended".
std::string duration_text(
    const Encounter& encounter, const rules::Rulebook& rulebook, const ActiveCondition& condition
);

// One running timer, for the list of all of them.
struct RunningTimer {
    Id combatant = base::no_id;
    Id condition = base::no_id;
    // In-world seconds until it can end, counted in turns: soonest first. Large for open-ended
    // ones.
    long long seconds_to_end = 0;

    bool operator==(const RunningTimer&) const = default;
};

// Every condition with a timer, a check or a fading value, across all combatants, soonest first;
// then by turn order. Conditions that only the GM ends come last when `with_open_ended`.
std::vector<RunningTimer>
running_timers(const Encounter& encounter, const rules::Rulebook& rulebook, bool with_open_ended);

// Time passes outside turns: runs the timed ones down. Returns what ended, as notices.
std::vector<Notice> pass_time(Encounter& encounter, const rules::Rulebook& rulebook, int seconds);

// A night's (long) rest for this combatant: until_rest conditions end, doomed, drained, fatigued
// and exhaustion recover as the rulebook says. HP are not changed here.
void rest_conditions(Encounter& encounter, const rules::Rulebook& rulebook, Id combatant);

} // namespace game
