// Seasons, moons, dawn and dusk.
#include "base/text.h"
#include "game/calendar_dates.h"
#include "game/date_text.h"
#include "game/fights.h"
#include "game/shelf.h"
#include "widgets/calendar_editor_parts.h"

#include <imgui.h>

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>

namespace widgets {

using game::Calendar;
using game::Moon;
using game::Season;

namespace {

std::string period_text(double days) {
    std::array<char, 40> text{};
    std::snprintf(text.data(), text.size(), "%.10g", days);
    return text.data();
}

std::string set_second(int& second, const std::string& typed) {
    const auto read = game::parse_time_of_day(typed);
    if (!read.ok()) return read.error().message;
    second = read.value();
    return {};
}

void draw_season(const CalendarForm& form, const Season& season) {
    const std::string id = std::to_string(season.id);
    Flow flow;
    calendar_text(
        form,
        flow,
        "Season",
        "##season " + id,
        season.name,
        px(150.0F),
        [at = season.id](Calendar& calendar, const std::string& typed) {
            if (Season* changed = game::find_calendar_entry(calendar.seasons, at))
                changed->name = typed;
            return std::string();
        }
    );
    calendar_day(
        form,
        flow,
        "begins in",
        "season " + id,
        season.start,
        [at = season.id](Calendar& calendar, const game::YearDay& start) {
            if (Season* changed = game::find_calendar_entry(calendar.seasons, at))
                changed->start = start;
        }
    );
    calendar_verb(
        form,
        flow,
        "Remove##season " + id,
        "Remove the season " + season.name,
        [at = season.id](Calendar& calendar) { game::remove_calendar_entry(calendar.seasons, at); }
    );
}

// A day on which no season begins yet, so that a new one can stand beside the others.
game::YearDay free_start(const Calendar& calendar) {
    for (const game::YearPart& part : calendar.parts) {
        bool is_free = part.days > 0;
        for (const Season& season : calendar.seasons)
            if (season.start.part == part.id && season.start.day == 1) is_free = false;
        if (is_free) return {part.id, 1, {}};
    }
    return {calendar.parts.front().id, 1, {}};
}

void draw_seasons(const CalendarForm& form) {
    heading("Seasons");
    for (const Season& season : form.calendar.seasons)
        draw_season(form, season);
    Flow flow;
    calendar_verb(form, flow, "Add a season", "Add a season", [](Calendar& calendar) {
        Season season;
        season.name = game::free_name(calendar.seasons, "New season");
        season.start = free_start(calendar);
        game::add_calendar_entry(calendar, &Calendar::seasons, season);
    });
    Flow midwinter;
    calendar_day(
        form,
        midwinter,
        "Midwinter in",
        "midwinter",
        form.calendar.midwinter,
        [](Calendar& calendar, const game::YearDay& day) { calendar.midwinter = day; }
    );
    text_wrapped(Ink::muted, "The weather takes the time of year from midwinter.");
}

// Changes one moon by its id and says why it cannot.
CalendarTextChange on_moon(
    game::Id id, std::function<std::string(const Calendar&, Moon&, const std::string&)> change
) {
    return [id, change = std::move(change)](Calendar& calendar, const std::string& typed) {
        Moon* moon = game::find_calendar_entry(calendar.moons, id);
        return moon == nullptr ? std::string() : change(calendar, *moon, typed);
    };
}

std::string set_period(const Calendar& /*calendar*/, Moon& moon, const std::string& typed) {
    char* end = nullptr;
    const double days = std::strtod(typed.c_str(), &end);
    if (end == typed.c_str() || *end != '\0' || !std::isfinite(days))
        return "Type the days from new to new, like 29.53.";
    moon.period_days = days;
    return {};
}

CalendarTextChange set_new_moon(const CalendarForm& form, const Moon& moon) {
    const std::int64_t today = game::now(form.context.campaign).day;
    return on_moon(
        moon.id,
        [today](const Calendar& calendar, Moon& changed, const std::string& typed) {
            const auto day = game::parse_date(calendar, typed, today);
            if (!day.ok()) return day.error().message;
            changed.new_moon = full_date_of(calendar, day.value());
            return std::string();
        }
    );
}

void draw_moon(const CalendarForm& form, const Moon& moon) {
    const std::string id = std::to_string(moon.id);
    Flow flow;
    calendar_text(
        form,
        flow,
        "Moon",
        "##moon " + id,
        moon.name,
        px(150.0F),
        on_moon(
            moon.id,
            [](const Calendar& /*calendar*/, Moon& changed, const std::string& typed) {
                changed.name = typed;
                return std::string();
            }
        )
    );
    calendar_text(
        form,
        flow,
        "days from new to new",
        "##period " + id,
        period_text(moon.period_days),
        width_of_letters(13),
        on_moon(moon.id, set_period)
    );
    const std::int64_t new_day = day_of_full_date(form.calendar, moon.new_moon);
    calendar_text(
        form,
        flow,
        "new on",
        "##new moon " + id,
        game::plain_date_text(form.calendar, new_day),
        px(190.0F),
        set_new_moon(form, moon)
    );
    calendar_text(
        form,
        flow,
        "at",
        "##new moon time " + id,
        game::time_of_day_text(moon.new_moon_second),
        width_of_letters(6),
        on_moon(
            moon.id,
            [](const Calendar& /*calendar*/, Moon& changed, const std::string& typed) {
                return set_second(changed.new_moon_second, typed);
            }
        )
    );
    calendar_verb(
        form,
        flow,
        "Remove##moon " + id,
        "Remove the moon " + moon.name,
        [at = moon.id](Calendar& calendar) { game::remove_calendar_entry(calendar.moons, at); }
    );
    const std::int64_t today = game::now(form.context.campaign).day;
    text_wrapped(
        Ink::muted,
        std::string("Today: ") +
            game::moon_phase_text(game::moon_phase(form.calendar, moon, today)) + "."
    );
}

} // namespace

void draw_calendar_sky(const CalendarForm& form) {
    draw_seasons(form);
    heading("Moons");
    for (const Moon& moon : form.calendar.moons)
        draw_moon(form, moon);
    Flow flow;
    const std::int64_t today = game::now(form.context.campaign).day;
    calendar_verb(form, flow, "Add a moon", "Add a moon", [today](Calendar& calendar) {
        Moon moon;
        moon.name = game::free_name(calendar.moons, "Moon");
        moon.new_moon = full_date_of(calendar, today);
        game::add_calendar_entry(calendar, &Calendar::moons, moon);
    });
    heading("Dawn and dusk");
    Flow light;
    const auto time = [&](const char* name, const char* label, int Calendar::*second) {
        calendar_text(
            form,
            light,
            name,
            label,
            game::time_of_day_text(form.calendar.*second),
            width_of_letters(6),
            [second](Calendar& calendar, const std::string& typed) {
                return set_second(calendar.*second, typed);
            }
        );
    };
    time("Dawn", "##dawn", &Calendar::dawn_second);
    time("Dusk", "##dusk", &Calendar::dusk_second);
}

} // namespace widgets
