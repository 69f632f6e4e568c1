// Reads the conditions of a rulebook: what they do, checked so far that nothing a GM writes there
// is silently without effect.
#pragma once

#include "rules/rulebook.h"
#include "store/rulebook_spot.h"

namespace store {

// Fills rulebook.conditions, sorted by name, from {"list": [...]}; family, edition and stats must
// be read already. Throws Wrong.
void read_conditions(const Spot& conditions, rules::Rulebook& rulebook);

// The key of an edition's part of the tables: "srd_5_1".
std::string edition_key(rules::SrdEdition edition);

} // namespace store
