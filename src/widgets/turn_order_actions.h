// The verbs for whoever is picked (or for the current combatant), below the turn order, and the
// small popups behind them.
#pragma once

#include "widgets/number_pad.h"
#include "widgets/panel.h"
#include "widgets/roll_field.h"
#include "widgets/turn_order_add.h"
#include "widgets/ui.h"

#include <string>

namespace widgets {

struct TurnOrderActionsView {
    bool wants_condition = false; // the condition picker is to open
    bool wants_ready = false;     // the popup "Ready" opens when drawn next
    bool wants_more = false;
    bool picks_several = false; // a press adds a row or takes it out
    std::string readied;        // what is being typed
    TextDraft name;
    TextDraft note;
    RollDrafts initiative;
    base::Id more_of = base::no_id;
    // What the verbs needed so far at this width: they flow over one line or two.
    float measured_width = 0.0F;
    float measured_height = 0.0F;
};

float turn_order_actions_height(const TurnOrderActionsView& view);

void draw_turn_order_actions(
    const PanelContext& context,
    TurnOrderActionsView& view,
    NumberPadView& pad,
    AddCombatantView& add
);

// The popups "Ready" and "More", if open. Call every frame at the root of the panel.
void draw_turn_order_popups(const PanelContext& context, TurnOrderActionsView& view);

// Delays the current combatant, or brings a delaying one back: what "D" and the button do.
// Empty when it may; otherwise the reason why not.
std::string why_not_delay(const PanelContext& context, const std::vector<base::Id>& who);
void ask_delay(const PanelContext& context, base::Id combatant);
void ask_return(const PanelContext& context, base::Id combatant);

} // namespace widgets
