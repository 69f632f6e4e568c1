// Prepared Encounters: Fights made ready beforehand, to start with one press.
#pragma once

#include "widgets/panel.h"

namespace widgets {

struct EncounterPreparationView {};

extern const PanelInfo encounter_preparation_info;

void draw_encounter_preparation(const PanelContext& context, EncounterPreparationView& view);

} // namespace widgets
