#include "widgets/condition_picker.h"

#include <utility>

namespace widgets {

void open_condition_picker(ConditionPickerView& view, std::vector<base::Id> targets) {
    view.is_wanted = true;
    view.targets = std::move(targets);
    view.search.clear();
    view.note.clear();
    view.complaint.clear();
}

void draw_condition_picker(const PanelContext& /*context*/, ConditionPickerView& /*view*/) {}

} // namespace widgets
