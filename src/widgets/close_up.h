// Close-up: One combatant in full: effective numbers with their reasons, attacks, notes.
#pragma once

#include "widgets/condition_menu.h"
#include "widgets/condition_picker.h"
#include "widgets/form.h"
#include "widgets/panel.h"

namespace widgets {

struct CloseUpView {
    base::Id shown = base::no_id; // whom the drafts belong to
    FormDrafts drafts;
    ConditionPickerView picker;
    ConditionMenuView menu;
};

extern const PanelInfo close_up_info;

void draw_close_up(const PanelContext& context, CloseUpView& view);

} // namespace widgets
