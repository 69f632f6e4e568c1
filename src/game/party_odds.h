// The whole party against one DC: each character's exact chances and what they make together, and
// the same question turned round.
#pragma once

#include "game/party_figures.h"
#include "rules/group_odds.h"

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace game {

// What is asked of the party. Not saved.
struct OddsQuestion {
    std::string stat = "perception";                // of rollable_stats
    std::optional<int> dc;                          // none: usual_dc
    rules::RollMode mode = rules::RollMode::normal; // chosen for everybody
    std::map<Id, bool> takes_part; // by character; whoever is not in it takes part if present

    bool operator==(const OddsQuestion&) const = default;
};

bool takes_part(const OddsQuestion& question, const Character& character);

// A DC to start from: four-degree the DC of the party's level, srd5 the middle of the typical ones.
int usual_dc(const Party& party, const rules::Rulebook& rulebook);

// The level of those present, averaged; none while nobody is.
std::optional<int> present_level(const Party& party);

// How checks of this rulebook are read. Attacks are not asked here.
rules::CheckKind check_kind(const rules::Rulebook& rulebook);

struct MemberOdds {
    Id character = base::no_id;
    std::string name;
    EffectiveNumber number;
    rules::GroupMember member; // the modifier, roll mode and rule that count
    rules::DegreeOdds odds;
    int needed_roll = 0; // 1..20; 21: no roll succeeds; 0: failed by a rule
};

struct PartyOdds {
    int dc = 0;
    rules::CheckKind kind = rules::CheckKind::four_degree;
    std::vector<MemberOdds> members; // who takes part
    rules::GroupOdds group;
    std::optional<std::size_t> best;  // of members, the likeliest to succeed
    double best_chance = 0;           // 0..1
    double at_least_one_succeeds = 0; // 0..1
    double failing_share = 0;         // mean chance to fail, 0..1
    int average_modifier = 0;         // rounded, a half up
};

PartyOdds
party_odds(const Campaign& campaign, const rules::Rulebook& rulebook, const OddsQuestion& question);

// The same people against another DC: only the chances are counted anew.
PartyOdds odds_at(const PartyOdds& party, int dc);

// The DCs between which anything changes for these people, for a slider; `dc` lies within. 1..99.
struct DcSpan {
    int from = 0;
    int to = 0;

    bool operator==(const DcSpan&) const = default;
};

DcSpan useful_dcs(const PartyOdds& party, int dc);

// The question turned round, see rules/group_odds.h. The DC stays within what a field takes
// (0..99).
enum class TurnedRound {
    members_fail,   // on average with `amount` percent, 0..100
    so_many_fail,   // about `amount` of them
    average_roller, // somebody with the party's average modifier fails with `amount` percent
};

rules::ChosenDc dc_for(const PartyOdds& party, TurnedRound question, int amount);

} // namespace game
