// What the rules ask for now (recovery checks, death saves, persistent damage, checks that end a
// condition, concentration), each to be rolled by the program or typed from the dice on the table;
// and quietly what happened by itself. Its height never changes, so nothing moves under a finger.
#pragma once

#include "widgets/panel.h"
#include "widgets/roll_field.h"

namespace widgets {

struct PromptListView {
    RollDrafts drafts; // by prompt
};

float prompt_list_height();

void draw_prompt_list(const PanelContext& context, PromptListView& view);

} // namespace widgets
