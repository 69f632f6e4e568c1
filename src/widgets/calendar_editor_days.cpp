// The week, eras, and which date today is.
#include "game/calendar_dates.h"
#include "game/date_text.h"
#include "game/fights.h"
#include "game/shelf.h"
#include "widgets/calendar_editor_parts.h"
#include "widgets/read_only.h"

#include <imgui.h>

namespace widgets {

using game::Calendar;
using game::Era;

namespace {

CalendarChange on_era(game::Id id, const std::function<void(Era&)>& change) {
    return [id, change](Calendar& calendar) {
        if (Era* era = game::find_calendar_entry(calendar.eras, id)) change(*era);
    };
}

CalendarTextChange era_text(game::Id id, std::string Era::*member) {
    return [id, member](Calendar& calendar, const std::string& typed) {
        on_era(id, [&](Era& era) { era.*member = typed; })(calendar);
        return std::string();
    };
}

void draw_era(const CalendarForm& form, const Era& era) {
    const std::string id = std::to_string(era.id);
    Flow flow;
    calendar_text(
        form, flow, "Era", "##era " + id, era.name, px(200.0F), era_text(era.id, &Era::name)
    );
    calendar_text(
        form,
        flow,
        "in short",
        "##era short " + id,
        era.abbreviation,
        width_of_letters(8),
        era_text(era.id, &Era::abbreviation)
    );
    calendar_number(
        form,
        flow,
        "first year",
        "era year " + id,
        static_cast<int>(era.first_year),
        -static_cast<int>(game::CalendarLimits::year_max),
        static_cast<int>(game::CalendarLimits::year_max),
        [at = era.id](Calendar& calendar, int year) {
            on_era(at, [year](Era& changed) { changed.first_year = year; })(calendar);
        }
    );
    const std::string backwards = "Counts backwards##" + id;
    flow.next(button_width(backwards.c_str()));
    if (toggle_button(backwards.c_str(), era.is_backwards, read_only_reason(form.context)))
        ask_calendar(
            form,
            era.name + (era.is_backwards ? " counts on" : " counts backwards"),
            on_era(era.id, [](Era& changed) { changed.is_backwards = !changed.is_backwards; })
        );
    calendar_verb(
        form,
        flow,
        "Remove##era " + id,
        "Remove the era " + era.name,
        [at = era.id](Calendar& calendar) { game::remove_calendar_entry(calendar.eras, at); }
    );
}

} // namespace

void draw_calendar_week(const CalendarForm& form) {
    std::string names;
    for (const std::string& weekday : form.calendar.weekdays)
        names += (names.empty() ? "" : ", ") + weekday;
    Flow flow;
    calendar_text(
        form,
        flow,
        "Weekdays",
        "##weekdays",
        names,
        ImGui::GetContentRegionAvail().x,
        [](Calendar& calendar, const std::string& typed) {
            game::name_weekdays(calendar, game::listed_names(typed, false));
            return std::string();
        }
    );
    text_wrapped(Ink::muted, "As many names as the week has days, with commas between.");
    const std::int64_t today = game::now(form.context.campaign).day;
    const auto weekday = game::weekday_of(form.calendar, today);
    if (!weekday) return;
    calendar_weekday_choice(
        form,
        flow,
        "Today is a",
        "##weekday of today",
        *weekday,
        [today](Calendar& calendar, std::size_t chosen) {
            game::set_weekday(calendar, today, chosen);
        }
    );
}

void draw_calendar_eras(const CalendarForm& form) {
    const std::int64_t year =
        game::date_of(form.calendar, game::now(form.context.campaign).day).year;
    text_wrapped(
        Ink::muted,
        "Years are counted through, with a year 0; eras say how they are called. The year " +
            std::to_string(year) + " is called " + game::year_text(form.calendar, year) + "."
    );
    for (const Era& era : form.calendar.eras)
        draw_era(form, era);
    Flow flow;
    calendar_verb(form, flow, "Add an era", "Add an era", [year](Calendar& calendar) {
        Era era;
        era.name = game::free_name(calendar.eras, "New era");
        era.first_year = calendar.eras.empty() ? 1 : year;
        game::add_calendar_entry(calendar, &Calendar::eras, era);
    });
}

void draw_calendar_today(const CalendarForm& form) {
    const std::int64_t today = game::now(form.context.campaign).day;
    Flow flow;
    calendar_text(
        form,
        flow,
        "Today is",
        "##date of today",
        game::plain_date_text(form.calendar, today),
        px(240.0F),
        [today](Calendar& calendar, const std::string& typed) {
            const auto day = game::parse_date(calendar, typed, today);
            if (!day.ok()) return day.error().message;
            game::set_date_of_day(calendar, today, full_date_of(calendar, day.value()));
            return std::string();
        }
    );
    text_wrapped(
        Ink::muted,
        "Says which date today has: all days of the campaign move with it, and nothing happens. To "
        "let time pass, use the Day Book."
    );
}

} // namespace widgets
