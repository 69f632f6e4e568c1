// How sessions stand in the campaign file. Keys are the member names.
#pragma once

#include "game/sessions.h"
#include "store/statistics_fields.h"

namespace store {

template <class Fields>
void describe(Fields& fields, Described<game::NoteLine> /*type*/) {
    using N = game::NoteLine;
    fields.whole("id", &N::id, id_range, Presence::required);
    fields.word("kind", &N::kind);
    fields.text("text", &N::text, text_limit, Presence::required);
    fields.text("written_at", &N::written_at, name_limit);
    fields.whole("day", &N::day, day_range);
    fields.whole("second_of_day", &N::second_of_day, {0, 86399});
    fields.whole("round", &N::round, {0, 1'000'000});
    fields.unknown(&N::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::PlanItem> /*type*/) {
    using P = game::PlanItem;
    fields.whole("id", &P::id, id_range, Presence::required);
    fields.text("text", &P::text, text_limit, Presence::shown);
    fields.flag("is_done", &P::is_done);
    fields.unknown(&P::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Goal> /*type*/) {
    using G = game::Goal;
    fields.whole("id", &G::id, id_range, Presence::required);
    fields.text("text", &G::text, text_limit, Presence::shown);
    fields.flag("is_question", &G::is_question);
    fields.flag("is_done", &G::is_done);
    fields.unknown(&G::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::RecapPage> /*type*/) {
    using R = game::RecapPage;
    fields.text("places", &R::places, text_limit);
    fields.text("deeds", &R::deeds, text_limit);
    fields.text("people", &R::people, text_limit);
    fields.text("discoveries", &R::discoveries, text_limit);
    fields.text("next", &R::next, text_limit);
    fields.unknown(&R::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Session> /*type*/) {
    using S = game::Session;
    fields.whole("id", &S::id, id_range, Presence::required);
    fields.whole("number", &S::number, {0, 1'000'000}, Presence::shown);
    fields.text("title", &S::title, name_limit);
    fields.text("played_on", &S::played_on, name_limit);
    fields.text("summary", &S::summary, text_limit);
    fields.text("must_know", &S::must_know, text_limit);
    fields.ids("present", &S::present);
    fields.list("scenes", &S::scenes);
    fields.list("goals", &S::goals);
    fields.ids("people", &S::people);
    fields.ids("encounters", &S::encounters);
    fields.list("loot", &S::loot);
    fields.list("lines", &S::lines);
    fields.whole("begun_at", &S::begun_at, {0, std::int64_t{1} << 53});
    fields.ids("offers_done", &S::offers_done);
    fields.object("recap", &S::recap);
    fields.unknown(&S::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Sessions> /*type*/) {
    using S = game::Sessions;
    fields.list("sessions", &S::sessions, Presence::shown);
    fields.whole("current", &S::current, reference_range);
    fields.whole("next_id", &S::next_id, id_range);
    fields.unknown(&S::unknown);
}

} // namespace store
