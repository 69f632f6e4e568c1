// Which combatants are picked, and how a click or an arrow key changes that. Works on the rows as
// they stand on the screen; never draws and never edits.
#pragma once

#include "game/encounter.h"
#include "widgets/panel.h"

#include <string>
#include <vector>

namespace widgets {

// The rows from top to bottom: those in order, the delaying, the defeated.
std::vector<base::Id> rows_shown(const game::Encounter& encounter);

bool is_picked(const Selection& selection, base::Id combatant);

// Forgets who is no longer in the fight.
void forget_gone(Selection& selection, const game::Encounter& encounter);

enum class Pick {
    only,   // a plain click
    toggle, // Ctrl held, or "Several" is on
    range,  // Shift held: from the first picked to here
};

void pick(Selection& selection, const std::vector<base::Id>& rows, base::Id clicked, Pick how);

// An arrow key: the row `step` below (above if negative) the main one becomes the only one, or
// joins if `extends`. Without a main one it starts from `start`.
void step_pick(
    Selection& selection, const std::vector<base::Id>& rows, base::Id start, int step, bool extends
);

// Whom a verb reaches: those picked, or the current combatant when nobody is.
std::vector<base::Id> targets(const game::Encounter& encounter, const Selection& selection);

// "Bram Oake", "Bram Oake and Reed Lurker 2", "4 combatants".
std::string names_text(const game::Encounter& encounter, const std::vector<base::Id>& combatants);

// "group A" for the first group among the combatants, "group B" for the second.
std::string group_text(const game::Encounter& encounter, base::Id group);

} // namespace widgets
