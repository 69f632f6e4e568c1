// A year of the Day Book: a line a month.
#include "game/date_text.h"
#include "widgets/day_book_parts.h"
#include "widgets/ui.h"

#include <algorithm>

namespace widgets {

using game::Calendar;
using game::CalendarDate;
using game::DayMarks;

namespace {

float strip_mark_size() {
    return mark_size() * 0.8F;
}

// Every day a tick; its first mark stands above the line, the others below each other.
void draw_year_strip(const std::vector<DayMarks>& days, float width) {
    const ImVec2 at = ImGui::GetCursorScreenPos();
    const float step = width / static_cast<float>(days.size());
    const float size = std::min(strip_mark_size(), std::max(step, px(5.0F)));
    ImDrawList* list = ImGui::GetWindowDrawList();
    const float line = at.y + strip_mark_size() + px(2.0F);
    list->AddLine({at.x, line}, {at.x + width, line}, colour_u32(Ink::line), px(1.0F));
    float x = at.x + step * 0.5F;
    for (const DayMarks& marks : days) {
        list->AddLine({x, line - px(2.0F)}, {x, line + px(2.0F)}, colour_u32(Ink::line), px(1.0F));
        float y = line - size;
        float bottom = line + px(3.0F);
        for (const Mark mark : marks_of(marks)) {
            paint_mark(mark, {x - size / 2.0F, y}, size);
            bottom = std::max(bottom, y + size);
            y = y < line ? line + px(2.0F) : y + size;
        }
        if (marks.is_today)
            paint_today_frame(
                {x - size / 2.0F - px(1.0F), line - size - px(2.0F)},
                {x + size / 2.0F + px(1.0F), bottom + px(1.0F)}
            );
        x += step;
    }
}

// "14 Causeway Day, 21 Weighing Fair"
std::string holidays_of(const Calendar& calendar, std::int64_t day, int length) {
    std::string words;
    for (int i = 0; i < length; ++i)
        for (const std::size_t at : game::holidays_on(calendar, day + i))
            words += (words.empty() ? "" : ", ") +
                     (length > 1 ? std::to_string(i + 1) + " " : std::string()) +
                     calendar.holidays[at].name;
    return words;
}

void draw_year_row(const DayBookFrame& frame, std::size_t part, std::int64_t year) {
    const Calendar& calendar = frame.context.campaign.calendar;
    const int length = game::part_length(calendar, part, year);
    if (length == 0) return;
    const std::int64_t first = game::day_of(calendar, {year, part, 1});
    std::vector<DayMarks> days;
    std::size_t most = 1;
    for (int i = 0; i < length; ++i) {
        days.push_back(game::day_marks(frame.context.campaign, frame.facts, first + i));
        most = std::max(most, marks_of(days.back()).size());
    }
    const ImVec2 at = ImGui::GetCursorPos();
    const float width = ImGui::GetContentRegionAvail().x;
    const float line = ImGui::GetTextLineHeight();
    const float height =
        std::max(line + px(16.0F) + strip_mark_size() * static_cast<float>(most), row_height());
    const CalendarDate shown = game::date_of(calendar, frame.view.day);
    const std::string& name = calendar.parts[part].name;
    if (row_ground(name + "##part", width, height, shown.part == part))
        show_day(frame.view, first, DayBookSpan::month);
    const float inset = px(10.0F);
    ImGui::SetCursorPos({at.x + inset, at.y + px(3.0F)});
    const std::string holidays = holidays_of(calendar, first, length);
    const bool says_more = !holidays.empty() && holidays != name;
    text_fitted(Ink::text, name + (says_more ? ":  " + holidays : ""), width - 2.0F * inset);
    ImGui::SetCursorPos({at.x + inset, at.y + line + px(5.0F)});
    draw_year_strip(days, width - 2.0F * inset);
    ImGui::SetCursorPos(at);
    ImGui::Dummy({width, height});
}

} // namespace

void draw_year(DayBookFrame& frame) {
    const Calendar& calendar = frame.context.campaign.calendar;
    const CalendarDate shown = game::date_of(calendar, frame.view.day);
    heading(
        "Year " + game::year_text(calendar, shown.year) + ", " +
        std::to_string(game::year_length(calendar, shown.year)) + " days"
    );
    for (std::size_t part = 0; part < calendar.parts.size(); ++part)
        draw_year_row(frame, part, shown.year);
    draw_marks_legend();
}

} // namespace widgets
