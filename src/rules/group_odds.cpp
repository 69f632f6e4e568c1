#include "rules/group_odds.h"

#include <algorithm>
#include <cmath>

namespace rules {

namespace {

// Two distances closer than this are equal; shares of the d20 differ by 1/400 of a member at least.
constexpr double tie = 1e-9;
constexpr int lowest_dc = 1;
// Past any modifier by this much a DC changes nothing any more: 20 faces and a critical step.
constexpr int reach = 31;
// Far past any modifier of the game; keeps the search short.
constexpr int modifier_max = 9999;

// Mean chance to fail, 0..1; 0 for an empty group.
double failing_share_at(CheckKind kind, const std::vector<GroupMember>& members, int dc) {
    if (members.empty()) return 0;
    // Counted in 400ths, so that equal shares compare as equal.
    constexpr int parts = 400;
    long long failing = 0;
    for (const GroupMember& member : members) {
        const DegreeOdds odds = member_odds(kind, member, dc);
        failing += static_cast<long long>(odds.failure + odds.critical_failure) * (parts / odds.of);
    }
    return static_cast<double>(failing) / (parts * static_cast<double>(members.size()));
}

ChosenDc chosen(CheckKind kind, const std::vector<GroupMember>& members, int dc) {
    const double share = failing_share_at(kind, members, dc);
    return {dc, share, share * static_cast<double>(members.size())};
}

// Every DC at which something may still change for somebody.
struct DcRange {
    int from = lowest_dc;
    int to = lowest_dc;
};

DcRange range_that_matters(const std::vector<GroupMember>& members) {
    int low = modifier_max;
    int high = -modifier_max;
    for (const GroupMember& member : members) {
        const int modifier = std::clamp(member.modifier, -modifier_max, modifier_max);
        low = std::min(low, modifier);
        high = std::max(high, modifier);
    }
    return {std::max(lowest_dc, low - reach), std::max(lowest_dc, high + reach)};
}

// The DC at which an average member succeeds on 11 or more.
int even_dc(const std::vector<GroupMember>& members) {
    constexpr int needed = 11;
    const double average =
        std::clamp<double>(average_modifier(members), -modifier_max, modifier_max);
    return static_cast<int>(std::floor(average + 0.5)) + needed;
}

} // namespace

DegreeOdds member_odds(CheckKind kind, const GroupMember& member, int dc) {
    if (member.fails_by_rule)
        return certain_odds(
            kind == CheckKind::four_degree ? Degree::critical_failure : Degree::failure
        );
    return check_odds(kind, member.modifier, dc, member.mode);
}

GroupOdds group_odds(const std::vector<double>& chances) {
    GroupOdds odds;
    // Member by member: k succeed if k did before and this one fails, or k - 1 did and it succeeds.
    odds.exactly.assign(chances.size() + 1, 0.0);
    odds.exactly[0] = 1;
    std::size_t counted = 0;
    for (const double chance : chances) {
        counted += 1;
        for (std::size_t k = counted; k >= 1; --k)
            odds.exactly[k] = odds.exactly[k] * (1 - chance) + odds.exactly[k - 1] * chance;
        odds.exactly[0] *= 1 - chance;
        odds.expected_succeeding += chance;
        odds.expected_failing += 1 - chance;
    }
    odds.none_succeeds = odds.exactly.front();
    odds.all_succeed = odds.exactly.back();
    odds.at_least_half_succeed = chance_at_least(odds, static_cast<int>((chances.size() + 1) / 2));
    return odds;
}

GroupOdds group_odds(CheckKind kind, const std::vector<GroupMember>& members, int dc) {
    std::vector<double> chances;
    chances.reserve(members.size());
    for (const GroupMember& member : members)
        chances.push_back(chance_of_success(member_odds(kind, member, dc)));
    return group_odds(chances);
}

double chance_at_least(const GroupOdds& odds, int succeeding) {
    if (succeeding <= 0) return 1;
    double sum = 0;
    for (std::size_t k = odds.exactly.size(); k-- > static_cast<std::size_t>(succeeding);)
        sum += odds.exactly[k];
    return std::min(sum, 1.0);
}

double average_modifier(const std::vector<GroupMember>& members) {
    if (members.empty()) return 0;
    long long total = 0;
    for (const GroupMember& member : members)
        total += member.modifier;
    return static_cast<double>(total) / static_cast<double>(members.size());
}

int rounded_average_modifier(const std::vector<GroupMember>& members) {
    return static_cast<int>(std::floor(average_modifier(members) + 0.5));
}

ChosenDc dc_for_failing_share(
    CheckKind kind, const std::vector<GroupMember>& members, double failing_share
) {
    if (members.empty()) return {lowest_dc, 0, 0};
    const DcRange range = range_that_matters(members);
    // The share rises with the DC, so the DCs of one share lie side by side.
    int first = range.from;
    int last = range.from;
    double share = failing_share_at(kind, members, range.from);
    for (int dc = range.from + 1; dc <= range.to; ++dc) {
        const double next = failing_share_at(kind, members, dc);
        if (next != share) {
            const double gain = std::abs(share - failing_share) - std::abs(next - failing_share);
            if (gain <= tie) break;
            share = next;
            first = dc;
        }
        last = dc;
    }
    return chosen(kind, members, std::clamp(even_dc(members), first, last));
}

ChosenDc
dc_for_number_failing(CheckKind kind, const std::vector<GroupMember>& members, double failing) {
    if (members.empty()) return {lowest_dc, 0, 0};
    return dc_for_failing_share(kind, members, failing / static_cast<double>(members.size()));
}

ChosenDc dc_for_average_modifier(
    CheckKind kind, const std::vector<GroupMember>& members, double failing_share
) {
    if (members.empty()) return {lowest_dc, 0, 0};
    GroupMember average;
    average.modifier = rounded_average_modifier(members);
    return chosen(kind, members, dc_for_failing_share(kind, {average}, failing_share).dc);
}

} // namespace rules
