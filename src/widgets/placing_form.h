// How many of a creature go into the fight, and how: shared by the panels that put creatures there.
#pragma once

#include "game/placing.h"
#include "widgets/form.h"
#include "widgets/panel.h"

#include <string>

namespace widgets {

// Draws the fields of `placing` into the flow. Rolled HP is only offered with hit dice.
void draw_placing(Flow& flow, game::Placing& placing, bool has_hit_dice);

// Queues "Drop in 3 Reed Lurker"; returns that label.
std::string ask_placing(
    const PanelContext& context,
    const std::string& name,
    const game::Statistics& statistics,
    const game::Placing& placing
);

// Queues "Put Reed Lurker on the shelf"; returns that label.
std::string ask_keeping(
    const PanelContext& context, const std::string& name, const game::Statistics& statistics
);

} // namespace widgets
