// Condition Timers: Every running condition across the table, soonest to end first.
// Rows stay where they are while the pointer is over them; they are sorted anew when it has left,
// or at the next turn.
#pragma once

#include "widgets/condition_menu.h"
#include "widgets/condition_picker.h"
#include "widgets/panel.h"

#include <string>
#include <vector>

namespace widgets {

struct ConditionTimersView {
    // A row as it was drawn last: what has ended meanwhile keeps its place until the pointer
    // leaves.
    struct Row {
        base::Id combatant = base::no_id;
        base::Id condition = base::no_id;
        std::string who;
        std::string what;
    };

    std::vector<Row> rows;
    base::Id turn_of = base::no_id; // when the rows were sorted
    int round = 0;
    base::Id marked = base::no_id; // the row that the keys mean, by its condition
    base::Id only = base::no_id;   // filter: this combatant
    bool with_open_ended = true;
    ConditionPickerView picker;
    ConditionMenuView menu;
};

extern const PanelInfo condition_timers_info;

void draw_condition_timers(const PanelContext& context, ConditionTimersView& view);

} // namespace widgets
