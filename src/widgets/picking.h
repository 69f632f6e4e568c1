// How rows of a fight are picked by hand: a press for one; Ctrl, Shift or "Several" for more.
#pragma once

#include "widgets/turn_order_select.h"

namespace widgets {

// What a press on a row means now.
Pick pick_by_hand(bool picks_several);

// The toggle for a finger, which has no Ctrl.
void draw_several(bool& picks_several);

} // namespace widgets
