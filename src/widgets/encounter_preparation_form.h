// The form of one prepared encounter. Nothing but that panel needs it.
#pragma once

#include "widgets/encounter_preparation.h"

namespace widgets {

void draw_prepared_form(
    const PanelContext& context,
    EncounterPreparationView& view,
    const game::PreparedEncounter& prepared
);

// "Start this fight"; while another is on: its creatures join that one. `suffix` tells buttons
// apart.
void draw_start(
    const PanelContext& context, const game::PreparedEncounter& prepared, const char* suffix
);
float start_width(const PanelContext& context);

} // namespace widgets
