// Reminders: what the players may forget, at the moment it is of use, ticked off with one tap.
#pragma once

#include "widgets/panel.h"

namespace widgets {

struct RemindersView {};

extern const PanelInfo reminders_info;

void draw_reminders(const PanelContext& context, RemindersView& view);

} // namespace widgets
