#include "widgets/day_book.h"

#include "game/date_text.h"
#include "game/fights.h"
#include "widgets/day_book_parts.h"
#include "widgets/far_press.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdint>
#include <system_error>

namespace widgets {

using game::Calendar;

const PanelInfo day_book_info{
    "day_book",
    "Day Book",
    "Every in-world day: what happened, moon, holidays, what is due, and the time.",
    "Shift+F4",
    360.0F,
    300.0F};

namespace {

constexpr const char* needs_calendar = "Choose a calendar first, in the panel Calendar.";

const char* span_word(DayBookSpan span) {
    switch (span) {
    case DayBookSpan::day: return "day";
    case DayBookSpan::week: return "week";
    case DayBookSpan::month: return "month";
    case DayBookSpan::year: return "year";
    }
    return "";
}

// The day one span before (-1) or after (+1) the one shown.
std::int64_t neighbour(const Calendar& calendar, const DayBookView& view, int by) {
    switch (view.span) {
    case DayBookSpan::day: break;
    case DayBookSpan::week: {
        const game::DaySpan week = game::week_around(calendar, view.day);
        return by > 0 ? week.last + 1 : game::week_around(calendar, week.first - 1).first;
    }
    case DayBookSpan::month: return game::add_months(calendar, view.day, by);
    case DayBookSpan::year: return game::add_years(calendar, view.day, by);
    }
    return view.day + by;
}

void turn_page(const Calendar& calendar, DayBookView& view, int by) {
    const std::int64_t day = neighbour(calendar, view, by);
    const std::int64_t furthest = game::CalendarLimits::day_max;
    show_day(view, std::clamp(day, -furthest, furthest), view.span);
}

// "today, 17:40", "in 3 days", "3 days ago"; then season and running day.
std::string under_title(const DayBookFrame& frame) {
    const Calendar& calendar = frame.context.campaign.calendar;
    const std::int64_t away = frame.view.day - frame.today;
    const std::int64_t count = away < 0 ? -away : away;
    const std::string days = std::to_string(count) + (count == 1 ? " day" : " days");
    std::string words =
        away == 0
            ? "Today, " + game::time_of_day_text(game::now(frame.context.campaign).second_of_day)
        : away > 0 ? "In " + days
                   : days + " ago";
    if (const auto season = game::season_of(calendar, frame.view.day))
        words += "   " + calendar.seasons[*season].name;
    if (game::has_dates(calendar))
        words += "   day " + std::to_string(frame.view.day) + " of the campaign";
    return words;
}

void draw_title(const DayBookFrame& frame) {
    push_font(TextSize::current);
    text_wrapped(Ink::text, game::date_text(frame.context.campaign.calendar, frame.view.day));
    ImGui::PopFont();
    text_wrapped(Ink::muted, under_title(frame));
}

void draw_spans(const PanelContext& context, DayBookView& view) {
    struct Span {
        DayBookSpan span;
        const char* name;
    };

    static constexpr std::array<Span, 4> spans{
        Span{DayBookSpan::day, "Day"},
        Span{DayBookSpan::week, "Week"},
        Span{DayBookSpan::month, "Month"},
        Span{DayBookSpan::year, "Year"}};
    Flow flow;
    for (const Span& each : spans) {
        const bool has_it = each.span == DayBookSpan::day || each.span == DayBookSpan::week ||
                            game::has_dates(context.campaign.calendar);
        flow.next(button_width(each.name));
        if (toggle_button(each.name, view.span == each.span, has_it ? "" : needs_calendar))
            view.span = each.span;
    }
    const std::string earlier = std::string("Previous ") + span_word(view.span) + "###earlier";
    const std::string later = std::string("Next ") + span_word(view.span) + "###later";
    flow.next(button_width(earlier.c_str()));
    if (button(earlier.c_str())) turn_page(context.campaign.calendar, view, -1);
    flow.next(button_width("Today"));
    if (toggle_button("Today", view.follows_today)) view.follows_today = true;
    flow.next(button_width(later.c_str()));
    if (button(later.c_str())) turn_page(context.campaign.calendar, view, 1);
}

void draw_jump_and_search(const PanelContext& context, DayBookView& view) {
    const float gap = ImGui::GetStyle().ItemSpacing.x;
    const float go = button_width("Go");
    const float room = ImGui::GetContentRegionAvail().x;
    const bool is_wide = room > width_of_letters(50);
    const float field = std::max((is_wide ? room / 2.0F : room) - go - 2.0F * gap, px(60.0F));
    ImGui::SetNextItemWidth(field);
    meet_far_press("##jump");
    const bool is_entered = ImGui::InputTextWithHint(
        "##jump", "A date, or +10", &view.jump, ImGuiInputTextFlags_EnterReturnsTrue
    );
    ImGui::SameLine();
    if (button("Go") || is_entered) {
        std::int64_t day = view.day;
        if (read_typed_date(context, view.jump, view.day, day, view.jump_complaint)) {
            show_day(view, day, view.span);
            view.jump.clear();
        }
    }
    if (is_wide) ImGui::SameLine();
    const float clear = view.search.empty() ? 0.0F : button_width("Clear") + gap;
    ImGui::SetNextItemWidth(std::max(ImGui::GetContentRegionAvail().x - clear, px(60.0F)));
    meet_far_press("##search");
    ImGui::InputTextWithHint("##search", "Search all days", &view.search);
    if (!view.search.empty()) {
        ImGui::SameLine();
        if (button("Clear")) view.search.clear();
    }
    if (!view.jump_complaint.empty()) complaint(view.jump_complaint);
}

void draw_found_pages(const DayBookFrame& frame) {
    const game::Campaign& campaign = frame.context.campaign;
    const std::string search = frame.view.search;
    const std::vector<std::int64_t> days = game::search_days(campaign, search);
    if (days.empty()) {
        text_wrapped(Ink::muted, "No day holds \"" + search + "\".");
        return;
    }
    const float height = ImGui::GetTextLineHeight() * 2.0F + px(12.0F);
    ImGuiListClipper clipper;
    clipper.Begin(static_cast<int>(days.size()), height);
    while (clipper.Step())
        for (int i = clipper.DisplayStart; i < clipper.DisplayEnd; ++i) {
            const std::int64_t day = days[static_cast<std::size_t>(i)];
            const std::string date = game::date_text(campaign.calendar, day);
            const ImVec2 at = ImGui::GetCursorPos();
            const float width = ImGui::GetContentRegionAvail().x;
            if (row_ground(date + "##found", width, height - px(2.0F), false)) {
                show_day(frame.view, day, DayBookSpan::day);
                frame.view.search.clear();
            }
            ImGui::SetCursorPos({at.x + px(8.0F), at.y + px(2.0F)});
            text_fitted(Ink::accent, date, width - px(16.0F));
            ImGui::SetCursorPos({at.x + px(8.0F), at.y + ImGui::GetTextLineHeight() + px(6.0F)});
            text_fitted(Ink::text, game::found_line(campaign, day, search), width - px(16.0F));
            ImGui::SetCursorPos(at);
            ImGui::Dummy({width, height - ImGui::GetStyle().ItemSpacing.y});
        }
}

void read_day_book_keys(const PanelContext& context, DayBookView& view) {
    if (!keys_are_free(context)) return;
    if (ImGui::IsKeyPressed(ImGuiKey_PageUp)) turn_page(context.campaign.calendar, view, -1);
    if (ImGui::IsKeyPressed(ImGuiKey_PageDown)) turn_page(context.campaign.calendar, view, 1);
    if (ImGui::IsKeyPressed(ImGuiKey_T)) view.follows_today = true;
}

} // namespace

void show_day(DayBookView& view, std::int64_t day, DayBookSpan span) {
    view.day = day;
    view.follows_today = false;
    view.span = span;
    view.jump_complaint.clear();
    view.timer_complaint.clear();
}

bool read_typed_date(
    const PanelContext& context,
    const std::string& text,
    std::int64_t from,
    std::int64_t& day,
    std::string& complaint
) {
    const auto read = game::parse_date(context.campaign.calendar, text, from);
    complaint = read.ok() ? std::string() : read.error().message;
    if (read.ok()) day = read.value();
    return read.ok();
}

// A day that was looked for elsewhere.
static void take_wanted_day(const PanelContext& context, DayBookView& view) {
    const Wanted wanted = take_wanted(context.selection, day_book_info);
    std::int64_t day = 0;
    const char* end = wanted.key.data() + wanted.key.size();
    if (std::from_chars(wanted.key.data(), end, day).ec != std::errc()) return;
    view.day = day;
    view.follows_today = false;
    view.span = DayBookSpan::day;
    view.search.clear();
}

void draw_day_book(const PanelContext& context, DayBookView& view) {
    DayBookFrame frame{context, view, game::now(context.campaign).day};
    read_day_book_keys(context, view);
    take_wanted_day(context, view);
    if (view.follows_today) view.day = frame.today;
    if (!game::has_dates(context.campaign.calendar) && view.span > DayBookSpan::week)
        view.span = DayBookSpan::day;
    frame.facts = game::book_facts(context.campaign, context.rulebook);
    ImGui::BeginChild("book");
    draw_title(frame);
    if (!game::has_dates(context.campaign.calendar)) {
        text_wrapped(
            Ink::muted, "Days are counted until the campaign has a calendar; ready ones are there."
        );
        if (primary_button("Choose a calendar")) context.selection.wanted_panel = "calendar";
    }
    draw_spans(context, view);
    draw_jump_and_search(context, view);
    if (!view.search.empty()) {
        draw_found_pages(frame);
    } else {
        switch (view.span) {
        case DayBookSpan::day: draw_day_page(frame); break;
        case DayBookSpan::week: draw_week(frame); break;
        case DayBookSpan::month: draw_month(frame); break;
        case DayBookSpan::year: draw_year(frame); break;
        }
    }
    ImGui::EndChild();
}

} // namespace widgets
