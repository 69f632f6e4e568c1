// Lines of loot in the notes of a session, on their way into the Treasure Ledger.
#pragma once

#include "base/result.h"
#include "game/campaign.h"
#include "game/money.h"
#include "rules/prices.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace game {

// What a line of loot says: "120 gp under the sluice" is money, "silver mask, worth 40 gp" a thing
// of that worth, "a reed flute" a thing of no known worth.
struct ReadLoot {
    std::int64_t money = 0; // smallest coin; 0: it is a thing
    std::int64_t worth = 0; // of the thing

    bool operator==(const ReadLoot&) const = default;
};

// The first amount that names its coin counts; what cannot be an amount is left alone.
ReadLoot read_loot(std::string_view text, const std::vector<Coin>& coins);

// Is this line of the notes in the ledger already, as money or as an item?
bool is_loot_taken(const Treasury& treasury, Id note);

// Takes a line of the notes into the ledger, with the day and the session it was written in.
// Changes the treasury alone. Errors: not_found, not_possible when it is there already, those of
// add_ledger_line and add_item.
base::Result<Id> take_loot(Campaign& campaign, Id session, Id note, const std::vector<Coin>& coins);

} // namespace game
