// Condition Timers: Every running condition across the table, soonest to end first.
#pragma once

#include "widgets/panel.h"

namespace widgets {

struct ConditionTimersView {};

extern const PanelInfo condition_timers_info;

void draw_condition_timers(const PanelContext& context, ConditionTimersView& view);

} // namespace widgets
