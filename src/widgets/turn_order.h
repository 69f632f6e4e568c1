// Turn Order: Whose turn it is, who is next, and everything done to them.
// Before a fight it offers the prepared ones, while one gathers it asks for initiative. Computes
// nothing of the game itself.
#pragma once

#include "widgets/condition_menu.h"
#include "widgets/condition_picker.h"
#include "widgets/initiative_table.h"
#include "widgets/number_pad.h"
#include "widgets/panel.h"
#include "widgets/prompt_list.h"
#include "widgets/turn_order_actions.h"
#include "widgets/turn_order_add.h"
#include "widgets/turn_order_rows.h"

namespace widgets {

struct TurnOrderView {
    NumberPadView pad;
    PromptListView prompts;
    InitiativeTableView initiative;
    AddCombatantView add;
    ConditionMenuView condition;
    ConditionPickerView picker;
    TurnOrderRowsView rows;
    TurnOrderActionsView actions;
};

extern const PanelInfo turn_order_info;

void draw_turn_order(const PanelContext& context, TurnOrderView& view);

} // namespace widgets
