// What happened: Every change so far, newest first, with the way back.
#pragma once

#include "widgets/panel.h"

namespace widgets {

struct HappeningsView {};

extern const PanelInfo happenings_info;

void draw_happenings(const PanelContext& context, HappeningsView& view);

} // namespace widgets
