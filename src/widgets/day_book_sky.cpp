// The head of a day's page: what the calendar, the weather and the moons say about it.
#include "game/calendar_dates.h"
#include "game/weather_report.h"
#include "widgets/day_book_parts.h"
#include "widgets/place_form.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <cmath>
#include <numbers>

namespace widgets {

using game::Calendar;

namespace {

// The disc as it stands in the sky of the north: waxing is lit from the right. What is lit is the
// lighter of the two on any theme.
void draw_moon_disc(double share, float radius) {
    const ImVec2 at = ImGui::GetCursorScreenPos();
    const float middle = at.y + ImGui::GetTextLineHeight() / 2.0F;
    const ImVec2 centre{at.x + radius, middle};
    ImDrawList* list = ImGui::GetWindowDrawList();
    const bool is_paper = look().theme == ThemeName::paper;
    const std::uint32_t lit = colour_u32(is_paper ? Ink::panel : Ink::text);
    list->AddCircleFilled(centre, radius, colour_u32(is_paper ? Ink::text : Ink::ground));
    const auto edge = static_cast<float>(std::cos(2.0 * std::numbers::pi * share));
    for (float y = -radius + 0.5F; y < radius; y += 1.0F) {
        const float half = std::sqrt(radius * radius - y * y);
        const float from = share < 0.5 ? edge * half : -half;
        const float to = share < 0.5 ? half : -edge * half;
        list->AddRectFilled(
            {centre.x + from, centre.y + y - 0.5F}, {centre.x + to, centre.y + y + 0.5F}, lit
        );
    }
    list->AddCircle(centre, radius, colour_u32(Ink::line), 0, px(1.0F));
    ImGui::Dummy({2.0F * radius, ImGui::GetTextLineHeight()});
    ImGui::SameLine();
}

void draw_holidays(const DayBookFrame& frame) {
    const Calendar& calendar = frame.context.campaign.calendar;
    for (const std::size_t at : game::holidays_on(calendar, frame.view.day)) {
        const game::Holiday& holiday = calendar.holidays[at];
        push_font(TextSize::name);
        text_wrapped(Ink::accent, holiday.name);
        ImGui::PopFont();
        if (!holiday.note.empty()) text_wrapped(Ink::text, holiday.note);
    }
}

void draw_moons(const DayBookFrame& frame) {
    const Calendar& calendar = frame.context.campaign.calendar;
    if (!game::has_dates(calendar)) return;
    constexpr double percent = 100.0;
    for (const game::Moon& moon : calendar.moons) {
        draw_moon_disc(
            game::moon_share(calendar, moon, frame.view.day), ImGui::GetTextLineHeight() * 0.45F
        );
        const double light = game::moon_light(calendar, moon, frame.view.day);
        text_wrapped(
            Ink::text,
            moon.name + ": " +
                game::moon_phase_text(game::moon_phase(calendar, moon, frame.view.day)) + ", " +
                std::to_string(std::lround(light * percent)) + " % lit"
        );
    }
}

// "Salt Ferry: light rain 12 C, strong wind from the west", and the line to read aloud beside a
// bar.
void draw_weather(const DayBookFrame& frame) {
    const PanelContext& context = frame.context;
    const game::Place* place = game::current_place(context.campaign.places);
    if (place == nullptr) return;
    const auto source = weather_at(context, *place);
    if (!source) return;
    const game::WeatherReport report =
        game::report_weather(*context.climates, *source, context.campaign.about, frame.view.day);
    const game::DayWeather& day = report.days.front();
    text_wrapped(
        Ink::text,
        place->name + ": " +
            game::short_weather(
                context.climates->phrases, day, context.campaign.places.in_fahrenheit
            ) +
            ", " + game::wind_text(context.climates->phrases, day)
    );
    const ImVec2 at = ImGui::GetCursorScreenPos();
    ImGui::Indent(px(14.0F));
    push_font(TextSize::name);
    text_wrapped(Ink::text, report.line);
    ImGui::PopFont();
    ImGui::Unindent(px(14.0F));
    const float end = ImGui::GetCursorScreenPos().y - ImGui::GetStyle().ItemSpacing.y;
    ImGui::GetWindowDrawList()->AddRectFilled(at, {at.x + px(4.0F), end}, colour_u32(Ink::accent));
}

} // namespace

void draw_sky_of_day(const DayBookFrame& frame) {
    draw_holidays(frame);
    draw_weather(frame);
    draw_moons(frame);
}

} // namespace widgets
