// Weeks and months of the Day Book.
#include "base/unicode.h"
#include "game/date_text.h"
#include "game/weather_report.h"
#include "widgets/day_book_parts.h"
#include "widgets/place_form.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <utility>

namespace widgets {

using game::Calendar;
using game::CalendarDate;
using game::DayMarks;

namespace {

std::string first_line(const std::string& text) {
    return text.substr(0, text.find('\n'));
}

// Holidays, the page's first line and what is due, for one line of a list.
std::string day_words(const DayBookFrame& frame, std::int64_t day) {
    const game::Campaign& campaign = frame.context.campaign;
    std::string words;
    const auto add = [&words](const std::string& more) {
        if (!more.empty()) words += (words.empty() ? "" : "; ") + more;
    };
    for (const std::size_t at : game::holidays_on(campaign.calendar, day))
        add(campaign.calendar.holidays[at].name);
    for (const game::DueEntry& entry : frame.facts.due)
        if (entry.at.day == day && !entry.is_done) add(entry.text);
    const std::string& page = game::page_text(campaign.day_book, day);
    if (!page.empty()) {
        add(first_line(page));
    } else if (std::binary_search(frame.facts.written.begin(), frame.facts.written.end(), day)) {
        const std::vector<game::NoteOfDay> notes = game::notes_of_day(campaign.sessions, day);
        if (!notes.empty()) add(notes.front().line->text);
    }
    return words;
}

// The weather of these days where the party is, in short; empty words where there is none.
std::vector<std::string> weather_words(const DayBookFrame& frame, const game::DaySpan& days) {
    const PanelContext& context = frame.context;
    const auto count = static_cast<std::size_t>(days.last - days.first + 1);
    std::vector<std::string> words(count);
    const game::Place* place = game::current_place(context.campaign.places);
    if (place == nullptr) return words;
    const auto source = weather_at(context, *place);
    if (!source) return words;
    const auto walked = game::walk_weather(*source, days.first, count);
    for (std::size_t i = 0; i < count; ++i)
        words[i] = game::short_weather(
            context.climates->phrases, walked[i], context.campaign.places.in_fahrenheit
        );
    return words;
}

// As many letters as there is room for: the column tells the rest.
std::string fitting_letters(const std::string& name, float width) {
    std::string shown;
    for (const std::string& letter : base::graphemes(name)) {
        if (ImGui::CalcTextSize((shown + letter).c_str()).x > width) break;
        shown += letter;
    }
    return shown;
}

void draw_day_row(const DayBookFrame& frame, std::int64_t day, const std::string& weather) {
    const Calendar& calendar = frame.context.campaign.calendar;
    const DayMarks marks = game::day_marks(frame.context.campaign, frame.facts, day);
    const auto weekday = game::weekday_of(calendar, day);
    const std::string date =
        (weekday ? calendar.weekdays[*weekday] + ", " : "") + game::short_date_text(calendar, day);
    const ImVec2 at = ImGui::GetCursorPos();
    const ImVec2 screen = ImGui::GetCursorScreenPos();
    const float width = ImGui::GetContentRegionAvail().x;
    const float height = row_height() + ImGui::GetTextLineHeight();
    if (row_ground(date + "##row", width, height, day == frame.view.day))
        show_day(frame.view, day, DayBookSpan::day);
    if (marks.is_today) paint_today_frame(screen, {screen.x + width, screen.y + height});
    const float inset = px(10.0F);
    const float marks_room = marks_width(marks);
    ImGui::SetCursorPos({at.x + inset, at.y + px(4.0F)});
    text_fitted(
        marks.is_today ? Ink::accent : Ink::text,
        date + (marks.is_today ? ", today" : ""),
        width - 3.0F * inset - marks_room
    );
    ImGui::SetCursorPos({at.x + width - inset - marks_room, at.y + px(4.0F)});
    draw_day_marks(marks);
    ImGui::SetCursorPos({at.x + inset, at.y + ImGui::GetTextLineHeight() + px(8.0F)});
    std::string words = day_words(frame, day);
    if (!weather.empty()) words = weather + (words.empty() ? "" : "; ") + words;
    text_fitted(Ink::muted, words, width - 2.0F * inset);
    ImGui::SetCursorPos(at);
    ImGui::Dummy({width, height});
}

// One day in a grid.
void draw_day_cell(const DayBookFrame& frame, std::int64_t day, int number, ImVec2 size) {
    const DayMarks marks = game::day_marks(frame.context.campaign, frame.facts, day);
    const ImVec2 at = ImGui::GetCursorPos();
    const ImVec2 screen = ImGui::GetCursorScreenPos();
    const std::string date = game::short_date_text(frame.context.campaign.calendar, day);
    if (row_ground("##cell " + date, size.x, size.y, day == frame.view.day))
        show_day(frame.view, day, DayBookSpan::day);
    const std::string words = day_words(frame, day);
    if (!words.empty() && ImGui::IsItemHovered(ImGuiHoveredFlags_DelayShort))
        ImGui::SetTooltip("%s", words.c_str());
    ImGui::GetWindowDrawList()->AddRect(
        screen, {screen.x + size.x, screen.y + size.y}, colour_u32(Ink::line, 0.35F)
    );
    if (marks.is_today) paint_today_frame(screen, {screen.x + size.x, screen.y + size.y});
    ImGui::SetCursorPos({at.x + px(6.0F), at.y + px(3.0F)});
    push_numbers(TextSize::body);
    text(marks.is_today ? Ink::accent : Ink::text, std::to_string(number));
    ImGui::PopFont();
    const float number_width = px(34.0F);
    if (!words.empty() && size.x > number_width + width_of_letters(8)) {
        push_font(TextSize::small);
        ImGui::SetCursorPos({at.x + number_width, at.y + px(4.0F)});
        text_fitted(Ink::muted, words, size.x - number_width - px(6.0F));
        ImGui::PopFont();
    }
    float x = screen.x + px(3.0F);
    const float mark = std::min(mark_size(), (size.x - px(6.0F)) / 5.0F);
    for (const Mark each : marks_of(marks)) {
        paint_mark(each, {x, screen.y + size.y - mark - px(2.0F)}, mark);
        x += mark;
    }
    ImGui::SetCursorPos(at);
}

// A part of the year as a grid: a column a weekday, or ten where there are none.
void draw_part_grid(const DayBookFrame& frame, const CalendarDate& first) {
    constexpr int plain_columns = 10;
    const Calendar& calendar = frame.context.campaign.calendar;
    const int length = game::part_length(calendar, first.part, first.year);
    if (length == 0) return;
    const std::int64_t day = game::day_of(calendar, first);
    const auto weekday = game::weekday_of(calendar, day);
    const int wanted = weekday ? static_cast<int>(calendar.weekdays.size()) : plain_columns;
    const float room = ImGui::GetContentRegionAvail().x;
    // A week of very many days falls into lines that fit.
    const int columns = std::clamp(static_cast<int>(room / (row_height() * 0.9F)), 1, wanted);
    const int offset = weekday && columns == wanted ? static_cast<int>(*weekday) : 0;
    const ImVec2 size{
        room / static_cast<float>(columns), row_height() + ImGui::GetTextLineHeight()};
    const ImVec2 origin = ImGui::GetCursorPos();
    float top = origin.y;
    if (weekday && columns == wanted) {
        push_font(TextSize::small);
        for (int i = 0; i < columns; ++i) {
            ImGui::SetCursorPos({origin.x + size.x * static_cast<float>(i) + px(4.0F), top});
            const std::string& weekday_name = calendar.weekdays[static_cast<std::size_t>(i)];
            text(Ink::muted, fitting_letters(weekday_name, size.x - px(6.0F)));
        }
        top += ImGui::GetTextLineHeight() + px(4.0F);
        ImGui::PopFont();
    }
    for (int i = 0; i < length; ++i) {
        const int column = (i + offset) % columns;
        const int line = (i + offset) / columns;
        ImGui::SetCursorPos(
            {origin.x + size.x * static_cast<float>(column),
             top + size.y * static_cast<float>(line)}
        );
        draw_day_cell(frame, day + i, i + 1, {size.x - px(2.0F), size.y - px(2.0F)});
    }
    const int lines = (length + offset + columns - 1) / columns;
    ImGui::SetCursorPos(origin);
    ImGui::Dummy({room, top - origin.y + size.y * static_cast<float>(lines)});
}

// The parts that a month view shows: the month, and days outside of months around it.
std::pair<std::size_t, std::size_t> month_parts(const Calendar& calendar, std::size_t part) {
    std::size_t first = part;
    while (first > 0 && !calendar.parts[first].is_month)
        first -= 1;
    std::size_t last = part;
    while (last + 1 < calendar.parts.size() && !calendar.parts[last + 1].is_month)
        last += 1;
    return {first, last};
}

} // namespace

void draw_week(DayBookFrame& frame) {
    const game::DaySpan week = game::week_around(frame.context.campaign.calendar, frame.view.day);
    const std::vector<std::string> weather = weather_words(frame, week);
    for (std::int64_t day = week.first; day <= week.last; ++day)
        draw_day_row(frame, day, weather[static_cast<std::size_t>(day - week.first)]);
    draw_marks_legend();
}

void draw_month(DayBookFrame& frame) {
    const Calendar& calendar = frame.context.campaign.calendar;
    const CalendarDate shown = game::date_of(calendar, frame.view.day);
    const auto [first, last] = month_parts(calendar, shown.part);
    for (std::size_t part = first; part <= last; ++part) {
        if (game::part_length(calendar, part, shown.year) == 0) continue;
        heading(calendar.parts[part].name + " " + game::year_text(calendar, shown.year));
        draw_part_grid(frame, {shown.year, part, 1});
    }
    draw_marks_legend();
}

} // namespace widgets
