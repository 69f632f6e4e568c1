// The menu of one running condition: change its value, extend, pause, end it. Opened from a chip.
#pragma once

#include "widgets/panel.h"

namespace widgets {

struct ConditionMenuView {
    bool is_wanted = false; // opens when drawn next
    base::Id combatant = base::no_id;
    base::Id condition = base::no_id;
};

void open_condition_menu(ConditionMenuView& view, base::Id combatant, base::Id condition);

// The popup, if it is open. Call every frame at the root of the panel.
void draw_condition_menu(const PanelContext& context, ConditionMenuView& view);

} // namespace widgets
