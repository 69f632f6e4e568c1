// The clock of the world, set on by hand.
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
#include <array>
#include <stdexcept>

namespace widgets {

namespace {

void ask_time(const DayBookFrame& frame, const game::Clock& time) {
    frame.context.edits.add(
        {game::Section::encounter, game::Section::clock},
        "Time passes",
        [time, rulebook = &frame.context.rulebook](game::Campaign& campaign) {
            const auto said = game::set_time(campaign, *rulebook, time);
            if (!said.ok()) throw std::runtime_error(said.error().message);
            return said.value();
        }
    );
    frame.view.follows_today = true;
}

game::Clock later(const game::Clock& from, int seconds) {
    constexpr int seconds_a_day = 86'400;
    const int second = from.second_of_day + seconds;
    return {from.day + second / seconds_a_day, second % seconds_a_day, {}};
}

void ask_typed_time(const DayBookFrame& frame) {
    DayBookView& view = frame.view;
    game::Clock time = game::now(frame.context.campaign);
    view.clock_complaint.clear();
    if (view.clock_date.empty() && view.clock_time.empty()) {
        view.clock_complaint = "Type a date, a time, or both.";
        return;
    }
    if (!view.clock_date.empty() &&
        !read_typed_date(
            frame.context, view.clock_date, frame.today, time.day, view.clock_complaint
        ))
        return;
    if (!view.clock_time.empty()) {
        const auto second = game::parse_time_of_day(view.clock_time);
        if (!second.ok()) {
            view.clock_complaint = second.error().message;
            return;
        }
        time.second_of_day = second.value();
    }
    ask_time(frame, time);
    view.clock_date.clear();
    view.clock_time.clear();
}

} // namespace

void draw_clock_verbs(DayBookFrame& frame) {
    struct Stretch {
        const char* name;
        int seconds;
    };

    static constexpr std::array<Stretch, 4> stretches{
        Stretch{"+10 min", 600},
        Stretch{"+1 hour", 3'600},
        Stretch{"+8 hours", 28'800},
        Stretch{"+1 day", 86'400}};
    const PanelContext& context = frame.context;
    DayBookView& view = frame.view;
    const game::Clock now = game::now(context.campaign);
    std::string why_not = read_only_reason(context);
    if (why_not.empty()) why_not = game::why_no_time_passes(context.campaign);
    heading("Let time pass");
    Flow flow;
    for (const Stretch& each : stretches) {
        flow.next(button_width(each.name));
        if (button(each.name, why_not)) ask_time(frame, later(now, each.seconds));
    }
    const game::Calendar& calendar = context.campaign.calendar;
    flow.next(button_width("To dawn"));
    if (button("To dawn", why_not)) ask_time(frame, game::next_dawn(calendar, now));
    flow.next(button_width("To dusk"));
    if (button("To dusk", why_not)) ask_time(frame, game::next_dusk(calendar, now));
    flow.next(button_width("Rest"));
    if (button("Rest", why_not)) context.selection.wanted_panel = "recovery";
    ImGui::SetItemTooltip("Nights and rests, with what they give back: the panel Recovery.");
    const float date_width = std::min(px(150.0F), ImGui::GetContentRegionAvail().x * 0.7F);
    flow.field("to", date_width);
    ImGui::SetNextItemWidth(date_width);
    meet_far_press("##clock date");
    ImGui::InputTextWithHint("##clock date", "+3, a date", &view.clock_date);
    Flow::end_field();
    const float time_width = width_of_letters(6);
    flow.field("at", time_width);
    ImGui::SetNextItemWidth(time_width);
    meet_far_press("##clock time");
    ImGui::InputTextWithHint("##clock time", "08:00", &view.clock_time);
    Flow::end_field();
    flow.next(button_width("Set the clock"));
    if (button("Set the clock", why_not)) ask_typed_time(frame);
    if (view.day != frame.today) {
        flow.next(button_width("Make this day today"));
        if (button("Make this day today", why_not))
            ask_time(frame, {view.day, now.second_of_day, {}});
    }
    if (!why_not.empty()) text_wrapped(Ink::muted, why_not);
    if (!view.clock_complaint.empty()) complaint(view.clock_complaint);
}

} // namespace widgets
