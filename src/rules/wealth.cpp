#include "rules/wealth.h"

#include <algorithm>
#include <string>

namespace rules {

namespace {

using base::Error;
using base::ErrorKind;

template <class Row>
const Row* row_of(const std::vector<Row>& rows, int level) {
    for (const Row& row : rows)
        if (row.level == level) return &row;
    return nullptr;
}

Error no_row(const Rulebook& rulebook, bool has_table, int level) {
    if (!has_table)
        return {
            ErrorKind::not_found,
            (rulebook.title.empty() ? "This rulebook" : rulebook.title) +
                " says nothing of wealth by level."};
    return {
        ErrorKind::not_found,
        "The rulebook has no treasure for level " + std::to_string(level) + "."};
}

} // namespace

base::Result<TreasureOverLevel>
treasure_over_level(const Rulebook& rulebook, int level, int characters) {
    const WealthTables& wealth = rulebook.wealth;
    const LevelTreasure* row = row_of(wealth.by_level, level);
    if (row == nullptr) return no_row(rulebook, !wealth.by_level.empty(), level);
    if (characters < 1) return Error{ErrorKind::out_of_range, "Nobody is in the party."};
    const int added = (characters - wealth.party_size) * row->currency_gp_per_added;
    return TreasureOverLevel{
        std::max(0, row->total_gp + added), std::max(0, row->currency_gp + added)};
}

base::Result<int> new_party_wealth_gp(const Rulebook& rulebook, const std::vector<int>& levels) {
    const auto& table = rulebook.wealth.new_character;
    if (levels.empty() && !table.empty())
        return Error{ErrorKind::out_of_range, "Nobody is in the party."};
    if (table.empty()) return no_row(rulebook, false, 0);
    int sum = 0;
    for (const int level : levels) {
        const NewWealth* row = row_of(table, level);
        if (row == nullptr) return no_row(rulebook, true, level);
        sum += row->lump_sum_gp;
    }
    return sum;
}

int least_carrying_capacity_lb(const Rulebook& rulebook, int strength_modifier) {
    constexpr int middle_score = 10; // SRD 5.1, Ability Scores and Modifiers: 10 and 11 give +0
    const int least_score = std::max(1, middle_score + 2 * strength_modifier);
    return least_score * rulebook.wealth.carry_lb_per_strength;
}

} // namespace rules
