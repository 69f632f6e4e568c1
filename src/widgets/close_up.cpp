#include "widgets/close_up.h"

namespace widgets {

const PanelInfo close_up_info{
    "close_up",
    "Close-up",
    "One combatant in full: effective numbers with their reasons, attacks, notes.",
    "F4",
    320.0F,
    240.0F};

void draw_close_up(const PanelContext& /*context*/, CloseUpView& /*view*/) {}

} // namespace widgets
