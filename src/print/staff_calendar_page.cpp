// A calendar to draw along, as notes on a staff: five thin lines a day or a week.
#include "game/calendar_dates.h"
#include "game/date_text.h"
#include "print/day_words.h"
#include "print/pages.h"

#include <algorithm>
#include <utility>

namespace print {

namespace {

constexpr const char* use = "Five lines, each for what you like: travel, weather, people, danger, "
                            "omens. Draw along them as notes on a staff.";
constexpr double day_seconds = 24 * 3600;
constexpr double noon = 0.5;

struct Asked {
    bool is_month = false;
    AskedDay day;
};

// "week" or "month" may stand first.
base::Result<Asked> asked_for(const PrintSource& source, std::string detail) {
    Asked asked;
    for (const char* word : {"week", "month"}) {
        const std::string span = word;
        const bool is_word = detail.substr(0, span.size()) == span &&
                             (detail.size() == span.size() || detail[span.size()] == ' ');
        if (!is_word) continue;
        asked.is_month = span == "month";
        detail.erase(0, std::min(detail.size(), span.size() + 1));
        break;
    }
    const auto day = day_asked_for(source, detail);
    if (!day.ok()) return day.error();
    asked.day = day.value();
    return asked;
}

std::string on_one_line(std::string text) {
    for (std::size_t at = 0; (at = text.find('\n', at)) != std::string::npos; at += 2)
        text.replace(at, 1, ", ");
    return text;
}

// Dawn, noon and dusk; named on the first staff alone.
std::vector<StaffBar> bars_of_day(const game::Calendar& calendar, bool is_first) {
    const auto word = [is_first](const char* text) { return is_first ? std::string(text) : ""; };
    return {
        {0, word("midnight")},
        {calendar.dawn_second / day_seconds, word("dawn")},
        {noon, word("noon")},
        {calendar.dusk_second / day_seconds, word("dusk")}};
}

Blocks week_of_staves(const game::Calendar& calendar, const AskedDay& asked) {
    const std::vector<std::string> letters = weekday_letters(calendar);
    const bool has_calendar = game::has_dates(calendar);
    const bool is_dated = !asked.is_blank;
    constexpr std::int64_t plain_week = 7;
    const game::DaySpan week = has_calendar ? game::week_around(calendar, asked.day)
                                            : game::DaySpan{asked.day, asked.day + plain_week - 1};
    Blocks blocks{
        Title{"Week", is_dated ? game::plain_date_text(calendar, week.first) : ""},
        Paragraph{use, TextStyle::small}};
    const std::size_t days = is_dated || letters.empty()
                                 ? static_cast<std::size_t>(week.last - week.first + 1)
                                 : letters.size();
    for (std::size_t i = 0; i < days; ++i) {
        const std::int64_t day = week.first + static_cast<std::int64_t>(i);
        Staff staff;
        if (is_dated) {
            const auto weekday = game::weekday_of(calendar, day);
            if (weekday.has_value()) staff.label = letters[*weekday];
            staff.number = std::to_string(has_calendar ? game::date_of(calendar, day).day : day);
            staff.note = holidays_text(calendar, day);
            append_line(staff.note, moons_text(calendar, day));
            staff.note = on_one_line(staff.note);
        } else if (!letters.empty()) {
            staff.label = letters[i];
        }
        staff.bars = bars_of_day(calendar, i == 0);
        blocks.emplace_back(std::move(staff));
    }
    return blocks;
}

Blocks month_of_staves(const game::Calendar& calendar, const AskedDay& asked) {
    const std::vector<std::string> letters = weekday_letters(calendar);
    constexpr std::size_t plain_week = 7;
    constexpr std::size_t plain_weeks = 5;
    const std::size_t in_week = letters.empty() ? plain_week : letters.size();
    const auto empty_staff = [&] {
        Staff staff;
        for (std::size_t i = 0; i < in_week; ++i)
            staff.bars.push_back(
                {static_cast<double>(i) / static_cast<double>(in_week),
                 letters.empty() ? "" : letters[i]}
            );
        return staff;
    };
    if (asked.is_blank || !game::has_dates(calendar)) {
        Blocks blocks{Title{"Month"}, Paragraph{use, TextStyle::small}};
        for (std::size_t i = 0; i < plain_weeks; ++i)
            blocks.emplace_back(empty_staff());
        return blocks;
    }
    const game::CalendarDate date = game::date_of(calendar, asked.day);
    const std::int64_t first = game::day_of(calendar, {date.year, date.part, 1});
    const int days = game::part_length(calendar, date.part, date.year);
    Blocks blocks{
        Title{calendar.parts[date.part].name + " " + game::year_text(calendar, date.year), ""},
        Paragraph{use, TextStyle::small}};
    std::size_t place = game::weekday_of(calendar, first).value_or(0);
    Staff staff = empty_staff();
    for (int number = 1; number <= days; ++number, ++place) {
        if (place == in_week) {
            blocks.emplace_back(std::exchange(staff, empty_staff()));
            place = 0;
        }
        std::string& text = staff.bars[place].text;
        text += (text.empty() ? "" : " ") + std::to_string(number);
        append_line(text, holidays_text(calendar, first + number - 1));
    }
    blocks.emplace_back(std::move(staff));
    return blocks;
}

} // namespace

base::Result<Blocks> staff_calendar_page(const PrintSource& source, const std::string& detail) {
    const auto asked = asked_for(source, detail);
    if (!asked.ok()) return asked.error();
    const game::Calendar& calendar = source.campaign.calendar;
    return asked.value().is_month ? month_of_staves(calendar, asked.value().day)
                                  : week_of_staves(calendar, asked.value().day);
}

} // namespace print
