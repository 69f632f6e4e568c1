// Dice: an expression, its exact distribution, the roll in large figures, secret ones too.
#pragma once

#include "game/table_rolls.h"
#include "rules/distribution.h"
#include "widgets/panel.h"

#include <string>

namespace widgets {

struct DicePanelView {
    std::string typed = "1d20";
    std::string measured; // the expression that `totals` belongs to
    rules::Distribution totals;
    std::string complaint;
    bool is_secret = false;
    base::Id last_roll = base::no_id; // rolled here, shown in large figures
    bool wants_focus = false;         // back into the field after Enter
};

extern const PanelInfo dice_panel_info;

void draw_dice_panel(const PanelContext& context, DicePanelView& view);

} // namespace widgets
