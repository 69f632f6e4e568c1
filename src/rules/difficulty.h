// Difficulty classes asked of the rulebook: by level, spell rank, proficiency or plain words, moved
// by steps and rarity. Sources: GM Core (ORC), tables DCs by Level, Simple DCs, DC Adjustments;
// SRD 5.1, Ability Checks / Typical Difficulty Classes.
#pragma once

#include "base/result.h"
#include "rules/rulebook.h"

#include <string>
#include <string_view>
#include <vector>

namespace rules {

// One list of DCs as a screen shows it.
struct DcList {
    std::string title;  // "By level"
    std::string source; // document title
    std::vector<NamedDc> rows;
    std::vector<std::string> pointers; // as rows: where each stands, for is_house_ruled
    bool is_by_level = false;          // the keys are levels, so the party's own can be found

    bool operator==(const DcList&) const = default;
};

// Every list of the rulebook, each DC moved by `adjustment` (from dc_adjustment). four-degree: by
// level, by spell rank, simple DCs; srd5: typical DCs, saves against traps at least and at most. A
// key of the first two is the number in digits.
std::vector<DcList> dc_lists(const Rulebook& rulebook, int adjustment = 0);

// What a trap does to a character of this level, or nullptr: the rulebook has no such row.
const TrapDamage* trap_damage(const Rulebook& rulebook, int level);

// What these steps and rarities ("hard", "rare") add up to; 0 for none. Error (not_found): a key
// that the rulebook does not have; srd5 has none at all.
base::Result<int> dc_adjustment(const Rulebook& rulebook, const std::vector<std::string>& keys);

// Did the GM replace what this step or rarity adds?
bool is_house_ruled_adjustment(const Rulebook& rulebook, std::string_view key);

// The DC of a level (0 to 25) or a spell rank (1 to 10) with adjustments. Errors: out_of_range, the
// table has no such row; not_possible in srd5, which has no such table; not_found as above.
base::Result<int>
dc_for_level(const Rulebook& rulebook, int level, const std::vector<std::string>& adjustments = {});
base::Result<int> dc_for_spell_rank(
    const Rulebook& rulebook, int rank, const std::vector<std::string>& adjustments = {}
);

// The simple DC of a proficiency rank ("expert"), or the typical DC of srd5 ("very_hard"), with
// adjustments. Error (not_found): no such key.
base::Result<int> simple_dc(
    const Rulebook& rulebook, std::string_view key, const std::vector<std::string>& adjustments = {}
);

} // namespace rules
