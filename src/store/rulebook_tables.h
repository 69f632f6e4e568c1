// Reads the tables of a rulebook by meaning, each into its part of rules::Rulebook; family and
// edition must be read already. A missing row, a wrong type or a number out of range throws Wrong.
#pragma once

#include "rules/rulebook.h"
#include "store/rulebook_spot.h"

namespace store {

// `top` is the whole rulebook; each takes the keys it knows.
void read_turn_tables(const Spot& top, rules::Rulebook& rulebook);
void read_difficulty_tables(const Spot& top, rules::Rulebook& rulebook);
void read_encounter_tables(const Spot& top, rules::Rulebook& rulebook);
void read_advancement_tables(const Spot& top, rules::Rulebook& rulebook);
void read_wealth_tables(const Spot& top, rules::Rulebook& rulebook);
void read_recovery_tables(const Spot& top, rules::Rulebook& rulebook); // after the conditions

// A value that may differ by edition: {"srd_5_1": ..., "srd_5_2_1": ...}.
Spot by_edition(const Spot& spot, rules::SrdEdition edition);

} // namespace store
