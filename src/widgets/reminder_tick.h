// A reminder to tick off, the same in every panel that shows one.
#pragma once

#include "game/reminding.h"
#include "widgets/panel.h"

namespace widgets {

// "Raise the shield: 1 left": pressed, it is used; pressed when all is used, one is given back.
void draw_reminder_chip(
    const PanelContext& context, const game::Combatant& combatant, const game::Reminder& reminder
);

// The text, what is left of it and what gives it back, with buttons; at wish also when it comes up.
void draw_reminder_row(
    const PanelContext& context,
    const game::Combatant& combatant,
    const game::Reminder& reminder,
    bool tells_when = false
);

// One that something called up, in a line: whose it is, to be used or set aside.
void draw_called_reminder(const PanelContext& context, const game::ShownReminder& shown);

} // namespace widgets
