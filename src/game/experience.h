// Experience points of the party: what a fight or a deed awards, and the levels it leads to.
#pragma once

#include "base/result.h"
#include "game/campaign.h"
#include "rules/level_up.h"
#include "rules/rulebook.h"

#include <string>
#include <string_view>
#include <vector>

namespace game {

// What an award would make of one character.
struct XpGain {
    Id character = base::no_id;
    std::string name;
    int level_before = 1;
    rules::LevelUp after;

    bool operator==(const XpGain&) const = default;
};

// The characters that play tonight, in the order of the party.
std::vector<Id> present_characters(const Party& party);

// What `xp` for each of these characters would lead to, at the pace of the campaign. Characters
// that are gone are left out. Errors: out_of_range (a level outside 1..20, XP below 0 or past 100
// million), as in rules::gain_xp, and not_possible when nobody is left.
base::Result<std::vector<XpGain>> xp_gains(
    const Campaign& campaign,
    const rules::Rulebook& rulebook,
    const std::vector<Id>& characters,
    int xp
);

// Awards them. A level that is reached raises Statistics::level alone: the other numbers are the
// player's to choose, and the text says so. Sections party and encounter; nothing is changed on an
// error. Returns what happened in one line.
base::Result<std::string> award_xp(
    Campaign& campaign, const rules::Rulebook& rulebook, const std::vector<Id>& characters, int xp
);

// "Award 80 XP to Ysolde Marr and Orrin Tace; Orrin Tace reaches level 5 (only the level is
// raised)".
std::string award_text(const Party& party, const std::vector<XpGain>& gains, int xp);

// "640 of 1000 XP" (four-degree), "2700 XP, 3800 to level 5" (srd5); without a next level "640
// XP".
std::string experience_text(
    const rules::Rulebook& rulebook, const Character& character, std::string_view pace = {}
);

// The advancement pace of the campaign: a key of the rulebook, or empty for the usual one (also
// where the rulebook knows none of that name).
std::string_view pace_of(const About& about, const rules::Rulebook& rulebook);

} // namespace game
