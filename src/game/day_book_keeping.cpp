#include "game/day_book_keeping.h"

#include "base/text.h"
#include "base/unicode.h"
#include "game/conditions.h"
#include "game/fights.h"
#include "game/time_passing.h"

#include <algorithm>
#include <functional>

namespace game {

namespace {

constexpr std::int64_t seconds_a_minute = 60;
constexpr std::int64_t seconds_an_hour = 3'600;
constexpr std::int64_t seconds_a_day = 86'400;

// The first page that is not before this day.
template <class Pages>
auto page_from(Pages& pages, std::int64_t day) {
    return std::lower_bound(
        pages.begin(),
        pages.end(),
        day,
        [](const DayPage& page, std::int64_t wanted) { return page.day < wanted; }
    );
}

Clock end_of(const DayTimer& timer) {
    return {timer.ends_day, timer.ends_second_of_day, {}};
}

Clock later(const Clock& clock, std::int64_t seconds) {
    const std::int64_t second = clock.second_of_day + seconds;
    return {clock.day + second / seconds_a_day, static_cast<int>(second % seconds_a_day), {}};
}

std::string counted_time(std::int64_t count, const char* one) {
    return std::to_string(count) + " " + one + (count == 1 ? "" : "s");
}

std::string span_text(std::int64_t seconds) {
    if (seconds >= seconds_a_day) return counted_time(seconds / seconds_a_day, "day");
    if (seconds >= seconds_an_hour) return counted_time(seconds / seconds_an_hour, "hour");
    return counted_time(std::max<std::int64_t>(seconds / seconds_a_minute, 1), "minute");
}

} // namespace

const std::string& page_text(const DayBook& book, std::int64_t day) {
    static const std::string nothing;
    const auto page = page_from(book.pages, day);
    return page == book.pages.end() || page->day != day ? nothing : page->text;
}

void write_page(DayBook& book, std::int64_t day, const std::string& text) {
    const auto page = page_from(book.pages, day);
    const bool is_there = page != book.pages.end() && page->day == day;
    if (is_there && text.empty())
        book.pages.erase(page);
    else if (is_there)
        page->text = text;
    else if (!text.empty())
        book.pages.insert(page, {book.next_id++, day, text, {}});
}

std::vector<NoteOfDay> notes_of_day(const Sessions& sessions, std::int64_t day) {
    std::vector<NoteOfDay> notes;
    for (const Session& session : sessions.sessions)
        for (const NoteLine& line : session.lines)
            if (line.day == day) notes.push_back({&session, &line});
    return notes;
}

std::vector<std::int64_t> search_days(const Campaign& campaign, std::string_view text) {
    std::vector<std::int64_t> days;
    const std::string wanted = base::folded(text);
    if (wanted.empty()) return days;
    const auto look_at = [&](const std::string& written, std::int64_t day) {
        if (base::folded(written).find(wanted) != std::string::npos) days.push_back(day);
    };
    for (const DayPage& page : campaign.day_book.pages)
        look_at(page.text, page.day);
    for (const Session& session : campaign.sessions.sessions)
        for (const NoteLine& line : session.lines)
            look_at(line.text, line.day);
    for (const DayTimer& timer : campaign.day_book.timers)
        look_at(timer.text, timer.ends_day);
    std::sort(days.begin(), days.end(), std::greater<>());
    days.erase(std::unique(days.begin(), days.end()), days.end());
    return days;
}

std::string found_line(const Campaign& campaign, std::int64_t day, std::string_view text) {
    constexpr std::size_t bytes_max = 100;
    const std::string wanted = base::folded(text);
    const auto holds_it = [&wanted](std::string_view line) {
        return base::folded(line).find(wanted) != std::string::npos;
    };
    const std::string& page = page_text(campaign.day_book, day);
    for (std::string_view rest = page; !rest.empty();) {
        const std::size_t end = std::min(rest.find('\n'), rest.size());
        const std::string line(rest.substr(0, end));
        if (holds_it(line)) return base::shortened(line, bytes_max);
        rest.remove_prefix(std::min(end + 1, rest.size()));
    }
    for (const NoteOfDay& note : notes_of_day(campaign.sessions, day))
        if (holds_it(note.line->text)) return base::shortened(note.line->text, bytes_max);
    for (const DayTimer& timer : campaign.day_book.timers)
        if (timer.ends_day == day && holds_it(timer.text))
            return base::shortened(timer.text, bytes_max);
    return base::shortened(page.substr(0, page.find('\n')), bytes_max); // it stands across lines
}

Id add_day_timer(DayBook& book, const std::string& text, const Clock& ends) {
    if (text.empty()) return base::no_id;
    const DayTimer timer{book.next_id++, text, ends.day, ends.second_of_day, false, {}};
    const auto later_one =
        std::find_if(book.timers.begin(), book.timers.end(), [&](const DayTimer& each) {
            return is_before(ends, end_of(each));
        });
    book.timers.insert(later_one, timer);
    return timer.id;
}

void set_day_timer_done(DayBook& book, Id timer, bool is_done) {
    for (DayTimer& each : book.timers)
        if (each.id == timer) each.is_done = is_done;
}

void remove_day_timer(DayBook& book, Id timer) {
    std::erase_if(book.timers, [timer](const DayTimer& each) { return each.id == timer; });
}

std::vector<DueEntry> due_entries(const Campaign& campaign, const rules::Rulebook& rulebook) {
    std::vector<DueEntry> entries;
    for (const DayTimer& timer : campaign.day_book.timers)
        entries.push_back({end_of(timer), timer.text, timer.id, timer.is_done});
    const Clock present = now(campaign);
    for (const Combatant& combatant : campaign.encounter.combatants) {
        for (const ActiveCondition& active : combatant.conditions) {
            if (active.duration.kind != DurationKind::timed || active.is_paused) continue;
            entries.push_back(
                {later(present, std::max(active.duration.seconds_left, 0)),
                 combatant.name + ": " + condition_text(rulebook, active) + " ends",
                 base::no_id,
                 false}
            );
        }
    }
    std::stable_sort(
        entries.begin(),
        entries.end(),
        [](const DueEntry& one, const DueEntry& other) { return is_before(one.at, other.at); }
    );
    return entries;
}

std::string time_left_text(const Clock& now, const Clock& at) {
    const std::int64_t seconds = seconds_between(now, at);
    if (seconds == 0) return "now";
    return seconds > 0 ? "in " + span_text(seconds) : span_text(-seconds) + " late";
}

std::vector<std::size_t> history_of_day(const History& history, std::int64_t day) {
    std::vector<std::size_t> lines;
    for (std::size_t i = 0; i < history.lines.size(); ++i)
        if (history.lines[i].day == day) lines.push_back(i);
    return lines;
}

BookFacts book_facts(const Campaign& campaign, const rules::Rulebook& rulebook) {
    BookFacts facts{due_entries(campaign, rulebook), {}};
    for (const DayPage& page : campaign.day_book.pages)
        facts.written.push_back(page.day);
    for (const Session& session : campaign.sessions.sessions)
        for (const NoteLine& line : session.lines)
            if (facts.written.empty() || facts.written.back() != line.day)
                facts.written.push_back(line.day);
    std::sort(facts.written.begin(), facts.written.end());
    return facts;
}

DayMarks day_marks(const Campaign& campaign, const BookFacts& facts, std::int64_t day) {
    const Calendar& calendar = campaign.calendar;
    DayMarks marks;
    marks.is_today = now(campaign).day == day;
    marks.has_holiday = !holidays_on(calendar, day).empty();
    for (const Moon& moon : calendar.moons) {
        if (!has_dates(calendar)) break;
        const MoonPhase phase = moon_phase(calendar, moon, day);
        marks.has_full_moon = marks.has_full_moon || phase == MoonPhase::full_moon;
        marks.has_new_moon = marks.has_new_moon || phase == MoonPhase::new_moon;
    }
    marks.has_text = std::binary_search(facts.written.begin(), facts.written.end(), day);
    marks.has_due = std::any_of(facts.due.begin(), facts.due.end(), [day](const DueEntry& entry) {
        return entry.at.day == day && !entry.is_done;
    });
    return marks;
}

} // namespace game
