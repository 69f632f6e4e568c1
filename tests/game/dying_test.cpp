#include "fight_table.h"

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

TEST_CASE("dying: one who falls moves before the turn that dropped it and has no turn left") {
    // Player Core (ORC), Hit Points, Healing, and Dying: knocked out.
    Table table = three();
    table.next(); // the lurker; Orrin has not acted
    table.hurt("Orrin", 40);
    CHECK(table.order() == "Ysolde Orrin Lurker");
    CHECK(table.who("Orrin").initiative == 15);
    CHECK(table.next() == "Round 2: Ysolde");
    CHECK(table.next() == "Round 2: Orrin");
    CHECK(table.asked() == "Orrin: Recovery check: flat DC 11");
}

TEST_CASE("dying: one who falls by persistent damage stays in its place, however late it is rolled"
) {
    // It was dropped in its own turn, so it would move to just before that same turn.
    Table table = three();
    ActiveCondition bleeding;
    bleeding.key = "persistent_damage";
    bleeding.damage = "2d6";
    bleeding.damage_type = "bleed";
    game::add_condition(table.encounter(), table.rulebook, table.id("Ysolde"), bleeding);
    table.hurt("Ysolde", 45);
    table.next();
    table.next(); // Orrin's turn by now
    table.answer("Ysolde", 7);
    CHECK(table.order() == "Ysolde Lurker Orrin");
    CHECK(table.who("Ysolde").initiative == 20);
    CHECK(game::condition_value(table.rulebook, table.who("Ysolde"), "dying") == 1);
}

TEST_CASE("dying: one who delays and falls by what the delay costs is back at its place") {
    Table table = three();
    ActiveCondition bleeding;
    bleeding.key = "persistent_damage";
    bleeding.damage = "2d6";
    bleeding.damage_type = "bleed";
    table.next(); // the lurker
    table.change("Lurker").dies_at_zero = false;
    game::add_condition(table.encounter(), table.rulebook, table.id("Lurker"), bleeding);
    REQUIRE(game::delay_turn(table.encounter(), table.rulebook));
    table.hurt("Lurker", 25);
    table.answer("Lurker", 9);
    CHECK(table.who("Lurker").standing == game::Standing::in_order);
    CHECK(table.order() == "Ysolde Lurker Orrin");
    CHECK(table.next() == "Round 2: Ysolde");
    CHECK(table.next() == "Round 2: Lurker");
}

TEST_CASE("dying: one who delays and is struck down stands before the turn that did it") {
    Table table = three();
    REQUIRE(game::delay_turn(table.encounter(), table.rulebook)); // Ysolde
    table.next();                                                 // Orrin
    table.hurt("Ysolde", 50);
    CHECK(table.order() == "Lurker Ysolde Orrin");
    CHECK(table.next() == "Round 2: Lurker");
    CHECK(table.next() == "Round 2: Ysolde");
}
