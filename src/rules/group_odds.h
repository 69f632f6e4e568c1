// Odds of a whole group that checks against one DC, each with its own modifier, and the same
// question turned round: which DC makes so many of them fail. Exact (Poisson binomial), no
// sampling.
#pragma once

#include "rules/odds.h"

#include <cstddef>
#include <vector>

namespace rules {

// One of the group, with conditions already counted in.
struct GroupMember {
    int modifier = 0;
    RollMode mode = RollMode::normal;
    bool fails_by_rule = false; // fails without a roll (a paralysed creature's Dexterity save)

    bool operator==(const GroupMember&) const = default;
};

// How many of the group succeed. For an empty group every chance "all of them" holds, and nobody
// fails.
struct GroupOdds {
    std::vector<double> exactly = {
        1.0};                       // exactly[k]: chance that k succeed, 0..1; size members + 1
    double expected_succeeding = 0; // a number of members
    double expected_failing = 0;
    double none_succeeds = 1;
    double at_least_half_succeed = 1; // a group check passes. Source: SRD 5.1, Using Ability Scores
    double all_succeed = 1;
};

// A DC with what it does to the group.
struct ChosenDc {
    int dc = 0;
    double failing_share = 0;    // mean chance to fail, 0..1
    double expected_failing = 0; // a number of members

    bool operator==(const ChosenDc&) const = default;
};

// One member's odds.
DegreeOdds member_odds(CheckKind kind, const GroupMember& member, int dc);

// From each member's chance to succeed, 0..1.
GroupOdds group_odds(const std::vector<double>& chances);
GroupOdds group_odds(CheckKind kind, const std::vector<GroupMember>& members, int dc);

// The chance, 0..1, that this many or more succeed.
double chance_at_least(const GroupOdds& odds, int succeeding);

// The mean of the members' modifiers, and the same as a modifier to roll with: rounded, a half up
// (common practice, no source). 0 for an empty group.
double average_modifier(const std::vector<GroupMember>& members);
int rounded_average_modifier(const std::vector<GroupMember>& members);

// Turned round: the DC, from 1 up, that comes closest. Of two outcomes equally close the one with
// fewer failing is taken; of several DCs with one outcome (where only a natural 1 or 20 matters, or
// between two far apart members) the one nearest an even chance for an average member. What cannot
// be reached ends at the closest possible. An empty group gets DC 1.

// So that the members' chances to fail, from their own modifiers, have this mean (0..1).
ChosenDc
dc_for_failing_share(CheckKind kind, const std::vector<GroupMember>& members, double failing_share);
// So that about this many of them fail (0..number of members).
ChosenDc
dc_for_number_failing(CheckKind kind, const std::vector<GroupMember>& members, double failing);
// So that somebody with the group's own average modifier (rounded) fails with this chance (0..1);
// the shares returned are those of the real members at that DC.
ChosenDc dc_for_average_modifier(
    CheckKind kind, const std::vector<GroupMember>& members, double failing_share
);

} // namespace rules
