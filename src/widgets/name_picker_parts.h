// The parts of the Name Picker; only its files include this.
#pragma once

#include "widgets/kind_ink.h"
#include "widgets/name_picker.h"

namespace widgets {

// Where names come from now: the chosen list, or the first one. Null without any list.
const game::NameSource*
chosen_source(const std::vector<game::NameSource>& sources, NamePickerView& view);

// Keeps the row filled with names that are still good.
void refill_row(const PanelContext& context, NamePickerView& view, const game::NameSource& source);

void next_name(const PanelContext& context, NamePickerView& view, const game::NameSource& source);
void like_this_name(
    const PanelContext& context, NamePickerView& view, const game::NameSource& source
);
void bar_initial(NamePickerView& view);
void grow_a_row(const PanelContext& context, NamePickerView& view, const game::NameSource& source);
void ask_use(const PanelContext& context, NamePickerView& view, const game::NameSource& source);
void ask_unuse(const PanelContext& context, const game::UsedName& used);
void ask_favourite(const PanelContext& context, const std::string& name, const std::string& list);
void read_name_keys(
    const PanelContext& context, NamePickerView& view, const game::NameSource& source
);

void draw_name_sections(const PanelContext& context, NamePickerView& view);
void draw_own_lists(const PanelContext& context, NamePickerView& view);
void ask_new_list(const PanelContext& context, NamePickerView& view);
} // namespace widgets
