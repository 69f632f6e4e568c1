// How experience points become levels, as plain values. Part of Rulebook; rules/level_up.h asks
// them.
#pragma once

#include <string>
#include <vector>

namespace rules {

// four-degree: how many XP a level takes.
struct AdvancementPace {
    std::string key; // "standard"
    std::string name;
    int xp = 0;

    bool operator==(const AdvancementPace&) const = default;
};

struct LevelXp { // srd5
    int level = 0;
    int xp = 0; // all the XP ever gained that this level takes

    bool operator==(const LevelXp&) const = default;
};

// four-degree: XP for something achieved, to each character.
struct XpAward {
    std::string key;
    std::string name;
    int xp = 0;
    bool earns_hero_point = false; // usually

    bool operator==(const XpAward&) const = default;
};

struct AdvancementTables {
    int level_max = 20;
    std::vector<AdvancementPace> paces; // four-degree: the usual one first
    std::vector<LevelXp> xp_by_level;   // srd5: from level 1 without a gap, XP rising
    std::vector<XpAward> awards;        // four-degree: smallest first
    std::string source;                 // document titles
    std::string awards_source;

    bool operator==(const AdvancementTables&) const = default;
};

} // namespace rules
