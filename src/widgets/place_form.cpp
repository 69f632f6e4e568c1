#include "widgets/place_form.h"

#include "game/shelf.h"
#include "widgets/read_only.h"

#include <imgui.h>

#include <utility>

namespace widgets {

using base::Id;
using game::Place;
using game::Places;

void ask_place(
    const PanelContext& context,
    Id place,
    std::string label,
    const std::string& typed_in,
    std::function<void(Place&)> change
) {
    const std::string merge_key =
        typed_in.empty() ? std::string() : "places/" + std::to_string(place) + typed_in;
    context.edits.add(
        &game::Campaign::places,
        std::move(label),
        [place, change = std::move(change)](Places& places) {
            if (Place* known = game::place_with(places, place)) change(*known);
        },
        merge_key
    );
}

Id ask_new_place(const PanelContext& context) {
    const Places& places = context.campaign.places;
    Place place;
    place.name = game::free_name(places.places, "New place");
    if (context.climates != nullptr && !context.climates->climates.empty())
        place.climate = context.climates->climates.front().key;
    // A new place is near the others more often than not.
    if (!places.places.empty())
        place.climate = game::weather_place(places, places.places.back()).climate;
    context.edits.add(
        &game::Campaign::places,
        "Add the place " + place.name,
        [place, title = context.campaign.about.title](Places& changed) {
            game::add_place(changed, place, title);
        }
    );
    return places.next_id;
}

std::optional<Id> draw_first_place(const PanelContext& context) {
    empty_state("No place is known yet. A place has a climate and a weather of its own: read it "
                "out when the evening opens, and see the days ahead.");
    if (!primary_button("Add the first place", read_only_reason(context))) return std::nullopt;
    return ask_new_place(context);
}

void draw_party_place(const PanelContext& context, float width) {
    const Places& places = context.campaign.places;
    const Place* here = game::current_place(places);
    ImGui::BeginDisabled(context.is_read_only);
    if (begin_choice("##the party is at", here == nullptr ? "nowhere" : here->name, width)) {
        const auto offer = [&](Id id, const std::string& name) {
            ImGui::PushID(static_cast<int>(id));
            if (choice_row(name, places.current == id))
                context.edits.add(
                    &game::Campaign::places,
                    id == base::no_id ? "The party is on the way" : "The party is at " + name,
                    [id](Places& changed) { changed.current = id; }
                );
            ImGui::PopID();
        };
        for (const Place& place : places.places)
            offer(place.id, place.name);
        offer(base::no_id, "nowhere");
        ImGui::EndCombo();
    }
    ImGui::EndDisabled();
}

std::optional<game::WeatherSource> weather_at(const PanelContext& context, const Place& place) {
    if (context.climates == nullptr) return std::nullopt;
    return game::weather_source(
        context.campaign.places,
        place,
        *context.climates,
        game::year_clock(context.campaign.calendar)
    );
}

std::string climate_words(const PanelContext& context, const Place& place) {
    const Places& places = context.campaign.places;
    if (place.weather_of != base::no_id) {
        const Place* other = game::place_with(places, place.weather_of);
        if (other != nullptr) return "weather of " + other->name;
    }
    if (place.climate.empty()) return "no weather";
    const game::Climate* climate = context.climates == nullptr
                                       ? nullptr
                                       : game::find_climate(*context.climates, place.climate);
    return climate == nullptr ? "unknown climate \"" + place.climate + "\"" : climate->title;
}

} // namespace widgets
