// The page the players get of a session: five parts, filled from the notes, changed by the GM, and
// written out.
#pragma once

#include "game/campaign.h"
#include "game/mentions.h"

#include <array>
#include <string>

namespace game {

struct RecapPart {
    std::string RecapPage::*part;
    const char* title; // "Where we were"
};

// In the order of the page.
const std::array<RecapPart, 5>& recap_parts();

// From the notes: places and people that they name, with what the Register says of them in one
// line; deeds; discoveries and loot; and what is still to come: lines for later, goals and
// questions that are open. One entry a line, none twice, in the order they came up. Hidden from
// nobody: the GM strikes what players must not read.
RecapPage recap_of(const Campaign& campaign, const Session& session, const RegisteredNames& names);

bool is_empty(const RecapPage& recap);

// As Markdown: a heading a part, an entry a list item; parts without entries are left out.
std::string recap_markdown(const Session& session);

// As plain text, for a message or a mail.
std::string recap_text(const Session& session);

} // namespace game
