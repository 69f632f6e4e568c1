// The pages and timers of the Day Book: writing, finding, and what falls due on which day.
#pragma once

#include "game/calendar_dates.h"
#include "game/campaign.h"
#include "rules/rulebook.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace game {

// What stands on this day's page; empty when nothing does.
const std::string& page_text(const DayBook& book, std::int64_t day);
// An empty text takes the page away.
void write_page(DayBook& book, std::int64_t day, const std::string& text);

// A line of the notes of a session, on the page of the day it was written.
struct NoteOfDay {
    const Session* session = nullptr;
    const NoteLine* line = nullptr;
};

// What the Session Sheets noted on this day, in the order it was written.
std::vector<NoteOfDay> notes_of_day(const Sessions& sessions, std::int64_t day);

// Running days whose page, notes or timers hold this text, upper and lower case alike, the newest
// first. An empty text finds nothing.
std::vector<std::int64_t> search_days(const Campaign& campaign, std::string_view text);
// The line of such a day that holds the text, for a list of what was found; about 100 characters.
std::string found_line(const Campaign& campaign, std::int64_t day, std::string_view text);

// Keeps the soonest first. An empty text adds nothing (no_id).
Id add_day_timer(DayBook& book, const std::string& text, const Clock& ends);
void set_day_timer_done(DayBook& book, Id timer, bool is_done);
void remove_day_timer(DayBook& book, Id timer);

// Something that ends or falls due at a time of the world.
struct DueEntry {
    Clock at;
    std::string text;       // "fish spoils", "Orrin Tace: haste ends"
    Id timer = base::no_id; // of DayBook; none: a condition that runs on somebody
    bool is_done = false;

    bool operator==(const DueEntry&) const = default;
};

// All timers of the Day Book and all timed conditions, the soonest first.
std::vector<DueEntry> due_entries(const Campaign& campaign, const rules::Rulebook& rulebook);

// "in 3 days", "in 2 hours", "in 5 minutes", "now", "2 days late".
std::string time_left_text(const Clock& now, const Clock& at);

// Indices in History::lines of what was done on this in-world day, oldest first.
std::vector<std::size_t> history_of_day(const History& history, std::int64_t day);

// What the views of week, month and year mark on a day.
struct DayMarks {
    bool is_today = false;
    bool has_holiday = false;
    bool has_full_moon = false; // of any moon
    bool has_new_moon = false;
    bool has_text = false; // by hand or in the notes of a session
    bool has_due = false;  // something not done ends that day

    bool operator==(const DayMarks&) const = default;
};

// What the marks are made of, asked once for all days.
struct BookFacts {
    std::vector<DueEntry> due;         // the soonest first
    std::vector<std::int64_t> written; // days on which something was written, from the earliest
};

BookFacts book_facts(const Campaign& campaign, const rules::Rulebook& rulebook);
DayMarks day_marks(const Campaign& campaign, const BookFacts& facts, std::int64_t day);

} // namespace game
