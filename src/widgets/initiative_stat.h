// The choice of what is rolled for initiative: perception, stealth or any other skill.
#pragma once

#include "widgets/panel.h"

namespace widgets {

void draw_initiative_stat(const PanelContext& context, const game::Combatant& combatant);

} // namespace widgets
