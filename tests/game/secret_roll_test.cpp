#include "game/secret_roll.h"
#include "party_table.h"

using game::OddsQuestion;
using rules::Family;

namespace {

OddsQuestion perception(int dc) {
    OddsQuestion question;
    question.dc = dc;
    return question;
}

} // namespace

TEST_CASE("secret_roll: one d20 each in the order of the party, kept with time, total and degree") {
    game::Campaign campaign = party_table::four_degree();
    campaign.clock.day = 12;
    const rules::Rulebook& book = party_table::book(Family::four_degree);
    rules::Dice dice(20);
    rules::Dice same(20);
    const int first = same.d20();
    const int second = same.d20();
    const std::string line = game::roll_in_secret(campaign, book, perception(20), dice);
    REQUIRE(campaign.table_rolls.rolls.size() == 1);
    const game::TableRoll& roll = campaign.table_rolls.rolls.front();
    CHECK(roll.stat == "perception");
    CHECK(roll.dc == 20);
    CHECK(roll.day == 12);
    CHECK(roll.second_of_day == 8 * 3600);
    REQUIRE(roll.results.size() == 2);
    CHECK(roll.results[0].natural == first);
    CHECK(roll.results[1].natural == second);
    CHECK(roll.results[0].degree == rules::four_degree_result(first, 10, 20));
    CHECK(roll.results[1].degree == rules::four_degree_result(second, 5, 20));
    CHECK(
        line == "Secret Perception, DC 20: Ysolde " + game::result_text(roll.results[0]) +
                    ", Orrin " + game::result_text(roll.results[1])
    );
}

TEST_CASE("secret_roll: results in words") {
    game::TableRoll roll;
    roll.stat = "dex";
    roll.dc = 15;
    roll.mode = rules::RollMode::advantage;
    roll.results = {
        {1, "Perrin", 17, 10, rules::Degree::success, {}},
        {2, "Wren", 0, 4, rules::Degree::failure, {}}};
    CHECK(
        game::roll_text(party_table::book(Family::srd5), roll) ==
        "Secret Dexterity save, DC 15, advantage: Perrin 27 success, Wren failure"
    );
}

TEST_CASE("secret_roll: fortune rolls two dice and keeps the better, misfortune the worse") {
    const rules::Rulebook& book = party_table::book(Family::four_degree);
    for (const auto mode : {rules::RollMode::advantage, rules::RollMode::disadvantage}) {
        game::Campaign campaign = party_table::four_degree();
        OddsQuestion question = perception(20);
        question.mode = mode;
        rules::Dice dice(3);
        rules::Dice same(3);
        game::roll_in_secret(campaign, book, question, dice);
        for (const game::RolledCheck& result : campaign.table_rolls.rolls[0].results) {
            const int one = same.d20();
            const int other = same.d20();
            CHECK(
                result.natural ==
                (mode == rules::RollMode::advantage ? std::max(one, other) : std::min(one, other))
            );
        }
    }
}

TEST_CASE("secret_roll: who fails by a rule rolls no die") {
    // SRD 5.1, Conditions: the paralyzed fail Strength and Dexterity saves.
    game::Campaign campaign = party_table::srd5();
    party_table::give(campaign, "Perrin", "paralyzed", 0);
    OddsQuestion question = perception(5);
    question.stat = "dex";
    rules::Dice dice(9);
    rules::Dice same(9);
    game::roll_in_secret(campaign, party_table::book(Family::srd5), question, dice);
    const auto& results = campaign.table_rolls.rolls[0].results;
    CHECK(results[0].natural == 0);
    CHECK(results[0].degree == rules::Degree::failure);
    CHECK(results[1].natural == same.d20());
}

TEST_CASE("secret_roll: nobody takes part, so nothing is kept") {
    game::Campaign campaign;
    rules::Dice dice(1);
    CHECK(
        game::roll_in_secret(
            campaign, party_table::book(Family::four_degree), perception(20), dice
        ) == ""
    );
    CHECK(campaign.table_rolls.rolls.empty());
}

TEST_CASE("secret_roll: the last 200 are kept, and a new one touches only the oldest") {
    game::Campaign campaign = party_table::four_degree();
    const rules::Rulebook& book = party_table::book(Family::four_degree);
    rules::Dice dice(5);
    for (int count = 0; count < 203; ++count)
        game::roll_in_secret(campaign, book, perception(20), dice);
    const std::vector<game::TableRoll> before = campaign.table_rolls.rolls;
    REQUIRE(before.size() == 200);
    game::roll_in_secret(campaign, book, perception(21), dice);
    int changed = 0;
    for (std::size_t at = 0; at < before.size(); ++at)
        changed += before[at] == campaign.table_rolls.rolls[at] ? 0 : 1;
    CHECK(changed == 1);
    const auto newest = game::newest_rolls(campaign.table_rolls, 3);
    REQUIRE(newest.size() == 3);
    CHECK(newest[0]->id == 204);
    CHECK(newest[0]->dc == 21);
    CHECK(newest[2]->id == 202);
    CHECK(game::newest_rolls(campaign.table_rolls, 500).back()->id == 5);
}

TEST_CASE("secret_roll: the dice of many rolls come up as often as the odds say") {
    // +10 against DC 20 succeeds or better on 11 of 20 faces (Player Core (ORC), Checks).
    game::Campaign campaign = party_table::four_degree();
    const rules::Rulebook& book = party_table::book(Family::four_degree);
    rules::Dice dice(77);
    int succeeding = 0;
    constexpr int rounds = 4000;
    for (int count = 0; count < rounds; ++count) {
        game::roll_in_secret(campaign, book, perception(20), dice);
        const auto newest = game::newest_rolls(campaign.table_rolls, 1);
        succeeding += newest[0]->results[0].degree >= rules::Degree::success ? 1 : 0;
    }
    // Four standard deviations are 126.
    CHECK(succeeding == doctest::Approx(2200).epsilon(126.0 / 2200));
}
