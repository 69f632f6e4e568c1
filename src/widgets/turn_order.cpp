#include "widgets/turn_order.h"

namespace widgets {

const PanelInfo turn_order_info{
    "turn_order",
    "Turn Order",
    "Whose turn it is, who is next, and everything done to them.",
    "F2",
    560.0F,
    320.0F};

void draw_turn_order(const PanelContext& /*context*/, TurnOrderView& /*view*/) {}

} // namespace widgets
