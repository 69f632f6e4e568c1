#include "widgets/weather_walk.h"

#include "game/date_text.h"
#include "game/fights.h"
#include "widgets/place_form.h"
#include "widgets/weather_walk_parts.h"

#include <imgui.h>

#include <algorithm>
#include <cctype>

namespace widgets {

using game::DayWeather;

const PanelInfo weather_walk_info{
    "weather_walk",
    "Weather Walk",
    "Today's weather where the party is, to read aloud, and the days ahead.",
    "Shift+F5",
    320.0F,
    260.0F};

namespace {

std::string capitalised(std::string words) {
    if (!words.empty())
        words.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(words.front())));
    return words;
}

const std::string& sky_name(const PanelContext& context, game::Sky sky) {
    return context.climates->phrases.skies[static_cast<std::size_t>(sky)].name;
}

std::string day_words(int ahead) {
    if (ahead == 0) return "Today";
    return ahead == 1 ? "Tomorrow" : "In " + std::to_string(ahead) + " days";
}

std::string date_words(const game::Calendar& calendar, std::int64_t day) {
    return game::has_dates(calendar) ? game::short_date_text(calendar, day)
                                     : "day " + std::to_string(day);
}

void draw_weather_header(const PanelContext& context) {
    const bool in_fahrenheit = context.campaign.places.in_fahrenheit;
    const float units = button_width("C") + button_width("F") + ImGui::GetStyle().ItemSpacing.x;
    const float room = ImGui::GetContentRegionAvail().x;
    draw_party_place(context, std::min(px(260.0F), room - units - px(8.0F)));
    const auto unit = [&](const char* label, bool is_this) {
        ImGui::SameLine();
        if (!toggle_button(label, in_fahrenheit == is_this) || in_fahrenheit == is_this) return;
        context.edits.add(
            &game::Campaign::places,
            is_this ? "Temperatures in Fahrenheit" : "Temperatures in Celsius",
            [is_this](game::Places& places) { places.in_fahrenheit = is_this; }
        );
    };
    ImGui::BeginDisabled(context.is_read_only);
    unit("C", false);
    unit("F", true);
    ImGui::EndDisabled();
}

void draw_weather_events(const ShownWeather& shown) {
    std::string words;
    for (const game::WeatherEvent event : shown.report.events)
        words += (words.empty() ? "" : ", ") + std::string(game::event_words(event));
    if (!words.empty()) text_wrapped(Ink::accent, capitalised(words) + ".");
    const game::WeatherOverrule* overrule = shown.report.days.front().overrule;
    if (overrule == nullptr) return;
    text_wrapped(
        Ink::accent, "Overruled by the GM" + (overrule->note.empty() ? "." : ": " + overrule->note)
    );
}

// The line stands beside a bar, so that the eye finds what is spoken.
void draw_weather_line(const std::string& line) {
    const ImVec2 at = ImGui::GetCursorScreenPos();
    ImGui::Indent(px(14.0F));
    push_font(TextSize::name);
    text_wrapped(Ink::text, line);
    ImGui::PopFont();
    ImGui::Unindent(px(14.0F));
    const float end = ImGui::GetCursorScreenPos().y - ImGui::GetStyle().ItemSpacing.y;
    ImGui::GetWindowDrawList()->AddRectFilled(at, {at.x + px(4.0F), end}, colour_u32(Ink::accent));
    ImGui::Dummy({0.0F, px(2.0F)});
}

void draw_weather_rules(const ShownWeather& shown) {
    for (const game::WeatherRule* rule : shown.report.rules) {
        text_wrapped(Ink::text, rule->line);
        push_font(TextSize::small);
        const std::string checked = rule->verified == "memory" ? ", from memory" : "";
        text_wrapped(Ink::muted, rule->source + checked);
        ImGui::PopFont();
    }
}

void draw_shown_day(const ShownWeather& shown, WeatherWalkView& view) {
    const PanelContext& context = shown.context;
    const DayWeather& day = shown.report.days.front();
    const bool in_fahrenheit = context.campaign.places.in_fahrenheit;
    ImGui::AlignTextToFramePadding();
    text(Ink::muted, day_words(view.ahead) + ", " + date_words(context.campaign.calendar, day.day));
    if (view.ahead != 0) {
        same_line_if_fits(button_width("Back to today"));
        if (small_button("Back to today")) view.ahead = 0;
    }
    push_font(TextSize::current);
    const float sign = ImGui::GetTextLineHeight();
    draw_sky_sign(day.sky, sign, Ink::accent);
    ImGui::SameLine();
    text_wrapped(
        Ink::text,
        capitalised(sky_name(context, day.sky)) + ", " +
            game::temperature_text(day.high_c, in_fahrenheit)
    );
    ImGui::PopFont();
    text_wrapped(
        Ink::muted,
        "low " + game::temperature_text(day.low_c, in_fahrenheit) + ", " +
            game::wind_text(context.climates->phrases, day)
    );
    draw_weather_events(shown);
    draw_weather_line(shown.report.line);
    draw_weather_rules(shown);
}

// One day of the strip: pressed, it is shown in full.
bool draw_day_cell(
    const PanelContext& context, const DayWeather& day, int ahead, float width, bool is_on
) {
    const bool in_fahrenheit = context.campaign.places.in_fahrenheit;
    const ImVec2 at = ImGui::GetCursorPos();
    const float inset = px(6.0F);
    push_font(TextSize::small);
    const float line = ImGui::GetTextLineHeight() + px(3.0F);
    const float sign = ImGui::GetTextLineHeight() + px(4.0F);
    const float height = std::max(line * 4.0F + sign + inset, row_height());
    ImGui::BeginGroup();
    const bool is_pressed =
        row_ground(day_words(ahead) + "##ahead " + std::to_string(ahead), width, height, is_on);
    float y = at.y + px(2.0F);
    const auto put = [&](Ink ink, const std::string& words) {
        ImGui::SetCursorPos({at.x + inset, y});
        text(ink, words);
        y += line;
    };
    put(Ink::muted, ahead == 1 ? "Tomorrow" : "+" + std::to_string(ahead) + " days");
    ImGui::SetCursorPos({at.x + inset, y});
    draw_sky_sign(day.sky, sign, Ink::text);
    y += sign + px(2.0F);
    put(Ink::text, sky_name(context, day.sky));
    const auto low = game::temperature_text(day.low_c, in_fahrenheit);
    put(Ink::text,
        game::temperature_text(day.high_c, in_fahrenheit) + " / " + low.substr(0, low.find(' ')));
    put(Ink::muted, context.climates->phrases.winds[static_cast<std::size_t>(day.wind)]);
    ImGui::SetCursorPos(at);
    ImGui::Dummy({width, height});
    ImGui::EndGroup();
    ImGui::PopFont();
    return is_pressed;
}

float cell_width(const PanelContext& context) {
    push_font(TextSize::small);
    float width = 0.0F;
    const auto make_room = [&width](const std::string& words) {
        width = std::max(width, ImGui::CalcTextSize(words.c_str()).x);
    };
    for (const game::SkyWords& sky : context.climates->phrases.skies)
        make_room(sky.name);
    for (const std::string& wind : context.climates->phrases.winds)
        make_room(wind);
    ImGui::PopFont();
    return width + px(14.0F);
}

void draw_days_ahead(
    const PanelContext& context, const std::vector<DayWeather>& days, WeatherWalkView& view
) {
    heading("The next 7 days, for your eyes");
    const float width = cell_width(context);
    for (int ahead = 1; ahead < static_cast<int>(days.size()); ++ahead) {
        if (ahead > 1) same_line_if_fits(width);
        const DayWeather& day = days[static_cast<std::size_t>(ahead)];
        if (draw_day_cell(context, day, ahead, width, view.ahead == ahead)) view.ahead = ahead;
    }
}

void draw_weather_here(
    const PanelContext& context, WeatherWalkView& view, const game::Place& place
) {
    const auto source = weather_at(context, place);
    if (!source) {
        text_wrapped(
            Ink::muted,
            place.climate.empty()
                ? "There is no weather here. Below ground every day is the same."
                : "The climate \"" + place.climate + "\" is not there, so there is no weather."
        );
        return;
    }
    const std::int64_t today = game::now(context.campaign).day;
    const auto report =
        game::report_weather(*context.climates, *source, context.campaign.about, today);
    if (view.ahead == 0) {
        const ShownWeather shown{context, place, *source, report};
        draw_shown_day(shown, view);
        draw_weather_overrule(shown, view);
    } else {
        const auto later = game::report_weather(
            *context.climates, *source, context.campaign.about, today + view.ahead
        );
        const ShownWeather shown{context, place, *source, later};
        draw_shown_day(shown, view);
        draw_weather_overrule(shown, view);
    }
    draw_days_ahead(context, report.days, view);
}

} // namespace

void draw_weather_walk(const PanelContext& context, WeatherWalkView& view) {
    const game::Places& places = context.campaign.places;
    if (context.climates == nullptr || context.climates->climates.empty()) {
        empty_state("The weather of the day. No climate can be read, so there is none.");
        return;
    }
    if (places.places.empty()) {
        draw_first_place(context);
        return;
    }
    draw_weather_header(context);
    const game::Place* place = game::current_place(places);
    if (place == nullptr) {
        text_wrapped(Ink::muted, "The party is at no place. Choose one above to see its weather.");
        return;
    }
    draw_weather_here(context, view, *place);
}

} // namespace widgets
