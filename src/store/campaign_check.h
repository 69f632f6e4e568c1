// Checks that a campaign hangs together: after reading it from a file, and after every edit, so
// that what is written can always be read again.
#pragma once

#include "game/campaign.h"
#include "store/json_fields.h"

#include <string>
#include <vector>

namespace store {

// What makes a file unusable, because the turn logic rests on it: an id used twice, and a reference
// to nothing where a turn, a due check or a character's combatant hangs on it. What else does not
// fit together (game::find_problems) is reported and the file opened.
void check_references(const game::Campaign& campaign, Problems& problems);

// The same for one calendar, whose JSON stands at `pointer`: an id used twice in a list.
void check_calendar_ids(
    const game::Calendar& calendar, const std::string& pointer, Problems& problems
);

// Raises next_id of a calendar above every id in use.
void keep_calendar_ids_fresh(game::Calendar& calendar);

// Makes a hand-edited file fit where only one repair makes sense: each next_id above every id in
// use, and during a fight a turn order that holds exactly those who stand in it. What a person
// should know is returned.
std::vector<base::Error> mend(game::Campaign& campaign);

} // namespace store
