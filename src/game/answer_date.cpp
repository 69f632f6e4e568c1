// "date", "date 12 Reedmonth 1204", "date +30", "date day 40".
#include "game/answer_topics.h"
#include "game/calendar_dates.h"
#include "game/date_text.h"
#include "game/day_book_keeping.h"
#include "game/fights.h"

#include <cmath>

namespace game {

namespace {

std::string away_text(std::int64_t days) {
    if (days == 0) return "today";
    const std::int64_t count = days < 0 ? -days : days;
    const std::string words = std::to_string(count) + (count == 1 ? " day" : " days");
    return days > 0 ? "in " + words : words + " ago";
}

void add_year(Answer& answer, const Calendar& calendar, std::int64_t day) {
    const CalendarDate date = date_of(calendar, day);
    const std::int64_t of_year = day_of_year(calendar, day);
    answer.lines.push_back(
        "day " + std::to_string(of_year) + " of " +
        std::to_string(year_length(calendar, date.year)) + " of the year"
    );
    answer.values.push_back({"year", static_cast<int>(date.year)});
    answer.values.push_back({"part", calendar.parts[date.part].name});
    answer.values.push_back({"day_of_part", date.day});
    answer.values.push_back({"day_of_year", static_cast<int>(of_year)});
    if (const auto weekday = weekday_of(calendar, day))
        answer.values.push_back({"weekday", calendar.weekdays[*weekday]});
    if (const auto season = season_of(calendar, day)) {
        answer.lines.push_back("season: " + calendar.seasons[*season].name);
        answer.values.push_back({"season", calendar.seasons[*season].name});
    }
}

void add_holidays(Answer& answer, const Calendar& calendar, std::int64_t day) {
    std::vector<std::string> names;
    for (const std::size_t at : holidays_on(calendar, day)) {
        const Holiday& holiday = calendar.holidays[at];
        names.push_back(holiday.name);
        answer.lines.push_back(holiday.name + (holiday.note.empty() ? "" : ": " + holiday.note));
    }
    answer.values.push_back({"holidays", std::move(names)});
}

void add_moons(Answer& answer, const Calendar& calendar, std::int64_t day) {
    constexpr double percent = 100.0;
    std::vector<NamedValues> moons;
    for (const Moon& moon : calendar.moons) {
        const std::string phase = moon_phase_text(moon_phase(calendar, moon, day));
        const double light = moon_light(calendar, moon, day);
        answer.lines.push_back(
            moon.name + "\t" + phase + "\t" + std::to_string(std::lround(light * percent)) +
            " % lit"
        );
        moons.push_back({{"name", moon.name}, {"phase", phase}, {"lit", Quantity(light)}});
    }
    answer.values.push_back({"moons", std::move(moons)});
}

void add_due(Answer& answer, const AnswerContext& context, std::int64_t day) {
    std::vector<std::string> due;
    for (const DueEntry& entry : due_entries(*context.campaign, context.rulebook)) {
        if (entry.at.day != day || entry.is_done) continue;
        answer.lines.push_back(
            "due " + time_of_day_text(entry.at.second_of_day) + ": " + entry.text
        );
        due.push_back(entry.text);
    }
    answer.values.push_back({"due", std::move(due)});
}

} // namespace

base::Result<Answer> answer_date(const AnswerContext& context, Words& words) {
    if (context.campaign == nullptr)
        return base::Error{
            base::ErrorKind::not_possible,
            "The date in which world? Name a campaign with --campaign FILE.",
            {},
            {}};
    const Campaign& campaign = *context.campaign;
    const Calendar& calendar = campaign.calendar;
    const Clock present = now(campaign);
    std::int64_t day = present.day;
    if (!words.is_at_end()) {
        const auto read = parse_date(calendar, words.take_rest(), present.day);
        if (!read.ok()) return read.error();
        day = read.value();
    }
    Answer answer;
    const bool is_now = day == present.day;
    answer.title = date_text(calendar, day) +
                   (is_now ? ", " + time_of_day_text(present.second_of_day) : std::string());
    answer.lines.push_back(away_text(day - present.day));
    answer.values.push_back({"date", date_text(calendar, day)});
    answer.values.push_back({"day", static_cast<int>(day)});
    answer.values.push_back({"days_away", static_cast<int>(day - present.day)});
    if (has_dates(calendar)) {
        add_year(answer, calendar, day);
        add_holidays(answer, calendar, day);
        add_moons(answer, calendar, day);
    }
    add_due(answer, context, day);
    return answer;
}

} // namespace game
