// Turn Order: Whose turn it is, who is next, and everything done to them.
#pragma once

#include "widgets/panel.h"

namespace widgets {

struct TurnOrderView {};

extern const PanelInfo turn_order_info;

void draw_turn_order(const PanelContext& context, TurnOrderView& view);

} // namespace widgets
