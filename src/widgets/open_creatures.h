// Open Creatures: every ready creature of the rulebook, found by typing, read as a card, and
// dropped into the fight or kept on the shelf.
#pragma once

#include "game/creature_search.h"
#include "widgets/panel.h"
#include "widgets/placing_form.h"

#include <string>
#include <vector>

namespace widgets {

struct OpenCreaturesView {
    game::CreatureQuery query;
    std::string chosen; // key of the creature whose card is open
    game::Placing placing;
    std::string done; // what the last press did
    // The library read once: what there is to ask for, and the answer to the last question.
    const std::vector<game::LibraryCreature>* library = nullptr;
    std::size_t library_size = 0;
    game::LibraryWords words;
    game::CreatureQuery answered;
    std::vector<std::size_t> found;
};

extern const PanelInfo open_creatures_info;

void draw_open_creatures(const PanelContext& context, OpenCreaturesView& view);

} // namespace widgets
