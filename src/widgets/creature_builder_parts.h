// The halves of the Creature Builder. Nothing but that panel needs them.
#pragma once

#include "game/builder_reading.h"
#include "widgets/creature_builder.h"

namespace widgets {

// Every number with its bands: nudged, typed, and back to what is usual.
void draw_builder_numbers(
    const PanelContext& context, CreatureBuilderView& view, const game::BuilderReading& reading
);

// What it and the party do to each other.
void draw_builder_reading(const PanelContext& context, const game::BuilderReading& reading);

} // namespace widgets
