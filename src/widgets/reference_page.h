// One page of the reference: a rule to read, or a page of the GM to write on.
#pragma once

#include "widgets/reference_panel.h"

namespace widgets {

void draw_reference_page(
    const PanelContext& context, ReferenceView& view, const game::ReferenceEntry& entry
);

// Queues a new page of the GM and opens it.
void ask_own_page(const PanelContext& context, ReferenceView& view, const std::string& title);

} // namespace widgets
