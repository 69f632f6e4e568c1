// How the Register stands in the campaign file. Keys are the member names.
#pragma once

#include "game/register.h"
#include "store/statistics_fields.h"

namespace store {

template <class Fields>
void describe(Fields& fields, Described<game::RegisterEntry> /*type*/) {
    using E = game::RegisterEntry;
    fields.whole("id", &E::id, id_range, Presence::required);
    fields.text("name", &E::name, name_limit, Presence::required);
    fields.word("kind", &E::kind, Presence::shown);
    fields.text("summary", &E::summary, text_limit);
    fields.text("notes", &E::notes, text_limit);
    fields.whole("place", &E::place, reference_range);
    fields.text("attitude", &E::attitude, name_limit);
    fields.whole("first_met_day", &E::first_met_day, day_range);
    fields.flag("is_met", &E::is_met);
    fields.unknown(&E::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Register> /*type*/) {
    using R = game::Register;
    fields.list("entries", &R::entries, Presence::shown);
    fields.whole("next_id", &R::next_id, id_range);
    fields.unknown(&R::unknown);
}

} // namespace store
