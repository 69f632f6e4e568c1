// How places and their weather stand in the campaign file. Keys are the member names.
#pragma once

#include "game/places.h"
#include "store/statistics_fields.h"

namespace store {

template <class Fields>
void describe(Fields& fields, Described<game::Place> /*type*/) {
    using P = game::Place;
    fields.whole("id", &P::id, id_range, Presence::required);
    fields.text("name", &P::name, name_limit, Presence::required);
    fields.text("climate", &P::climate, name_limit);
    fields.unknown(&P::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Places> /*type*/) {
    using P = game::Places;
    fields.list("places", &P::places);
    fields.whole("current", &P::current, reference_range);
    fields.whole("weather_seed", &P::weather_seed, reference_range);
    fields.whole("next_id", &P::next_id, id_range);
    fields.unknown(&P::unknown);
}

} // namespace store
