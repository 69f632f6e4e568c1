// The rows of the turn order: one line each, the current one larger with all that the person at the
// table needs to hear, the defeated below.
#pragma once

#include "widgets/condition_menu.h"
#include "widgets/number_pad.h"
#include "widgets/panel.h"

#include <string>
#include <vector>

namespace widgets {

struct TurnOrderRowsView {
    base::Id followed = base::no_id; // the current combatant that was last scrolled to
    int followed_round = 0;
    float followed_height = 0.0F; // of the list, when it was
    bool picks_several = false;   // a press adds a row or takes it out
    bool wants_more = false;      // a right click asks for the popup "More"
    // What the details of the current row needed when they were drawn last: they flow with the
    // width, so their height is measured.
    base::Id measured = base::no_id;
    float measured_width = 0.0F;
    float measured_height = 0.0F;
};

// What the rows can open.
struct RowPopups {
    NumberPadView& pad;
    ConditionMenuView& condition;
};

// All rows, in a child window that fills what is left of the panel but `below`.
void draw_turn_order_rows(
    const PanelContext& context, TurnOrderRowsView& view, const RowPopups& popups, float below
);

// Parts that the plain and the current row share, at the scale of the look.
struct RowLayout {
    float width = 0.0F;
    bool is_narrow = false; // two lines a row instead of one
    float initiative = 0.0F;
    float name = 0.0F;
    float hp = 0.0F;
    float armor_class = 0.0F;
    float line = 0.0F; // height of one line
};

RowLayout row_layout(float width);

// What is said beside the name: "next", "done", "hidden", "reaction used" ...
std::string
state_words(const PanelContext& context, const game::Combatant& combatant, base::Id next);

void draw_row_hp(
    const PanelContext& context,
    const game::Combatant& combatant,
    const RowPopups& popups,
    float width
);
void draw_row_armor_class(const PanelContext& context, const game::Combatant& combatant);
// As many chips as fit on the line; the rest behind one that says how many.
void draw_row_chips(
    const PanelContext& context,
    const game::Combatant& combatant,
    const RowPopups& popups,
    float width
);

// Everything of the current row below its first line; returns nothing, grows downwards.
void draw_current_row_details(
    const PanelContext& context, const game::Combatant& combatant, const RowPopups& popups
);
// The height that these details need as long as none of their lines is broken.
float current_row_details_height(const PanelContext& context, const game::Combatant& combatant);

} // namespace widgets
