// How the search works: all single moves are sorted by what they change the XP by. A pair of moves
// is then a pair of such groups; pairs of groups are tried from the nearest to the goal outwards,
// and inside of a pair only as long as something better than the worst kept can come.
#include "game/encounter_suggestions.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cstdlib>
#include <map>
#include <tuple>

namespace game {

namespace {

constexpr std::array<MoveKind, 4> all_kinds{
    MoveKind::add, MoveKind::remove, MoveKind::step, MoveKind::swap};

struct Fight {
    const std::vector<CreatureOffer>& offers;
    const std::vector<int>& counts;
    const SuggestionGoal& goal;
    int xp = 0;        // now
    int creatures = 0; // now
};

int change_of_xp(const Fight& fight, const PlanMove& move) {
    const int from = fight.offers[move.from].xp;
    const int to = fight.offers[move.to].xp;
    switch (move.kind) {
    case MoveKind::add: return to * move.count;
    case MoveKind::remove: return -from * move.count;
    case MoveKind::step:
    case MoveKind::swap: return (to - from) * move.count;
    }
    return 0;
}

int change_of_creatures(const PlanMove& move) {
    if (move.kind == MoveKind::add) return move.count;
    return move.kind == MoveKind::remove ? -move.count : 0;
}

// Smaller moves first; the order of the offers settles what is left.
bool comes_before(const PlanMove& one, const PlanMove& two) {
    return std::tie(one.count, one.from, one.to) < std::tie(two.count, two.from, two.to);
}

bool touches_same(const PlanMove& one, const PlanMove& two) {
    return one.from == two.from || one.from == two.to || one.to == two.from || one.to == two.to;
}

// Moves of one kind by their change of XP, each list in order.
using Groups = std::map<int, std::vector<PlanMove>>;

void add_move(const Fight& fight, Groups& groups, const PlanMove& move) {
    groups[change_of_xp(fight, move)].push_back(move);
}

Groups moves_of(const Fight& fight, MoveKind kind) {
    Groups groups;
    const std::size_t offers = fight.offers.size();
    for (std::size_t to = 0; to < offers; ++to) {
        const int room = fight.goal.count_max - fight.counts[to];
        if (kind == MoveKind::add) {
            const int most = std::min(room, fight.goal.creatures_max);
            for (int count = 1; count <= most; ++count)
                add_move(fight, groups, {kind, to, to, count});
            continue;
        }
        if (kind == MoveKind::remove) {
            for (int count = 1; count <= fight.counts[to]; ++count)
                add_move(fight, groups, {kind, to, to, count});
            continue;
        }
        for (std::size_t from = 0; from < offers; ++from) {
            const CreatureOffer& weaker = fight.offers[from];
            const CreatureOffer& other = fight.offers[to];
            const bool is_kin = weaker.kin != 0 && weaker.kin == other.kin;
            if (from == to || weaker.xp == other.xp || is_kin != (kind == MoveKind::step)) continue;
            const int most = std::min(fight.counts[from], room);
            for (int count = 1; count <= most; ++count)
                add_move(fight, groups, {kind, from, to, count});
        }
    }
    for (auto& [xp, moves] : groups)
        std::sort(moves.begin(), moves.end(), comes_before);
    return groups;
}

// A change with what it is compared by.
struct Candidate {
    std::array<PlanMove, 2> moves;
    std::size_t move_count = 0;
    int xp = 0;
    int distance = 0; // XP from the best
    int touched = 0;  // creatures
};

bool is_better(const Candidate& one, const Candidate& two) {
    const auto key = [](const Candidate& each) {
        return std::tuple(each.move_count, each.distance, each.touched);
    };
    if (key(one) != key(two)) return key(one) < key(two);
    for (std::size_t at = 0; at < one.move_count; ++at) {
        const PlanMove& left = one.moves[at];
        const PlanMove& right = two.moves[at];
        if (left.kind != right.kind) return left.kind < right.kind;
        if (left != right) return comes_before(left, right);
    }
    return false;
}

Candidate candidate_of(const Fight& fight, const PlanMove& move) {
    Candidate candidate{{move, {}}, 1, fight.xp + change_of_xp(fight, move), 0, move.count};
    candidate.distance = std::abs(candidate.xp - fight.goal.xp_best);
    return candidate;
}

Candidate candidate_of(const Fight& fight, const PlanMove& first, const PlanMove& second) {
    Candidate candidate = candidate_of(fight, first);
    candidate.moves[1] = second;
    candidate.move_count = 2;
    candidate.xp += change_of_xp(fight, second);
    candidate.distance = std::abs(candidate.xp - fight.goal.xp_best);
    candidate.touched += second.count;
    return candidate;
}

bool keeps_within(const Fight& fight, int xp, int creatures) {
    return xp >= fight.goal.xp_min && xp <= fight.goal.xp_max && creatures >= 1 &&
           creatures <= fight.goal.creatures_max;
}

// The best few of one kind of moves.
class Best {
public:
    explicit Best(std::size_t most) : most_(most) {}

    bool is_full() const { return kept_.size() >= most_; }

    const Candidate& worst() const { return kept_.back(); }

    // Could a candidate like this still come in?
    bool welcomes(const Candidate& candidate) const {
        return !is_full() || is_better(candidate, worst());
    }

    bool welcomes_distance(int distance) const {
        return !is_full() || distance <= worst().distance;
    }

    void take(const Candidate& candidate) {
        if (!welcomes(candidate)) return;
        kept_.insert(std::upper_bound(kept_.begin(), kept_.end(), candidate, is_better), candidate);
        if (kept_.size() > most_) kept_.pop_back();
    }

    const std::vector<Candidate>& kept() const { return kept_; }

private:
    std::size_t most_;
    std::vector<Candidate> kept_; // best first
};

void search_single(const Fight& fight, const Groups& groups, Best& best) {
    for (const auto& [change, moves] : groups) {
        for (const PlanMove& move : moves) {
            const int creatures = fight.creatures + change_of_creatures(move);
            if (keeps_within(fight, fight.xp + change, creatures))
                best.take(candidate_of(fight, move));
        }
    }
}

// Two groups of moves whose changes add up to the same XP for every pair.
struct GroupPair {
    const std::vector<PlanMove>* first = nullptr;
    const std::vector<PlanMove>* second = nullptr;
    int distance = 0;
};

// Both lists are in order, so what comes later in the second is worse, and what comes later in the
// first cannot beat the best partner of it.
void search_pair(const Fight& fight, const GroupPair& pair, Best& best) {
    const bool is_one_kind = pair.first->front().kind == pair.second->front().kind;
    for (const PlanMove& first : *pair.first) {
        if (!best.welcomes(candidate_of(fight, first, pair.second->front()))) return;
        for (const PlanMove& second : *pair.second) {
            const Candidate candidate = candidate_of(fight, first, second);
            if (!best.welcomes(candidate)) break;
            if (touches_same(first, second)) continue;
            // Of two moves of one kind the smaller stands first, or every pair would come twice.
            if (is_one_kind && !comes_before(first, second)) continue;
            const int creatures =
                fight.creatures + change_of_creatures(first) + change_of_creatures(second);
            if (keeps_within(fight, candidate.xp, creatures)) best.take(candidate);
        }
    }
}

void search_pairs(const Fight& fight, const Groups& first, const Groups& second, Best& best) {
    std::vector<GroupPair> pairs;
    for (const auto& [change, moves] : first) {
        const int needed_min = fight.goal.xp_min - fight.xp - change;
        const int needed_max = fight.goal.xp_max - fight.xp - change;
        for (auto at = second.lower_bound(needed_min);
             at != second.end() && at->first <= needed_max;
             ++at) {
            const int xp = fight.xp + change + at->first;
            pairs.push_back({&moves, &at->second, std::abs(xp - fight.goal.xp_best)});
        }
    }
    std::stable_sort(pairs.begin(), pairs.end(), [](const GroupPair& one, const GroupPair& two) {
        return one.distance < two.distance;
    });
    for (const GroupPair& pair : pairs) {
        if (!best.welcomes_distance(pair.distance)) return;
        search_pair(fight, pair, best);
    }
}

Fight fight_of(
    const std::vector<CreatureOffer>& offers,
    const std::vector<int>& counts,
    const SuggestionGoal& goal
) {
    Fight fight{offers, counts, goal, goal.fixed_xp, 0};
    for (std::size_t at = 0; at < offers.size(); ++at) {
        fight.xp += offers[at].xp * counts[at];
        fight.creatures += counts[at];
    }
    return fight;
}

} // namespace

std::vector<PlanSuggestion> suggest_changes(
    const std::vector<CreatureOffer>& offers,
    const std::vector<int>& counts,
    const SuggestionGoal& goal
) {
    assert(counts.size() == offers.size());
    const Fight fight = fight_of(offers, counts, goal);
    if (fight.xp == goal.xp_best || goal.alike_max == 0) return {};
    std::array<Groups, all_kinds.size()> groups;
    for (std::size_t kind = 0; kind < all_kinds.size(); ++kind)
        groups[kind] = moves_of(fight, all_kinds[kind]);

    std::vector<Candidate> found;
    const auto collect = [&found](const Best& best) {
        found.insert(found.end(), best.kept().begin(), best.kept().end());
    };
    for (const Groups& each : groups) {
        Best best(goal.alike_max);
        search_single(fight, each, best);
        collect(best);
    }
    // Two moves never beat one: where single moves fill the list, pairs are left out.
    if (found.size() < goal.wanted) {
        for (std::size_t first = 0; first < groups.size(); ++first) {
            for (std::size_t second = first; second < groups.size(); ++second) {
                Best best(goal.alike_max);
                search_pairs(fight, groups[first], groups[second], best);
                collect(best);
            }
        }
    }
    std::sort(found.begin(), found.end(), is_better);
    std::vector<PlanSuggestion> suggestions;
    for (const Candidate& candidate : found) {
        if (suggestions.size() == goal.wanted) break;
        const auto end =
            candidate.moves.begin() + static_cast<std::ptrdiff_t>(candidate.move_count);
        suggestions.push_back({{candidate.moves.begin(), end}, candidate.xp});
    }
    return suggestions;
}

std::vector<int> counts_after(std::vector<int> counts, const std::vector<PlanMove>& moves) {
    for (const PlanMove& move : moves) {
        if (move.kind != MoveKind::add) counts[move.from] -= move.count;
        if (move.kind != MoveKind::remove) counts[move.to] += move.count;
    }
    return counts;
}

std::string move_text(const std::vector<CreatureOffer>& offers, const PlanMove& move) {
    const std::string count = std::to_string(move.count) + " ";
    const std::string& from = offers[move.from].name;
    const std::string& to = offers[move.to].name;
    switch (move.kind) {
    case MoveKind::add: return "add " + count + to;
    case MoveKind::remove: return "without " + count + from;
    case MoveKind::step:
    case MoveKind::swap: return count + to + " instead of " + count + from;
    }
    return {};
}

std::string
suggestion_text(const std::vector<CreatureOffer>& offers, const PlanSuggestion& suggestion) {
    std::string text;
    for (const PlanMove& move : suggestion.moves)
        text += (text.empty() ? "" : ", ") + move_text(offers, move);
    return text;
}

} // namespace game
