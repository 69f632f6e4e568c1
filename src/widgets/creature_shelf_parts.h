// The form and the popup of the Creature Shelf. Nothing but that panel needs them.
#pragma once

#include "widgets/creature_shelf.h"

namespace widgets {

void draw_creature_form(
    const PanelContext& context, CreatureShelfView& view, const game::Creature& creature
);

// The popup "Drop in", if it is open. Call every frame at the root of the panel.
void draw_drop_in(const PanelContext& context, DropInView& view);

void open_drop_in(DropInView& view, base::Id creature);

void ask_copy(const PanelContext& context, CreatureShelfView& view, const game::Creature& creature);

} // namespace widgets
