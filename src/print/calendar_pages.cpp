// Weeks and months of the calendar of the campaign, filled or to write on.
#include "game/calendar_dates.h"
#include "game/date_text.h"
#include "game/day_book_keeping.h"
#include "print/day_words.h"
#include "print/pages.h"

namespace print {

namespace {

std::string happenings_text(const PrintSource& source, std::int64_t day) {
    const game::Campaign& campaign = source.campaign;
    std::string text = game::page_text(campaign.day_book, day);
    for (const game::NoteOfDay& note : game::notes_of_day(campaign.sessions, day))
        append_line(text, note.line->text);
    for (const game::DueEntry& due : game::due_entries(campaign, source.rulebook))
        if (due.at.day == day && !due.is_done)
            append_line(text, game::time_of_day_text(due.at.second_of_day) + " " + due.text);
    return text;
}

Cell day_cell(const PrintSource& source, std::int64_t day, int number, bool is_blank) {
    const game::Calendar& calendar = source.campaign.calendar;
    Cell cell{std::to_string(number), holidays_text(calendar, day), true};
    append_line(cell.note, moons_text(calendar, day));
    if (!is_blank) {
        // A glance, not the whole page: the first line of each.
        std::string text = game::page_text(source.campaign.day_book, day);
        append_line(cell.note, text.substr(0, text.find('\n')));
        const std::size_t notes = game::notes_of_day(source.campaign.sessions, day).size();
        if (notes == 1) append_line(cell.note, "1 note");
        if (notes > 1) append_line(cell.note, std::to_string(notes) + " notes");
    }
    return cell;
}

} // namespace

base::Result<Blocks> month_page(const PrintSource& source, const std::string& detail) {
    const auto asked = day_asked_for(source, detail);
    if (!asked.ok()) return asked.error();
    const game::Calendar& calendar = source.campaign.calendar;
    if (!game::has_dates(calendar))
        return base::Error{
            base::ErrorKind::not_found,
            "The campaign has no calendar yet.",
            {},
            "Choose one in the Calendar panel."};
    const game::CalendarDate date = game::date_of(calendar, asked.value().day);
    const int days = game::part_length(calendar, date.part, date.year);
    const std::int64_t first = game::day_of(calendar, {date.year, date.part, 1});
    const std::size_t in_week = calendar.weekdays.empty() ? 7 : calendar.weekdays.size();
    Table month{{}, {}, 0, true, true};
    const std::vector<std::string> letters = weekday_letters(calendar);
    for (std::size_t i = 0; i < in_week; ++i)
        if (letters.empty())
            month.columns.emplace_back();
        else
            month.columns.push_back({calendar.weekdays[i], false, letters[i]});
    month.row_mm = 23;
    month.row_to_width = 1.2;
    std::size_t place = game::weekday_of(calendar, first).value_or(0);
    for (int number = 1; number <= days; ++number) {
        if (month.rows.empty() || place == in_week) {
            month.rows.emplace_back(in_week);
            place = month.rows.size() == 1 ? place : 0;
        }
        month.rows.back()[place] =
            day_cell(source, first + number - 1, number, asked.value().is_blank);
        place += 1;
    }
    return Blocks{
        Title{calendar.parts[date.part].name + " " + game::year_text(calendar, date.year), ""},
        std::move(month),
        RuledLines{0, true}};
}

base::Result<Blocks> week_page(const PrintSource& source, const std::string& detail) {
    const auto asked = day_asked_for(source, detail);
    if (!asked.ok()) return asked.error();
    const game::Calendar& calendar = source.campaign.calendar;
    const game::DaySpan week = game::has_dates(calendar)
                                   ? game::week_around(calendar, asked.value().day)
                                   : game::DaySpan{asked.value().day, asked.value().day + 6};
    Blocks blocks{Title{"Week", game::plain_date_text(calendar, week.first)}};
    for (std::int64_t day = week.first; day <= week.last; ++day) {
        blocks.emplace_back(Heading{game::date_text(calendar, day)});
        std::string above = holidays_text(calendar, day);
        append_line(above, moons_text(calendar, day));
        if (!above.empty()) blocks.emplace_back(Paragraph{above, TextStyle::small});
        if (!asked.value().is_blank) {
            const std::string text = happenings_text(source, day);
            if (!text.empty()) blocks.emplace_back(Paragraph{text});
        }
        blocks.emplace_back(RuledLines{1, false, true});
    }
    return blocks;
}

} // namespace print
