// Where the GM decides about a day's weather, and the sign of a sky.
#include "widgets/place_form.h"
#include "widgets/read_only.h"
#include "widgets/weather_walk_parts.h"

#include <imgui.h>

#include <algorithm>
#include <cmath>

namespace widgets {

using game::DayWeather;
using game::Sky;
using game::WeatherOverrule;
using game::WindStrength;

namespace {

constexpr const char* as_rolled = "as rolled";

// Queues a change of the shown day's overrule, at the place that its weather comes from.
template <class Change>
void ask_overrule(
    const ShownWeather& shown, const std::string& what, const std::string& typed_in, Change change
) {
    const game::Places& places = shown.context.campaign.places;
    const game::Place& there = game::weather_place(places, shown.place);
    const std::int64_t day = shown.report.days.front().day;
    ask_place(
        shown.context,
        there.id,
        there.name + ", day " + std::to_string(day) + ": " + what,
        typed_in.empty() ? typed_in : typed_in + std::to_string(day),
        [day, change](game::Place& place) {
            const WeatherOverrule* known = game::overrule_on(place, day);
            WeatherOverrule overrule = known == nullptr ? WeatherOverrule{} : *known;
            overrule.day = day;
            change(overrule);
            game::overrule_weather(place, std::move(overrule));
        }
    );
}

void draw_sky_choice(const ShownWeather& shown, const WeatherOverrule& now, Flow& flow) {
    const auto& skies = shown.context.climates->phrases.skies;
    const float width = width_of_letters(16);
    const auto name_of = [&](Sky sky) { return skies[static_cast<std::size_t>(sky)].name; };
    flow.field("Sky", width);
    if (begin_choice("##sky", now.sky ? name_of(*now.sky) : std::string(as_rolled), width)) {
        if (choice_row(as_rolled, !now.sky))
            ask_overrule(shown, "sky as rolled", {}, [](WeatherOverrule& each) {
                each.sky.reset();
            });
        for (int i = 0; i < game::sky_count; ++i) {
            const auto sky = static_cast<Sky>(i);
            if (choice_row(name_of(sky), now.sky == sky))
                ask_overrule(shown, name_of(sky), {}, [sky](WeatherOverrule& each) {
                    each.sky = sky;
                });
        }
        ImGui::EndCombo();
    }
    Flow::end_field();
}

void draw_wind_choice(const ShownWeather& shown, const WeatherOverrule& now, Flow& flow) {
    const auto& winds = shown.context.climates->phrases.winds;
    const float width = width_of_letters(14);
    const auto name_of = [&](WindStrength wind) { return winds[static_cast<std::size_t>(wind)]; };
    flow.field("Wind", width);
    if (begin_choice("##wind", now.wind ? name_of(*now.wind) : std::string(as_rolled), width)) {
        if (choice_row(as_rolled, !now.wind))
            ask_overrule(shown, "wind as rolled", {}, [](WeatherOverrule& each) {
                each.wind.reset();
            });
        for (int i = 0; i < game::wind_count; ++i) {
            const auto wind = static_cast<WindStrength>(i);
            if (choice_row(name_of(wind), now.wind == wind))
                ask_overrule(shown, name_of(wind), {}, [wind](WeatherOverrule& each) {
                    each.wind = wind;
                });
        }
        ImGui::EndCombo();
    }
    Flow::end_field();
}

void draw_high_field(const ShownWeather& shown, const WeatherOverrule& now, Flow& flow) {
    const bool in_fahrenheit = shown.context.campaign.places.in_fahrenheit;
    const double shown_c = shown.report.days.front().high_c;
    const auto in_unit = [in_fahrenheit](double celsius) {
        return static_cast<int>(std::lround(game::in_unit(celsius, in_fahrenheit)));
    };
    flow.field("High", stepper_width());
    const auto typed = stepper(
        "high",
        in_unit(shown_c),
        in_unit(game::PlaceLimits::celsius_min + shown.source.shift_c),
        in_unit(game::PlaceLimits::celsius_max + shown.source.shift_c),
        "The day's high"
    );
    Flow::end_field();
    if (typed.has_value()) {
        const double celsius = game::celsius_of(*typed, in_fahrenheit) - shown.source.shift_c;
        ask_overrule(
            shown,
            "high " + game::temperature_text(celsius + shown.source.shift_c, in_fahrenheit),
            "high",
            [celsius](WeatherOverrule& each) { each.high_c = celsius; }
        );
    }
    if (!now.high_c) return;
    const char* label = "High as rolled";
    flow.next(button_width(label));
    if (button(label))
        ask_overrule(shown, "high as rolled", {}, [](WeatherOverrule& each) {
            each.high_c.reset();
        });
}

void draw_overrule_note(
    const ShownWeather& shown, WeatherWalkView& view, const WeatherOverrule& now
) {
    const float width = std::min(
        px(420.0F),
        ImGui::GetContentRegionAvail().x - ImGui::CalcTextSize("Note").x -
            ImGui::GetStyle().ItemInnerSpacing.x
    );
    const std::string label = "##note of day " + std::to_string(shown.report.days.front().day);
    Flow flow;
    flow.field("Note", width);
    const auto typed =
        checked_text(label, now.note, view.drafts, shown.context.now_seconds, width, check_text);
    Flow::end_field();
    draw_complaints(view.drafts, label);
    if (typed.has_value())
        ask_overrule(shown, "note", "note", [words = *typed](WeatherOverrule& each) {
            each.note = words;
        });
}

} // namespace

void draw_weather_overrule(const ShownWeather& shown, WeatherWalkView& view) {
    const WeatherOverrule* known = shown.report.days.front().overrule;
    const bool is_read_only = shown.context.is_read_only;
    const char* label = "Overrule this day";
    if (toggle_button(label, view.is_overruling, read_only_reason(shown.context)))
        view.is_overruling = !view.is_overruling;
    if (known != nullptr) {
        const char* back = "All as rolled";
        same_line_if_fits(button_width(back));
        if (button(back, read_only_reason(shown.context)))
            ask_overrule(shown, "as rolled", {}, [](WeatherOverrule& each) {
                const std::int64_t day = each.day;
                each = WeatherOverrule{};
                each.day = day;
            });
    }
    if (!view.is_overruling || is_read_only) return;
    const WeatherOverrule now = known == nullptr ? WeatherOverrule{} : *known;
    Flow flow;
    draw_sky_choice(shown, now, flow);
    draw_high_field(shown, now, flow);
    draw_wind_choice(shown, now, flow);
    draw_overrule_note(shown, view, now);
    const game::Place& there = game::weather_place(shown.context.campaign.places, shown.place);
    std::string how = "The days after it follow on from what you say here.";
    if (there.id != shown.place.id) how += " It holds for " + there.name + " too.";
    text_wrapped(Ink::muted, how);
}

void draw_sky_sign(Sky sky, float size, Ink ink) {
    const ImVec2 at = ImGui::GetCursorScreenPos();
    ImGui::Dummy({size, size});
    ImDrawList* list = ImGui::GetWindowDrawList();
    const ImU32 colour = colour_u32(ink);
    const float line = std::max(1.0F, size / 12.0F);
    const auto point = [&](float x, float y) { return ImVec2{at.x + x * size, at.y + y * size}; };
    const auto cloud = [&] {
        list->AddRectFilled(point(0.08F, 0.3F), point(0.92F, 0.55F), colour, size * 0.125F);
        list->AddCircleFilled(point(0.42F, 0.32F), size * 0.2F, colour);
    };
    const auto drops = [&](int count, bool is_snow) {
        for (int i = 0; i < count; ++i) {
            const float x =
                0.5F + (static_cast<float>(i) - static_cast<float>(count - 1) / 2.0F) * 0.26F;
            if (is_snow)
                list->AddCircleFilled(point(x, 0.8F), size * 0.08F, colour);
            else
                list->AddLine(point(x + 0.05F, 0.65F), point(x - 0.05F, 0.95F), colour, line);
        }
    };
    switch (sky) {
    case Sky::clear: list->AddCircleFilled(point(0.5F, 0.5F), size * 0.32F, colour); return;
    case Sky::fair:
        list->AddCircle(point(0.5F, 0.42F), size * 0.28F, colour, 0, line);
        list->AddRectFilled(point(0.3F, 0.6F), point(1.0F, 0.85F), colour, size * 0.125F);
        return;
    case Sky::overcast: cloud(); return;
    case Sky::fog:
        for (const float y : {0.25F, 0.5F, 0.75F})
            list->AddLine(point(0.08F, y), point(0.92F, y), colour, line * 1.5F);
        return;
    case Sky::thunderstorm:
        cloud();
        list->AddLine(point(0.55F, 0.55F), point(0.4F, 0.78F), colour, line * 1.3F);
        list->AddLine(point(0.4F, 0.78F), point(0.6F, 0.75F), colour, line * 1.3F);
        list->AddLine(point(0.6F, 0.75F), point(0.45F, 1.0F), colour, line * 1.3F);
        return;
    case Sky::sleet:
        cloud();
        list->AddLine(point(0.35F, 0.65F), point(0.25F, 0.95F), colour, line);
        list->AddCircleFilled(point(0.65F, 0.8F), size * 0.08F, colour);
        return;
    default: break;
    }
    cloud();
    const bool is_light = sky == Sky::light_rain || sky == Sky::light_snow;
    const bool is_heavy = sky == Sky::heavy_rain || sky == Sky::heavy_snow;
    drops(is_light ? 1 : (is_heavy ? 3 : 2), game::is_snow(sky));
}

} // namespace widgets
