// Creature Shelf: Ready creatures: enter one, keep it, drop it into the fight.
#pragma once

#include "widgets/panel.h"

namespace widgets {

struct CreatureShelfView {};

extern const PanelInfo creature_shelf_info;

void draw_creature_shelf(const PanelContext& context, CreatureShelfView& view);

} // namespace widgets
