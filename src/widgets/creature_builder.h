// Creature Builder: an opponent of the right strength in seconds, measured against this very party.
#pragma once

#include "rules/creature_building.h"
#include "widgets/form.h"
#include "widgets/panel.h"
#include "widgets/placing_form.h"

#include <optional>

namespace widgets {

struct CreatureBuilderView {
    // What is being made; nothing until the panel is drawn for the first time.
    std::optional<rules::BuildChoice> choice;
    game::Placing placing;
    FormDrafts drafts;
    std::string done; // what the last press did, until something else is chosen
};

extern const PanelInfo creature_builder_info;

void draw_creature_builder(const PanelContext& context, CreatureBuilderView& view);

} // namespace widgets
