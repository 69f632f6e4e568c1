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

float builder_footer_height();

} // namespace widgets
