// The buttons above and below the initiative table: begin, roll, add, call off; hide, group,
// remove.
#pragma once

#include "widgets/panel.h"
#include "widgets/turn_order_add.h"

#include <string>

namespace widgets {

// Why the fight cannot begin yet, in one sentence; empty when it can.
std::string why_not_begin(const game::Encounter& encounter);

void draw_initiative_header(const PanelContext& context, AddCombatantView& add);

// What is done with the rows that are picked.
void draw_initiative_footer(const PanelContext& context, bool& picks_several);

} // namespace widgets
