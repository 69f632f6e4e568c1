// "frightened 2 orrin": a condition given by typing it.
#pragma once

#include "game/encounter.h"
#include "rules/rulebook.h"

#include <optional>
#include <string>
#include <string_view>

namespace game {

struct TypedCondition {
    std::string key; // of the rulebook
    int value = 0;   // 0: it has none
    Id combatant = base::no_id;
    std::string text;       // "Give frightened 2 to Orrin Tace"
    bool says_more = false; // than the name of the condition
};

// What is meant: the name of a condition (beginnings from four letters on will do), its value, and
// the beginning of each word of a name of the fight; without one, whoever's turn it is. Nothing
// where no fight runs, where several conditions or nobody fits, and for persistent damage, which
// needs dice.
std::optional<TypedCondition> typed_condition(
    const Encounter& encounter, const rules::Rulebook& rulebook, std::string_view typed
);

} // namespace game
