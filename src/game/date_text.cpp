#include "game/date_text.h"

#include "game/calendar_dates.h"
#include "game/fights.h"

namespace game {

namespace {

// The era a year belongs to: the one begun last; before all of them the one counting backwards
// that comes next.
const Era* era_of(const Calendar& calendar, std::int64_t year) {
    const Era* found = nullptr;
    for (const Era& era : calendar.eras)
        if (!era.is_backwards && era.first_year <= year &&
            (found == nullptr || era.first_year > found->first_year))
            found = &era;
    if (found != nullptr) return found;
    for (const Era& era : calendar.eras)
        if (era.is_backwards && era.first_year >= year &&
            (found == nullptr || era.first_year < found->first_year))
            found = &era;
    return found;
}

std::string counted_day(std::int64_t day) {
    return "Day " + std::to_string(day);
}

std::string day_in_part(const Calendar& calendar, const CalendarDate& date) {
    const YearPart& part = calendar.parts[date.part];
    if (part.is_month) return std::to_string(date.day) + " " + part.name;
    if (part_length(calendar, date.part, date.year) == 1) return part.name;
    return std::to_string(date.day) + " of " + part.name;
}

} // namespace

std::optional<std::size_t> era_index(const Calendar& calendar, std::int64_t year) {
    const Era* era = era_of(calendar, year);
    if (era == nullptr) return {};
    return static_cast<std::size_t>(era - calendar.eras.data());
}

std::int64_t year_in_era(const Era& era, std::int64_t year) {
    return era.is_backwards ? era.first_year - year + 1 : year - era.first_year + 1;
}

std::int64_t year_of_era(const Era& era, std::int64_t number) {
    return era.is_backwards ? era.first_year - number + 1 : era.first_year + number - 1;
}

std::string year_text(const Calendar& calendar, std::int64_t year) {
    const Era* era = era_of(calendar, year);
    if (era == nullptr) return std::to_string(year);
    const std::string& called = era->abbreviation.empty() ? era->name : era->abbreviation;
    return std::to_string(year_in_era(*era, year)) + (called.empty() ? "" : " " + called);
}

std::string date_text(const Calendar& calendar, std::int64_t day) {
    const auto weekday = weekday_of(calendar, day);
    return (weekday ? calendar.weekdays[*weekday] + ", " : "") + plain_date_text(calendar, day);
}

std::string plain_date_text(const Calendar& calendar, std::int64_t day) {
    if (!has_dates(calendar)) return counted_day(day);
    const CalendarDate date = date_of(calendar, day);
    return day_in_part(calendar, date) + " " + year_text(calendar, date.year);
}

std::string day_in_words(const Calendar& calendar, std::int64_t day) {
    return has_dates(calendar) ? plain_date_text(calendar, day) : "day " + std::to_string(day);
}

std::string short_date_text(const Calendar& calendar, std::int64_t day) {
    if (!has_dates(calendar)) return counted_day(day);
    return day_in_part(calendar, date_of(calendar, day));
}

std::string time_of_day_text(int second_of_day) {
    constexpr int seconds_an_hour = 3600;
    constexpr int seconds_a_minute = 60;
    const auto two_digits = [](int number) {
        return (number < 10 ? "0" : "") + std::to_string(number);
    };
    return two_digits(second_of_day / seconds_an_hour) + ":" +
           two_digits(second_of_day % seconds_an_hour / seconds_a_minute);
}

std::string date_time_text(const Calendar& calendar, const Clock& clock) {
    return plain_date_text(calendar, clock.day) + ", " + time_of_day_text(clock.second_of_day);
}

std::string date_time_text(const Campaign& campaign) {
    return date_time_text(campaign.calendar, now(campaign));
}

std::string short_date_time_text(const Campaign& campaign) {
    const Clock clock = now(campaign);
    return short_date_text(campaign.calendar, clock.day) + ", " +
           time_of_day_text(clock.second_of_day);
}

} // namespace game
