// The parts of the year and its leap rules.
#include "game/calendar_dates.h"
#include "game/date_text.h"
#include "game/fights.h"
#include "game/shelf.h"
#include "widgets/calendar_editor_parts.h"
#include "widgets/read_only.h"

#include <imgui.h>
#include <imgui_stdlib.h>

namespace widgets {

using game::Calendar;
using game::LeapRule;
using game::YearPart;

namespace {

// Changes one part of the year by its id.
CalendarChange on_part(game::Id id, const std::function<void(YearPart&)>& change) {
    return [id, change](Calendar& calendar) {
        if (YearPart* part = game::find_calendar_entry(calendar.parts, id)) change(*part);
    };
}

CalendarChange on_rule(game::Id id, const std::function<void(LeapRule&)>& change) {
    return [id, change](Calendar& calendar) {
        if (LeapRule* rule = game::find_calendar_entry(calendar.leap_rules, id)) change(*rule);
    };
}

void draw_part(const CalendarForm& form, const YearPart& part) {
    const std::string id = std::to_string(part.id);
    Flow flow;
    calendar_text(
        form,
        flow,
        part.is_month ? "Month" : "Days outside months",
        "##part " + id,
        part.name,
        px(170.0F),
        [at = part.id](Calendar& calendar, const std::string& typed) {
            on_part(at, [&](YearPart& changed) { changed.name = typed; })(calendar);
            return std::string();
        }
    );
    calendar_number(
        form,
        flow,
        "days",
        "days of " + id,
        part.days,
        0,
        game::CalendarLimits::part_days_max,
        [at = part.id](Calendar& calendar, int days) {
            on_part(at, [days](YearPart& changed) { changed.days = days; })(calendar);
        }
    );
    const std::string in_week = "In the week##" + id;
    flow.next(button_width(in_week.c_str()));
    if (toggle_button(in_week.c_str(), part.is_in_week, read_only_reason(form.context)))
        ask_calendar(
            form,
            part.name + (part.is_in_week ? " has no weekdays" : " has weekdays"),
            on_part(part.id, [](YearPart& changed) { changed.is_in_week = !changed.is_in_week; })
        );
    const std::string kind = (part.is_month ? "Outside months##" : "A month##") + id;
    calendar_verb(
        form,
        flow,
        kind,
        part.name + (part.is_month ? " is outside the months" : " is a month"),
        on_part(part.id, [](YearPart& changed) { changed.is_month = !changed.is_month; })
    );
    const auto move = [&](const char* name, int by) {
        calendar_verb(
            form,
            flow,
            name + id,
            part.name + " moves",
            [at = part.id, by](Calendar& calendar) {
                game::move_calendar_entry(calendar.parts, at, by);
            }
        );
    };
    move("Up##", -1);
    move("Down##", 1);
    calendar_verb(
        form,
        flow,
        "Remove##part " + id,
        "Remove " + part.name,
        [at = part.id](Calendar& calendar) { game::remove_part(calendar, at); }
    );
}

void add_part(Calendar& calendar, bool is_month) {
    YearPart part;
    part.name = game::free_name(calendar.parts, is_month ? "New month" : "Festival");
    part.is_month = is_month;
    part.is_in_week = is_month;
    part.days = is_month ? 30 : 1;
    game::add_calendar_entry(calendar, &Calendar::parts, part);
}

void draw_names(const CalendarForm& form) {
    CalendarEditorView& view = form.view;
    const float name_it = button_width("Name the months");
    const float gap = ImGui::GetStyle().ItemSpacing.x;
    const float room = ImGui::GetContentRegionAvail().x;
    const bool is_wide = room > name_it + px(240.0F);
    ImGui::SetNextItemWidth(is_wide ? room - name_it - gap : room);
    ImGui::InputTextWithHint(
        "##month names", "Several at once: Reedmonth 28, Mistmonth 29", &view.month_names
    );
    if (is_wide) ImGui::SameLine();
    if (!button("Name the months", read_only_reason(form.context))) return;
    const auto names = game::listed_names(view.month_names, true);
    if (names.empty()) {
        view.refusal = "Type the names of the months first, with commas between.";
        return;
    }
    ask_calendar(form, "Name the months", [names](Calendar& calendar) {
        game::name_months(calendar, names);
    });
    if (!view.refusal.empty()) return;
    view.month_names.clear();
    view.drafts = {};
}

void draw_step(const CalendarForm& form, const LeapRule& rule, std::size_t at, Flow& flow) {
    calendar_number(
        form,
        flow,
        at == 0       ? "every"
        : at % 2 == 1 ? "years, but not every"
                      : "years, yet every",
        "leap " + std::to_string(rule.id) + " step " + std::to_string(at),
        rule.steps[at].every,
        1,
        game::CalendarLimits::leap_every_max,
        [id = rule.id, at](Calendar& calendar, int every) {
            on_rule(id, [&](LeapRule& changed) { changed.steps[at].every = every; })(calendar);
        }
    );
}

void draw_rule(const CalendarForm& form, const LeapRule& rule) {
    const std::string id = std::to_string(rule.id);
    Flow flow;
    calendar_number(
        form,
        flow,
        "More days",
        "leap days " + id,
        rule.days,
        1,
        game::CalendarLimits::leap_days_max,
        [at = rule.id](Calendar& calendar, int days) {
            on_rule(at, [days](LeapRule& changed) { changed.days = days; })(calendar);
        }
    );
    calendar_part_choice(
        form,
        flow,
        "for",
        "##leap part " + id,
        rule.part,
        [at = rule.id](Calendar& calendar, game::Id part) {
            on_rule(at, [part](LeapRule& changed) { changed.part = part; })(calendar);
        }
    );
    for (std::size_t at = 0; at < rule.steps.size(); ++at)
        draw_step(form, rule, at, flow);
    calendar_number(
        form,
        flow,
        "years, counted from year",
        "leap offset " + id,
        rule.offset,
        -game::CalendarLimits::leap_every_max,
        game::CalendarLimits::leap_every_max,
        [at = rule.id](Calendar& calendar, int offset) {
            on_rule(at, [offset](LeapRule& changed) { changed.offset = offset; })(calendar);
        }
    );
    if (rule.steps.size() < game::CalendarLimits::leap_steps_max)
        calendar_verb(
            form,
            flow,
            "Add an exception##" + id,
            "A leap rule has an exception",
            on_rule(
                rule.id,
                [](LeapRule& changed) {
                    // The next multiple that is usual: 4, 100, 400.
                    const int every = changed.steps.empty() ? 1 : changed.steps.back().every;
                    changed.steps.push_back({every * (changed.steps.size() == 1 ? 25 : 4), {}});
                }
            )
        );
    if (rule.steps.size() > 1)
        calendar_verb(
            form,
            flow,
            "Take the last away##" + id,
            "A leap rule has one exception less",
            on_rule(rule.id, [](LeapRule& changed) { changed.steps.pop_back(); })
        );
    calendar_verb(
        form,
        flow,
        "Remove##leap " + id,
        "Remove a leap rule",
        [at = rule.id](Calendar& calendar) { game::remove_calendar_entry(calendar.leap_rules, at); }
    );
}

// "This year has 366 days, the next 365, 365, 365, 366."
std::string years_words(const CalendarForm& form) {
    const std::int64_t year =
        game::date_of(form.calendar, game::now(form.context.campaign).day).year;
    std::string words =
        "Days of " + game::year_text(form.calendar, year) + " and the years after: ";
    constexpr int years_shown = 5;
    for (int i = 0; i < years_shown; ++i)
        words += (i > 0 ? ", " : "") + std::to_string(game::year_length(form.calendar, year + i));
    return words + ".";
}

} // namespace

void draw_calendar_year(const CalendarForm& form) {
    draw_names(form);
    for (const YearPart& part : form.calendar.parts)
        draw_part(form, part);
    Flow flow;
    calendar_verb(form, flow, "Add a month", "Add a month", [](Calendar& calendar) {
        add_part(calendar, true);
    });
    calendar_verb(
        form,
        flow,
        "Add days outside months",
        "Add days outside months",
        [](Calendar& calendar) { add_part(calendar, false); }
    );
    heading("Leap years");
    text_wrapped(Ink::muted, years_words(form));
    for (const LeapRule& rule : form.calendar.leap_rules)
        draw_rule(form, rule);
    Flow rules;
    calendar_verb(form, rules, "Add a leap rule", "Add a leap rule", [](Calendar& calendar) {
        LeapRule rule;
        rule.part = calendar.parts.back().id;
        rule.steps = {{4, {}}};
        game::add_calendar_entry(calendar, &Calendar::leap_rules, rule);
    });
}

} // namespace widgets
