// The keyboard of the turn order: Enter or Space for the next turn, digits and H, G, T for numbers,
// arrows for the picked row, Escape to pick nobody.
#pragma once

#include "widgets/panel.h"
#include "widgets/turn_order.h"

namespace widgets {

// Call first in the frame, before anything is drawn: what was active before keeps its keys.
void read_turn_order_keys(const PanelContext& context, TurnOrderView& view);

void ask_next_turn(const PanelContext& context);

} // namespace widgets
