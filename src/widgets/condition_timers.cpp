#include "widgets/condition_timers.h"

namespace widgets {

const PanelInfo condition_timers_info{
    "condition_timers",
    "Condition Timers",
    "Every running condition across the table, soonest to end first.",
    "F3",
    320.0F,
    200.0F};

void draw_condition_timers(const PanelContext& /*context*/, ConditionTimersView& /*view*/) {}

} // namespace widgets
