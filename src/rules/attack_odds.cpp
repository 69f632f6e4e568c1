#include "rules/attack_odds.h"

#include <algorithm>
#include <cassert>
#include <limits>

namespace rules {

namespace {

// The dice of an expression twice, its constant once.
DiceExpression with_dice_twice(const DiceExpression& damage) {
    DiceExpression twice = damage;
    twice.terms.insert(twice.terms.end(), damage.terms.begin(), damage.terms.end());
    return twice;
}

// Sums that should be one half may miss it by this much in double precision.
constexpr double rounding = 1e-12;

// What is known of the target after some rounds.
struct Progress {
    std::vector<double> standing; // chances of having taken 0, 1, ... hp - 1 damage so far
    double down = 0;              // chance of having taken all
};

// reaching[i]: the chance of lowest + i damage or more, summed from the far end.
std::vector<double> reaching(const Distribution& damage) {
    std::vector<double> sums = damage.chances;
    for (std::size_t at = sums.size() - 1; at-- > 0;)
        sums[at] += sums[at + 1];
    return sums;
}

// One more round.
Progress after_round(
    const Progress& before, const Distribution& damage, const std::vector<double>& reaching_damage
) {
    const std::size_t hp = before.standing.size();
    Progress after{std::vector<double>(hp, 0.0), before.down};
    const auto lowest = static_cast<std::size_t>(damage.lowest);
    for (std::size_t taken = 0; taken < hp; ++taken) {
        const double chance = before.standing[taken];
        if (chance == 0.0) continue;
        const std::size_t left = hp - taken;
        if (left <= lowest) {
            after.down += chance;
            continue;
        }
        const std::size_t harmless = std::min(damage.chances.size(), left - lowest);
        for (std::size_t at = 0; at < harmless; ++at)
            after.standing[taken + lowest + at] += chance * damage.chances[at];
        if (harmless < damage.chances.size()) after.down += chance * reaching_damage[harmless];
    }
    return after;
}

// The mean number of rounds to take hp: one round, and then what is left after each possible
// damage. E(h) = 1 + sum over d of P(d) E(h - d), solved for E(h), as P(0) leaves it where it was.
std::optional<double> expected_rounds(const Distribution& damage, int hp) {
    // The chance that a round does anything, summed directly: 1 - P(0) loses digits when hits are
    // rare.
    const double busy = chance_at_least(damage, 1);
    if (busy <= 0) return std::nullopt;
    std::vector<double> rounds(static_cast<std::size_t>(hp) + 1, 0.0);
    const auto lowest = static_cast<std::size_t>(damage.lowest);
    for (std::size_t left = 1; left < rounds.size(); ++left) {
        double sum = 1;
        for (std::size_t at = lowest == 0 ? 1 : 0; at < damage.chances.size(); ++at) {
            const std::size_t dealt = lowest + at;
            if (dealt >= left) break;
            sum += damage.chances[at] * rounds[left - dealt];
        }
        rounds[left] = sum / busy;
    }
    return rounds.back();
}

} // namespace

std::vector<Attack> attack_routine(const Attack& attack, const std::vector<int>& penalties) {
    std::vector<Attack> routine;
    routine.reserve(penalties.size());
    for (const int penalty : penalties) {
        routine.push_back(attack);
        routine.back().modifier += penalty;
    }
    return routine;
}

DegreeOdds attack_odds(const Attack& attack, int ac) {
    return check_odds(attack.kind, attack.modifier, ac, attack.mode);
}

Distribution hit_damage(const Attack& attack) {
    return floored_at(distribution_of(attack.damage), 0);
}

Distribution critical_damage(const Attack& attack) {
    const Distribution extra = distribution_of(attack.critical_extra);
    const Distribution damage = attack.kind == CheckKind::four_degree
                                    ? doubled(hit_damage(attack))
                                    : distribution_of(with_dice_twice(attack.damage));
    return floored_at(sum_of(damage, extra), 0);
}

Distribution attack_damage(const Attack& attack, int ac) {
    const DegreeOdds odds = attack_odds(attack, ac);
    const double hit = attack.chance_to_reach * chance_of(odds, Degree::success);
    const double critical = attack.chance_to_reach * chance_of(odds, Degree::critical_success);
    const double miss =
        1 - attack.chance_to_reach + attack.chance_to_reach * chance_of_failure(odds);
    return mixture_of(
        {{miss, certain(0)}, {hit, hit_damage(attack)}, {critical, critical_damage(attack)}}
    );
}

Distribution routine_damage(const std::vector<Attack>& routine, int ac) {
    Distribution total;
    for (const Attack& attack : routine)
        total = sum_of(total, attack_damage(attack, ac));
    return total;
}

double expected_damage(const Attack& attack, int ac) {
    return mean(attack_damage(attack, ac));
}

double expected_damage(const std::vector<Attack>& routine, int ac) {
    double total = 0;
    for (const Attack& attack : routine)
        total += expected_damage(attack, ac);
    return total;
}

Distribution save_damage(const DiceExpression& damage, const DegreeOdds& save, SaveLeaves success) {
    const Distribution full = floored_at(distribution_of(damage), 0);
    const Distribution saved = success == SaveLeaves::half ? halved(full) : certain(0);
    return mixture_of(
        {{chance_of(save, Degree::critical_success), certain(0)},
         {chance_of(save, Degree::success), saved},
         {chance_of(save, Degree::failure), full},
         {chance_of(save, Degree::critical_failure), doubled(full)}}
    );
}

double expected_times_hurt(double chance_to_end, double chance_by_help) {
    const double goes_on = (1 - chance_to_end) * (1 - chance_by_help);
    if (goes_on >= 1) return std::numeric_limits<double>::infinity();
    return 1 / (1 - goes_on);
}

double expected_persistent_damage(
    const DiceExpression& damage, double chance_to_end, double chance_by_help
) {
    const double each = mean(floored_at(distribution_of(damage), 0));
    if (each <= 0) return 0;
    return each * expected_times_hurt(chance_to_end, chance_by_help);
}

DropOdds drop_odds(const Distribution& damage, int hp, int rounds) {
    assert(damage.lowest >= 0 && "damage never heals");
    DropOdds odds;
    if (hp <= 0) {
        odds.within.assign(static_cast<std::size_t>(std::max(rounds, 0)), 1.0);
        odds.expected_rounds = 0;
        odds.rounds_for_half = 0;
        return odds;
    }
    const std::vector<double> reaching_damage = reaching(damage);
    Progress progress{std::vector<double>(static_cast<std::size_t>(hp), 0.0), 0};
    progress.standing[0] = 1;
    for (int round = 1; round <= rounds; ++round) {
        progress = after_round(progress, damage, reaching_damage);
        odds.within.push_back(std::min(progress.down, 1.0));
        if (!odds.rounds_for_half && progress.down >= 0.5 - rounding) odds.rounds_for_half = round;
    }
    odds.expected_rounds = expected_rounds(damage, hp);
    return odds;
}

double chance_to_drop(const std::vector<Attack>& routine, int ac, int hp, int rounds) {
    if (hp <= 0) return 1;
    if (rounds <= 0) return 0;
    return drop_odds(routine_damage(routine, ac), hp, rounds).within.back();
}

} // namespace rules
