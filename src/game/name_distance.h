// How many slips of the pen lie between two names.
#pragma once

#include <cstddef>
#include <string_view>

namespace game {

// Insertions, deletions, replacements and swaps of neighbours that turn one into the other, no
// letter touched twice: the restricted Damerau-Levenshtein distance (optimal string alignment).
// The unrestricted one differs only where letters come between two swapped ones ("ca", "abc"); such
// names are not taken for each other, and this one needs no table of the alphabet.
std::size_t edit_distance(std::u32string_view one, std::u32string_view other);

// Whether that distance is at most `slips`; fast for the few that matter.
bool are_within_slips(std::u32string_view one, std::u32string_view other, std::size_t slips);

} // namespace game
