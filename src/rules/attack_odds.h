// What attacks and area damage do to a target on average and at worst, and how soon it drops: exact
// distributions over degrees, dice, attacks and rounds. Knows no campaign: numbers arrive with
// every condition already counted in, attack penalties from the rulebook.
#pragma once

#include "rules/distribution.h"
#include "rules/odds.h"

#include <optional>
#include <vector>

namespace rules {

// One attack against an AC. four_degree: a critical hit doubles the whole damage; srd5_attack: it
// rolls the dice twice and adds the constant once. Sources: Player Core (ORC), Strike; SRD 5.1,
// Combat, Critical Hits. Damage below 0 counts as 0.
struct Attack {
    CheckKind kind = CheckKind::four_degree;
    int modifier = 0;
    DiceExpression damage;
    RollMode mode = RollMode::normal;
    double chance_to_reach = 1; // 0..1, of a flat check before it (0.8 against a concealed target)
    DiceExpression critical_extra; // added once, not doubled, on a critical hit

    bool operator==(const Attack&) const = default;
};

// The attack once for each penalty: {0, -5, -10} gives three, as in TurnRules::attack_penalty.
std::vector<Attack> attack_routine(const Attack& attack, const std::vector<int>& penalties);

// The degrees of the roll itself, without chance_to_reach.
DegreeOdds attack_odds(const Attack& attack, int ac);

// Damage on a hit and on a critical hit, from 0 up.
Distribution hit_damage(const Attack& attack);
Distribution critical_damage(const Attack& attack);

// Damage of one attack, and of all of a routine together, misses included.
Distribution attack_damage(const Attack& attack, int ac);
Distribution routine_damage(const std::vector<Attack>& routine, int ac);
double expected_damage(const Attack& attack, int ac);
double expected_damage(const std::vector<Attack>& routine, int ac);

// What a successful save leaves of area damage.
enum class SaveLeaves {
    half,    // rounded down; a critical success leaves nothing
    nothing, // srd5 effects without damage on a success
};

// Damage after a save with these odds: nothing, half, full and double by degree (Player Core (ORC),
// basic saving throws); srd5 saves have only the two in the middle (SRD 5.1, Spellcasting, Saving
// Throws). Halves are rounded down roll by roll.
Distribution save_damage(
    const DiceExpression& damage, const DegreeOdds& save, SaveLeaves success = SaveLeaves::half
);

// Persistent damage: it hurts at the end of each turn, then a flat check may end it. Help grants
// one more flat check before the next time; its chance is 0 without help. Chances 0..1. Infinite
// when neither can end it. Source: Player Core (ORC), Conditions, persistent damage.
double expected_times_hurt(double chance_to_end, double chance_by_help = 0);
double expected_persistent_damage(
    const DiceExpression& damage, double chance_to_end, double chance_by_help = 0
);

// When a target drops under the same damage every round. Healing and changing tactics are left out.
struct DropOdds {
    std::vector<double> within; // within[i]: chance, 0..1, that it is down after round i + 1
    std::optional<double> expected_rounds; // exact, without a limit of rounds; none: it never drops
    std::optional<int> rounds_for_half;    // first round after which it is down in at least half of
                                           // all cases; none: later than `within` reaches
};

// `damage` of one round, nothing below 0; hp from 1 (0 or less is down before the first round);
// rounds 0..1000.
DropOdds drop_odds(const Distribution& damage, int hp, int rounds);

// The chance, 0..1, that the routine takes at least hp from the target within this many rounds.
double chance_to_drop(const std::vector<Attack>& routine, int ac, int hp, int rounds);

} // namespace rules
