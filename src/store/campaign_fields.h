// How the campaign stands in its file: sections in the order of the alphabet, keys the member
// names.
#pragma once

#include "game/campaign.h"
#include "store/calendar_fields.h"
#include "store/encounter_fields.h"
#include "store/name_fields.h"
#include "store/own_page_fields.h"
#include "store/place_fields.h"
#include "store/register_fields.h"
#include "store/session_fields.h"
#include "store/treasury_fields.h"

namespace store {

inline constexpr Whole revision_range{0, std::int64_t{1} << 53}; // exact in every JSON reader

template <class Fields>
void describe(Fields& fields, Described<game::About> /*type*/) {
    using A = game::About;
    fields.text("title", &A::title, name_limit, Presence::shown);
    fields.word("rules", &A::rules, Presence::required);
    fields.word("srd_edition", &A::srd_edition);
    fields.text("house_rules", &A::house_rules, path_limit);
    fields.text("pace", &A::pace, name_limit);
    fields.text("note", &A::note, text_limit);
    fields.unknown(&A::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::HitDice> /*type*/) {
    using H = game::HitDice;
    using L = game::Limits;
    fields.whole("sides", &H::sides, {L::hit_die_sides_min, L::hit_die_sides_max}, Presence::shown);
    fields.whole("total", &H::total, {1, L::hit_dice_max}, Presence::shown);
    fields.whole("spent", &H::spent, {0, L::hit_dice_max});
    fields.unknown(&H::unknown);
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
    fields.whole("experience", &C::experience, {0, game::Limits::experience_max});
    fields.list("hit_dice", &C::hit_dice);
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
void describe(Fields& fields, Described<game::PreparedHazards> /*type*/) {
    using P = game::PreparedHazards;
    using L = game::Limits;
    fields.text("name", &P::name, name_limit);
    fields.whole("level", &P::level, {L::level_min, L::level_max}, Presence::shown);
    fields.whole("count", &P::count, {1, L::count_max}, Presence::shown);
    fields.flag("is_complex", &P::is_complex);
    fields.unknown(&P::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::PreparedEncounter> /*type*/) {
    using P = game::PreparedEncounter;
    fields.whole("id", &P::id, id_range, Presence::required);
    fields.text("name", &P::name, name_limit, Presence::shown);
    fields.list("creatures", &P::creatures, Presence::shown);
    fields.text("note", &P::note, text_limit);
    fields.list("hazards", &P::hazards);
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
void describe(Fields& fields, Described<game::RolledCheck> /*type*/) {
    using R = game::RolledCheck;
    fields.whole("character", &R::character, id_range, Presence::required);
    fields.text("name", &R::name, name_limit, Presence::required);
    fields.whole("natural", &R::natural, {0, 20}, Presence::shown);
    fields.whole("modifier", &R::modifier, amount_range, Presence::shown);
    fields.word("degree", &R::degree, Presence::required);
    fields.unknown(&R::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::TableRoll> /*type*/) {
    using R = game::TableRoll;
    fields.whole("id", &R::id, id_range, Presence::required);
    fields.text("stat", &R::stat, name_limit, Presence::required);
    fields.whole("dc", &R::dc, dc_range, Presence::required);
    fields.word("mode", &R::mode);
    fields.whole("day", &R::day, day_range, Presence::shown);
    fields.whole("second_of_day", &R::second_of_day, second_of_day_range, Presence::shown);
    fields.list("results", &R::results, Presence::shown);
    fields.unknown(&R::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::DiceRoll> /*type*/) {
    using R = game::DiceRoll;
    fields.whole("id", &R::id, id_range, Presence::required);
    fields.text("expression", &R::expression, name_limit, Presence::required);
    fields.text("faces", &R::faces, text_limit);
    fields.whole("total", &R::total, {-1'000'000, 1'000'000}, Presence::required);
    fields.flag("is_secret", &R::is_secret);
    fields.whole("day", &R::day, day_range, Presence::shown);
    fields.whole("second_of_day", &R::second_of_day, second_of_day_range, Presence::shown);
    fields.unknown(&R::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::TableRolls> /*type*/) {
    using R = game::TableRolls;
    fields.list("rolls", &R::rolls, Presence::shown);
    fields.list("dice_rolls", &R::dice_rolls);
    fields.texts("recent_dice", &R::recent_dice, name_limit);
    fields.texts("pinned_dice", &R::pinned_dice, name_limit);
    fields.whole("next_id", &R::next_id, id_range);
    fields.unknown(&R::unknown);
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
    // Every section stands in the file, however empty: the journal's patches are applied to it.
    fields.object("about", &C::about, Presence::required);
    fields.object("calendar", &C::calendar, Presence::shown);
    fields.object("clock", &C::clock, Presence::shown);
    fields.object("day_book", &C::day_book, Presence::shown);
    fields.object("encounter", &C::encounter, Presence::shown);
    fields.object("history", &C::history, Presence::shown);
    fields.object("names", &C::names, Presence::shown);
    fields.object("own_pages", &C::own_pages, Presence::shown);
    fields.object("party", &C::party, Presence::shown);
    fields.object("places", &C::places, Presence::shown);
    fields.object("preparation", &C::preparation, Presence::shown);
    fields.object("register", &C::registered, Presence::shown);
    fields.object("sessions", &C::sessions, Presence::shown);
    fields.object("shelf", &C::shelf, Presence::shown);
    fields.object("table_rolls", &C::table_rolls, Presence::shown);
    fields.object("treasury", &C::treasury, Presence::shown);
    fields.unknown(&C::unknown);
}

} // namespace store
