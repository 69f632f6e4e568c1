// The halves of the Register. Nothing but that panel needs them.
#pragma once

#include "widgets/register_panel.h"

namespace widgets {

// The sheet of one entry, and every place where it is spoken of.
void draw_register_sheet(
    const PanelContext& context, RegisterView& view, const game::RegisterEntry& entry
);

// A button a kind, with its letter; returns the one pressed.
std::optional<game::Kind>
draw_kind_choice(Flow& flow, const std::vector<game::Kind>& chosen, const char* id);

} // namespace widgets
