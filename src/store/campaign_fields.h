// How the campaign stands in its file: sections in the order of the alphabet, keys the member
// names.
#pragma once

#include "game/campaign.h"
#include "store/encounter_fields.h"

namespace store {

inline constexpr Whole day_range{0, 1'000'000'000};
inline constexpr Whole second_of_day_range{0, 86399};
inline constexpr Whole revision_range{0, std::int64_t{1} << 53}; // exact in every JSON reader

template <class Fields>
void describe(Fields& fields, Described<game::About> /*type*/) {
    using A = game::About;
    fields.text("title", &A::title, name_limit, Presence::shown);
    fields.word("rules", &A::rules, Presence::required);
    fields.word("srd_edition", &A::srd_edition);
    fields.text("note", &A::note, text_limit);
    fields.unknown(&A::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Character> /*type*/) {
    using C = game::Character;
    fields.whole("id", &C::id, id_range, Presence::required);
    fields.text("name", &C::name, name_limit, Presence::required);
    fields.text("player", &C::player, name_limit);
    fields.text("calling", &C::calling, text_limit);
    fields.flag("is_present", &C::is_present);
    fields.object("statistics", &C::statistics, Presence::shown);
    fields.list("reminders", &C::reminders);
    fields.text("notes", &C::notes, text_limit);
    fields.unknown(&C::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Party> /*type*/) {
    using P = game::Party;
    fields.list("characters", &P::characters, Presence::shown);
    fields.whole("next_id", &P::next_id, id_range);
    fields.unknown(&P::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Creature> /*type*/) {
    using C = game::Creature;
    fields.whole("id", &C::id, id_range, Presence::required);
    fields.text("name", &C::name, name_limit, Presence::required);
    fields.object("statistics", &C::statistics, Presence::shown);
    fields.text("notes", &C::notes, text_limit);
    fields.unknown(&C::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::CreatureShelf> /*type*/) {
    using S = game::CreatureShelf;
    fields.list("creatures", &S::creatures, Presence::shown);
    fields.whole("next_id", &S::next_id, id_range);
    fields.unknown(&S::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::PreparedCreatures> /*type*/) {
    using P = game::PreparedCreatures;
    fields.whole("creature", &P::creature, id_range, Presence::required);
    fields.whole("count", &P::count, {1, game::Limits::count_max}, Presence::shown);
    fields.flag("shares_initiative", &P::shares_initiative);
    fields.flag("is_hidden", &P::is_hidden);
    fields.unknown(&P::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::PreparedEncounter> /*type*/) {
    using P = game::PreparedEncounter;
    fields.whole("id", &P::id, id_range, Presence::required);
    fields.text("name", &P::name, name_limit, Presence::shown);
    fields.list("creatures", &P::creatures, Presence::shown);
    fields.text("note", &P::note, text_limit);
    fields.unknown(&P::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Preparation> /*type*/) {
    using P = game::Preparation;
    fields.list("encounters", &P::encounters, Presence::shown);
    fields.whole("next_id", &P::next_id, id_range);
    fields.unknown(&P::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Clock> /*type*/) {
    using C = game::Clock;
    fields.whole("day", &C::day, day_range, Presence::shown);
    fields.whole("second_of_day", &C::second_of_day, second_of_day_range, Presence::shown);
    fields.unknown(&C::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::HistoryLine> /*type*/) {
    using H = game::HistoryLine;
    fields.whole("revision", &H::revision, revision_range, Presence::shown);
    fields.text("label", &H::label, text_limit, Presence::shown);
    fields.whole("round", &H::round, rounds_range);
    fields.whole("day", &H::day, day_range, Presence::shown);
    fields.whole("second_of_day", &H::second_of_day, second_of_day_range, Presence::shown);
    fields.text("written_at", &H::written_at, name_limit, Presence::shown);
    fields.unknown(&H::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::History> /*type*/) {
    using H = game::History;
    fields.list("lines", &H::lines, Presence::shown);
    fields.unknown(&H::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Campaign> /*type*/) {
    using C = game::Campaign;
    fields.object("about", &C::about, Presence::required);
    fields.object("clock", &C::clock, Presence::shown);
    fields.object("encounter", &C::encounter, Presence::shown);
    fields.object("history", &C::history, Presence::shown);
    fields.object("party", &C::party, Presence::shown);
    fields.object("preparation", &C::preparation, Presence::shown);
    fields.object("shelf", &C::shelf, Presence::shown);
    fields.unknown(&C::unknown);
}

} // namespace store
