// Campaigns and edits that the tests of this folder share.
#pragma once

#include "game/campaign.h"
#include "rules/rulebook.h"
#include "store/document.h"
#include "store/rehearsal_edits.h"

#include <cstdint>
#include <string>

namespace samples {

// The rulebook of the program; a broken asset fails the test.
const rules::Rulebook& rulebook(rules::Family family = rules::Family::four_degree);

std::string demo_text(); // demo_campaign.json
game::Campaign demo();

// A campaign in which every member of every struct differs from its default, with unknown fields at
// every level.
game::Campaign everything();

// A running fight of so many opponents beside the demo's party.
game::Campaign crowded_fight(int combatants);

// Carries out `count` varied edits, undos and redos; the same seed does the same.
void play(store::CampaignDocument& document, int count, std::uint64_t seed);

} // namespace samples
