// The first step of every panel that is about the party while nobody is in it.
#pragma once

#include "widgets/panel.h"
#include "widgets/ui.h"

namespace widgets {

inline void offer_the_party(const PanelContext& context) {
    if (primary_button("Go to the party")) context.selection.wanted_panel = "party_roster";
}

} // namespace widgets
