// What the rules ask for now (recovery checks, death saves, persistent damage, checks that end a
// condition, concentration), each to be rolled by the program or typed from the dice on the table;
// and quietly what happened by itself. Its height stays the same, so nothing moves under a finger;
// only where the panel is cramped it shrinks while nothing is due.
#pragma once

#include "widgets/panel.h"
#include "widgets/roll_field.h"

namespace widgets {

struct PromptListView {
    RollDrafts drafts; // by prompt
};

float prompt_list_height(bool is_due);

void draw_prompt_list(const PanelContext& context, PromptListView& view);

} // namespace widgets
