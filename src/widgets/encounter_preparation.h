// Prepared Encounters: Fights made ready beforehand, to start with one press.
#pragma once

#include "widgets/form.h"
#include "widgets/panel.h"

namespace widgets {

struct EncounterPreparationView {
    base::Id edited = base::no_id;     // the encounter whose form is open
    base::Id wants_name = base::no_id; // a new one: its name takes the keyboard when drawn
    FormDrafts drafts;                 // of this form
};

extern const PanelInfo encounter_preparation_info;

void draw_encounter_preparation(const PanelContext& context, EncounterPreparationView& view);

} // namespace widgets
