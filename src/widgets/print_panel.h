// Print: the pages that are wanted, the paper they go on, and how they will look.
#pragma once

#include "widgets/panel.h"

#include <cstddef>
#include <string>

namespace widgets {

inline constexpr std::size_t no_open_page = static_cast<std::size_t>(-1);

struct PrintPanelView {
    std::size_t side = 0;                 // shown
    bool is_large = false;                // as wide as the panel, to be read
    bool shows_preview = false;           // where there is no room for both
    std::size_t open_page = no_open_page; // in the list, whose choices are shown
    std::string path;                     // of the file to save to; empty: beside the campaign
};

extern const PanelInfo print_panel_info;

void draw_print_panel(const PanelContext& context, PrintPanelView& view);

} // namespace widgets
