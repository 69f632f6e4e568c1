// How places and their weather stand in the campaign file. Keys are the member names.
#pragma once

#include "game/places.h"
#include "game/places_edit.h"
#include "store/statistics_fields.h"

namespace store {

template <class Fields>
void describe(Fields& fields, Described<game::WeatherOverrule> /*type*/) {
    using O = game::WeatherOverrule;
    using L = game::PlaceLimits;
    fields.whole("day", &O::day, {L::day_min, L::day_max}, Presence::required);
    fields.word("sky", &O::sky);
    fields.number("high_c", &O::high_c, L::celsius_min, L::celsius_max);
    fields.word("wind", &O::wind);
    fields.text("note", &O::note, text_limit);
    fields.unknown(&O::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Place> /*type*/) {
    using P = game::Place;
    using L = game::PlaceLimits;
    fields.whole("id", &P::id, id_range, Presence::required);
    fields.text("name", &P::name, name_limit, Presence::required);
    fields.text("climate", &P::climate, name_limit);
    fields.text("note", &P::note, text_limit);
    fields.whole("warmer_by", &P::warmer_by, {-L::warmer_by_max, L::warmer_by_max});
    fields.whole("weather_of", &P::weather_of, reference_range);
    fields.list("overrules", &P::overrules);
    fields.unknown(&P::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Places> /*type*/) {
    using P = game::Places;
    fields.list("places", &P::places);
    fields.whole("current", &P::current, reference_range);
    fields.whole("weather_seed", &P::weather_seed, reference_range);
    fields.flag("in_fahrenheit", &P::in_fahrenheit);
    fields.whole("next_id", &P::next_id, id_range);
    fields.unknown(&P::unknown);
}

} // namespace store
