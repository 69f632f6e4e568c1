// Dice rolled by an expression, kept with the rolls at the table.
#pragma once

#include "game/campaign.h"
#include "rules/dice.h"

#include <cstddef>
#include <string>
#include <vector>

namespace game {

// So few that an edit takes no time.
inline constexpr std::size_t dice_rolls_kept = 60;

// Rolls every die. Unlike damage the total may fall below 0. Id, day and time stay open.
DiceRoll rolled_dice(const rules::DiceExpression& expression, rules::Dice& dice, bool is_secret);

// Keeps it with the in-world time, its expression first among those used last. Changes table_rolls
// alone. Returns the line for the history, which says nothing of a secret result.
std::string keep_dice_roll(Campaign& campaign, DiceRoll roll);

// "Roll 2d6+3: 9"; "Roll dice in secret".
std::string dice_roll_label(const DiceRoll& roll);

// Pins an expression or lets it go; the oldest makes room.
void toggle_pinned_dice(TableRolls& rolls, const std::string& expression);
bool is_pinned_dice(const TableRolls& rolls, const std::string& expression);

// Newest first, at most `count`.
std::vector<const DiceRoll*> newest_dice_rolls(const TableRolls& rolls, std::size_t count);

} // namespace game
