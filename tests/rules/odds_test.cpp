#include "rules/odds.h"

#include <doctest/doctest.h>

#include <array>
#include <string>

using rules::CheckKind;
using rules::Degree;
using rules::DegreeOdds;
using rules::RollMode;

namespace {

// One row of the published worked values, in twentieths.
struct WorkedCheck {
    std::string id;
    int modifier;
    int dc;
    DegreeOdds odds;
};

const std::array<CheckKind, 3> all_kinds = {
    CheckKind::four_degree, CheckKind::srd5_check, CheckKind::srd5_attack};
const std::array<RollMode, 3> all_modes = {
    RollMode::normal, RollMode::advantage, RollMode::disadvantage};

int ways(const DegreeOdds& odds) {
    return odds.critical_failure + odds.failure + odds.success + odds.critical_success;
}

// Rolls every pair of faces, which is what advantage means.
DegreeOdds counted_pairs(CheckKind kind, int modifier, int dc, bool is_higher) {
    DegreeOdds odds;
    odds.of = 400;
    for (int one = 1; one <= 20; ++one)
        for (int two = 1; two <= 20; ++two) {
            const int kept = (one > two) == is_higher ? one : two;
            switch (rules::check_degree(kind, kept, modifier, dc)) {
            case Degree::critical_failure: odds.critical_failure += 1; break;
            case Degree::failure: odds.failure += 1; break;
            case Degree::success: odds.success += 1; break;
            case Degree::critical_success: odds.critical_success += 1; break;
            }
        }
    return odds;
}

} // namespace

TEST_CASE("odds: four degrees of worked checks come out in exact twentieths") {
    // Worked with exact fractions from Player Core (ORC), Checks, degree of success; Recovery
    // Checks (dy-01, flat checks against 10 + dying); Treat Wounds (heal-*); Strike (atk-*).
    const std::array<WorkedCheck, 16> rows = {{
        {"deg-01, even odds", 9, 20, {1, 9, 9, 1}},
        {"deg-03, only a 20 helps", 5, 30, {15, 4, 1, 0}},
        {"deg-05, a 1 drops a critical success", 25, 15, {0, 0, 1, 19}},
        {"deg-06, a 1 meets the DC yet fails", 19, 20, {0, 1, 9, 10}},
        {"deg-08, frightened 2", 7, 20, {3, 9, 7, 1}},
        {"dy-01, dying 1", 0, 11, {1, 9, 9, 1}},
        {"dy-01, dying 2", 0, 12, {2, 9, 8, 1}},
        {"dy-01, dying 3", 0, 13, {3, 9, 7, 1}},
        {"heal-02, expert", 13, 20, {1, 5, 10, 4}},
        {"heal-04, legendary", 30, 40, {1, 8, 10, 1}},
        {"heal-05, trained", 13, 15, {1, 0, 10, 9}},
        {"atk-02, first Strike", 15, 22, {1, 5, 10, 4}},
        {"atk-02, second agile Strike", 11, 22, {1, 9, 9, 1}},
        {"atk-02, third agile Strike", 7, 22, {5, 9, 5, 1}},
        {"atk-05, basic save", 18, 28, {1, 8, 10, 1}},
        {"atk-05, the same one better", 19, 28, {1, 7, 10, 2}},
    }};
    for (const WorkedCheck& row : rows) {
        CAPTURE(row.id);
        CHECK(rules::check_odds(CheckKind::four_degree, row.modifier, row.dc) == row.odds);
    }
}

TEST_CASE("odds: recovery checks at dying 1 to 3 are flat checks with four degrees") {
    // Player Core (ORC), Recovery Checks; worked value dy-01.
    CHECK(rules::flat_check_odds(11) == DegreeOdds{1, 9, 9, 1});
    CHECK(rules::flat_check_odds(12) == DegreeOdds{2, 9, 8, 1});
    CHECK(rules::flat_check_odds(13) == DegreeOdds{3, 9, 7, 1});
}

TEST_CASE("odds: concealment is passed four times in five, hiding half the time") {
    // Player Core (ORC), conditions concealed (flat check DC 5) and hidden (DC 11); atk-04.
    // Persistent damage ends at DC 15, with help at DC 10; per-01.
    CHECK(rules::chance_of_success(rules::flat_check_odds(5)) == doctest::Approx(4.0 / 5));
    CHECK(rules::chance_of_success(rules::flat_check_odds(11)) == doctest::Approx(1.0 / 2));
    CHECK(rules::chance_of_success(rules::flat_check_odds(15)) == doctest::Approx(3.0 / 10));
    CHECK(rules::chance_of_success(rules::flat_check_odds(10)) == doctest::Approx(11.0 / 20));
}

TEST_CASE("odds: a flat check of DC 1 needs no roll, and DC 21 has no hope") {
    // From memory of Player Core (ORC), flat checks.
    CHECK(rules::chance_of_success(rules::flat_check_odds(1)) == 1.0);
    CHECK(rules::chance_of_success(rules::flat_check_odds(-4)) == 1.0);
    CHECK(rules::chance_of_success(rules::flat_check_odds(2)) == doctest::Approx(19.0 / 20));
    CHECK(rules::chance_of_success(rules::flat_check_odds(20)) == doctest::Approx(1.0 / 20));
    CHECK(rules::chance_of_success(rules::flat_check_odds(21)) == 0.0);
}

TEST_CASE("odds: treat wounds restores what its degrees and dice promise") {
    // Player Core (ORC), Treat Wounds: 2d8 or 4d8 plus the DC's bonus, 1d8 harm on a critical
    // failure.
    struct Row {
        std::string id;
        int modifier, dc, bonus;
        double restored, harm, net;
    };

    const std::array<Row, 3> rows = {{
        {"heal-02", 13, 20, 10, 151.0 / 10, 9.0 / 40, 119.0 / 8},
        {"heal-04", 30, 40, 50, 329.0 / 10, 9.0 / 40, 1307.0 / 40},
        {"heal-05", 13, 15, 0, 63.0 / 5, 9.0 / 40, 99.0 / 8},
    }};
    for (const Row& row : rows) {
        CAPTURE(row.id);
        const DegreeOdds odds = rules::check_odds(CheckKind::four_degree, row.modifier, row.dc);
        const double bonus = row.bonus;
        CHECK(
            rules::expected_value(odds, {0, 0, 9 + bonus, 18 + bonus}) ==
            doctest::Approx(row.restored).epsilon(1e-12)
        );
        CHECK(
            rules::expected_value(odds, {4.5, 0, 0, 0}) == doctest::Approx(row.harm).epsilon(1e-12)
        );
        CHECK(
            rules::expected_value(odds, {-4.5, 0, 9 + bonus, 18 + bonus}) ==
            doctest::Approx(row.net).epsilon(1e-12)
        );
    }
}

TEST_CASE("odds: srd5 attacks hit on a 20 and miss on a 1, saves and checks do not") {
    // SRD 5.1, Combat, Rolling 1 or 20; Using Ability Scores, Ability Checks and Saving Throws.
    CHECK(rules::check_odds(CheckKind::srd5_attack, 5, 15) == DegreeOdds{0, 9, 10, 1});
    CHECK(rules::check_odds(CheckKind::srd5_attack, 0, 40) == DegreeOdds{0, 19, 0, 1});
    CHECK(rules::check_odds(CheckKind::srd5_attack, 30, 10) == DegreeOdds{0, 1, 18, 1});
    CHECK(rules::check_odds(CheckKind::srd5_check, 5, 15) == DegreeOdds{0, 9, 11, 0});
    CHECK(rules::check_odds(CheckKind::srd5_check, 0, 40) == DegreeOdds{0, 20, 0, 0});
    CHECK(rules::check_odds(CheckKind::srd5_check, 30, 10) == DegreeOdds{0, 0, 20, 0});
}

TEST_CASE("odds: advantage and disadvantage equal all 400 pairs of dice, counted") {
    for (const CheckKind kind : all_kinds)
        for (int modifier = -5; modifier <= 35; modifier += 4)
            for (int dc = 0; dc <= 45; dc += 3) {
                CAPTURE(modifier);
                CAPTURE(dc);
                CHECK(
                    rules::check_odds(kind, modifier, dc, RollMode::advantage) ==
                    counted_pairs(kind, modifier, dc, true)
                );
                CHECK(
                    rules::check_odds(kind, modifier, dc, RollMode::disadvantage) ==
                    counted_pairs(kind, modifier, dc, false)
                );
            }
}

TEST_CASE("odds: with advantage, needing 11 succeeds three times in four") {
    // 1 - (1/2)^2, by the rule in SRD 5.1, Using Ability Scores, Advantage and Disadvantage.
    const DegreeOdds odds = rules::check_odds(CheckKind::srd5_check, 4, 15, RollMode::advantage);
    CHECK(odds == DegreeOdds{0, 100, 300, 0, 400});
    CHECK(rules::chance_of_success(odds) == 0.75);
    CHECK(rules::chance_of_failure(odds) == 0.25);
    CHECK(rules::chance_of(odds, Degree::success) == 0.75);
    CHECK(rules::chance_of(odds, Degree::critical_success) == 0.0);
}

TEST_CASE("odds: the degrees always make up the whole") {
    for (const CheckKind kind : all_kinds)
        for (const RollMode mode : all_modes)
            for (int modifier = -10; modifier <= 50; ++modifier)
                for (int dc = -5; dc <= 70; ++dc) {
                    const DegreeOdds odds = rules::check_odds(kind, modifier, dc, mode);
                    REQUIRE(ways(odds) == odds.of);
                    REQUIRE(odds.of == (mode == RollMode::normal ? 20 : 400));
                }
}

TEST_CASE("odds: a better modifier or a lower DC never makes any check worse") {
    for (const CheckKind kind : all_kinds)
        for (const RollMode mode : all_modes)
            for (int dc = -5; dc <= 70; ++dc)
                for (int modifier = -10; modifier <= 50; ++modifier) {
                    const DegreeOdds odds = rules::check_odds(kind, modifier, dc, mode);
                    const DegreeOdds better = rules::check_odds(kind, modifier + 1, dc, mode);
                    REQUIRE(better.critical_success >= odds.critical_success);
                    REQUIRE(
                        better.critical_success + better.success >=
                        odds.critical_success + odds.success
                    );
                    REQUIRE(better.critical_failure <= odds.critical_failure);
                    REQUIRE(rules::check_odds(kind, modifier, dc - 1, mode) == better);
                }
}

TEST_CASE("odds: advantage never hurts, disadvantage never helps") {
    for (const CheckKind kind : all_kinds)
        for (int modifier = -10; modifier <= 40; ++modifier) {
            const double plain = rules::chance_of_success(rules::check_odds(kind, modifier, 20));
            CHECK(
                rules::chance_of_success(rules::check_odds(kind, modifier, 20, RollMode::advantage)
                ) >= plain
            );
            CHECK(
                rules::chance_of_success(
                    rules::check_odds(kind, modifier, 20, RollMode::disadvantage)
                ) <= plain
            );
        }
}

TEST_CASE("odds: a check turned upside down mirrors its degrees") {
    // Swapping face n for 21 - n and the sides of the DC swaps advantage and disadvantage as well.
    for (int dc = 0; dc <= 40; ++dc) {
        CAPTURE(dc);
        const DegreeOdds up = rules::check_odds(CheckKind::srd5_check, 8, dc, RollMode::advantage);
        const DegreeOdds down =
            rules::check_odds(CheckKind::srd5_check, 8, 38 - dc, RollMode::disadvantage);
        CHECK(up.success == down.failure);
        CHECK(up.failure == down.success);
    }
    // Needing an 11 on the die is the middle of the d20 in four degrees as well.
    const DegreeOdds even = rules::check_odds(CheckKind::four_degree, 9, 20);
    CHECK(even.success == even.failure);
    CHECK(even.critical_success == even.critical_failure);
}

TEST_CASE("odds: the roll needed is the first face that succeeds") {
    CHECK(rules::needed_roll(CheckKind::four_degree, 15, 22) == 7);
    CHECK(rules::needed_roll(CheckKind::four_degree, 19, 20) == 2);
    CHECK(rules::needed_roll(CheckKind::four_degree, 25, 15) == 1);
    CHECK(rules::needed_roll(CheckKind::four_degree, 5, 30) == 20);
    CHECK(rules::needed_roll(CheckKind::four_degree, 0, 30) == 21);
    CHECK(rules::needed_roll(CheckKind::srd5_attack, 0, 99) == 20);
    CHECK(rules::needed_roll(CheckKind::srd5_attack, 50, 10) == 2);
    CHECK(rules::needed_roll(CheckKind::srd5_check, 0, 21) == 21);
    CHECK(rules::needed_roll(CheckKind::srd5_check, 9, 10) == 1);
}

TEST_CASE("odds: absurd numbers end in certainties, not in overflow") {
    const int huge = 2'147'483'647;
    CHECK(rules::check_odds(CheckKind::four_degree, huge, -huge) == DegreeOdds{0, 0, 1, 19});
    CHECK(rules::check_odds(CheckKind::four_degree, -huge, huge) == DegreeOdds{19, 1, 0, 0});
    CHECK(rules::check_odds(CheckKind::srd5_check, -huge - 1, huge) == DegreeOdds{0, 20, 0, 0});
    CHECK(rules::certain_odds(Degree::critical_failure) == DegreeOdds{20, 0, 0, 0});
}
