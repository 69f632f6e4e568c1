// The parts that the condition picker is put together from. Nothing but its own files needs them.
#pragma once

#include "game/condition_giving.h"
#include "widgets/condition_picker.h"

#include <string>
#include <string_view>

namespace widgets {

// Makes this condition the one picked, with the choice last made for it. An empty key: an effect in
// the GM's own words.
void pick_condition(const PanelContext& context, ConditionPickerView& view, std::string_view key);

// Search field and the list below it. True when Enter asks to give what is picked.
bool draw_condition_search(const PanelContext& context, ConditionPickerView& view);
void draw_condition_list(const PanelContext& context, ConditionPickerView& view);

// Value, damage, own words, duration, source, note of the condition picked.
void draw_condition_choice(const PanelContext& context, ConditionPickerView& view);
void draw_own_effect(const PanelContext& context, ConditionPickerView& view);
void draw_condition_duration(const PanelContext& context, ConditionPickerView& view);

// What was chosen, ready to be given.
game::ConditionGift chosen_gift(const PanelContext& context, const ConditionPickerView& view);

// Empty when it can be given.
std::string why_not_give(const PanelContext& context, const ConditionPickerView& view);

// What it will do to each target.
void draw_condition_preview(const PanelContext& context, const ConditionPickerView& view);

// Asks for the edit and remembers the choice.
void give_chosen(const PanelContext& context, ConditionPickerView& view);

} // namespace widgets
