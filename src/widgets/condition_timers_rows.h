// One row of the Condition Timers. Nothing but that panel needs it.
#pragma once

#include "widgets/condition_timers.h"

namespace widgets {

void draw_timer_row(
    const PanelContext& context, ConditionTimersView& view, const ConditionTimersView::Row& row
);

// Arrows mark a row; plus and minus extend and shorten it, P pauses, Delete ends, C gives another.
void read_timer_keys(const PanelContext& context, ConditionTimersView& view);

} // namespace widgets
