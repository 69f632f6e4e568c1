// The controls of what is asked of the party, which Party Defences and Difficulty share through the
// selection.
#pragma once

#include "widgets/panel.h"

namespace widgets {

// A drop-down of everything that the whole party can roll.
void draw_stat_choice(const PanelContext& context, const char* label, float width);

// The next or previous of them.
void step_stat(const PanelContext& context, int step);

} // namespace widgets
