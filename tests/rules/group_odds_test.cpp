#include "rules/group_odds.h"

#include <doctest/doctest.h>

#include <boost/math/distributions/binomial.hpp>
#include <cmath>
#include <cstddef>
#include <random>
#include <vector>

using rules::CheckKind;
using rules::ChosenDc;
using rules::GroupMember;
using rules::GroupOdds;
using rules::RollMode;

namespace {

std::vector<GroupMember> group(const std::vector<int>& modifiers) {
    std::vector<GroupMember> members;
    members.reserve(modifiers.size());
    for (const int modifier : modifiers)
        members.push_back({modifier});
    return members;
}

// Every way in which each member succeeds or fails, written out.
std::vector<double> counted_ways(const std::vector<double>& chances) {
    std::vector<double> exactly(chances.size() + 1, 0.0);
    for (std::size_t subset = 0; subset < (std::size_t{1} << chances.size()); ++subset) {
        double product = 1;
        std::size_t succeeding = 0;
        for (std::size_t member = 0; member < chances.size(); ++member) {
            const bool succeeds = ((subset >> member) & 1) != 0;
            product *= succeeds ? chances[member] : 1 - chances[member];
            succeeding += succeeds ? 1 : 0;
        }
        exactly[succeeding] += product;
    }
    return exactly;
}

// The mean chance to fail at a DC, counted from the faces of the die.
double counted_share(CheckKind kind, const std::vector<GroupMember>& members, int dc) {
    double failing = 0;
    for (const GroupMember& member : members)
        for (int natural = 1; natural <= 20; ++natural)
            if (rules::check_degree(kind, natural, member.modifier, dc) < rules::Degree::success)
                failing += 1.0 / 20;
    return failing / static_cast<double>(members.size());
}

} // namespace

TEST_CASE("group_odds: equal members follow the binomial distribution of a general library") {
    for (const int size : {1, 2, 5, 8, 30})
        for (const double chance : {0.0, 0.05, 0.35, 0.5, 0.8, 0.95, 1.0}) {
            CAPTURE(size);
            CAPTURE(chance);
            const boost::math::binomial_distribution<double> binomial(size, chance);
            const GroupOdds odds =
                rules::group_odds(std::vector<double>(static_cast<std::size_t>(size), chance));
            for (int k = 0; k <= size; ++k) {
                CAPTURE(k);
                CHECK(
                    odds.exactly[static_cast<std::size_t>(k)] ==
                    doctest::Approx(boost::math::pdf(binomial, k)).epsilon(1e-11)
                );
                if (k >= 1)
                    CHECK(
                        rules::chance_at_least(odds, k) ==
                        doctest::Approx(boost::math::cdf(boost::math::complement(binomial, k - 1)))
                            .epsilon(1e-11)
                    );
            }
            CHECK(odds.expected_succeeding == doctest::Approx(boost::math::mean(binomial)));
        }
}

TEST_CASE("group_odds: unequal members equal every outcome written out") {
    std::mt19937_64 engine(7);
    for (int round = 0; round < 50; ++round) {
        std::vector<double> chances(1 + engine() % 9);
        for (double& chance : chances)
            chance = static_cast<double>(engine() % 401) / 400;
        const std::vector<double> counted = counted_ways(chances);
        const GroupOdds odds = rules::group_odds(chances);
        REQUIRE(odds.exactly.size() == counted.size());
        double sum = 0;
        for (std::size_t k = 0; k < counted.size(); ++k) {
            CHECK(std::abs(odds.exactly[k] - counted[k]) < 1e-14);
            sum += odds.exactly[k];
        }
        CHECK(std::abs(sum - 1) < 1e-12);
        CHECK(
            odds.expected_succeeding + odds.expected_failing ==
            doctest::Approx(static_cast<double>(chances.size()))
        );
    }
}

TEST_CASE("group_odds: a party of four at one DC") {
    // Needed rolls 11, 9, 14 and 6: chances 1/2, 3/5, 7/20 and 3/4, worked by hand.
    const GroupOdds odds = rules::group_odds(CheckKind::srd5_check, group({4, 6, 1, 9}), 15);
    CHECK(odds.expected_succeeding == doctest::Approx(2.2));
    CHECK(odds.expected_failing == doctest::Approx(1.8));
    CHECK(odds.none_succeeds == doctest::Approx(0.5 * 0.4 * 0.65 * 0.25));
    CHECK(odds.all_succeed == doctest::Approx(0.5 * 0.6 * 0.35 * 0.75));
    CHECK(
        odds.at_least_half_succeed ==
        doctest::Approx(odds.exactly[2] + odds.exactly[3] + odds.exactly[4])
    );
}

TEST_CASE("group_odds: half of five is three, as a group check counts it") {
    // SRD 5.1, Using Ability Scores, Group Checks: at least half must succeed.
    const GroupOdds odds = rules::group_odds(std::vector<double>(5, 0.5));
    CHECK(odds.at_least_half_succeed == doctest::Approx(0.5));
    CHECK(
        rules::group_odds(std::vector<double>(4, 0.5)).at_least_half_succeed ==
        doctest::Approx(11.0 / 16)
    );
}

TEST_CASE("group_odds: advantage, and a member that fails by rule, count for that member alone") {
    const std::vector<GroupMember> members = {
        {4, RollMode::advantage}, {4, RollMode::disadvantage}, {4}, {4, RollMode::normal, true}};
    const GroupOdds odds = rules::group_odds(CheckKind::srd5_check, members, 15);
    CHECK(odds.expected_succeeding == doctest::Approx(0.75 + 0.25 + 0.5));
    CHECK(odds.all_succeed == 0);
    CHECK(
        rules::member_odds(CheckKind::srd5_check, members[3], 1) ==
        rules::certain_odds(rules::Degree::failure)
    );
    CHECK(
        rules::member_odds(CheckKind::four_degree, members[3], 1) ==
        rules::certain_odds(rules::Degree::critical_failure)
    );
}

TEST_CASE("group_odds: an empty table fails nothing") {
    const GroupOdds odds = rules::group_odds(CheckKind::four_degree, {}, 20);
    CHECK(odds.exactly == std::vector<double>{1.0});
    CHECK(odds.expected_failing == 0);
    CHECK(odds.all_succeed == 1);
    CHECK(odds.at_least_half_succeed == 1);
    CHECK(rules::average_modifier({}) == 0);
    CHECK(rules::dc_for_failing_share(CheckKind::four_degree, {}, 0.4).dc == 1);
    CHECK(rules::dc_for_number_failing(CheckKind::four_degree, {}, 2).dc == 1);
    CHECK(rules::dc_for_average_modifier(CheckKind::four_degree, {}, 0.4).dc == 1);
}

TEST_CASE("group_odds: the DC at which a +9 member fails two times in five is 18") {
    // It succeeds on 9 or more: 12 of 20 faces.
    for (const CheckKind kind : {CheckKind::four_degree, CheckKind::srd5_check}) {
        const ChosenDc chosen = rules::dc_for_failing_share(kind, group({9, 9, 9}), 0.4);
        CHECK(chosen.dc == 18);
        CHECK(chosen.failing_share == doctest::Approx(0.4));
        CHECK(chosen.expected_failing == doctest::Approx(1.2));
    }
}

TEST_CASE("group_odds: about two of five fail, from the members' own modifiers") {
    const std::vector<GroupMember> members = group({12, 9, 7, 4, 3}); // mean 7
    const ChosenDc chosen = rules::dc_for_number_failing(CheckKind::four_degree, members, 2);
    CHECK(chosen.dc == 16);
    CHECK(chosen.expected_failing == doctest::Approx(2.0));
    const ChosenDc average = rules::dc_for_average_modifier(CheckKind::four_degree, members, 0.4);
    CHECK(average.dc == 16);
}

TEST_CASE("group_odds: the average modifier hides a party with two halves") {
    // Two masters and two laymen: 35 % failing is only reached where the laymen fail anyway.
    const std::vector<GroupMember> members = group({30, 30, 0, 0});
    CHECK(rules::average_modifier(members) == 15);
    const ChosenDc own = rules::dc_for_failing_share(CheckKind::srd5_check, members, 0.35);
    const ChosenDc average = rules::dc_for_average_modifier(CheckKind::srd5_check, members, 0.35);
    CHECK(own.dc == 15);
    CHECK(own.failing_share == doctest::Approx(0.35));
    CHECK(average.dc == 23);
    CHECK(average.failing_share == doctest::Approx(0.5));
    // Half failing is true from 21 to 31; the one nearest an even chance for +15 is 26.
    CHECK(rules::dc_for_failing_share(CheckKind::srd5_check, members, 0.5).dc == 26);
}

TEST_CASE("group_odds: no DC comes closer than the one found") {
    std::mt19937_64 engine(11);
    for (const CheckKind kind :
         {CheckKind::four_degree, CheckKind::srd5_check, CheckKind::srd5_attack})
        for (int round = 0; round < 40; ++round) {
            std::vector<GroupMember> members(1 + engine() % 6);
            for (GroupMember& member : members)
                member.modifier = static_cast<int>(engine() % 40) - 5;
            const double wanted = static_cast<double>(engine() % 101) / 100;
            const ChosenDc chosen = rules::dc_for_failing_share(kind, members, wanted);
            CAPTURE(wanted);
            CAPTURE(chosen.dc);
            CHECK(chosen.failing_share == doctest::Approx(counted_share(kind, members, chosen.dc)));
            const double distance = std::abs(chosen.failing_share - wanted);
            for (int dc = 1; dc <= 90; ++dc) {
                CAPTURE(dc);
                CHECK(std::abs(counted_share(kind, members, dc) - wanted) >= distance - 1e-9);
            }
        }
}

TEST_CASE("group_odds: nobody fails, all fail, and what a natural 1 or 20 leaves of it") {
    // srd5 checks know certainties: the highest safe DC and the lowest hopeless one.
    CHECK(rules::dc_for_failing_share(CheckKind::srd5_check, group({9}), 0).dc == 10);
    CHECK(rules::dc_for_failing_share(CheckKind::srd5_check, group({9}), 1).dc == 30);
    // In four degrees a 1 fails up to 10 below, and a 20 helps up to 10 above; 1/20 failing is true
    // over a whole range, of which the end nearest the die is taken.
    CHECK(rules::dc_for_failing_share(CheckKind::four_degree, group({19}), 0).dc == 10);
    CHECK(rules::dc_for_failing_share(CheckKind::four_degree, group({19}), 0.05).dc == 21);
    CHECK(rules::dc_for_failing_share(CheckKind::four_degree, group({9}), 0.95).dc == 29);
    CHECK(rules::dc_for_failing_share(CheckKind::four_degree, group({9}), 1).dc == 39);
}

TEST_CASE("group_odds: of two DCs equally close the kinder one is taken") {
    // 42.5 % lies between DC 18 (40 %) and DC 19 (45 %) for a +9.
    CHECK(rules::dc_for_failing_share(CheckKind::srd5_check, group({9}), 0.425).dc == 18);
}

TEST_CASE("group_odds: the average modifier rounds a half up") {
    CHECK(rules::average_modifier(group({4, 5})) == doctest::Approx(4.5));
    CHECK(rules::rounded_average_modifier(group({4, 5})) == 5);
    CHECK(rules::rounded_average_modifier(group({-4, -5})) == -4);
    CHECK(rules::rounded_average_modifier(group({4, 4, 5})) == 4);
}

TEST_CASE("group_odds: absurd modifiers end in an answer") {
    const ChosenDc chosen =
        rules::dc_for_failing_share(CheckKind::four_degree, group({2'000'000'000, -5}), 0.5);
    CHECK(chosen.failing_share == doctest::Approx(0.5));
}
