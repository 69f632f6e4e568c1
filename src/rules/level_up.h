// Experience points and the levels they lead to. Sources: GM Core (ORC), experience points (from
// memory) and table XP Awards; SRD 5.1, Beyond 1st Level / Character Advancement.
#pragma once

#include "base/result.h"
#include "rules/rulebook.h"

#include <optional>
#include <string_view>

namespace rules {

// A character after gaining XP. four-degree counts XP from the last level on and starts again at
// each; srd5 counts all XP ever gained.
struct LevelUp {
    int level = 1;
    int xp = 0; // what stands on the sheet now
    int levels_gained = 0;
    std::optional<int> xp_to_next; // XP still missing for the next level; none at the last one

    bool operator==(const LevelUp&) const = default;
};

// Adds `gained` XP to a character of this level whose sheet says `xp`. four-degree: each level
// takes the XP of the pace ("standard", "fast", "slow"; empty: the first one), the rest carries
// over; at the last level XP only adds up. srd5: the level whose XP is reached, never below the
// present one (it may have been granted without XP); pace must be empty. Takes 0 for `gained` to
// ask for xp_to_next. Errors: out_of_range (level outside 1..20, negative XP, sums past 100
// million), not_found (no such pace).
base::Result<LevelUp>
gain_xp(const Rulebook& rulebook, int level, int xp, int gained, std::string_view pace = {});

} // namespace rules
