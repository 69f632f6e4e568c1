// What Find looks through: one function for each section of the campaign, and for what lies outside
// of it. Each turns plain values into entries and knows nothing of panels. A new section needs a
// function here, a line in src/app/finder.cpp and, if it has a kind of its own, a line in
// src/app/going_there.cpp.
#pragma once

#include "game/campaign.h"
#include "game/finding.h"
#include "game/library_creature.h"
#include "game/reference.h"
#include "rules/prices.h"

#include <vector>

namespace game {

std::vector<FindEntry> find_in_party(const Party& party);
std::vector<FindEntry> find_in_shelf(const CreatureShelf& shelf);
std::vector<FindEntry> find_in_preparation(const Preparation& preparation);
// Names with who they are, and the lines of their notes.
std::vector<FindEntry> find_in_register(const Register& registered);
// Used names that stand in the Register are left out: they are found there.
std::vector<FindEntry> find_in_names(const NameBook& names);
std::vector<FindEntry> find_in_places(const Places& places);
// Titles, plans, goals and every line of the notes.
std::vector<FindEntry> find_in_sessions(const Sessions& sessions);
std::vector<FindEntry> find_in_library(const std::vector<LibraryCreature>& library);
// The pages of reference_pages.
std::vector<FindEntry> find_in_reference(const std::vector<ReferenceEntry>& entries);

// What the rulebook has a price for, with the price in these coins.
std::vector<FindEntry>
find_in_prices(const rules::PriceBook& prices, const std::vector<Coin>& coins);
// What stands on the pages of the Day Book, and its timers.
std::vector<FindEntry> find_in_days(const DayBook& book);
// Items and lines of the Treasure Ledger.
std::vector<FindEntry> find_in_treasury(const Treasury& treasury);

} // namespace game
