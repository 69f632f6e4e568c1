#include "fight_table.h"

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

TEST_CASE("delay: a delayer that waits a whole round loses that turn and is back at its old place"
) {
    Table table = three();
    table.next(); // the lurker
    REQUIRE(game::delay_turn(table.encounter(), table.rulebook));
    CHECK(table.current() == "Orrin");
    CHECK(table.order() == "Ysolde Orrin");
    CHECK(table.next() == "Round 2: Ysolde");
    CHECK(game::upcoming(table.encounter(), 1) == table.id("Lurker")); // unless it is back by then
    CHECK(table.next() == "Round 2: Lurker");
    CHECK(table.order() == "Ysolde Lurker Orrin");
    CHECK(table.who("Lurker").actions_left == 3);
}

TEST_CASE("delay: the first in order may delay and comes back at the top of the round") {
    Table table = three();
    REQUIRE(game::delay_turn(table.encounter(), table.rulebook));
    CHECK(table.next() == "Round 1: Orrin");
    CHECK(table.next() == "Round 2: Ysolde");
}

TEST_CASE("delay: two that delay one after the other come back in the same order") {
    Table table(rules::Family::four_degree);
    for (const char* name : {"A", "B", "C", "D"})
        table.hero(name, 20, 15);
    int total = 20;
    for (const char* name : {"A", "B", "C", "D"})
        table.initiative(name, total--);
    REQUIRE(game::begin_fight(table.encounter(), table.rulebook));
    table.next();
    REQUIRE(game::delay_turn(table.encounter(), table.rulebook)); // B
    REQUIRE(game::delay_turn(table.encounter(), table.rulebook)); // C
    CHECK(table.current() == "D");
    CHECK(table.next() == "Round 2: A");
    CHECK(table.next() == "Round 2: B");
    CHECK(table.next() == "Round 2: C");
    CHECK(table.next() == "Round 2: D");
    CHECK(table.order() == "A B C D");
}

TEST_CASE("delay: persistent damage does not wait for one who delays") {
    Table table = three();
    ActiveCondition burning;
    burning.key = "persistent_damage";
    burning.damage = "1d6";
    burning.damage_type = "fire";
    game::add_condition(table.encounter(), table.rulebook, table.id("Ysolde"), burning);
    REQUIRE(game::delay_turn(table.encounter(), table.rulebook));
    CHECK(table.asked() == "Ysolde: Roll 1d6 fire persistent damage");
    table.answer("Ysolde", 3);
    table.answer("Ysolde", 2);
    REQUIRE(game::return_from_delay(table.encounter(), table.rulebook, table.id("Ysolde")));
    table.next();
    CHECK(table.asked().empty()); // already taken this turn
}

TEST_CASE("delay: confused and fleeing creatures cannot delay") {
    for (const char* key : {"confused", "fleeing", "unconscious"}) {
        Table table = three();
        table.give("Ysolde", key);
        CAPTURE(key);
        CHECK_FALSE(game::delay_turn(table.encounter(), table.rulebook));
    }
}

TEST_CASE("delay: two that wait behind one who falls keep their places") {
    Table table(rules::Family::four_degree);
    int total = 20;
    for (const char* name : {"A", "B", "C", "D", "E"}) {
        table.foe(name, 20, 15);
        table.initiative(name, total--);
    }
    REQUIRE(game::begin_fight(table.encounter(), table.rulebook));
    table.next();
    REQUIRE(game::delay_turn(table.encounter(), table.rulebook)); // B, behind A
    table.next();                                                 // C has acted
    REQUIRE(game::delay_turn(table.encounter(), table.rulebook)); // D, behind C
    table.hurt("C", 20);
    CHECK(table.order() == "A E");
    CHECK(table.next() == "Round 2: A");
    CHECK(table.next() == "Round 2: B");
    CHECK(table.next() == "Round 2: D");
    CHECK(table.order() == "A B D E");
}

TEST_CASE("delay: when all others fall, one who delays is called back") {
    Table table = three();
    REQUIRE(game::delay_turn(table.encounter(), table.rulebook)); // Ysolde
    table.hurt("Lurker", 30);
    CHECK(table.current() == "Orrin");
    game::set_defeated(table.encounter(), table.rulebook, table.id("Orrin"), true);
    CHECK(table.current() == "Ysolde");
    CHECK(table.encounter().round == 2);
}

TEST_CASE("delay: what one did to a foe until the end of the turn is not stretched by delaying") {
    // Player Core (ORC), Delay (from memory): helpful effects that end at the end of the turn end
    // at once; harmful ones stay until it really ends.
    Table table = three();
    table.give("Lurker", "off_guard", 0, table.until("Ysolde", TurnEdge::end));
    table.give("Orrin", "prone", 0, table.until("Ysolde", TurnEdge::end));
    table.give("Ysolde", "slowed", 1, table.until("Ysolde", TurnEdge::end));
    ActiveCondition stance;
    stance.name = "High guard";
    stance.modifiers = {{"ac", 1, rules::BonusType::circumstance, {}}};
    stance.duration = table.until("Ysolde", TurnEdge::end);
    game::add_condition(table.encounter(), table.rulebook, table.id("Ysolde"), stance);
    REQUIRE(game::delay_turn(table.encounter(), table.rulebook));
    CHECK(
        table.state({"Ysolde", "Orrin", "Lurker"}) ==
        "Ysolde 50 (slowed 1), Orrin 40 (prone), Lurker 30"
    );
    REQUIRE(game::return_from_delay(table.encounter(), table.rulebook, table.id("Ysolde")));
    table.next();
    CHECK(table.state({"Ysolde", "Orrin", "Lurker"}) == "Ysolde 50, Orrin 40, Lurker 30");
}
