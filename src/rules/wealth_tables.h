// What a rulebook expects a party to own and what a character can carry, as plain values. Part of
// Rulebook; rules/wealth.h asks them.
#pragma once

#include <string>
#include <vector>

namespace rules {

// four-degree: what a party of `WealthTables::party_size` finds in the course of one level.
struct LevelTreasure {
    int level = 0;
    int total_gp = 0;    // items and money together
    int currency_gp = 0; // the money in it
    int currency_gp_per_added = 0;

    bool operator==(const LevelTreasure&) const = default;
};

// four-degree: what a character that is made new at a level owns, all in money.
struct NewWealth {
    int level = 0;
    int lump_sum_gp = 0;

    bool operator==(const NewWealth&) const = default;
};

struct WealthTables {
    int party_size = 4;
    std::vector<LevelTreasure>
        by_level; // four-degree: levels 1 to 20; empty: the rulebook has none
    std::vector<NewWealth> new_character;
    std::string by_level_source; // document titles
    std::string new_character_source;
    int carry_lb_per_strength = 0; // srd5, of a small or medium creature; 0: the rulebook has none
    std::string carry_source;

    bool operator==(const WealthTables&) const = default;
};

} // namespace rules
