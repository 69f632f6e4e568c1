// The suggestions of game/encounter_suggestions.h by trying everything: slow, and written
// independently of the search. For tests and for the bench.
#pragma once

#include "game/encounter_suggestions.h"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace brute {

using game::MoveKind;
using game::PlanMove;
using game::PlanSuggestion;

inline std::vector<PlanMove>
all_moves(const std::vector<game::CreatureOffer>& offers, const game::SuggestionGoal& goal) {
    std::vector<PlanMove> moves;
    for (std::size_t from = 0; from < offers.size(); ++from) {
        for (std::size_t to = 0; to < offers.size(); ++to) {
            for (int count = 1; count <= std::max(goal.count_max, goal.creatures_max); ++count) {
                if (from == to) {
                    moves.push_back({MoveKind::add, from, to, count});
                    moves.push_back({MoveKind::remove, from, to, count});
                } else if (offers[from].xp != offers[to].xp) {
                    const bool is_kin = offers[from].kin != 0 && offers[from].kin == offers[to].kin;
                    moves.push_back({is_kin ? MoveKind::step : MoveKind::swap, from, to, count});
                }
            }
        }
    }
    return moves;
}

struct Ranked {
    std::vector<long> rank; // smaller is better
    std::vector<PlanMove> moves;
    int xp = 0;
};

inline std::vector<PlanSuggestion> suggest(
    const std::vector<game::CreatureOffer>& offers,
    const std::vector<int>& counts,
    const game::SuggestionGoal& goal
) {
    int xp_now = goal.fixed_xp;
    for (std::size_t at = 0; at < offers.size(); ++at)
        xp_now += offers[at].xp * counts[at];
    if (xp_now == goal.xp_best) return {};

    std::vector<Ranked> found;
    const auto consider = [&](const std::vector<PlanMove>& moves) {
        std::vector<int> after = counts;
        std::set<std::size_t> touched;
        std::size_t touches = 0;
        Ranked ranked;
        ranked.rank = {static_cast<long>(moves.size()), 0, 0};
        for (const PlanMove& move : moves) {
            if (move.kind != MoveKind::add) after[move.from] -= move.count;
            if (move.kind != MoveKind::remove) after[move.to] += move.count;
            touched.insert(move.from);
            touched.insert(move.to);
            touches += move.from == move.to ? 1 : 2;
            ranked.rank[2] += move.count;
            for (const long part :
                 {static_cast<long>(move.kind),
                  static_cast<long>(move.count),
                  static_cast<long>(move.from),
                  static_cast<long>(move.to)})
                ranked.rank.push_back(part);
        }
        if (touched.size() != touches) return;
        int xp = goal.fixed_xp;
        int creatures = 0;
        for (std::size_t at = 0; at < offers.size(); ++at) {
            if (after[at] < 0) return;
            if (after[at] > goal.count_max && after[at] > counts[at]) return;
            xp += offers[at].xp * after[at];
            creatures += after[at];
        }
        if (xp < goal.xp_min || xp > goal.xp_max) return;
        if (creatures < 1 || creatures > goal.creatures_max) return;
        ranked.rank[1] = std::abs(xp - goal.xp_best);
        ranked.moves = moves;
        ranked.xp = xp;
        found.push_back(ranked);
    };
    const std::vector<PlanMove> moves = all_moves(offers, goal);
    for (const PlanMove& move : moves)
        consider({move});
    for (const PlanMove& first : moves) {
        for (const PlanMove& second : moves) {
            if (first.kind > second.kind) continue;
            const auto order = [](const PlanMove& move) {
                return std::vector<long>{
                    move.count, static_cast<long>(move.from), static_cast<long>(move.to)};
            };
            if (first.kind == second.kind && order(first) >= order(second)) continue;
            consider({first, second});
        }
    }
    std::sort(found.begin(), found.end(), [](const Ranked& one, const Ranked& two) {
        return one.rank < two.rank;
    });
    std::map<std::vector<MoveKind>, std::size_t> alike;
    std::vector<PlanSuggestion> best;
    for (const Ranked& ranked : found) {
        std::vector<MoveKind> kinds;
        for (const PlanMove& move : ranked.moves)
            kinds.push_back(move.kind);
        if (alike[kinds]++ >= goal.alike_max || best.size() == goal.wanted) continue;
        best.push_back({ranked.moves, ranked.xp});
    }
    return best;
}

} // namespace brute
