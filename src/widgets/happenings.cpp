#include "widgets/happenings.h"

namespace widgets {

const PanelInfo happenings_info{
    "happenings",
    "What happened",
    "Every change so far, newest first, with the way back.",
    "F8",
    320.0F,
    200.0F};

void draw_happenings(const PanelContext& /*context*/, HappeningsView& /*view*/) {}

} // namespace widgets
