// Choosing among the combatants at the table, for every panel that asks "who".
#pragma once

#include "widgets/panel.h"

#include <string_view>
#include <vector>

namespace widgets {

// Those who take part, in turn order first; between fights the party.
std::vector<const game::Combatant*> combatants_at_the_table(const game::Encounter& encounter);

// A drop-down over them; the first row stands for none. Changes `chosen`.
void draw_combatant_choice(
    const PanelContext& context,
    const char* label,
    base::Id& chosen,
    std::string_view nobody,
    float width
);

} // namespace widgets
