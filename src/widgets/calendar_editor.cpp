#include "widgets/calendar_editor.h"

#include "game/calendar_dates.h"
#include "game/date_text.h"
#include "game/fights.h"
#include "widgets/calendar_editor_parts.h"
#include "widgets/read_only.h"

#include <imgui.h>

#include <array>

namespace widgets {

using game::Calendar;

const PanelInfo calendar_editor_info{
    "calendar",
    "Calendar",
    "The calendar of your world: months, leap years, weeks, moons, holidays, eras.",
    "Shift+F6",
    360.0F,
    300.0F};

namespace {

struct NamedSection {
    CalendarSection section;
    const char* name;
    void (*draw)(const CalendarForm&);
};

void draw_calendar_choice(const CalendarForm& form);

constexpr std::array<NamedSection, 7> sections{
    NamedSection{CalendarSection::year, "Year", draw_calendar_year},
    NamedSection{CalendarSection::week, "Week", draw_calendar_week},
    NamedSection{CalendarSection::sky, "Seasons and moons", draw_calendar_sky},
    NamedSection{CalendarSection::holidays, "Holidays", draw_calendar_holidays},
    NamedSection{CalendarSection::eras, "Eras", draw_calendar_eras},
    NamedSection{CalendarSection::today, "Today", draw_calendar_today},
    NamedSection{CalendarSection::ready, "Another calendar", draw_calendar_choice}};

void draw_ready_calendar(const CalendarForm& form, const Calendar& ready) {
    text_wrapped(Ink::text, ready.name);
    text_wrapped(Ink::muted, game::calendar_summary(ready));
    Flow flow;
    flow.next(button_width(("Use " + ready.name).c_str()));
    if (button(("Use " + ready.name).c_str(), read_only_reason(form.context))) {
        form.view.drafts = {};
        form.view.section = CalendarSection::year;
        ask_calendar(form, "The calendar is " + ready.name, [ready](Calendar& calendar) {
            calendar = ready;
        });
    }
}

void draw_made_calendar(const CalendarForm& form) {
    heading("Make one");
    CalendarEditorView& view = form.view;
    ImGui::BeginDisabled(form.context.is_read_only);
    Flow flow;
    flow.field("Months", stepper_width());
    const auto months =
        stepper("new months", view.months, 1, game::CalendarLimits::parts_max, "Months");
    if (months.has_value()) view.months = *months;
    Flow::end_field();
    flow.field("of so many days", stepper_width());
    const auto days =
        stepper("new days", view.days, 1, game::CalendarLimits::part_days_max, "Days");
    if (days.has_value()) view.days = *days;
    Flow::end_field();
    ImGui::EndDisabled();
    flow.next(button_width("Make it"));
    if (!button("Make it", read_only_reason(form.context))) return;
    view.drafts = {};
    view.section = CalendarSection::year;
    ask_calendar(
        form,
        "A calendar of " + std::to_string(view.months) + " months",
        [count = view.months, length = view.days](Calendar& calendar) {
            calendar = {};
            calendar.name = "New calendar";
            game::make_months(calendar, count, length);
        }
    );
}

void draw_calendar_choice(const CalendarForm& form) {
    if (form.context.calendars != nullptr && !form.context.calendars->empty()) {
        heading("Ready ones");
        for (const Calendar& ready : *form.context.calendars)
            draw_ready_calendar(form, ready);
    }
    draw_made_calendar(form);
}

void draw_calendar_header(const CalendarForm& form) {
    push_font(TextSize::name);
    text_wrapped(
        Ink::text, "Today: " + game::date_text(form.calendar, game::now(form.context.campaign).day)
    );
    ImGui::PopFont();
    Flow names;
    ImGui::BeginDisabled(form.context.is_read_only);
    calendar_text(
        form,
        names,
        "Name",
        "##calendar name",
        form.calendar.name,
        px(220.0F),
        [](Calendar& calendar, const std::string& typed) {
            calendar.name = typed;
            return std::string();
        }
    );
    ImGui::EndDisabled();
    text_wrapped(Ink::muted, game::calendar_summary(form.calendar));
    Flow flow;
    for (const NamedSection& each : sections) {
        flow.next(button_width(each.name));
        if (!toggle_button(each.name, form.view.section == each.section)) continue;
        form.view.section = each.section;
        form.view.refusal.clear();
    }
    for (const std::string& problem : game::calendar_problems(form.calendar))
        complaint(problem);
    if (!form.view.refusal.empty()) complaint(form.view.refusal);
}

} // namespace

void draw_calendar_editor(const PanelContext& context, CalendarEditorView& view) {
    const CalendarForm form{context, view, context.campaign.calendar};
    ImGui::BeginChild("calendar");
    if (!game::has_dates(form.calendar)) {
        empty_state("The calendar of your world: it names every day, knows moons and holidays, and "
                    "turns the seasons of the weather. Until there is one, days are counted.");
        if (!view.refusal.empty()) complaint(view.refusal);
        draw_calendar_choice(form);
    } else {
        draw_calendar_header(form);
        for (const NamedSection& each : sections) {
            if (each.section != view.section) continue;
            ImGui::PushID(each.name);
            ImGui::BeginDisabled(context.is_read_only);
            each.draw(form);
            ImGui::EndDisabled();
            ImGui::PopID();
        }
    }
    ImGui::EndChild();
}

} // namespace widgets
