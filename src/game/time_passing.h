// The world's clock set on by hand: by a stretch of time, to dawn or dusk, to a date. A fight moves
// the clock by itself (fights.h), so these wait until it is over.
#pragma once

#include "base/result.h"
#include "game/campaign.h"
#include "rules/rulebook.h"

#include <cstdint>
#include <string>

namespace game {

// Whole seconds from one time to the other; negative when `to` is earlier.
std::int64_t seconds_between(const Clock& from, const Clock& to);
bool is_before(const Clock& one, const Clock& other);

// The next dawn or dusk of the calendar after this time; a campaign without a calendar has dawn at
// 6:00 and dusk at 18:00.
Clock next_dawn(const Calendar& calendar, const Clock& from);
Clock next_dusk(const Calendar& calendar, const Clock& from);

// Time passes (seconds from 0): timed conditions run down. Returns the new time, and what ended
// and came due, in one line: "On to 13 Reedmonth, 06:00; Orrin Tace: haste ends; due: fish spoils".
// Sections encounter and clock. Errors, nothing is changed then: not_possible (a fight is on),
// out_of_range (too far away).
base::Result<std::string>
advance_time(Campaign& campaign, const rules::Rulebook& rulebook, std::int64_t seconds);

// The same up to a time. One that is past only sets the clock back: what ended stays ended, and
// what still runs keeps the time it has left.
base::Result<std::string>
set_time(Campaign& campaign, const rules::Rulebook& rulebook, const Clock& time);

// Why the clock cannot be set now; empty when it can.
std::string why_no_time_passes(const Campaign& campaign);

} // namespace game
