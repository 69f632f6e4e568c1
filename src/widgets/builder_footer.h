// The foot of a builder: what was done or why nothing can be, how many, how, and where to.
#pragma once

#include "game/builder_reading.h"
#include "widgets/panel.h"
#include "widgets/placing_form.h"

#include <string>

namespace widgets {

// `done` holds what the last press did, until the caller clears it.
void draw_builder_footer(
    const PanelContext& context,
    const std::string& name,
    const game::BuilderReading& reading,
    game::Placing& placing,
    std::string& done
);

// The height that a builder's numbers take above its foot: what is left, but never so little that
// the panel cannot be worked with; it scrolls then.
float builder_body_height();

} // namespace widgets
