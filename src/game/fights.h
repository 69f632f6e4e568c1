// Setting a fight up, late arrivals, and the end of a fight.
#pragma once

#include "game/campaign.h"
#include "rules/dice.h"
#include "rules/rulebook.h"

#include <string>
#include <vector>

namespace game {

// A combatant made from a creature: full HP, numbered name when `number` > 0 ("Reed Lurker 2").
Combatant make_opponent(const Creature& creature, int number);

// Opens a fight (phase gathering) with the party members present and the creatures of a prepared
// encounter (no_id: party only), initiative empty. Opponents of an earlier fight are removed.
// Touches sections encounter only.
void open_fight(Campaign& campaign, const rules::Rulebook& rulebook, Id prepared);

// Adds `count` of a creature of the shelf to the open or running fight, numbered on from those
// there. While running, `initiative` (or a roll for each) places them in the order. Returns the
// ids.
std::vector<Id> add_creatures(
    Campaign& campaign,
    const rules::Rulebook& rulebook,
    Id creature,
    int count,
    bool shares_initiative,
    std::optional<int> initiative,
    rules::Dice& dice
);

// The same for a creature that need not stand on the shelf; section encounter.
std::vector<Id> add_opponents(
    Encounter& encounter,
    const rules::Rulebook& rulebook,
    const Creature& creature,
    int count,
    bool shares_initiative,
    std::optional<int> initiative,
    rules::Dice& dice
);

// A late arrival without a stat entry, or a party member who joins: enters with this initiative
// total.
Id add_stranger(
    Encounter& encounter,
    const rules::Rulebook& rulebook,
    const std::string& name,
    Side side,
    int hp,
    int armor_class,
    std::optional<int> initiative
);
bool join_fight(
    Encounter& encounter,
    const rules::Rulebook& rulebook,
    Id combatant,
    std::optional<int> initiative
);

// Ends the fight: in-world time moves on by what elapsed, opponents leave, party members become
// absent with HP and lasting conditions kept; conditions counted in turns or rounds end. Sections
// encounter and clock.
void end_fight(Campaign& campaign, const rules::Rulebook& rulebook);

// In-world second of the day and day now, the running fight counted.
Clock now(const Campaign& campaign);

} // namespace game
