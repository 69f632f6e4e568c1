// How the GM's own pages stand in the campaign file. Keys are the member names.
#pragma once

#include "game/own_pages.h"
#include "store/statistics_fields.h"

namespace store {

template <class Fields>
void describe(Fields& fields, Described<game::OwnPage> /*type*/) {
    using P = game::OwnPage;
    fields.whole("id", &P::id, id_range, Presence::required);
    fields.text("title", &P::title, name_limit, Presence::required);
    fields.text("text", &P::text, text_limit);
    fields.unknown(&P::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::OwnPages> /*type*/) {
    using P = game::OwnPages;
    fields.list("pages", &P::pages, Presence::shown);
    fields.whole("next_id", &P::next_id, id_range);
    fields.unknown(&P::unknown);
}

} // namespace store
