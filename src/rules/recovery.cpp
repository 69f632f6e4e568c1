#include "rules/recovery.h"

#include <algorithm>
#include <cassert>

namespace rules {

namespace {

using base::Error;
using base::ErrorKind;

// Every total times a whole number from 1.
Distribution multiplied(const Distribution& distribution, int factor) {
    const auto stride = static_cast<std::size_t>(factor);
    Distribution result;
    result.lowest = distribution.lowest * factor;
    result.chances.assign((distribution.chances.size() - 1) * stride + 1, 0.0);
    for (std::size_t at = 0; at < distribution.chances.size(); ++at)
        result.chances[at * stride] = distribution.chances[at];
    return result;
}

// Every total with the other sign.
Distribution negated(const Distribution& distribution) {
    Distribution result;
    result.lowest = -highest(distribution);
    result.chances.assign(distribution.chances.rbegin(), distribution.chances.rend());
    return result;
}

TreatWoundsOutlook outlook_of(
    const TreatWoundsRules& rules, const TreatWoundsRank& rank, int modifier, bool takes_full_hour
) {
    const int factor = takes_full_hour ? rules.full_factor : 1;
    const Distribution success = multiplied(distribution_of(rank.success), factor);
    const Distribution critical = multiplied(distribution_of(rank.critical_success), factor);
    const Distribution harm = distribution_of(rules.critical_failure_damage);

    TreatWoundsOutlook outlook;
    outlook.rank = rank.key;
    outlook.name = rank.name;
    outlook.dc = rank.dc;
    outlook.minutes = takes_full_hour ? rules.full_minutes : rules.minutes;
    outlook.odds = check_odds(CheckKind::four_degree, modifier, rank.dc);
    outlook.change = mixture_of({
        {chance_of(outlook.odds, Degree::critical_failure), negated(harm)},
        {chance_of(outlook.odds, Degree::failure), certain(0)},
        {chance_of(outlook.odds, Degree::success), success},
        {chance_of(outlook.odds, Degree::critical_success), critical},
    });
    outlook.hp_restored = expected_value(outlook.odds, {0, 0, mean(success), mean(critical)});
    outlook.hp_lost = expected_value(outlook.odds, {mean(harm), 0, 0, 0});
    return outlook;
}

} // namespace

base::Result<TreatWoundsOutlook> treat_wounds_outlook(
    const Rulebook& rulebook, std::string_view rank, int modifier, bool takes_full_hour
) {
    auto choices = treat_wounds_choices(rulebook, rank, modifier, takes_full_hour);
    if (!choices.ok()) return choices.error();
    return choices.value().back();
}

base::Result<std::vector<TreatWoundsOutlook>> treat_wounds_choices(
    const Rulebook& rulebook, std::string_view rank, int modifier, bool takes_full_hour
) {
    const TreatWoundsRules& rules = rulebook.recovery.treat_wounds;
    if (rules.ranks.empty())
        return Error{ErrorKind::not_possible, "This rulebook has no treating of wounds."};
    std::vector<TreatWoundsOutlook> choices;
    for (const TreatWoundsRank& each : rules.ranks) {
        choices.push_back(outlook_of(rules, each, modifier, takes_full_hour));
        if (each.key == rank) return choices;
    }
    return Error{
        ErrorKind::not_found,
        "Nobody treats wounds with the proficiency \"" + std::string(rank) + "\"."};
}

double net_hp(const TreatWoundsOutlook& outlook) {
    return outlook.hp_restored - outlook.hp_lost;
}

std::size_t best_choice(const std::vector<TreatWoundsOutlook>& choices) {
    assert(!choices.empty());
    const auto best = std::max_element(
        choices.begin(),
        choices.end(),
        [](const TreatWoundsOutlook& one, const TreatWoundsOutlook& two) {
            return net_hp(one) < net_hp(two);
        }
    );
    return static_cast<std::size_t>(best - choices.begin());
}

int stabilize_dc(const Rulebook& rulebook, int dying) {
    return rulebook.recovery.first_aid.stabilize_dc_base + dying;
}

int night_rest_hp(const Rulebook& rulebook, int con_modifier, int level, NightRest kind) {
    const NightRestRules& rest = rulebook.recovery.night_rest;
    const int hp = std::max(con_modifier, rest.hp_per_level_min) * std::max(level, 1);
    switch (kind) {
    case NightRest::usual: return hp;
    case NightRest::full_day: return hp * rest.full_day_factor;
    case NightRest::rough: return hp / rest.rough_comfort_divisor;
    }
    return hp;
}

Distribution
short_rest_hp(const Rulebook& rulebook, const std::vector<DiceTerm>& dice, int con_modifier) {
    const int least = rulebook.recovery.rests.hp_per_die_min;
    Distribution total = certain(0);
    for (const DiceTerm& term : dice) {
        assert(term.count >= 0 && term.sides >= 1);
        const Distribution die =
            floored_at(distribution_of({{{1, term.sides}}, con_modifier}), least);
        for (int spent = 0; spent < term.count; ++spent)
            total = sum_of(total, die);
    }
    return total;
}

int long_rest_hit_dice(const Rulebook& rulebook, int total, int spent) {
    const RestRules& rests = rulebook.recovery.rests;
    const int regained = std::max(total / rests.hit_dice_divisor, rests.hit_dice_min);
    return std::min(regained, spent);
}

} // namespace rules
