// Close-up: One combatant in full: effective numbers with their reasons, attacks, notes.
#pragma once

#include "widgets/panel.h"

namespace widgets {

struct CloseUpView {};

extern const PanelInfo close_up_info;

void draw_close_up(const PanelContext& context, CloseUpView& view);

} // namespace widgets
