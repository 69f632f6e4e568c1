// Difficulty: the rulebook's DCs, each with what this very party makes of it.
#pragma once

#include "widgets/panel.h"

#include <optional>
#include <string>

namespace widgets {

struct DifficultyView {
    std::string step;               // key of the chosen adjustment; empty: none
    std::string rarity;             // the same
    std::optional<int> scrolled_to; // the party's level that was brought into sight
};

extern const PanelInfo difficulty_info;

void draw_difficulty(const PanelContext& context, DifficultyView& view);

} // namespace widgets
