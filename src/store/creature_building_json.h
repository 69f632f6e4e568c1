// Reads what creatures are built from out of a rulebook's tables: bands per level, hazards, the
// elite and weak step, statistics per challenge rating. Only the reader of rulebooks uses it.
#pragma once

#include "rules/rulebook.h"
#include "store/rulebook_spot.h"

#include <array>
#include <string_view>
#include <utility>

namespace store {

inline constexpr std::array band_words = {
    std::pair{std::string_view("terrible"), rules::Band::terrible},
    std::pair{std::string_view("low"), rules::Band::low},
    std::pair{std::string_view("moderate"), rules::Band::moderate},
    std::pair{std::string_view("typical"), rules::Band::typical},
    std::pair{std::string_view("high"), rules::Band::high},
    std::pair{std::string_view("extreme"), rules::Band::extreme},
    std::pair{std::string_view("untrained"), rules::Band::untrained},
    std::pair{std::string_view("trained"), rules::Band::trained},
    std::pair{std::string_view("expert"), rules::Band::expert},
};

// Fills rulebook.creature_building; family, damage, stats and conditions must be read already.
// Throws Wrong.
void read_creature_building(const Spot& top, rules::Rulebook& rulebook);

// The part of it under "archetypes".
void read_archetypes(const Spot& spot, rules::Rulebook& rulebook);

} // namespace store
