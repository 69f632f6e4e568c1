// The form of one player character. Nothing but the Party panel needs it.
#pragma once

#include "widgets/party_roster.h"

#include <functional>
#include <string>

namespace widgets {

// Asks for a change of one character; `typed_in` as in StatisticsForm::ask.
void ask_character(
    const PanelContext& context,
    base::Id character,
    std::string label,
    const std::string& typed_in,
    std::function<void(game::Character&)> change
);

void draw_character_form(
    const PanelContext& context, PartyRosterView& view, const game::Character& character
);

// What the character can do so many times, of the form.
void draw_reminder_form(
    const PanelContext& context, PartyRosterView& view, const game::Character& character
);

// Experience and, in srd5, hit dice.
void draw_growth_form(const PanelContext& context, const game::Character& character);

} // namespace widgets
