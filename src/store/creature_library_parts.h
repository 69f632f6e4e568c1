// The parts of a library entry: damage, attacks, routines and saves. Only the reader of the library
// uses it; everything throws Wrong.
#pragma once

#include "game/library_creature.h"
#include "rules/rulebook.h"
#include "store/rulebook_spot.h"

#include <string>
#include <vector>

namespace store {

inline constexpr int distance_max = 10000; // feet

bool is_stat_of(const std::vector<rules::StatName>& stats, const std::string& key);
bool is_damage_type(const rules::Rulebook& rulebook, const std::string& type);

// Dice that can be read, a damage type of the rulebook, a list of texts (empty without the key).
std::string dice_text(const Spot& spot);
std::string damage_type(const Spot& spot, const rules::Rulebook& rulebook);
std::vector<std::string> texts_or_none(const Spot& entry, const char* key);

game::LibraryAttack read_library_attack(const Spot& entry, const rules::Rulebook& rulebook);

// The routines and save effects of an entry whose attacks are read already.
void read_routines(const Spot& entry, game::LibraryCreature& creature);
void read_save_effects(
    const Spot& entry, const rules::Rulebook& rulebook, game::LibraryCreature& creature
);

} // namespace store
