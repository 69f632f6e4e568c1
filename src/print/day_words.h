// What pages of the calendar share: the day that was asked for, and what stands beside a day.
#pragma once

#include "print/page_kinds.h"

#include <cstdint>

namespace print {

struct AskedDay {
    std::int64_t day = 1; // today where none was named
    bool is_blank = false;
};

// "", "blank", a date, or "blank" and a date. Errors: those of game::parse_date.
base::Result<AskedDay> day_asked_for(const PrintSource& source, const std::string& detail);

void append_line(std::string& text, const std::string& line); // nothing for an empty line

// A line each; empty where there is nothing.
std::string holidays_text(const game::Calendar& calendar, std::int64_t day);
std::string moons_text(const game::Calendar& calendar, std::int64_t day); // full and new moons

// As few letters of each weekday as tell it from the others: "F", "Se", "Su".
std::vector<std::string> weekday_letters(const game::Calendar& calendar);

} // namespace print
