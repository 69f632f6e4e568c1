#include "widgets/creature_shelf.h"

namespace widgets {

const PanelInfo creature_shelf_info{
    "creature_shelf",
    "Creature Shelf",
    "Ready creatures: enter one, keep it, drop it into the fight.",
    "F6",
    420.0F,
    320.0F};

void draw_creature_shelf(const PanelContext& /*context*/, CreatureShelfView& /*view*/) {}

} // namespace widgets
