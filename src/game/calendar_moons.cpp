// Moons. Times are whole billionths of a day, so that nothing drifts over any number of years.
#include "game/calendar_dates.h"
#include "game/calendar_parts.h"

#include <cmath>
#include <numbers>

namespace game {

namespace {

constexpr std::int64_t one_day = 1'000'000'000;

std::int64_t period_of(const Moon& moon) {
    return std::llround(moon.period_days * static_cast<double>(one_day));
}

// Time from the last new moon to the start of the day, from 0 to below the period.
std::int64_t since_new(const Calendar& calendar, const Moon& moon, std::int64_t day) {
    constexpr std::int64_t seconds_a_day = 86'400;
    constexpr std::int64_t thousand = 1'000;
    const std::int64_t period = period_of(moon);
    const CalendarDate known{
        moon.new_moon.year,
        part_index(calendar, moon.new_moon.part).value_or(0),
        moon.new_moon.day};
    // In three steps, because days times a billion may be too large for a whole number.
    std::int64_t since = floor_mod(day - day_of(calendar, known), period);
    for (int step = 0; step < 3; ++step)
        since = since * thousand % period;
    return floor_mod(since - moon.new_moon_second * one_day / seconds_a_day, period);
}

} // namespace

double moon_share(const Calendar& calendar, const Moon& moon, std::int64_t day) {
    if (!has_dates(calendar)) return 0.0;
    const std::int64_t period = period_of(moon);
    const std::int64_t at_noon = (since_new(calendar, moon, day) + one_day / 2) % period;
    return static_cast<double>(at_noon) / static_cast<double>(period);
}

MoonPhase moon_phase(const Calendar& calendar, const Moon& moon, std::int64_t day) {
    if (!has_dates(calendar)) return MoonPhase::new_moon;
    const std::int64_t period = period_of(moon);
    const std::int64_t since = since_new(calendar, moon, day);
    const auto comes_today = [&](std::int64_t quarters) {
        return floor_mod(period * quarters / 4 - since, period) < one_day;
    };
    if (comes_today(0)) return MoonPhase::new_moon;
    if (comes_today(2)) return MoonPhase::full_moon;
    if (comes_today(1)) return MoonPhase::first_quarter;
    if (comes_today(3)) return MoonPhase::last_quarter;
    if (since < period / 4) return MoonPhase::waxing_crescent;
    if (since < period / 2) return MoonPhase::waxing_gibbous;
    return since < period * 3 / 4 ? MoonPhase::waning_gibbous : MoonPhase::waning_crescent;
}

double moon_light(const Calendar& calendar, const Moon& moon, std::int64_t day) {
    return (1.0 - std::cos(2.0 * std::numbers::pi * moon_share(calendar, moon, day))) / 2.0;
}

const char* moon_phase_text(MoonPhase phase) {
    switch (phase) {
    case MoonPhase::new_moon: return "new moon";
    case MoonPhase::waxing_crescent: return "waxing crescent";
    case MoonPhase::first_quarter: return "first quarter";
    case MoonPhase::waxing_gibbous: return "waxing gibbous";
    case MoonPhase::full_moon: return "full moon";
    case MoonPhase::waning_gibbous: return "waning gibbous";
    case MoonPhase::last_quarter: return "last quarter";
    case MoonPhase::waning_crescent: return "waning crescent";
    }
    return "";
}

} // namespace game
