// While a fight gathers: everybody's initiative, typed from the dice on the table or rolled, which
// stat is rolled, and who would act when. Rows stay where they are; the place in the order is shown
// beside each.
#pragma once

#include "widgets/panel.h"
#include "widgets/roll_field.h"
#include "widgets/turn_order_add.h"

namespace widgets {

struct InitiativeTableView {
    RollDrafts totals;          // by combatant
    bool picks_several = false; // a press adds a row or takes it out
};

void draw_initiative_table(
    const PanelContext& context, InitiativeTableView& view, AddCombatantView& add
);

} // namespace widgets
