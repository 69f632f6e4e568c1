// Recap Page: what the players get of a session, filled from the notes and changed by the GM.
#pragma once

#include "game/mentions.h"
#include "widgets/form.h"
#include "widgets/panel.h"

#include <string>

namespace widgets {

struct RecapPageView {
    base::Id session = base::no_id; // none: the current one
    std::string path;               // of the file to save to; empty: beside the campaign
    FormDrafts drafts;
    game::RegisteredNames names;
    std::string done; // what the last press did
};

extern const PanelInfo recap_page_info;

void draw_recap_page(const PanelContext& context, RecapPageView& view);

} // namespace widgets
