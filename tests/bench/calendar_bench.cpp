// What a date costs, as a ratio to the civil calendar of the C++ standard library, which knows one
// calendar only; and what a page and a year of the Day Book cost. Prints and never fails; run it by
// hand from a release build.
#include "bench/measure.h"
#include "game/calendar_dates.h"
#include "game/day_book_keeping.h"
#include "store/calendars.h"

#include <chrono>
#include <cstdio>

namespace {

constexpr int days_asked = 1'000'000;

// The last day number of a date that is counted to and back, all over 2,700 years.
double there_and_back(const game::Calendar& calendar, std::int64_t day) {
    return static_cast<double>(game::day_of(calendar, game::date_of(calendar, day)));
}

double standard_there_and_back(int day) {
    const std::chrono::sys_days civil{std::chrono::days{day}};
    const std::chrono::year_month_day date{civil};
    return static_cast<double>(std::chrono::sys_days{date}.time_since_epoch().count());
}

} // namespace

int main() {
    const store::ReadyCalendars ready = store::load_calendars(TABLEWICK_SOURCE_DIR "/assets");
    int asked = 0;
    const auto any_day = [&asked] { return (asked++ * 7919) % days_asked; };
    const auto standard = [&] { return standard_there_and_back(any_day()); };
    for (const game::Calendar& calendar : ready.calendars) {
        measure::compare(
            calendar.name + ", a date and back",
            [&] { return there_and_back(calendar, any_day()); },
            "the standard library's",
            standard
        );
        measure::compare(
            calendar.name + ", time of year",
            [&] { return game::year_share(calendar, any_day()); },
            "the standard library's date",
            standard
        );
        game::Campaign campaign;
        campaign.calendar = calendar;
        const game::BookFacts facts;
        measure::compare(
            calendar.name + ", the marks of a year",
            [&] {
                const std::int64_t first = any_day();
                int holidays = 0;
                for (std::int64_t day = first; day < first + 366; ++day)
                    holidays += game::day_marks(campaign, facts, day).has_holiday ? 1 : 0;
                return holidays;
            },
            "a year of standard dates",
            [&] {
                double sum = 0;
                for (int day = 0; day < 366; ++day)
                    sum += standard_there_and_back(day);
                return sum;
            }
        );
    }
    return 0;
}
