// Parts that Weather Walk and Places share: choosing where the party is, the first place.
#pragma once

#include "game/weather_report.h"
#include "widgets/form.h"
#include "widgets/panel.h"

#include <functional>
#include <optional>
#include <string>

namespace widgets {

// Queues an edit of one place. `typed_in`: the field that is being typed into, or empty.
void ask_place(
    const PanelContext& context,
    base::Id place,
    std::string label,
    const std::string& typed_in,
    std::function<void(game::Place&)> change
);

// Queues a new place in the first climate and returns its id.
base::Id ask_new_place(const PanelContext& context);

// What an empty panel says, with the first step. Returns the id of the place that is asked for.
std::optional<base::Id> draw_first_place(const PanelContext& context);

// The drop-down of where the party is; "nowhere" is a choice.
void draw_party_place(const PanelContext& context, float width);

// Where the weather at a place comes from, by the campaign's calendar.
std::optional<game::WeatherSource>
weather_at(const PanelContext& context, const game::Place& place);

// "Temperate coast", "as at Salt Ferry", "no weather".
std::string climate_words(const PanelContext& context, const game::Place& place);

} // namespace widgets
