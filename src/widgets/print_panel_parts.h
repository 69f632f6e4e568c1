// Parts of the Print panel, for its own files alone.
#pragma once

#include "widgets/print_desk.h"
#include "widgets/print_panel.h"

namespace widgets {

// Which pages, in which order, and what each is of.
void draw_wanted_pages(const PanelContext& context, PrintPanelView& view);

// Paper, sheets, binder, letters.
void draw_paper_choices(const PanelContext& context);

// The side that is shown, and the way to the others.
void draw_print_preview(const PanelContext& context, PrintPanelView& view);

} // namespace widgets
