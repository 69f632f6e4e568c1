// How the calendar and the Day Book stand in the campaign file, and calendars in their own files.
// Keys are the member names.
#pragma once

#include "game/calendar.h"
#include "game/day_book.h"
#include "store/statistics_fields.h"

namespace store {

inline constexpr Whole part_day_range{
    1, game::CalendarLimits::part_days_max + game::CalendarLimits::leap_days_max};
inline constexpr Whole year_range{-game::CalendarLimits::year_max, game::CalendarLimits::year_max};

template <class Fields>
void describe(Fields& fields, Described<game::YearPart> /*type*/) {
    using P = game::YearPart;
    fields.whole("id", &P::id, id_range, Presence::required);
    fields.text("name", &P::name, name_limit, Presence::required);
    fields.whole("days", &P::days, {0, game::CalendarLimits::part_days_max}, Presence::required);
    fields.flag("is_month", &P::is_month);
    fields.flag("is_in_week", &P::is_in_week);
    fields.unknown(&P::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::LeapStep> /*type*/) {
    using S = game::LeapStep;
    const Whole range{1, game::CalendarLimits::leap_every_max};
    fields.whole("every", &S::every, range, Presence::required);
    fields.unknown(&S::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::LeapRule> /*type*/) {
    using R = game::LeapRule;
    constexpr std::int64_t offset_max = game::CalendarLimits::leap_every_max;
    fields.whole("id", &R::id, id_range, Presence::required);
    fields.whole("part", &R::part, id_range, Presence::required);
    fields.whole("days", &R::days, {1, game::CalendarLimits::leap_days_max});
    fields.list("steps", &R::steps, Presence::required);
    fields.whole("offset", &R::offset, {-offset_max, offset_max});
    fields.unknown(&R::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::YearDay> /*type*/) {
    using D = game::YearDay;
    fields.whole("part", &D::part, reference_range);
    fields.whole("day", &D::day, part_day_range);
    fields.unknown(&D::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Season> /*type*/) {
    using S = game::Season;
    fields.whole("id", &S::id, id_range, Presence::required);
    fields.text("name", &S::name, name_limit, Presence::required);
    fields.object("start", &S::start, Presence::required);
    fields.unknown(&S::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::FullDate> /*type*/) {
    using D = game::FullDate;
    fields.whole("year", &D::year, year_range);
    fields.whole("part", &D::part, reference_range);
    fields.whole("day", &D::day, part_day_range);
    fields.unknown(&D::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Moon> /*type*/) {
    using M = game::Moon;
    using L = game::CalendarLimits;
    fields.whole("id", &M::id, id_range, Presence::required);
    fields.text("name", &M::name, name_limit, Presence::required);
    fields.number("period_days", &M::period_days, L::period_min, L::period_max);
    fields.object("new_moon", &M::new_moon);
    fields.whole("new_moon_second", &M::new_moon_second, second_of_day_range);
    fields.unknown(&M::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Holiday> /*type*/) {
    using H = game::Holiday;
    using L = game::CalendarLimits;
    fields.whole("id", &H::id, id_range, Presence::required);
    fields.text("name", &H::name, name_limit, Presence::required);
    fields.word("rule", &H::rule);
    fields.whole("part", &H::part, id_range, Presence::required);
    fields.whole("day", &H::day, part_day_range);
    fields.whole("weekday", &H::weekday, {0, L::list_max});
    fields.whole("nth", &H::nth, {-1, L::nth_max});
    fields.text("note", &H::note, text_limit);
    fields.unknown(&H::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Era> /*type*/) {
    using E = game::Era;
    fields.whole("id", &E::id, id_range, Presence::required);
    fields.text("name", &E::name, name_limit);
    fields.text("abbreviation", &E::abbreviation, name_limit);
    fields.whole("first_year", &E::first_year, year_range);
    fields.flag("is_backwards", &E::is_backwards);
    fields.unknown(&E::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Calendar> /*type*/) {
    using C = game::Calendar;
    fields.text("name", &C::name, name_limit);
    fields.list("parts", &C::parts);
    fields.list("leap_rules", &C::leap_rules);
    fields.texts("weekdays", &C::weekdays, name_limit);
    fields.whole("year_one_weekday", &C::year_one_weekday, {0, game::CalendarLimits::list_max});
    fields.list("seasons", &C::seasons);
    fields.list("moons", &C::moons);
    fields.list("holidays", &C::holidays);
    fields.list("eras", &C::eras);
    fields.object("midwinter", &C::midwinter);
    fields.whole("dawn_second", &C::dawn_second, second_of_day_range);
    fields.whole("dusk_second", &C::dusk_second, second_of_day_range);
    fields.object("first_day", &C::first_day);
    fields.whole("next_id", &C::next_id, id_range);
    fields.unknown(&C::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::DayPage> /*type*/) {
    using P = game::DayPage;
    fields.whole("id", &P::id, id_range, Presence::required);
    fields.whole("day", &P::day, day_range, Presence::required);
    fields.text("text", &P::text, text_limit);
    fields.unknown(&P::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::DayTimer> /*type*/) {
    using T = game::DayTimer;
    fields.whole("id", &T::id, id_range, Presence::required);
    fields.text("text", &T::text, text_limit);
    fields.whole("ends_day", &T::ends_day, day_range, Presence::required);
    fields.whole("ends_second_of_day", &T::ends_second_of_day, second_of_day_range);
    fields.flag("is_done", &T::is_done);
    fields.unknown(&T::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::DayBook> /*type*/) {
    using B = game::DayBook;
    fields.list("pages", &B::pages, Presence::shown);
    fields.list("timers", &B::timers);
    fields.whole("next_id", &B::next_id, id_range);
    fields.unknown(&B::unknown);
}

} // namespace store
