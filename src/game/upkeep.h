// What the GM's hand keeps beside the rules: what a caster concentrates on, death saves counted at
// the table.
#pragma once

#include "game/encounter.h"
#include "rules/rulebook.h"

#include <string>

namespace game {

// An empty text ends it; prompts about it go too.
void set_concentration(Encounter& encounter, Id combatant, const std::string& on_what);

// Counts as they lie on the table, from 0. As many as the rulebook asks for make it stable, or
// dead.
void set_death_saves(
    Encounter& encounter, const rules::Rulebook& rulebook, Id combatant, int successes, int failures
);

} // namespace game
