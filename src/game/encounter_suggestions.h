// Changes that bring a fight into a wanted threat: how many to add of what, to take away, or to
// swap for something weaker or stronger. Found by an exact search over everything on offer.
// Knows no campaign: a shelf, a library or a list of forms to build arrives as offers.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace game {

// Something that may take part, with what one of it is worth against this party.
struct CreatureOffer {
    std::string name;
    double level = 0; // four-degree: level; srd5: challenge
    int xp = 0;       // 1 or more
    // Offers with one kin number are forms of one creature (weak, plain, elite); 0: none.
    int kin = 0;

    bool operator==(const CreatureOffer&) const = default;
};

enum class MoveKind {
    add,
    remove,
    step, // to another form of the same creature
    swap,
};

struct PlanMove {
    MoveKind kind = MoveKind::add;
    std::size_t from = 0; // offer that becomes fewer; of add the same as `to`
    std::size_t to = 0;   // offer that becomes more; of remove the same as `from`
    int count = 1;

    auto operator<=>(const PlanMove&) const = default;
};

// What is looked for.
struct SuggestionGoal {
    int xp_min = 0;            // the whole fight is worth no less
    int xp_max = 0;            // and no more
    int xp_best = 0;           // and as near to this as can be
    int fixed_xp = 0;          // of what cannot be changed (hazards), counted in all three
    int creatures_max = 50;    // that the fight has in all afterwards
    int count_max = 50;        // of one offer afterwards
    std::size_t alike_max = 2; // suggestions of the same kind of moves
    std::size_t wanted = 6;

    bool operator==(const SuggestionGoal&) const = default;
};

struct PlanSuggestion {
    std::vector<PlanMove> moves; // one or two
    int xp = 0;                  // of the whole fight afterwards

    bool operator==(const PlanSuggestion&) const = default;
};

// The best changes, best first. `counts` says how many of each offer the fight has now (0 for
// most). A change is one move, or two that touch no offer in common. Better is: fewer moves, then
// nearer to xp_best, then fewer creatures touched, then the order of the offers. Of each kind of
// moves (one add; an add and a swap; ...) only the best `alike_max` are kept. A fight is never
// emptied. Exact: the same as trying everything, in far less time
// (tests/bench/encounter_bench.cpp). Empty when the fight is within the goal's best already or
// nothing leads there.
std::vector<PlanSuggestion> suggest_changes(
    const std::vector<CreatureOffer>& offers,
    const std::vector<int>& counts,
    const SuggestionGoal& goal
);

// The counts after these moves.
std::vector<int> counts_after(std::vector<int> counts, const std::vector<PlanMove>& moves);

// "add 2 Reed Lurker", "3 Mudcaller instead of 3 Sluice Wight", "without 1 Mudcaller".
std::string move_text(const std::vector<CreatureOffer>& offers, const PlanMove& move);
std::string
suggestion_text(const std::vector<CreatureOffer>& offers, const PlanSuggestion& suggestion);

} // namespace game
