// Who joins late: creatures from the shelf, a party member who was away, or a stranger without a
// stat entry. Also used while a fight gathers.
#pragma once

#include "widgets/panel.h"
#include "widgets/roll_field.h"

#include <string>

namespace widgets {

struct AddCombatantView {
    bool is_wanted = false; // opens when drawn next
    base::Id creature = base::no_id;
    int count = 1;
    bool shares_initiative = false;
    std::string initiative; // typed total; empty: rolled
    std::string name;       // of a stranger
    game::Side side = game::Side::opponents;
    int hp = 20;
    int armor_class = 15;
    std::string complaint;
};

// The popup, if it is open. Call every frame at the root of the panel.
void draw_add_combatant(const PanelContext& context, AddCombatantView& view);

} // namespace widgets
