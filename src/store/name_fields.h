// How the names stand in the campaign file. Keys are the member names.
#pragma once

#include "game/name_book.h"
#include "store/statistics_fields.h"

namespace store {

template <class Fields>
void describe(Fields& fields, Described<game::NameList> /*type*/) {
    using L = game::NameList;
    fields.whole("id", &L::id, id_range, Presence::required);
    fields.text("name", &L::name, name_limit, Presence::required);
    fields.word("kind", &L::kind, Presence::shown);
    fields.texts("names", &L::names, name_limit);
    fields.unknown(&L::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::UsedName> /*type*/) {
    using U = game::UsedName;
    fields.whole("id", &U::id, id_range, Presence::required);
    fields.text("name", &U::name, name_limit, Presence::required);
    fields.text("list", &U::list, name_limit);
    fields.text("who", &U::who, text_limit);
    fields.text("where", &U::where, text_limit);
    fields.whole("day", &U::day, day_range);
    fields.whole("entry", &U::entry, reference_range);
    fields.unknown(&U::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::FavouriteName> /*type*/) {
    using F = game::FavouriteName;
    fields.text("name", &F::name, name_limit, Presence::required);
    fields.text("list", &F::list, name_limit);
    fields.unknown(&F::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::NameBook> /*type*/) {
    using B = game::NameBook;
    fields.list("used", &B::used, Presence::shown);
    fields.list("lists", &B::lists);
    fields.list("favourites", &B::favourites);
    fields.whole("next_id", &B::next_id, id_range);
    fields.unknown(&B::unknown);
}

} // namespace store
