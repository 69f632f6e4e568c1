#include "game/time_passing.h"

#include "game/date_text.h"
#include "game/day_book_keeping.h"
#include "game/resting.h"

namespace game {

namespace {

using base::Error;
using base::ErrorKind;

constexpr std::int64_t seconds_a_day = 86'400;

Clock next_at(const Clock& from, int second_of_day) {
    return {from.day + (from.second_of_day < second_of_day ? 0 : 1), second_of_day, {}};
}

std::string what_came_due(const DayBook& book, const Clock& from, const Clock& to) {
    std::string text;
    for (const DayTimer& timer : book.timers) {
        const Clock ends{timer.ends_day, timer.ends_second_of_day, {}};
        if (timer.is_done || !is_before(from, ends) || is_before(to, ends)) continue;
        text += (text.empty() ? "; due: " : ", ") + timer.text;
    }
    return text;
}

} // namespace

std::int64_t seconds_between(const Clock& from, const Clock& to) {
    return (to.day - from.day) * seconds_a_day + to.second_of_day - from.second_of_day;
}

bool is_before(const Clock& one, const Clock& other) {
    return seconds_between(one, other) > 0;
}

Clock next_dawn(const Calendar& calendar, const Clock& from) {
    return next_at(from, calendar.dawn_second);
}

Clock next_dusk(const Calendar& calendar, const Clock& from) {
    return next_at(from, calendar.dusk_second);
}

std::string why_no_time_passes(const Campaign& campaign) {
    return campaign.encounter.phase == Phase::no_fight
               ? std::string()
               : std::string("Not while a fight is on; its rounds move the time.");
}

base::Result<std::string>
advance_time(Campaign& campaign, const rules::Rulebook& rulebook, std::int64_t seconds) {
    if (const std::string why = why_no_time_passes(campaign); !why.empty())
        return Error{ErrorKind::not_possible, why};
    const std::int64_t furthest =
        (CalendarLimits::day_max - campaign.clock.day) * seconds_a_day - 1;
    if (seconds < 0 || seconds > furthest)
        return Error{ErrorKind::out_of_range, "That is too far away."};
    const Clock before = campaign.clock;
    const std::string ended = let_time_pass(campaign, rulebook, seconds);
    return "On to " + short_date_time_text(campaign) + (ended.empty() ? "" : "; " + ended) +
           what_came_due(campaign.day_book, before, campaign.clock);
}

base::Result<std::string>
set_time(Campaign& campaign, const rules::Rulebook& rulebook, const Clock& time) {
    const std::int64_t seconds = seconds_between(campaign.clock, time);
    if (seconds >= 0) return advance_time(campaign, rulebook, seconds);
    if (const std::string why = why_no_time_passes(campaign); !why.empty())
        return Error{ErrorKind::not_possible, why};
    if (time.day < -CalendarLimits::day_max)
        return Error{ErrorKind::out_of_range, "That is too far away."};
    campaign.clock.day = time.day;
    campaign.clock.second_of_day = time.second_of_day;
    return "Back to " + short_date_time_text(campaign);
}

} // namespace game
