// Hazard Builder (four-degree): a trap or another danger of a place from its level, measured
// against this very party.
#pragma once

#include "rules/hazard_building.h"
#include "widgets/form.h"
#include "widgets/panel.h"
#include "widgets/placing_form.h"

#include <optional>
#include <string>

namespace widgets {

struct HazardBuilderView {
    // What is being made; nothing until the panel is drawn for the first time.
    std::optional<rules::HazardChoice> choice;
    game::Placing placing;
    FormDrafts drafts;
    std::string done; // what the last press did, until something else is chosen
};

extern const PanelInfo hazard_builder_info;

void draw_hazard_builder(const PanelContext& context, HazardBuilderView& view);

} // namespace widgets
