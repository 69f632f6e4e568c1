// The page of one day.
#include "game/date_text.h"
#include "game/fights.h"
#include "game/time_passing.h"
#include "widgets/day_book_parts.h"
#include "widgets/far_press.h"
#include "widgets/read_only.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>

namespace widgets {

using game::DayBook;

namespace {

constexpr int eight_o_clock = 8 * 3600;

void draw_written(const DayBookFrame& frame) {
    heading("What happened");
    const std::int64_t day = frame.view.day;
    const std::string label = "##page " + std::to_string(day);
    const std::string& written = game::page_text(frame.context.campaign.day_book, day);
    const float lines = std::clamp(
        static_cast<float>(std::count(written.begin(), written.end(), '\n')), 2.0F, 12.0F
    );
    ImGui::BeginDisabled(frame.context.is_read_only);
    const auto typed = long_text(
        label,
        written,
        frame.view.drafts,
        frame.context.now_seconds,
        ImGui::GetTextLineHeight() * (lines + 3.0F)
    );
    ImGui::EndDisabled();
    draw_complaints(frame.view.drafts, label);
    if (!typed.has_value()) return;
    frame.context.edits.add(
        &game::Campaign::day_book,
        "Write on the page of " + game::short_date_text(frame.context.campaign.calendar, day),
        [day, text = *typed](DayBook& book) { game::write_page(book, day, text); },
        "day_book/page/" + std::to_string(day)
    );
}

// Notes of the evenings stand where they were written; the Session Sheet changes them.
void draw_notes(const DayBookFrame& frame) {
    base::Id session = base::no_id;
    for (const game::NoteOfDay& note :
         game::notes_of_day(frame.context.campaign.sessions, frame.view.day)) {
        if (note.session->id != session) {
            session = note.session->id;
            text_wrapped(
                Ink::muted,
                "Session " + std::to_string(note.session->number) +
                    (note.session->title.empty() ? "" : ", " + note.session->title)
            );
        }
        text_wrapped(
            Ink::text, game::time_of_day_text(note.line->second_of_day) + "  " + note.line->text
        );
    }
}

void ask_done(const PanelContext& context, const game::DueEntry& entry) {
    context.edits.add(
        &game::Campaign::day_book,
        (entry.is_done ? "Not done after all: " : "Done: ") + entry.text,
        [id = entry.timer, is_done = !entry.is_done](DayBook& book) {
            game::set_day_timer_done(book, id, is_done);
        }
    );
}

// One thing that falls due: what, when, and the way to tick it off.
void draw_due_entry(const DayBookFrame& frame, const game::DueEntry& entry, bool with_date) {
    const PanelContext& context = frame.context;
    const game::Clock now = game::now(context.campaign);
    std::string words = game::time_of_day_text(entry.at.second_of_day) + "  " + entry.text;
    if (with_date)
        words = game::short_date_text(context.campaign.calendar, entry.at.day) + ", " + words;
    words += entry.is_done ? "  (done)" : "  (" + game::time_left_text(now, entry.at) + ")";
    const bool is_late = !entry.is_done && game::is_before(entry.at, now);
    ImGui::PushID(static_cast<int>(entry.timer));
    ImGui::AlignTextToFramePadding();
    text_wrapped(is_late ? Ink::harm : entry.is_done ? Ink::muted : Ink::text, words);
    if (entry.timer != base::no_id) {
        const std::string done =
            std::string(entry.is_done ? "Not done" : "Done") + "##" + entry.text;
        const std::string remove = "Remove##" + entry.text;
        const float both = button_width(done.c_str()) + button_width(remove.c_str()) +
                           ImGui::GetStyle().ItemSpacing.x;
        same_line_if_fits(both);
        if (button(done.c_str(), read_only_reason(context))) ask_done(context, entry);
        ImGui::SameLine();
        if (button(remove.c_str(), read_only_reason(context)))
            context.edits.add(
                &game::Campaign::day_book,
                "Remove the timer " + entry.text,
                [id = entry.timer](DayBook& book) { game::remove_day_timer(book, id); }
            );
    }
    ImGui::PopID();
}

void ask_timer(const DayBookFrame& frame) {
    DayBookView& view = frame.view;
    game::Clock ends{view.day, eight_o_clock, {}};
    view.timer_complaint.clear();
    if (view.timer_text.empty()) {
        view.timer_complaint = "Type what falls due.";
        return;
    }
    if (!view.timer_date.empty() &&
        !read_typed_date(frame.context, view.timer_date, view.day, ends.day, view.timer_complaint))
        return;
    if (!view.timer_time.empty()) {
        const auto time = game::parse_time_of_day(view.timer_time);
        if (!time.ok()) {
            view.timer_complaint = time.error().message;
            return;
        }
        ends.second_of_day = time.value();
    }
    if (const std::string why = check_text(view.timer_text); !why.empty()) {
        view.timer_complaint = why;
        return;
    }
    frame.context.edits.add(
        &game::Campaign::day_book,
        "Timer until " + game::date_time_text(frame.context.campaign.calendar, ends) + ": " +
            view.timer_text,
        [text = view.timer_text, ends](DayBook& book) { game::add_day_timer(book, text, ends); }
    );
    view.timer_text.clear();
    view.timer_date.clear();
    view.timer_time.clear();
}

void draw_new_timer(const DayBookFrame& frame) {
    DayBookView& view = frame.view;
    Flow flow;
    const auto field =
        [&](const char* name, const char* label, const char* hint, float width, std::string& typed
        ) {
            width = std::min(width, ImGui::GetContentRegionAvail().x * 0.7F);
            flow.field(name, width);
            ImGui::SetNextItemWidth(width);
            meet_far_press(label);
            ImGui::InputTextWithHint(label, hint, &typed);
            Flow::end_field();
        };
    field("due", "##timer text", "fish spoils, a debt, an arrival", px(220.0F), view.timer_text);
    field("on", "##timer date", "this day, +3, a date", px(150.0F), view.timer_date);
    field("at", "##timer time", "08:00", width_of_letters(6), view.timer_time);
    flow.next(button_width("Add timer"));
    if (button("Add timer", read_only_reason(frame.context))) ask_timer(frame);
    if (!view.timer_complaint.empty()) complaint(view.timer_complaint);
}

void draw_due(const DayBookFrame& frame) {
    heading("Falls due");
    const game::Clock now = game::now(frame.context.campaign);
    const bool is_today = frame.view.day == frame.today;
    bool has_any = false;
    for (const game::DueEntry& entry : frame.facts.due) {
        const bool is_this_day = entry.at.day == frame.view.day;
        const bool is_open = is_today && !entry.is_done;
        const bool is_late = is_open && game::is_before(entry.at, now);
        if (!is_this_day && !is_late) continue;
        has_any = true;
        draw_due_entry(frame, entry, !is_this_day);
    }
    if (!has_any) text_wrapped(Ink::muted, "Nothing falls due this day.");
    if (is_today) {
        constexpr int shown_max = 5;
        int shown = 0;
        for (const game::DueEntry& entry : frame.facts.due) {
            if (entry.at.day <= frame.today || entry.is_done || shown == shown_max) continue;
            if (shown == 0) text_wrapped(Ink::muted, "Later:");
            shown += 1;
            draw_due_entry(frame, entry, true);
        }
    }
    draw_new_timer(frame);
}

void draw_history(const DayBookFrame& frame) {
    const game::History& history = frame.context.campaign.history;
    std::vector<std::size_t> lines = game::history_of_day(history, frame.view.day);
    std::reverse(lines.begin(), lines.end()); // the newest first
    heading("As the program noted it");
    if (lines.empty()) text_wrapped(Ink::muted, "Nothing was noted on this day.");
    for (const std::size_t at : lines) {
        const game::HistoryLine& line = history.lines[at];
        text_fitted(
            Ink::text,
            game::time_of_day_text(line.second_of_day) + "  " + line.label,
            ImGui::GetContentRegionAvail().x
        );
    }
}

} // namespace

void draw_day_page(DayBookFrame& frame) {
    draw_sky_of_day(frame);
    if (frame.view.day == frame.today) draw_clock_verbs(frame);
    draw_written(frame);
    draw_notes(frame);
    draw_due(frame);
    draw_history(frame);
    if (frame.view.day != frame.today) draw_clock_verbs(frame);
}

} // namespace widgets
