// Dates in words, by the calendar of the campaign, and dates that people type.
#pragma once

#include "base/result.h"
#include "game/campaign.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace game {

// Index in Calendar::eras of the one this year is told in: the one begun last; before all of them
// the one counting backwards that comes next. Nothing: no era fits.
std::optional<std::size_t> era_index(const Calendar& calendar, std::int64_t year);
std::int64_t year_in_era(const Era& era, std::int64_t year);   // the number that people say
std::int64_t year_of_era(const Era& era, std::int64_t number); // and back

// "1204 AE", "12 BE"; the plain number without an era for it.
std::string year_text(const Calendar& calendar, std::int64_t year);

// "Fourthday, 12 Reedmonth 1204 AE"; "Midyear 1204 AE" and "2 of Lamp Nights 1204 AE" outside
// the months; "Day 12" without a calendar.
std::string date_text(const Calendar& calendar, std::int64_t day);
// Without the weekday: "12 Reedmonth 1204 AE".
std::string plain_date_text(const Calendar& calendar, std::int64_t day);
// The same within a sentence: "day 12" without a calendar.
std::string day_in_words(const Calendar& calendar, std::int64_t day);
// Without weekday and year: "12 Reedmonth".
std::string short_date_text(const Calendar& calendar, std::int64_t day);

// "08:00"
std::string time_of_day_text(int second_of_day);

// "12 Reedmonth 1204 AE, 08:00"; "Day 12, 08:00" without a calendar.
std::string date_time_text(const Calendar& calendar, const Clock& clock);
// The same for now, a running fight counted.
std::string date_time_text(const Campaign& campaign);
// For a place with little room: "12 Reedmonth, 08:00".
std::string short_date_time_text(const Campaign& campaign);

// The running day that a typed date means, seen from `today`: "12 Reedmonth 1204 AE",
// "12 Reedmonth" (of this year), "Reedmonth 12", "Reedmonth 1204" (its first day), "12.3.1204"
// (day.month.year; days outside months go by name), "Midyear 1204", "12" (of this month; without a
// calendar day 12), "day 40", "today", "tomorrow", "yesterday", "+10", "-3", "+2 weeks",
// "-1 month", "+1 year". A year without its era is one of the era of today, with a minus sign it is
// counted through. Names may be cut short as long as they stay clear; a weekday in front is
// skipped. Errors: bad_text (not understood), not_found (no such month), out_of_range (no such day,
// too far).
base::Result<std::int64_t>
parse_date(const Calendar& calendar, std::string_view text, std::int64_t today);

// "16:30", "16": the second of the day. Errors: bad_text.
base::Result<int> parse_time_of_day(std::string_view text);

} // namespace game
