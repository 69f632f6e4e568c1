#include "game/party_odds.h"

#include "game/roster.h"
#include "rules/difficulty.h"
#include "rules/encounter_budget.h"

#include <algorithm>

namespace game {

using rules::Rulebook;

namespace {

constexpr int faces = 20;

MemberOdds member_of(
    const Campaign& campaign,
    const Rulebook& rulebook,
    const Character& character,
    const OddsQuestion& question
) {
    MemberOdds one;
    one.character = character.id;
    one.name = character.name;
    one.number = effective_check(rulebook, combatant_of(campaign, character), question.stat);
    one.member.modifier = one.number.total;
    one.member.mode = rules::both_modes(one.number.mode, question.mode);
    one.member.fails_by_rule = one.number.fails;
    return one;
}

std::vector<rules::GroupMember> group_of(const PartyOdds& party) {
    std::vector<rules::GroupMember> group;
    group.reserve(party.members.size());
    for (const MemberOdds& one : party.members)
        group.push_back(one.member);
    return group;
}

// Everything that follows from the members and the DC.
void count(PartyOdds& party) {
    std::vector<double> chances;
    chances.reserve(party.members.size());
    party.best.reset();
    party.best_chance = 0;
    for (MemberOdds& one : party.members) {
        one.odds = rules::member_odds(party.kind, one.member, party.dc);
        one.needed_roll = one.member.fails_by_rule
                              ? 0
                              : rules::needed_roll(party.kind, one.member.modifier, party.dc);
        const double chance = rules::chance_of_success(one.odds);
        if (!party.best.has_value() || chance > party.best_chance) {
            party.best = chances.size();
            party.best_chance = chance;
        }
        chances.push_back(chance);
    }
    party.group = rules::group_odds(chances);
    const bool is_empty = chances.empty();
    party.at_least_one_succeeds = is_empty ? 0 : 1 - party.group.none_succeeds;
    party.failing_share =
        is_empty ? 0 : party.group.expected_failing / static_cast<double>(chances.size());
}

} // namespace

bool takes_part(const OddsQuestion& question, const Character& character) {
    const auto found = question.takes_part.find(character.id);
    return found == question.takes_part.end() ? character.is_present : found->second;
}

std::optional<int> present_level(const Party& party) {
    std::vector<int> levels;
    for (const Character& character : party.characters)
        if (character.is_present) levels.push_back(character.statistics.level);
    if (levels.empty()) return std::nullopt;
    return rules::party_level(levels);
}

int usual_dc(const Party& party, const Rulebook& rulebook) {
    const auto by_level = rules::dc_for_level(rulebook, present_level(party).value_or(1));
    if (by_level.ok()) return by_level.value();
    const std::vector<rules::NamedDc>& typical = rulebook.difficulty.simple;
    return typical.empty() ? 0 : typical[(typical.size() - 1) / 2].dc;
}

rules::CheckKind check_kind(const Rulebook& rulebook) {
    return rulebook.family == rules::Family::srd5 ? rules::CheckKind::srd5_check
                                                  : rules::CheckKind::four_degree;
}

PartyOdds
party_odds(const Campaign& campaign, const Rulebook& rulebook, const OddsQuestion& question) {
    PartyOdds party;
    party.kind = check_kind(rulebook);
    party.dc = question.dc.value_or(usual_dc(campaign.party, rulebook));
    for (const Character& character : campaign.party.characters)
        if (takes_part(question, character))
            party.members.push_back(member_of(campaign, rulebook, character, question));
    party.average_modifier = rules::rounded_average_modifier(group_of(party));
    count(party);
    return party;
}

PartyOdds odds_at(const PartyOdds& party, int dc) {
    PartyOdds moved = party;
    moved.dc = dc;
    count(moved);
    return moved;
}

DcSpan useful_dcs(const PartyOdds& party, int dc) {
    constexpr int nobody_low = 5; // without anybody: from very easy to beyond hope
    constexpr int nobody_high = 40;
    int low = nobody_low;
    int high = nobody_high;
    if (!party.members.empty()) {
        const auto [least, most] = std::minmax_element(
            party.members.begin(),
            party.members.end(),
            [](const MemberOdds& one, const MemberOdds& other) {
                return one.member.modifier < other.member.modifier;
            }
        );
        low = least->member.modifier + 1;
        high = most->member.modifier + faces + 1;
    }
    low = std::clamp(std::min(low, dc), 1, Limits::dc_max);
    high = std::clamp(std::max(high, dc), low, Limits::dc_max);
    return {low, high};
}

rules::ChosenDc dc_for(const PartyOdds& party, TurnedRound question, int amount) {
    constexpr double hundred = 100;
    const std::vector<rules::GroupMember> group = group_of(party);
    rules::ChosenDc chosen;
    switch (question) {
    case TurnedRound::members_fail:
        chosen = rules::dc_for_failing_share(party.kind, group, amount / hundred);
        break;
    case TurnedRound::so_many_fail:
        chosen = rules::dc_for_number_failing(party.kind, group, amount);
        break;
    case TurnedRound::average_roller:
        chosen = rules::dc_for_average_modifier(party.kind, group, amount / hundred);
        break;
    }
    if (chosen.dc <= Limits::dc_max) return chosen;
    const PartyOdds capped = odds_at(party, Limits::dc_max);
    return {Limits::dc_max, capped.failing_share, capped.group.expected_failing};
}

} // namespace game
