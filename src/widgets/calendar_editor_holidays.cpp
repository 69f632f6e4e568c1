// Holidays: by day of a month or by weekday.
#include "game/calendar_dates.h"
#include "game/shelf.h"
#include "widgets/calendar_editor_parts.h"

#include <imgui.h>

#include <array>

namespace widgets {

using game::Calendar;
using game::Holiday;
using game::HolidayRule;

namespace {

CalendarChange on_holiday(game::Id id, const std::function<void(Holiday&)>& change) {
    return [id, change](Calendar& calendar) {
        if (Holiday* holiday = game::find_calendar_entry(calendar.holidays, id)) change(*holiday);
    };
}

CalendarTextChange holiday_text(game::Id id, std::string Holiday::*member) {
    return [id, member](Calendar& calendar, const std::string& typed) {
        on_holiday(id, [&](Holiday& holiday) { holiday.*member = typed; })(calendar);
        return std::string();
    };
}

void draw_nth_choice(const CalendarForm& form, Flow& flow, const Holiday& holiday) {
    struct Nth {
        int nth;
        const char* words;
    };

    static constexpr std::array<Nth, 6> choices{
        Nth{1, "first"},
        Nth{2, "second"},
        Nth{3, "third"},
        Nth{4, "fourth"},
        Nth{5, "fifth"},
        Nth{-1, "last"}};
    std::string chosen = std::to_string(holiday.nth) + ".";
    for (const Nth& each : choices)
        if (each.nth == holiday.nth) chosen = each.words;
    const std::string label = "##nth " + std::to_string(holiday.id);
    const float width = width_of_letters(10);
    flow.field("on the", width);
    if (begin_choice(label.c_str(), chosen, width)) {
        for (const Nth& each : choices)
            if (choice_row(each.words, each.nth == holiday.nth))
                ask_calendar(
                    form,
                    holiday.name + ": the " + each.words,
                    on_holiday(
                        holiday.id, [nth = each.nth](Holiday& changed) { changed.nth = nth; }
                    )
                );
        ImGui::EndCombo();
    }
    Flow::end_field();
}

void draw_weekday_rule(const CalendarForm& form, Flow& flow, const Holiday& holiday) {
    const std::string id = std::to_string(holiday.id);
    draw_nth_choice(form, flow, holiday);
    calendar_weekday_choice(
        form,
        flow,
        "weekday",
        "##holiday weekday " + id,
        static_cast<std::size_t>(holiday.weekday),
        [at = holiday.id](Calendar& calendar, std::size_t weekday) {
            on_holiday(at, [weekday](Holiday& changed) {
                changed.weekday = static_cast<int>(weekday);
            })(calendar);
        }
    );
    calendar_part_choice(
        form,
        flow,
        "of",
        "##holiday part " + id,
        holiday.part,
        [at = holiday.id](Calendar& calendar, game::Id part) {
            on_holiday(at, [part](Holiday& changed) { changed.part = part; })(calendar);
        }
    );
}

void draw_holiday(const CalendarForm& form, const Holiday& holiday) {
    const std::string id = std::to_string(holiday.id);
    const bool is_fixed = holiday.rule == HolidayRule::fixed_day;
    Flow flow;
    calendar_text(
        form,
        flow,
        "Holiday",
        "##holiday " + id,
        holiday.name,
        px(170.0F),
        holiday_text(holiday.id, &Holiday::name)
    );
    if (is_fixed)
        calendar_day(
            form,
            flow,
            "in",
            "holiday " + id,
            {holiday.part, holiday.day, {}},
            [at = holiday.id](Calendar& calendar, const game::YearDay& day) {
                on_holiday(at, [day](Holiday& changed) {
                    changed.part = day.part;
                    changed.day = day.day;
                })(calendar);
            }
        );
    else
        draw_weekday_rule(form, flow, holiday);
    if (!form.calendar.weekdays.empty())
        calendar_verb(
            form,
            flow,
            (is_fixed ? "By weekday##" : "By day##") + id,
            holiday.name + (is_fixed ? " goes by the weekday" : " has a fixed day"),
            on_holiday(
                holiday.id,
                [is_fixed](Holiday& changed) {
                    changed.rule = is_fixed ? HolidayRule::nth_weekday : HolidayRule::fixed_day;
                }
            )
        );
    calendar_verb(
        form,
        flow,
        "Remove##holiday " + id,
        "Remove the holiday " + holiday.name,
        [at = holiday.id](Calendar& calendar) {
            game::remove_calendar_entry(calendar.holidays, at);
        }
    );
    calendar_text(
        form,
        flow,
        "note",
        "##holiday note " + id,
        holiday.note,
        px(320.0F),
        holiday_text(holiday.id, &Holiday::note)
    );
}

} // namespace

void draw_calendar_holidays(const CalendarForm& form) {
    if (form.calendar.holidays.empty())
        text_wrapped(Ink::muted, "Days that come every year, told on the page of their day.");
    for (const Holiday& holiday : form.calendar.holidays)
        draw_holiday(form, holiday);
    Flow flow;
    calendar_verb(form, flow, "Add a holiday", "Add a holiday", [](Calendar& calendar) {
        Holiday holiday;
        holiday.name = game::free_name(calendar.holidays, "New holiday");
        for (const game::YearPart& part : calendar.parts)
            if (holiday.part == base::no_id && part.days > 0) holiday.part = part.id;
        game::add_calendar_entry(calendar, &Calendar::holidays, holiday);
    });
}

} // namespace widgets
