// How a fight stands in the campaign file. Keys are the member names.
#pragma once

#include "game/encounter.h"
#include "store/statistics_fields.h"

namespace store {

// Wider than play ever gets; they keep a slip of the hand from becoming an overflow.
inline constexpr Whole hp_range{0, game::Limits::hp_max};
inline constexpr Whole value_range{0, 999};
inline constexpr Whole rounds_range{0, 1'000'000};
inline constexpr Whole seconds_range{0, 1'000'000'000};
inline constexpr Whole initiative_range{-99, 999};
inline constexpr Whole amount_range{-999, 999};
inline constexpr Whole actions_range{0, 99};
inline constexpr Whole uses_range{0, 999};

template <class Fields>
void describe(Fields& fields, Described<game::Duration> /*type*/) {
    using D = game::Duration;
    fields.word("kind", &D::kind, Presence::shown);
    fields.whole("whose_turn", &D::whose_turn, reference_range);
    fields.word("edge", &D::edge);
    fields.whole("rounds_left", &D::rounds_left, rounds_range);
    fields.whole("seconds_left", &D::seconds_left, seconds_range);
    fields.unknown(&D::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::EndCheck> /*type*/) {
    using E = game::EndCheck;
    fields.text("stat", &E::stat, name_limit);
    fields.whole("dc", &E::dc, dc_range, Presence::shown);
    fields.word("at", &E::at);
    fields.unknown(&E::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Modifier> /*type*/) {
    using M = game::Modifier;
    fields.text("applies_to", &M::applies_to, name_limit, Presence::required);
    fields.whole("amount", &M::amount, modifier_range, Presence::shown);
    fields.word("bonus_type", &M::bonus_type);
    fields.unknown(&M::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::ActiveCondition> /*type*/) {
    using A = game::ActiveCondition;
    fields.whole("id", &A::id, id_range, Presence::required);
    fields.text("key", &A::key, name_limit);
    fields.text("name", &A::name, name_limit);
    fields.whole("value", &A::value, value_range);
    fields.object("duration", &A::duration);
    fields.object("check", &A::check);
    fields.text("damage", &A::damage, name_limit);
    fields.text("damage_type", &A::damage_type, name_limit);
    fields.list("modifiers", &A::modifiers);
    fields.whole("source", &A::source, reference_range);
    fields.flag("is_paused", &A::is_paused);
    fields.text("note", &A::note, text_limit);
    fields.unknown(&A::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Reminder> /*type*/) {
    using R = game::Reminder;
    fields.whole("id", &R::id, id_range, Presence::required);
    fields.text("text", &R::text, text_limit, Presence::shown);
    fields.whole("uses", &R::uses, uses_range, Presence::shown);
    fields.word("refreshed_by", &R::refreshed_by, Presence::shown);
    fields.word("comes_up", &R::comes_up);
    fields.unknown(&R::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::DeathSaves> /*type*/) {
    using D = game::DeathSaves;
    fields.whole("successes", &D::successes, {0, 9});
    fields.whole("failures", &D::failures, {0, 9});
    fields.flag("is_stable", &D::is_stable);
    fields.unknown(&D::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Combatant> /*type*/) {
    using C = game::Combatant;
    // A party member's numbers and reminders are its character's: game::link_party fills them in.
    const auto is_opponent = [](const C& combatant) { return combatant.character == base::no_id; };
    fields.whole("id", &C::id, id_range, Presence::required);
    fields.text("name", &C::name, name_limit, Presence::shown);
    fields.word("side", &C::side, Presence::shown);
    fields.whole("character", &C::character, reference_range);
    fields.whole("creature", &C::creature, reference_range);
    fields.whole("hp", &C::hp, hp_range, Presence::shown);
    fields.whole("temp_hp", &C::temp_hp, hp_range);
    fields.word("standing", &C::standing, Presence::shown);
    fields.flag("is_dead", &C::is_dead);
    fields.flag("dies_at_zero", &C::dies_at_zero);
    fields.whole("initiative", &C::initiative, initiative_range);
    fields.text("initiative_stat", &C::initiative_stat, name_limit);
    fields.whole("group", &C::group, reference_range);
    fields.flag("is_hidden", &C::is_hidden);
    fields.flag("has_acted", &C::has_acted);
    fields.whole("actions_left", &C::actions_left, actions_range);
    fields.whole("actions_total", &C::actions_total, actions_range);
    fields.whole("attacks_made", &C::attacks_made, actions_range);
    fields.flag("reaction_used", &C::reaction_used);
    fields.text("readied", &C::readied, text_limit);
    fields.text("concentrating_on", &C::concentrating_on, text_limit);
    fields.object("death_saves", &C::death_saves);
    fields.list("conditions", &C::conditions);
    fields.numbers("reminders_used", &C::reminders_used, uses_range);
    fields.whole("delayed_after", &C::delayed_after, reference_range);
    fields.flag("is_delay_counted", &C::is_delay_counted);
    fields.text("note", &C::note, text_limit);
    fields.object_if(is_opponent, "statistics", &C::statistics);
    fields.list_if(is_opponent, "reminders", &C::reminders);
    fields.unknown(&C::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Prompt> /*type*/) {
    using P = game::Prompt;
    fields.whole("id", &P::id, id_range, Presence::required);
    fields.word("kind", &P::kind, Presence::required);
    fields.whole("combatant", &P::combatant, reference_range, Presence::shown);
    fields.whole("condition", &P::condition, reference_range);
    fields.whole("dc", &P::dc, amount_range);
    fields.whole("modifier", &P::modifier, amount_range);
    fields.word("mode", &P::mode);
    fields.text("dice", &P::dice, name_limit);
    fields.text("text", &P::text, text_limit);
    fields.unknown(&P::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Notice> /*type*/) {
    using N = game::Notice;
    fields.whole("combatant", &N::combatant, reference_range);
    fields.text("text", &N::text, text_limit, Presence::shown);
    fields.unknown(&N::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::CalledReminder> /*type*/) {
    using C = game::CalledReminder;
    fields.whole("combatant", &C::combatant, reference_range);
    fields.whole("reminder", &C::reminder, reference_range);
    fields.unknown(&C::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Encounter> /*type*/) {
    using E = game::Encounter;
    fields.word("phase", &E::phase, Presence::shown);
    fields.text("name", &E::name, name_limit);
    fields.whole("round", &E::round, rounds_range);
    fields.whole("elapsed_seconds", &E::elapsed_seconds, seconds_range);
    fields.whole("current", &E::current, reference_range);
    fields.ids("order", &E::order);
    fields.list("combatants", &E::combatants, Presence::shown);
    fields.list("prompts", &E::prompts);
    fields.list("notices", &E::notices);
    fields.list("called", &E::called);
    fields.whole("next_id", &E::next_id, id_range);
    fields.unknown(&E::unknown);
}

} // namespace store
