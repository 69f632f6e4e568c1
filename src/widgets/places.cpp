#include "widgets/places.h"

#include "game/fights.h"
#include "widgets/entry_list.h"
#include "widgets/place_form.h"
#include "widgets/read_only.h"

#include <imgui.h>

#include <utility>

namespace widgets {

using base::Id;
using game::Place;

const PanelInfo places_info{
    "places",
    "Places",
    "Where the party can be: each place with its climate and its own weather.",
    "",
    320.0F,
    260.0F};

namespace {

// "Temperate coast: light rain 12 C"
std::string weather_there(const PanelContext& context, const Place& place) {
    std::string words = climate_words(context, place);
    const auto source = weather_at(context, place);
    if (!source) return words;
    const auto today = game::walk_weather(*source, game::now(context.campaign).day, 1);
    return words + ": " +
           game::short_weather(
               context.climates->phrases, today.front(), context.campaign.places.in_fahrenheit
           );
}

void ask_party_to(const PanelContext& context, const Place& place) {
    context.edits.add(
        &game::Campaign::places,
        "The party is at " + place.name,
        [id = place.id](game::Places& places) { places.current = id; }
    );
}

void open_place(PlacesView& view, Id place) {
    view.edited = place;
    view.drafts = {};
}

void add_and_open(PlacesView& view, Id place) {
    open_place(view, place);
    view.wants_name = place;
}

void draw_place_list(const PanelContext& context, PlacesView& view) {
    const game::Places& places = context.campaign.places;
    const char* here = "Party here##here";
    const EntryColumns columns = entry_columns(button_width(here) + px(8.0F), 0.0F, 0);
    for (const Place& place : places.places) {
        ImGui::PushID(static_cast<int>(place.id));
        const ImVec2 at = ImGui::GetCursorPos();
        const bool is_pressed = draw_entry_row(
            columns, place.name, weather_there(context, place), {}, view.edited == place.id
        );
        const ImVec2 below = ImGui::GetCursorPos();
        ImGui::SetCursorPos({at.x + px(6.0F), at.y + (columns.row - row_height()) / 2.0F});
        const bool is_here = places.current == place.id;
        if (toggle_button(here, is_here, read_only_reason(context)) && !is_here)
            ask_party_to(context, place);
        ImGui::SetCursorPos(below);
        ImGui::PopID();
        if (is_pressed) open_place(view, place.id);
    }
    ImGui::Dummy({0.0F, 0.0F});
    if (button("Add a place", read_only_reason(context)))
        add_and_open(view, ask_new_place(context));
}

void draw_place_name(const PanelContext& context, PlacesView& view, const Place& place) {
    Flow flow;
    const float width = px(230.0F);
    flow.field("Name", width);
    if (view.wants_name == place.id) {
        give_keyboard_to_next_field();
        view.wants_name = base::no_id;
    }
    const auto typed =
        checked_text("##name", place.name, view.drafts, context.now_seconds, width, check_name);
    Flow::end_field();
    const char* remove = "Remove this place";
    flow.next(button_width(remove));
    if (button(remove, read_only_reason(context)))
        context.edits.add(
            &game::Campaign::places,
            "Remove the place " + place.name,
            [id = place.id](game::Places& places) { game::remove_place(places, id); }
        );
    draw_complaints(view.drafts, "##name");
    if (typed.has_value())
        ask_place(
            context,
            place.id,
            place.name + " is now called " + *typed,
            "##name",
            [words = *typed](Place& changed) { changed.name = words; }
        );
}

void ask_climate(
    const PanelContext& context,
    const Place& place,
    const std::string& key,
    const std::string& title
) {
    ask_place(context, place.id, place.name + ": " + title, {}, [key](Place& changed) {
        changed.climate = key;
        changed.weather_of = base::no_id;
    });
}

void draw_climate_choice(const PanelContext& context, const Place& place) {
    const game::Places& places = context.campaign.places;
    const float width = width_of_letters(26);
    Flow flow;
    flow.field("Weather", width);
    if (begin_choice("##climate", climate_words(context, place), width)) {
        const bool is_own = place.weather_of == base::no_id;
        if (context.climates != nullptr)
            for (const game::Climate& climate : context.climates->climates)
                if (choice_row(climate.title, is_own && place.climate == climate.key))
                    ask_climate(context, place, climate.key, climate.title);
        if (choice_row("no weather (below ground)", is_own && place.climate.empty()))
            ask_climate(context, place, {}, "no weather");
        for (const Place& other : places.places) {
            if (game::follows_weather(places, other.id, place.id)) continue;
            const std::string words = "weather of " + other.name;
            ImGui::PushID(static_cast<int>(other.id));
            if (choice_row(words, place.weather_of == other.id))
                ask_place(
                    context,
                    place.id,
                    place.name + ": " + words,
                    {},
                    [id = other.id](Place& changed) { changed.weather_of = id; }
                );
            ImGui::PopID();
        }
        ImGui::EndCombo();
    }
    Flow::end_field();
    const game::Climate* climate =
        context.climates == nullptr
            ? nullptr
            : game::find_climate(*context.climates, game::weather_place(places, place).climate);
    if (climate != nullptr) text_wrapped(Ink::muted, climate->summary);
}

void draw_place_form(const PanelContext& context, PlacesView& view, const Place& place) {
    ImGui::PushID(static_cast<int>(place.id));
    ImGui::BeginDisabled(context.is_read_only);
    push_font(TextSize::name);
    text_fitted(Ink::text, place.name, ImGui::GetContentRegionAvail().x);
    ImGui::PopFont();
    text_wrapped(Ink::muted, weather_there(context, place));
    draw_place_name(context, view, place);
    draw_climate_choice(context, place);
    Flow flow;
    flow.field("Warmer by, degrees C", stepper_width());
    constexpr int most = game::PlaceLimits::warmer_by_max;
    const auto warmer = stepper("warmer", place.warmer_by, -most, most, "Warmer by");
    Flow::end_field();
    if (warmer.has_value())
        ask_place(
            context,
            place.id,
            place.name + ": warmer by " + std::to_string(*warmer) + " C",
            "warmer",
            [degrees = *warmer](Place& changed) { changed.warmer_by = degrees; }
        );
    text_wrapped(Ink::muted, "High ground is colder: 6 degrees for each 1,000 m, say -6.");
    heading("Note");
    const auto note = long_text("##note", place.note, view.drafts, context.now_seconds, px(90.0F));
    draw_complaints(view.drafts, "##note");
    if (note.has_value())
        ask_place(
            context,
            place.id,
            place.name + ": note",
            "##note",
            [words = *note](Place& changed) { changed.note = words; }
        );
    ImGui::EndDisabled();
    ImGui::PopID();
}

} // namespace

void draw_places(const PanelContext& context, PlacesView& view) {
    const game::Places& places = context.campaign.places;
    if (places.places.empty()) {
        if (const auto added = draw_first_place(context)) add_and_open(view, *added);
        return;
    }
    std::vector<Id> shown;
    for (const Place& place : places.places)
        shown.push_back(place.id);
    const Id before = view.edited;
    take_wanted_entry(context, places_info, view.edited);
    read_entry_keys(context, shown, view.edited);
    if (view.edited != before) view.drafts = {};
    const Place* edited = game::place_with(places, view.edited);
    const bool is_wide = has_room_for_two();
    const float list_width =
        is_wide && edited != nullptr ? ImGui::GetContentRegionAvail().x * 0.45F : 0.0F;
    if (is_wide || edited == nullptr) {
        if (ImGui::BeginChild("list", {list_width, 0.0F})) draw_place_list(context, view);
        ImGui::EndChild();
    }
    if (edited == nullptr) return;
    if (is_wide)
        ImGui::SameLine();
    else if (button("Back to the places"))
        view.edited = base::no_id;
    if (ImGui::BeginChild("form", {0.0F, 0.0F})) draw_place_form(context, view, *edited);
    ImGui::EndChild();
}

} // namespace widgets
