// Dice rolled at the table by an expression.
#include "game/dice_rolls.h"
#include "rules/distribution.h"

#include <doctest/doctest.h>

TEST_CASE("dice: the faces add up to the total, which lies where the distribution has it") {
    rules::Dice dice(5);
    const auto expression = rules::parse_dice("2d6-1d4-3").value();
    const rules::Distribution totals = rules::distribution_of(expression);
    bool was_negative = false;
    for (int i = 0; i < 500; ++i) {
        const game::DiceRoll roll = game::rolled_dice(expression, dice, false);
        CHECK(roll.total >= totals.lowest);
        CHECK(roll.total <= rules::highest(totals));
        was_negative = was_negative || roll.total < 0;
        // The faces are an expression themselves.
        const auto sum = rules::parse_dice(roll.faces);
        REQUIRE(sum.ok());
        CHECK(sum.value().constant == roll.total);
    }
    CHECK(was_negative);
}

TEST_CASE("dice: a secret result does not stand in the history") {
    game::Campaign campaign;
    rules::Dice dice(5);
    const auto d20 = rules::parse_dice("d20+4").value();
    CHECK(
        game::keep_dice_roll(campaign, game::rolled_dice(d20, dice, true)) == "Roll dice in secret"
    );
    const game::DiceRoll open = game::rolled_dice(d20, dice, false);
    CHECK(
        game::keep_dice_roll(campaign, open) ==
        "Roll " + open.expression + ": " + std::to_string(open.total)
    );
    CHECK(campaign.table_rolls.dice_rolls.size() == 2);
    CHECK(game::newest_dice_rolls(campaign.table_rolls, 1)[0]->total == open.total);
    CHECK(campaign.table_rolls.recent_dice.size() == 1);
}

TEST_CASE("dice: 60 rolls and 8 expressions are kept, pins until they are let go") {
    game::Campaign campaign;
    rules::Dice dice(5);
    for (int i = 1; i <= 250; ++i) {
        const auto one = rules::parse_dice("d" + std::to_string(i)).value();
        game::keep_dice_roll(campaign, game::rolled_dice(one, dice, false));
    }
    game::TableRolls& rolls = campaign.table_rolls;
    CHECK(rolls.dice_rolls.size() == game::dice_rolls_kept);
    CHECK(game::newest_dice_rolls(rolls, 200).back()->id == 191);
    CHECK(rolls.recent_dice.size() == 8);
    CHECK(rolls.recent_dice.front() == "1d250");
    game::toggle_pinned_dice(rolls, "2d6");
    CHECK(game::is_pinned_dice(rolls, "2d6"));
    game::toggle_pinned_dice(rolls, "2d6");
    CHECK_FALSE(game::is_pinned_dice(rolls, "2d6"));
}
