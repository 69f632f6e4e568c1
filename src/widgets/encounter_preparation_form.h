// The form of one prepared encounter, and what the Encounter Budget shares with it.
#pragma once

#include "widgets/encounter_preparation.h"

#include <functional>
#include <string>

namespace widgets {

void draw_prepared_form(
    const PanelContext& context,
    EncounterPreparationView& view,
    const game::PreparedEncounter& prepared
);

// Asks for a change of one prepared encounter; edits with the same `typed_in` undo as one.
void ask_prepared(
    const PanelContext& context,
    const game::PreparedEncounter& prepared,
    std::string label,
    const std::string& typed_in,
    std::function<void(game::PreparedEncounter&)> change
);

// Asks for a new one; returns the id it will have.
base::Id ask_new_prepared(const PanelContext& context);

// "Start this fight"; while another is on: its creatures join that one. `suffix` tells buttons
// apart.
void draw_start(
    const PanelContext& context, const game::PreparedEncounter& prepared, const char* suffix
);
float start_width(const PanelContext& context);

} // namespace widgets
