// How sessions stand in the campaign file. Keys are the member names.
#pragma once

#include "game/sessions.h"
#include "store/statistics_fields.h"

namespace store {

template <class Fields>
void describe(Fields& fields, Described<game::Session> /*type*/) {
    using S = game::Session;
    fields.whole("id", &S::id, id_range, Presence::required);
    fields.whole("number", &S::number, {0, 1'000'000}, Presence::shown);
    fields.text("title", &S::title, name_limit);
    fields.unknown(&S::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Sessions> /*type*/) {
    using S = game::Sessions;
    fields.list("sessions", &S::sessions);
    fields.whole("current", &S::current, reference_range);
    fields.whole("next_id", &S::next_id, id_range);
    fields.unknown(&S::unknown);
}

} // namespace store
