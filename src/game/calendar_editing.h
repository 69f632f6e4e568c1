// Making and changing a calendar. References to parts that are taken away go with them.
#pragma once

#include "game/calendar.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace game {

// What is wrong or missing, one short sentence each; empty when the calendar is sound.
std::vector<std::string> calendar_problems(const Calendar& calendar);

// "13 months of 28 days": so many months named "Month 1", "Month 2" ... A calendar that had none
// starts at the first day of year 1; what stood there before is replaced, with what hung on it.
void make_months(Calendar& calendar, int count, int days);

// A typed or pasted list of names, parted by commas, semicolons or lines; "Reedmonth 30" and
// "Reedmonth (30)" carry their days where `with_days`. Blank ones are left out.
struct ListedName {
    std::string name;
    int days = 0; // 0: none typed

    bool operator==(const ListedName&) const = default;
};

std::vector<ListedName> listed_names(std::string_view text, bool with_days);

// Names the months in their order; more names than months add months, as long as the last one.
// Months without a name keep theirs.
void name_months(Calendar& calendar, const std::vector<ListedName>& names);
// The week has these days. The weekday of the first day of year 1 stays at its place in the week,
// as far as the week is that long.
void name_weekdays(Calendar& calendar, const std::vector<ListedName>& names);

// Gives the entry its id, puts it at the end of its list (a member of Calendar) and returns the id.
template <class Entry>
Id add_calendar_entry(Calendar& calendar, std::vector<Entry> Calendar::*list, Entry entry) {
    entry.id = calendar.next_id++;
    (calendar.*list).push_back(std::move(entry));
    return (calendar.*list).back().id;
}

// Parts of the year go by remove_part.
template <class Entry>
void remove_calendar_entry(std::vector<Entry>& list, Id id) {
    std::erase_if(list, [id](const Entry& entry) { return entry.id == id; });
}

// Moves the entry one place on (+1) or back (-1) in its list; at the edge nothing happens.
template <class Entry>
void move_calendar_entry(std::vector<Entry>& list, Id id, int by) {
    for (std::size_t at = 0; at < list.size(); ++at) {
        if (list[at].id != id) continue;
        const std::size_t other = by > 0 ? at + 1 : at - 1;
        if (other < list.size()) std::swap(list[at], list[other]);
        return;
    }
}

// The entry with this id, or nullptr.
template <class Entry>
Entry* find_calendar_entry(std::vector<Entry>& list, Id id) {
    for (Entry& entry : list)
        if (entry.id == id) return &entry;
    return nullptr;
}

// With its leap rules and holidays; seasons, midwinter, new moons and the date of day 1 move to the
// first day of what follows.
void remove_part(Calendar& calendar, Id part);

// The date `day` of the campaign has from now on: the date of day 1 follows. Nothing without dates.
void set_date_of_day(Calendar& calendar, std::int64_t day, const FullDate& date);

// "13 months, 365 days a year, a week of 7 days, 2 moons, 6 holidays"; what there is none of is
// left out.
std::string calendar_summary(const Calendar& calendar);

// "every 4 years, not every 100, but every 400"
std::string leap_rule_text(const LeapRule& rule);

} // namespace game
