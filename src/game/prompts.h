// What the rules ask for at a change of turn: recovery checks, death saves, persistent damage,
// checks that end a condition, concentration. A prompt stays until it is answered with a roll or
// set aside.
#pragma once

#include "game/encounter.h"
#include "rules/dice.h"
#include "rules/rulebook.h"

#include <string>

namespace game {

const Prompt* find_prompt(const Encounter& encounter, Id prompt);

// Answers it. `rolled` is the natural d20 for checks and the total for persistent damage; both a
// roll of the program and a number typed by the GM come in here. Returns one line of what came of
// it: "Bram's recovery check 14 against 11: dying 1". Out-of-range rolls are refused with an empty
// text.
std::string
answer_prompt(Encounter& encounter, const rules::Rulebook& rulebook, Id prompt, int rolled);

// A roll for it: d20 (the better or worse of two at advantage or disadvantage), or the dice of
// persistent damage.
int roll_for_prompt(const Prompt& prompt, rules::Dice& dice);

// Persistent damage helped by someone: its flat check uses the lower DC. Other prompts are
// unchanged.
void help_prompt(Encounter& encounter, const rules::Rulebook& rulebook, Id prompt);

void set_prompt_aside(Encounter& encounter, Id prompt);

} // namespace game
