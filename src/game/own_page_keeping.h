// The GM's own pages beside the reference: written, found again, removed.
#pragma once

#include "game/own_pages.h"

#include <string>

namespace game {

const OwnPage* find_own_page(const OwnPages& pages, Id id);
OwnPage* find_own_page(OwnPages& pages, Id id);

// Adds a page at the end and returns its id. The title must be fit for a name (Limits).
Id add_own_page(OwnPages& pages, const std::string& title);

// Nothing happens if there is no such page.
void remove_own_page(OwnPages& pages, Id id);

} // namespace game
