// One check rolled in secret for everybody who takes part, and kept.
#pragma once

#include "game/campaign.h"
#include "game/party_odds.h"
#include "rules/dice.h"

#include <string>
#include <vector>

namespace game {

// Rolls for each in the order of the party and keeps the result in Campaign::table_rolls, the last
// 200 of them. Two dice where advantage or disadvantage holds; whoever fails by a rule rolls none.
// Returns the line for the history. Nobody takes part: nothing happens, and the line is empty.
std::string roll_in_secret(
    Campaign& campaign,
    const rules::Rulebook& rulebook,
    const OddsQuestion& question,
    rules::Dice& dice
);

// "Secret Perception, DC 20: Ysolde Marr 27 success, Orrin Tace 12 failure".
std::string roll_text(const rules::Rulebook& rulebook, const TableRoll& roll);

// "27 success"; "failure" without a roll.
std::string result_text(const RolledCheck& result);

// Newest first, at most `count`.
std::vector<const TableRoll*> newest_rolls(const TableRolls& rolls, std::size_t count);

} // namespace game
