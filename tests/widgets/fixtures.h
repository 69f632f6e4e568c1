// Small campaigns of our own invention to put under a panel, one a rule family, and the rulebooks
// they are played by.
#pragma once

#include "game/campaign.h"
#include "game/climate.h"
#include "game/reference.h"
#include "rules/prices.h"
#include "rules/rulebook.h"

#include <map>
#include <string>

namespace fixtures {

// The real rulebooks of the program; a broken asset fails the test.
const rules::Rulebook& four_degree();
const rules::Rulebook& srd5();
// The real climates of the program; a broken asset fails the test.
const game::Climates& climates();
// The real price lists of the program; a broken asset fails the test.
const rules::PriceBook& four_degree_prices();
const rules::PriceBook& srd5_prices(); // of the newer edition
// The real reference of the four-degree rulebook; a broken asset fails the test.
const game::Reference& reference();

// Ysolde Marr, Orrin Tace, Bram Oake, Sefa Lunn and Tiv Hollow (level 4); on the shelf Reed Lurker,
// Mudcaller and Sluice Wight; "Ambush at the sluice" is prepared: 3 Reed Lurkers, 1 Mudcaller.
// No fight is on.
game::Campaign sluice_campaign();

// Perrin Dask, Wren Halloway and Joss Keel (level 3); on the shelf Dock Rat and Lamp Eater; "The
// dark pier" is prepared: 2 Dock Rats, 1 Lamp Eater. No fight is on.
game::Campaign pier_campaign();

// The prepared fight opened, initiative still empty.
game::Campaign opened(game::Campaign campaign, const rules::Rulebook& rulebook);

// The prepared fight running in round 1. Sluice order: Ysolde Marr 24, Reed Lurker 2 21, Orrin
// Tace 19, Reed Lurker 1 17, Sefa Lunn 15, Reed Lurker 3 13, Mudcaller 12, Tiv Hollow 9, Bram Oake
// 6. Pier order: Wren Halloway 18, Dock Rat 1 15, Perrin Dask 14, Lamp Eater 11, Joss Keel 8, Dock
// Rat 2 5.
game::Campaign running(game::Campaign campaign, const rules::Rulebook& rulebook);

} // namespace fixtures
