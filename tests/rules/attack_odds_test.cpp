#include "rules/attack_odds.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <boost/math/distributions/negative_binomial.hpp>
#include <cmath>
#include <map>
#include <string>
#include <vector>

using rules::Attack;
using rules::CheckKind;
using rules::DegreeOdds;
using rules::DiceExpression;
using rules::Distribution;
using rules::DropOdds;

namespace {

DiceExpression dice(const std::string& text) {
    const base::Result<DiceExpression> expression = rules::parse_dice(text);
    REQUIRE_MESSAGE(expression.ok(), text);
    return expression.value();
}

Attack attack(CheckKind kind, int modifier, const std::string& damage) {
    Attack made;
    made.kind = kind;
    made.modifier = modifier;
    made.damage = dice(damage);
    return made;
}

doctest::Approx exactly(double value) {
    return doctest::Approx(value).epsilon(1e-12);
}

// All faces of the d20, and of one damage die with a constant, written out: damage -> chance.
std::map<int, double> counted_damage(CheckKind kind, int modifier, int sides, int plus, int ac) {
    std::map<int, double> chances;
    const double share = 1.0 / (20.0 * sides * sides);
    for (int natural = 1; natural <= 20; ++natural)
        for (int one = 1; one <= sides; ++one)
            for (int two = 1; two <= sides; ++two) {
                int damage = 0;
                const rules::Degree degree = rules::check_degree(kind, natural, modifier, ac);
                if (degree == rules::Degree::success) damage = one + plus;
                if (degree == rules::Degree::critical_success)
                    damage = kind == CheckKind::four_degree ? 2 * (one + plus) : one + two + plus;
                chances[damage] += share;
            }
    return chances;
}

double sum_of_chances(const Distribution& distribution) {
    double sum = 0;
    for (const double chance : distribution.chances)
        sum += chance;
    return sum;
}

} // namespace

TEST_CASE("attack_odds: three agile Strikes of a level 5 creature at AC 22") {
    // Worked value atk-02 from Player Core (ORC), Strike and Multiple Attack Penalty.
    const Attack strike = attack(CheckKind::four_degree, 15, "2d8+7");
    const std::vector<Attack> routine = rules::attack_routine(strike, {0, -4, -8});
    REQUIRE(routine.size() == 3);
    CHECK(rules::attack_odds(routine[0], 22) == DegreeOdds{1, 5, 10, 4});
    CHECK(rules::attack_odds(routine[1], 22) == DegreeOdds{1, 9, 9, 1});
    CHECK(rules::attack_odds(routine[2], 22) == DegreeOdds{5, 9, 5, 1});
    CHECK(rules::expected_damage(routine[0], 22) == exactly(72.0 / 5));
    CHECK(rules::expected_damage(routine[1], 22) == exactly(44.0 / 5));
    CHECK(rules::expected_damage(routine[2], 22) == exactly(28.0 / 5));
    CHECK(rules::expected_damage(routine, 22) == exactly(144.0 / 5));
    CHECK(rules::mean(rules::routine_damage(routine, 22)) == exactly(144.0 / 5));
}

TEST_CASE("attack_odds: concealment and hiding cost their share of the damage") {
    // Worked value atk-04 from Player Core (ORC), conditions concealed and hidden.
    Attack strike = attack(CheckKind::four_degree, 15, "2d8+7");
    strike.chance_to_reach = rules::chance_of_success(rules::flat_check_odds(5));
    CHECK(rules::expected_damage(strike, 22) == exactly(288.0 / 25));
    strike.chance_to_reach = rules::chance_of_success(rules::flat_check_odds(11));
    CHECK(rules::expected_damage(strike, 22) == exactly(36.0 / 5));
}

TEST_CASE("attack_odds: a critical hit of srd5 doubles the dice and not the bonus") {
    // SRD 5.1, Combat, Critical Hits: a dagger's 1d4 becomes 2d4, the modifier is added as normal.
    const Attack dagger = attack(CheckKind::srd5_attack, 5, "1d4+3");
    CHECK(rules::critical_damage(dagger) == rules::distribution_of(dice("2d4+3")));
    CHECK(rules::hit_damage(dagger) == rules::distribution_of(dice("1d4+3")));
    // Against AC 15: 10 faces hit for 5.5, one hits critically for 8.
    CHECK(rules::expected_damage(dagger, 15) == exactly((10 * 5.5 + 8) / 20));
    const Attack strike = attack(CheckKind::four_degree, 5, "1d4+3");
    CHECK(rules::mean(rules::critical_damage(strike)) == exactly(11));
    CHECK(rules::critical_damage(strike).lowest == 8);
}

TEST_CASE("attack_odds: dice that only a critical hit adds are not doubled") {
    Attack strike = attack(CheckKind::four_degree, 15, "1d6+4");
    strike.critical_extra = dice("1d10");
    CHECK(rules::mean(rules::critical_damage(strike)) == exactly(2 * 7.5 + 5.5));
    CHECK(rules::mean(rules::hit_damage(strike)) == exactly(7.5));
    strike.kind = CheckKind::srd5_attack;
    CHECK(rules::mean(rules::critical_damage(strike)) == exactly(7 + 4 + 5.5));
}

TEST_CASE("attack_odds: damage equals every face of every die written out") {
    for (const CheckKind kind : {CheckKind::four_degree, CheckKind::srd5_attack})
        for (int ac = 5; ac <= 40; ac += 5) {
            CAPTURE(ac);
            const Distribution damage = rules::attack_damage(attack(kind, 8, "1d6+2"), ac);
            const std::map<int, double> counted = counted_damage(kind, 8, 6, 2, ac);
            CHECK(std::abs(sum_of_chances(damage) - 1) < 1e-12);
            for (int total = 0; total <= 20; ++total) {
                CAPTURE(total);
                const auto found = counted.find(total);
                const double expected = found == counted.end() ? 0 : found->second;
                CHECK(std::abs(rules::chance_of_total(damage, total) - expected) < 1e-14);
            }
        }
}

TEST_CASE("attack_odds: more AC never means more damage, a better attack never less") {
    for (const CheckKind kind : {CheckKind::four_degree, CheckKind::srd5_attack})
        for (int ac = 5; ac <= 45; ++ac) {
            const double damage = rules::expected_damage(attack(kind, 10, "2d6+4"), ac);
            CHECK(rules::expected_damage(attack(kind, 10, "2d6+4"), ac + 1) <= damage + 1e-12);
            CHECK(rules::expected_damage(attack(kind, 11, "2d6+4"), ac) >= damage - 1e-12);
        }
}

TEST_CASE("attack_odds: a weak blow never heals its target") {
    const Attack feeble = attack(CheckKind::four_degree, 20, "1d4-3");
    CHECK(rules::hit_damage(feeble).lowest == 0);
    CHECK(rules::mean(rules::hit_damage(feeble)) == exactly(0.25));
    CHECK(rules::routine_damage({}, 15) == rules::certain(0));
}

TEST_CASE("attack_odds: area damage of level 9 against a basic save") {
    // Worked value atk-05 from GM Core (ORC), table Area Damage, and Player Core (ORC), basic
    // saves: 105/4 before rounding. Of 10d6 half the totals are odd and lose one half when halved,
    // in half of all cases: 1/8 less.
    const DegreeOdds save = rules::check_odds(CheckKind::four_degree, 18, 28);
    CHECK(rules::expected_value(save, {70, 35, 17.5, 0}) == exactly(105.0 / 4));
    const Distribution damage = rules::save_damage(dice("10d6"), save);
    CHECK(rules::mean(damage) == exactly(105.0 / 4 - 1.0 / 8));
    CHECK(damage.lowest == 0);
    CHECK(rules::highest(damage) == 120);
    CHECK(std::abs(sum_of_chances(damage) - 1) < 1e-12);
}

TEST_CASE("attack_odds: an srd5 save halves or spares, and never doubles") {
    // 8d6 against a save that succeeds on 11 or more. SRD 5.1, Spellcasting, Saving Throws.
    const DegreeOdds save = rules::check_odds(CheckKind::srd5_check, 4, 15);
    const Distribution half = rules::save_damage(dice("8d6"), save);
    CHECK(rules::mean(half) == exactly((28 + 13.75) / 2));
    CHECK(rules::highest(half) == 48);
    const Distribution none = rules::save_damage(dice("8d6"), save, rules::SaveLeaves::nothing);
    CHECK(rules::mean(none) == exactly(14));
    CHECK(rules::chance_of_total(none, 0) == exactly(0.5));
}

TEST_CASE("attack_odds: 1d6 persistent damage left alone, and with good help each round") {
    // Worked value per-01 from Player Core (ORC), persistent damage: flat check DC 15, help DC 10.
    const double end = rules::chance_of_success(rules::flat_check_odds(15));
    const double help = rules::chance_of_success(rules::flat_check_odds(10));
    CHECK(rules::expected_times_hurt(end) == exactly(10.0 / 3));
    CHECK(rules::expected_persistent_damage(dice("1d6"), end) == exactly(35.0 / 3));
    CHECK(rules::expected_times_hurt(end, help) == exactly(200.0 / 137));
    CHECK(rules::expected_persistent_damage(dice("1d6"), end, help) == exactly(700.0 / 137));
    CHECK(rules::expected_times_hurt(1) == 1);
    CHECK(std::isinf(rules::expected_times_hurt(0)));
    CHECK(rules::expected_persistent_damage(dice("0"), 0) == 0);
}

TEST_CASE("attack_odds: hits that take one hit point each follow the negative binomial") {
    // Boost.Math: rounds until the hp-th hit, one attack a round, hit on 13 or more (8 faces of
    // 20).
    const Attack prick = attack(CheckKind::srd5_attack, 2, "1");
    const double chance = rules::chance_of_success(rules::attack_odds(prick, 15));
    CHECK(chance == exactly(0.4));
    for (const int hp : {1, 2, 5, 12}) {
        CAPTURE(hp);
        const DropOdds odds = rules::drop_odds(rules::attack_damage(prick, 15), hp, 60);
        const boost::math::negative_binomial_distribution<double> misses(hp, chance);
        REQUIRE(odds.within.size() == 60);
        for (int round = 1; round <= 60; ++round) {
            CAPTURE(round);
            const double expected = round < hp ? 0 : boost::math::cdf(misses, round - hp);
            CHECK(odds.within[static_cast<std::size_t>(round) - 1] == exactly(expected));
        }
        REQUIRE(odds.expected_rounds.has_value());
        CHECK(*odds.expected_rounds == exactly(hp / chance));
    }
}

TEST_CASE("attack_odds: chances to drop equal the sum of that many rounds") {
    const std::vector<Attack> routine =
        rules::attack_routine(attack(CheckKind::four_degree, 15, "2d8+7"), {0, -5, -10});
    const Distribution round = rules::routine_damage(routine, 22);
    Distribution total;
    double last = 0;
    for (int rounds = 1; rounds <= 6; ++rounds) {
        CAPTURE(rounds);
        total = rules::sum_of(total, round);
        const double chance = rules::chance_to_drop(routine, 22, 75, rounds);
        CHECK(chance == exactly(rules::chance_at_least(total, 75)));
        CHECK(chance >= last);
        last = chance;
    }
    CHECK(rules::chance_to_drop(routine, 22, 0, 0) == 1);
    CHECK(rules::chance_to_drop(routine, 22, 75, 0) == 0);
}

TEST_CASE("attack_odds: expected rounds are the sum of the chances to be still up") {
    // The mean of a count from one up is the sum of its survival chances (textbook identity).
    const std::vector<Attack> routine =
        rules::attack_routine(attack(CheckKind::srd5_attack, 6, "1d8+4"), {0, 0});
    const DropOdds odds = rules::drop_odds(rules::routine_damage(routine, 16), 45, 400);
    double sum = 1;
    for (const double chance : odds.within)
        sum += 1 - chance;
    REQUIRE(odds.expected_rounds.has_value());
    CHECK(*odds.expected_rounds == doctest::Approx(sum).epsilon(1e-10));
    REQUIRE(odds.rounds_for_half.has_value());
    const auto half = static_cast<std::size_t>(*odds.rounds_for_half);
    CHECK(odds.within[half - 1] >= 0.5);
    CHECK(odds.within[half - 2] < 0.5);
}

TEST_CASE("attack_odds: a blow that always lands for 10 drops 25 hit points in three rounds") {
    const DropOdds odds = rules::drop_odds(rules::certain(10), 25, 4);
    CHECK(odds.within == std::vector<double>{0, 0, 1, 1});
    CHECK(odds.expected_rounds == 3.0);
    CHECK(odds.rounds_for_half == 3);
}

TEST_CASE("attack_odds: what cannot be hurt never drops, what is down is down") {
    const DropOdds never = rules::drop_odds(rules::certain(0), 5, 3);
    CHECK(never.within == std::vector<double>{0, 0, 0});
    CHECK_FALSE(never.expected_rounds.has_value());
    CHECK_FALSE(never.rounds_for_half.has_value());
    const DropOdds down = rules::drop_odds(rules::certain(5), 0, 2);
    CHECK(down.within == std::vector<double>{1, 1});
    CHECK(down.expected_rounds == 0.0);
    CHECK(rules::drop_odds(rules::certain(5), 20, 0).within.empty());
}

TEST_CASE("attack_odds: a one in a million chance keeps its digits") {
    // Twelve hits of 1 in a row, each on a natural 20: (1/20)^12.
    const Attack prick = attack(CheckKind::srd5_attack, -50, "1");
    const double chance = rules::chance_to_drop({prick}, 20, 12, 12);
    CHECK(chance == doctest::Approx(std::pow(0.05, 12)).epsilon(1e-10));
}

TEST_CASE("attack_odds: down in half of all cases means exactly half is enough") {
    // One hit point and one attack a round, hit on 11 or more, on 12 or more, and on 10 or more.
    struct Row {
        int ac, round;
    };

    for (const Row row : {Row{11, 1}, Row{12, 2}, Row{10, 1}, Row{20, 14}}) {
        CAPTURE(row.ac);
        const Attack prick = attack(CheckKind::srd5_attack, 0, "1");
        const DropOdds odds = rules::drop_odds(rules::attack_damage(prick, row.ac), 1, 20);
        CHECK(odds.rounds_for_half == row.round); // 0.95^13 is 0.513, 0.95^14 is 0.488
    }
}
