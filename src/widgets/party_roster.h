// Party: The player characters: defences, skills, speeds, reminders, notes.
#pragma once

#include "widgets/panel.h"

namespace widgets {

struct PartyRosterView {};

extern const PanelInfo party_roster_info;

void draw_party_roster(const PanelContext& context, PartyRosterView& view);

} // namespace widgets
