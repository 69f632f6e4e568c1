// How the numbers of a creature stand in the campaign file. Keys are the member names; limits come
// from game::Limits, which the fields on screen share.
#pragma once

#include "game/roster.h"
#include "game/statistics.h"
#include "store/json_fields.h"

namespace store {

inline constexpr std::size_t name_limit = game::Limits::name_bytes_max;
inline constexpr std::size_t path_limit = 4096;
inline constexpr std::size_t text_limit = game::Limits::text_bytes_max;
inline constexpr Whole modifier_range{game::Limits::modifier_min, game::Limits::modifier_max};
inline constexpr Whole dc_range{game::Limits::dc_min, game::Limits::dc_max};
inline constexpr Whole id_range{1, UINT32_MAX};
inline constexpr Whole day_range{-1'000'000'000, 1'000'000'000}; // some 2.7 million years each way
inline constexpr Whole second_of_day_range{0, 86399};
inline constexpr Whole reference_range{0, UINT32_MAX}; // 0: none
// Resistances and weaknesses; wider than any published creature, narrow enough to catch a slip.
inline constexpr Whole damage_trait_range{0, 999};
inline constexpr Whole per_turn_range{0, game::Limits::per_turn_max};
inline constexpr double challenge_max = 30.0; // SRD 5.1, Challenge

template <class Fields>
void describe(Fields& fields, Described<game::Attack> /*type*/) {
    using A = game::Attack;
    fields.text("name", &A::name, name_limit, Presence::shown);
    fields.whole("bonus", &A::bonus, modifier_range, Presence::shown);
    fields.text("damage", &A::damage, name_limit);
    fields.text("damage_type", &A::damage_type, name_limit);
    fields.flag("is_ranged", &A::is_ranged);
    fields.flag("is_agile", &A::is_agile);
    fields.text("traits", &A::traits, text_limit);
    fields.whole("per_turn", &A::per_turn, per_turn_range);
    fields.unknown(&A::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::DamageTrait> /*type*/) {
    using D = game::DamageTrait;
    fields.text("type", &D::type, name_limit, Presence::required);
    fields.whole("amount", &D::amount, damage_trait_range);
    fields.unknown(&D::unknown);
}

template <class Fields>
void describe(Fields& fields, Described<game::Statistics> /*type*/) {
    using S = game::Statistics;
    using L = game::Limits;
    fields.whole("level", &S::level, {L::level_min, L::level_max}, Presence::shown);
    fields.number("challenge", &S::challenge, 0.0, challenge_max);
    fields.whole(
        "armor_class", &S::armor_class, {L::armor_class_min, L::armor_class_max}, Presence::shown
    );
    fields.whole("hit_points", &S::hit_points, {L::hp_min, L::hp_max}, Presence::shown);
    fields.text("hit_dice", &S::hit_dice, name_limit);
    fields.whole("perception", &S::perception, modifier_range, Presence::shown);
    fields.whole("initiative", &S::initiative, modifier_range);
    fields.numbers("abilities", &S::abilities, modifier_range);
    fields.numbers("saves", &S::saves, modifier_range);
    fields.numbers("skills", &S::skills, modifier_range);
    fields.numbers("difficulty_classes", &S::difficulty_classes, dc_range);
    fields.numbers("speeds_ft", &S::speeds_ft, {0, L::speed_max});
    fields.text("senses", &S::senses, text_limit);
    fields.text("creature_type", &S::creature_type, name_limit);
    fields.word("hazard", &S::hazard);
    fields.whole("hardness", &S::hardness, damage_trait_range);
    fields.list("attacks", &S::attacks);
    fields.list("resistances", &S::resistances);
    fields.list("weaknesses", &S::weaknesses);
    fields.texts("immunities", &S::immunities, name_limit);
    fields.text("notes", &S::notes, text_limit);
    fields.unknown(&S::unknown);
}

} // namespace store
