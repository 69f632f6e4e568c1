// How the calendar and the Day Book stand in the campaign file. Keys are the member names.
#pragma once

#include "game/calendar.h"
#include "game/day_book.h"
#include "store/statistics_fields.h"

namespace store {

template <class Fields>
void describe(Fields& fields, Described<game::Calendar> /*type*/) {
    using C = game::Calendar;
    fields.text("name", &C::name, name_limit);
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
void describe(Fields& fields, Described<game::DayBook> /*type*/) {
    using B = game::DayBook;
    fields.list("pages", &B::pages);
    fields.whole("next_id", &B::next_id, id_range);
    fields.unknown(&B::unknown);
}

} // namespace store
