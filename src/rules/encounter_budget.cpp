#include "rules/encounter_budget.h"

#include "rules/challenge_text.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstdint>

namespace rules {

namespace {

using base::Error;
using base::ErrorKind;

constexpr int count_max = 1000;
constexpr std::int64_t xp_max = 1'000'000'000;

bool is_four_degree(const Rulebook& rulebook) {
    return rulebook.family == Family::four_degree;
}

// Are these stronger than the tables go?
bool is_above_tables(const Rulebook& rulebook, int party, const Opponents& opponents) {
    if (is_four_degree(rulebook)) return opponents.level > party;
    const auto& rows = rulebook.encounters.xp_by_challenge;
    return !opponents.is_hazard && opponents.level > rows.back().challenge;
}

// Why these opponents count no XP, in one sentence.
std::string unrated_remark(const Rulebook& rulebook, int party, const Opponents& opponents) {
    if (!is_four_degree(rulebook)) {
        if (opponents.is_hazard) return "Hazards have no XP in this rulebook: none is counted.";
        return "Challenge " + challenge_text(opponents.level) +
               " is not in the table: no XP is counted.";
    }
    const auto& rows = rulebook.encounters.xp_by_difference;
    const int level = static_cast<int>(opponents.level);
    const std::string noun = opponents.is_hazard ? "hazard" : "creature";
    const std::string who = "A " + noun + " of level " + std::to_string(level);
    if (is_above_tables(rulebook, party, opponents))
        return who + " is more than " + std::to_string(rows.back().difference) +
               " levels above the party (" + std::to_string(party) +
               "): too dangerous for the table, no XP is counted.";
    return who + " is more than " + std::to_string(-rows.front().difference) +
           " levels below the party (" + std::to_string(party) + "): worth no XP.";
}

base::Result<base::Nothing>
check_opponents(const Rulebook& rulebook, const std::vector<Opponents>& opponents) {
    constexpr double level_limit = 1000; // of what is looked up at all
    for (const Opponents& each : opponents) {
        if (each.count < 0 || each.count > count_max)
            return Error{
                ErrorKind::out_of_range,
                "Opponents are counted from 0 to " + std::to_string(count_max) + "."};
        if (!(std::abs(each.level) <= level_limit))
            return Error{ErrorKind::out_of_range, "That level is no level of an opponent."};
        if (is_four_degree(rulebook) && each.level != std::floor(each.level))
            return Error{ErrorKind::out_of_range, "Levels are whole numbers."};
    }
    return base::Nothing{};
}

// Sums up XP and says what is left out. False when the sum is too large.
bool count_xp(
    const Rulebook& rulebook, const std::vector<Opponents>& opponents, EncounterRating& rating
) {
    std::int64_t total = 0;
    for (const Opponents& each : opponents) {
        const std::optional<int> xp = opponent_xp(rulebook, rating.party_level, each);
        rating.xp_each.push_back(xp);
        if (each.count == 0) continue;
        if (xp) {
            total += std::int64_t{*xp} * each.count;
            continue;
        }
        const std::string remark = unrated_remark(rulebook, rating.party_level, each);
        if (std::find(rating.remarks.begin(), rating.remarks.end(), remark) == rating.remarks.end())
            rating.remarks.push_back(remark);
        if (is_above_tables(rulebook, rating.party_level, each)) rating.is_beyond = true;
    }
    rating.xp = static_cast<int>(std::min(total, xp_max));
    return total <= xp_max;
}

// The value of the fight for a party of the usual size: each budget of this party stands for the
// printed one, and what lies between is in proportion.
int award_of_usual_size(
    const std::vector<Threat>& threats, const std::vector<ThreatBudget>& budgets, int xp
) {
    double printed_low = 0;
    double own_low = 0;
    for (std::size_t at = 0; at < threats.size(); ++at) {
        const double printed = threats[at].budget;
        const double own = budgets[at].xp;
        if (xp < own) {
            const double share = (xp - own_low) / (own - own_low);
            return static_cast<int>(std::lround(printed_low + share * (printed - printed_low)));
        }
        printed_low = printed;
        own_low = own;
    }
    return static_cast<int>(std::lround(xp / own_low * printed_low));
}

void rate_four_degree(const Rulebook& rulebook, EncounterRating& rating) {
    const std::vector<ThreatBudget>& budgets = rating.budgets;
    // The lightest threat has no lower end: its budget is the most it may be worth.
    std::size_t reached = 0;
    for (std::size_t at = 1; at < budgets.size(); ++at)
        if (rating.xp >= budgets[at].xp) reached = at;
    if (rating.xp > 0) rating.threat = budgets[reached].name;
    if (!rating.is_beyond && reached + 1 < budgets.size()) {
        rating.next_budget = budgets[reached + 1].name;
        rating.xp_to_next = budgets[reached + 1].xp - rating.xp;
    }
    rating.xp_award_each = award_of_usual_size(rulebook.encounters.threats, budgets, rating.xp);
}

void rate_srd5(
    const Rulebook& rulebook,
    const std::vector<Opponents>& opponents,
    std::size_t characters,
    EncounterRating& rating
) {
    const auto within =
        std::find_if(rating.budgets.begin(), rating.budgets.end(), [&](const ThreatBudget& budget) {
            return rating.xp <= budget.xp;
        });
    if (within == rating.budgets.end()) rating.is_beyond = true;
    if (!rating.is_beyond) {
        if (rating.xp > 0) rating.threat = within->name;
        rating.next_budget = within->name;
        rating.xp_to_next = within->xp - rating.xp;
    }
    rating.xp_award_each = rating.xp / static_cast<int>(characters);

    if (rulebook.edition == SrdEdition::srd_5_1)
        rating.remarks.emplace_back("SRD 5.1 has no budget: the figures are those of SRD 5.2.1.");
    std::size_t creatures = 0;
    for (const Opponents& each : opponents)
        if (!each.is_hazard) creatures += static_cast<std::size_t>(each.count);
    const auto crowd = static_cast<std::size_t>(rulebook.encounters.crowd_per_character);
    if (crowd > 0 && creatures > crowd * characters)
        rating.remarks.push_back(
            "More than " + std::to_string(crowd) +
            " creatures for each character: take ones that fall easily."
        );
}

ThreatBudget budget_of(const Threat& threat, int more_characters, int least) {
    const int xp = threat.budget + more_characters * threat.per_character;
    return {threat.key, threat.name, std::max(xp, least)};
}

} // namespace

int party_level(const std::vector<int>& levels) {
    assert(!levels.empty());
    double sum = 0;
    for (const int level : levels)
        sum += level;
    return static_cast<int>(std::floor(sum / static_cast<double>(levels.size()) + 0.5));
}

std::optional<int>
opponent_xp(const Rulebook& rulebook, int party_level, const Opponents& opponents) {
    const EncounterTables& tables = rulebook.encounters;
    if (is_four_degree(rulebook)) {
        for (const XpByDifference& row : tables.xp_by_difference) {
            if (opponents.level - party_level != row.difference) continue;
            if (!opponents.is_hazard) return row.creature;
            return opponents.is_complex ? row.complex_hazard : row.simple_hazard;
        }
        return {};
    }
    if (opponents.is_hazard) return {};
    for (const XpByChallenge& row : tables.xp_by_challenge)
        if (row.challenge == opponents.level) return row.xp;
    return {};
}

base::Result<std::vector<ThreatBudget>>
threat_budgets(const Rulebook& rulebook, const std::vector<int>& levels) {
    const EncounterTables& tables = rulebook.encounters;
    if (levels.empty()) return Error{ErrorKind::not_possible, "Nobody of the party is present."};
    for (const int level : levels)
        if (level < 1 || level > rulebook.advancement.level_max)
            return Error{
                ErrorKind::out_of_range,
                "A character of level " + std::to_string(level) +
                    " has no budget: the tables run from 1 to " +
                    std::to_string(rulebook.advancement.level_max) + "."};
    std::vector<ThreatBudget> budgets;
    if (is_four_degree(rulebook)) {
        const int more = static_cast<int>(levels.size()) - tables.party_size;
        for (const Threat& threat : tables.threats)
            budgets.push_back(budget_of(threat, more, budgets.empty() ? 1 : budgets.back().xp));
        return budgets;
    }
    for (std::size_t at = 0; at < tables.difficulties.size(); ++at) {
        ThreatBudget budget{tables.difficulties[at].key, tables.difficulties[at].name, 0};
        for (const int level : levels)
            budget.xp += tables.character_budgets[static_cast<std::size_t>(level - 1)].xp[at];
        budgets.push_back(budget);
    }
    return budgets;
}

base::Result<EncounterRating> rate_encounter(
    const Rulebook& rulebook,
    const std::vector<int>& levels,
    const std::vector<Opponents>& opponents
) {
    const auto budgets = threat_budgets(rulebook, levels);
    if (!budgets.ok()) return budgets.error();
    const auto checked = check_opponents(rulebook, opponents);
    if (!checked.ok()) return checked.error();

    EncounterRating rating;
    rating.budgets = budgets.value();
    if (is_four_degree(rulebook)) rating.party_level = party_level(levels);
    if (!count_xp(rulebook, opponents, rating))
        return Error{ErrorKind::out_of_range, "That is more XP than any fight is worth."};
    if (is_four_degree(rulebook))
        rate_four_degree(rulebook, rating);
    else
        rate_srd5(rulebook, opponents, levels.size(), rating);
    if (rating.is_beyond) rating.threat = "beyond " + rating.budgets.back().name;
    return rating;
}

} // namespace rules
