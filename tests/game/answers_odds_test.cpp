// Questions about checks, attacks, groups and dice.
#include "asking.h"

using namespace asking;

TEST_CASE("ask: the odds of a check, exact") {
    // Player Core (ORC), Checks, degree of success: worked examples deg-01, deg-03, deg-06.
    const game::Answer even = answer("odds +9 dc 20");
    CHECK(exact(even.values, "degrees/critical_failure") == "1/20");
    CHECK(exact(even.values, "degrees/failure") == "9/20");
    CHECK(exact(even.values, "degrees/success") == "9/20");
    CHECK(exact(even.values, "degrees/critical_success") == "1/20");
    CHECK(exact(even.values, "succeeds") == "1/2");
    CHECK(decimal(even.values, "succeeds") == 0.5);
    CHECK(whole(even.values, "needed_roll") == 11);
    CHECK(even.title == "50 % succeed: +9 against DC 20");
    const game::Answer hard = answer("odds 5 DC30");
    CHECK(exact(hard.values, "degrees/critical_failure") == "3/4");
    CHECK(exact(hard.values, "degrees/success") == "1/20");
    const game::Answer sure = answer("odds +19 dc 20");
    CHECK(exact(sure.values, "degrees/failure") == "1/20");
    CHECK(exact(sure.values, "degrees/critical_success") == "1/2");
}

TEST_CASE("ask: srd5 checks know only success and failure, and advantage") {
    // SRD 5.1, Using Ability Scores: 11 or more of 20 faces; both dice fail in 10 x 10 of 400.
    const game::Answer plain = srd_answer("odds +9 dc 20");
    CHECK(exact(plain.values, "succeeds") == "1/2");
    CHECK(
        game::find_value(
            std::get<game::NamedValues>(value(plain.values, "degrees").content), "critical_success"
        ) == nullptr
    );
    CHECK(exact(srd_answer("odds +9 dc 20 advantage").values, "succeeds") == "3/4");
    CHECK(exact(srd_answer("odds +9 dc 20 disadvantage").values, "succeeds") == "1/4");
    CHECK(srd_answer("odds -1 dc 40").title == "0 % succeed: -1 against DC 40");
    CHECK(says(srd_answer("odds -1 dc 40"), "No roll succeeds."));
}

TEST_CASE("ask: an attack with damage, and the whole turn of it") {
    // Player Core (ORC), Strike and Multiple Attack Penalty: worked example atk-02, with the bench
    // figures of mon-01 (+15, 2d8+7), three agile Strikes at AC 22.
    const game::Answer agile = answer("attack +15 ac 22 2d8+7 agile");
    CHECK(exact(agile.values, "degrees/critical_hit") == "1/5");
    CHECK(exact(agile.values, "degrees/hit") == "1/2");
    CHECK(exact(agile.values, "degrees/miss") == "3/10");
    CHECK(exact(agile.values, "expected_damage") == "72/5");
    const auto attacks = rows(agile.values, "attacks");
    REQUIRE(attacks.size() == 3);
    CHECK(exact(attacks[1], "expected_damage") == "44/5");
    CHECK(exact(attacks[2], "expected_damage") == "28/5");
    CHECK(exact(agile.values, "expected_damage_of_turn") == "144/5");
    CHECK(agile.title == "70 % hit: +15 against AC 22, 14.4 damage on average");
    // SRD 5.1, Combat: 9 and more hits, 11 faces plainly with 2d6+4 = 11, 1 face with 4d6+4 = 18.
    const game::Answer srd5 = srd_answer("attack +9 ac 18 2d6+4");
    CHECK(exact(srd5.values, "hits") == "3/5");
    CHECK(exact(srd5.values, "expected_damage") == "139/20");
    CHECK(game::find_value(srd5.values, "attacks") == nullptr);
    CHECK(exact(srd_answer("attack +9 ac 18").values, "degrees/critical_hit") == "1/20");
    // Damage never heals. By hand: a hit (11 faces) leaves 1/4 of 1d4-3, a critical hit (1 face)
    // 33/16 of 2d4-3.
    CHECK(exact(srd_answer("attack +9 ac 18 1d4-3").values, "expected_damage") == "77/320");
}

TEST_CASE("ask: a group against one DC") {
    // By hand: +5 meets DC 15 from 10 (11 faces), +7 from 8 (13), +2 from 13 (8); all of them
    // 11 x 13 x 8 of 8000, nobody 9 x 7 x 12 of 8000.
    const game::Answer group = srd_answer("group +5 +7 +2 dc 15");
    CHECK(exact(group.values, "all_succeed") == "143/1000");
    CHECK(exact(group.values, "nobody_succeeds") == "189/2000");
    CHECK(exact(group.values, "expected_succeeding") == "8/5");
    CHECK(exact(group.values, "expected_failing") == "7/5");
    CHECK(rows(group.values, "exactly").size() == 4);
    CHECK(group.title == "About 1.6 of 3 succeed against DC 15");
    // Too many for a fraction of their chances: the decimals stay.
    const game::Answer crowd = srd_answer("group 1 2 3 4 5 6 7 8 9 10 dc 15");
    CHECK(exact(crowd.values, "all_succeed").empty());
    CHECK(decimal(crowd.values, "all_succeed") > 0);
    CHECK(exact(crowd.values, "expected_failing") == "17/4");
}

TEST_CASE("ask: dice") {
    // By hand: 8d6 has a mean of 8 x 7/2 and a variance of 8 x 35/12.
    const game::Answer dice = answer("dice 8d6");
    CHECK(exact(dice.values, "mean") == "28");
    CHECK(decimal(dice.values, "standard_deviation") == doctest::Approx(4.830459));
    CHECK(whole(dice.values, "lowest") == 8);
    CHECK(whole(dice.values, "highest") == 48);
    CHECK(whole(dice.values, "median") == 28);
    // By hand: 11 or more on 2d6 in 3 of 36 cases, 3 or less too, 7 in 6 of 36.
    CHECK(exact(answer("dice 2d6 at least 11").values, "chance_at_least") == "1/12");
    CHECK(exact(answer("dice 2d6 at most 3").values, "chance_at_most") == "1/12");
    CHECK(exact(answer("dice 2d6 exactly 7").values, "chance_exactly") == "1/6");
    CHECK(answer("dice 2d6 at least 11").title == "2d6 at least 11: 8.3 %");
    CHECK(answer("dice 2d6 + 4").title == "2d6+4: 11 on average");
    CHECK(exact(answer("dice 100d20 at least 1000").values, "chance_at_least").empty());
}
