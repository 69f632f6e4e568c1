// Party: The player characters: defences, skills, speeds, reminders, notes.
#pragma once

#include "widgets/panel.h"
#include "widgets/statistics_editor.h"

namespace widgets {

struct PartyRosterView {
    base::Id edited = base::no_id;     // the character whose form is open
    base::Id wants_name = base::no_id; // a new one: its name takes the keyboard when drawn
    StatisticsEditorView editor;       // drafts of this form
};

extern const PanelInfo party_roster_info;

void draw_party_roster(const PanelContext& context, PartyRosterView& view);

} // namespace widgets
