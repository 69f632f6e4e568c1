// Checks that the program rolled for the whole table, as they are kept: who, on what, and what came
// of it. Plain values; secret_roll.h makes them.
#pragma once

#include "base/id.h"
#include "base/unknown_fields.h"
#include "rules/checks.h"
#include "rules/rulebook.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace game {

// One character's part in a roll.
struct RolledCheck {
    base::Id character = base::no_id; // of Party; may be gone meanwhile
    std::string name;                 // as it was called then
    int natural = 0;                  // the d20 that counted, 1..20; 0: failed by a rule, unrolled
    int modifier = 0;                 // conditions counted in
    rules::Degree degree = rules::Degree::failure;
    base::UnknownFields unknown{};

    bool operator==(const RolledCheck&) const = default;
};

struct TableRoll {
    base::Id id = base::no_id;
    std::string stat; // key, see rollable_stats
    int dc = 0;
    rules::RollMode mode = rules::RollMode::normal; // chosen for everybody
    std::int64_t day = 1;                           // in-world
    int second_of_day = 0;
    std::vector<RolledCheck> results; // in the order of the party
    base::UnknownFields unknown{};

    bool operator==(const TableRoll&) const = default;
};

// Dice the GM rolled by an expression.
struct DiceRoll {
    base::Id id = base::no_id;
    std::string expression; // canonical: "2d6+3"
    std::string faces;      // each die and the constant, as they add up: "4 + 2 + 3"
    int total = 0;
    bool is_secret = false;
    std::int64_t day = 1; // in-world
    int second_of_day = 0;
    base::UnknownFields unknown{};

    bool operator==(const DiceRoll&) const = default;
};

struct TableRolls {
    static constexpr std::size_t kept = 200; // of the rolls for all
    static constexpr std::size_t recent_kept = 8;
    static constexpr std::size_t pinned_kept = 12;

    std::vector<TableRoll> rolls; // the newest has the highest id; a new one takes the place of the
                                  // oldest once `kept` are there, so that an edit moves no other
    std::vector<DiceRoll> dice_rolls;     // the same, dice_rolls_kept of them
    std::vector<std::string> recent_dice; // expressions used last, the newest first
    std::vector<std::string> pinned_dice; // expressions kept at hand, in the GM's order
    base::Id next_id = 1;                 // for the rolls of both lists
    base::UnknownFields unknown{};

    bool operator==(const TableRolls&) const = default;
};

} // namespace game
