// Places: where the party can be, each with its climate and its own weather.
#pragma once

#include "widgets/form.h"
#include "widgets/panel.h"

namespace widgets {

struct PlacesView {
    base::Id edited = base::no_id;     // the place whose form is open
    base::Id wants_name = base::no_id; // a new one: its name takes the keyboard when drawn
    FormDrafts drafts;
};

extern const PanelInfo places_info;

void draw_places(const PanelContext& context, PlacesView& view);

} // namespace widgets
