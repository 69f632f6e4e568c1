// What happened: every change so far, newest first, with the way back.
#pragma once

#include "widgets/panel.h"

#include <cstdint>
#include <string>

namespace widgets {

struct HappeningsView {
    std::string search; // shows lines that contain it, upper and lower case alike
    std::uint64_t newest_seen = 0;
    double newest_at = 0.0; // when the newest line came, for its mark
};

extern const PanelInfo happenings_info;

void draw_happenings(const PanelContext& context, HappeningsView& view);

} // namespace widgets
