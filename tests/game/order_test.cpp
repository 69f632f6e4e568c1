#include "fight_table.h"

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

TEST_CASE("order: a group rolls once and stands together") {
    Table table(rules::Family::four_degree);
    table.hero("Ysolde", 50, 20);
    table.foe("Hound 1", 16, 16);
    table.foe("Hound 2", 16, 16);
    game::make_group(table.encounter(), table.rulebook, {table.id("Hound 1"), table.id("Hound 2")});
    table.initiative("Ysolde", 10);
    game::roll_missing_initiative(
        table.encounter(), table.rulebook, table.dice, game::Side::opponents
    );
    CHECK(table.who("Hound 1").initiative == table.who("Hound 2").initiative);
    CHECK(table.who("Hound 1").initiative.has_value());
    game::leave_group(table.encounter(), table.id("Hound 1"));
    CHECK(table.who("Hound 2").group == base::no_id); // one alone is no group
}

TEST_CASE("order: when the current one falls the next one's turn starts") {
    Table table = three();
    table.next();
    CHECK(table.hurt("Lurker", 30) == "Lurker loses 30 slashing, is defeated");
    CHECK(table.current() == "Orrin");
    CHECK(table.who("Orrin").actions_left == 3);
    CHECK(game::upcoming(table.encounter(), 1) == table.id("Ysolde"));
    game::set_defeated(table.encounter(), table.rulebook, table.id("Lurker"), false);
    CHECK(table.order() == "Ysolde Lurker Orrin");
    CHECK(
        table.next() == "Round 2: Ysolde"
    ); // the one that came back above the current one waits for the next round
    CHECK(table.next() == "Round 2: Lurker");
}

TEST_CASE("order: who comes back after acting does not act twice in a round") {
    Table table = three();
    table.next();
    table.next(); // Orrin; Ysolde and the lurker have acted
    game::set_initiative(table.encounter(), table.rulebook, table.id("Lurker"), 5);
    CHECK(table.order() == "Ysolde Orrin Lurker");
    CHECK(table.next() == "Round 2: Ysolde");
}

TEST_CASE("order: a late arrival below the current one acts this round") {
    Table table = three();
    const Id late = game::add_stranger(
        table.encounter(), table.rulebook, "Hound", game::Side::opponents, 10, 15, 12
    );
    CHECK(table.order() == "Ysolde Lurker Hound Orrin");
    table.next();
    table.next();
    CHECK(table.encounter().current == late);
}

TEST_CASE("order: removing a combatant leaves nothing behind that points at it") {
    Table table = three();
    table.give("Ysolde", "frightened", 1, table.until("Lurker", TurnEdge::end));
    const Id gone = table.id("Lurker");
    game::remove_combatant(table.encounter(), table.rulebook, gone);
    CHECK(game::find_combatant(table.encounter(), gone) == nullptr);
    CHECK(game::find_problems(table.campaign, table.rulebook).empty());
    // Its end counts on where that turn stood: at the start of the next one's turn.
    const ActiveCondition* fear = game::find_active(table.who("Ysolde"), std::string("frightened"));
    REQUIRE(fear != nullptr);
    CHECK(fear->duration.whose_turn == table.id("Orrin"));
}

TEST_CASE("order: srd5 ties go to the higher Dexterity, then to the GM's order") {
    // Common practice, no source.
    Table table(rules::Family::srd5);
    for (const char* name : {"A", "B", "C", "D"})
        table.foe(name, 10, 10);
    table.change("C").statistics.abilities = {{"dex", 3}};
    for (const char* name : {"A", "B", "C", "D"})
        table.initiative(name, 12);
    game::move_in_order(table.encounter(), table.id("D"), table.id("A"));
    REQUIRE(game::begin_fight(table.encounter(), table.rulebook));
    CHECK(table.order() == "C D A B");
}

TEST_CASE("order: an opponent acts before a hero on the same number, whoever rolled first") {
    // Player Core (ORC), Roll Initiative.
    Table table = three();
    const Id late = game::add_stranger(
        table.encounter(), table.rulebook, "Hound", game::Side::opponents, 10, 15, 10
    );
    CHECK(table.order() == "Ysolde Lurker Hound Orrin");
    CHECK(game::find_combatant(table.encounter(), late)->has_acted == false);
}

TEST_CASE("order: nobody loses a turn by being moved up past the one whose turn it is") {
    Table table = three();
    game::move_in_order(table.encounter(), table.id("Orrin"), table.id("Ysolde"));
    CHECK(table.order() == "Orrin Ysolde Lurker");
    CHECK(game::upcoming(table.encounter(), 1) == table.id("Orrin"));
    CHECK(table.next() == "Round 1: Orrin");
    CHECK(table.next() == "Round 1: Lurker");
    CHECK(table.next() == "Round 2: Orrin");
}

TEST_CASE("order: a corrected initiative takes effect without a turn lost or won") {
    Table table = three();
    table.next(); // the lurker; Ysolde has acted
    table.initiative("Orrin", 25);
    table.initiative("Ysolde", 5);
    CHECK(table.order() == "Orrin Lurker Ysolde");
    CHECK(table.next() == "Round 1: Orrin");
    CHECK(table.next() == "Round 2: Orrin");
    CHECK(table.next() == "Round 2: Lurker");
    CHECK(table.next() == "Round 2: Ysolde");
}

TEST_CASE("order: a late arrival above the current one acts from the next round on") {
    Table table = three();
    table.next(); // the lurker, on 15
    game::add_stranger(
        table.encounter(), table.rulebook, "Hound", game::Side::opponents, 10, 15, 18
    );
    CHECK(table.order() == "Ysolde Hound Lurker Orrin");
    CHECK(table.next() == "Round 1: Orrin");
    CHECK(table.next() == "Round 2: Ysolde");
    CHECK(table.next() == "Round 2: Hound");
}

TEST_CASE("bug: creatures dropped in above the current one acted at once") {
    Table table = three();
    table.next(); // the lurker, on 15
    game::Creature hound;
    hound.name = "Hound";
    hound.statistics.hit_points = 10;
    const Id hounds = game::add_creature(table.campaign.shelf, hound);
    game::add_creatures(table.campaign, table.rulebook, hounds, 2, false, 18, table.dice);
    CHECK(table.order() == "Ysolde Hound 1 Hound 2 Lurker Orrin");
    CHECK(table.next() == "Round 1: Orrin");
    CHECK(table.next() == "Round 2: Ysolde");
    CHECK(table.next() == "Round 2: Hound 1");
}

TEST_CASE("order: a late group stands together and acts together") {
    Table table = three();
    game::Creature hound;
    hound.name = "Hound";
    hound.statistics.hit_points = 10;
    const Id hounds = game::add_creature(table.campaign.shelf, hound);
    game::add_creatures(table.campaign, table.rulebook, hounds, 3, true, 12, table.dice);
    CHECK(table.order() == "Ysolde Lurker Hound 1 Hound 2 Hound 3 Orrin");
    table.initiative("Hound 2", 17); // one number for all of them
    CHECK(table.order() == "Ysolde Hound 1 Hound 2 Hound 3 Lurker Orrin");
    CHECK(table.who("Hound 3").initiative == 17);
    CHECK(table.next() == "Round 1: Hound 1");
}

TEST_CASE("order: joined into a group in mid-round, each member still has its turn and no second") {
    Table table = three();
    table.next(); // the lurker; Ysolde has acted, Orrin has not
    game::make_group(table.encounter(), table.rulebook, {table.id("Ysolde"), table.id("Orrin")});
    CHECK(table.order() == "Ysolde Orrin Lurker");
    CHECK(table.who("Orrin").initiative == 20); // the highest among them
    CHECK(table.next() == "Round 1: Orrin");
    CHECK(table.next() == "Round 2: Ysolde");
}

TEST_CASE("order: with everybody down the fight waits, and whoever gets up has a turn") {
    Table table = three();
    for (const char* name : {"Ysolde", "Lurker", "Orrin"})
        game::set_defeated(table.encounter(), table.rulebook, table.id(name), true);
    CHECK(table.encounter().current == base::no_id);
    CHECK(table.next().empty());
    CHECK(game::find_problems(table.campaign, table.rulebook).empty());
    game::set_defeated(table.encounter(), table.rulebook, table.id("Orrin"), false);
    CHECK(table.current() == "Orrin");
    CHECK(table.who("Orrin").actions_left == 3);
}

TEST_CASE("order: a hero sent away is absent and may come back without a second turn") {
    Table table = three();
    table.next(); // Ysolde has acted
    game::remove_combatant(table.encounter(), table.rulebook, table.id("Ysolde"));
    CHECK(table.who("Ysolde").standing == game::Standing::absent);
    CHECK(game::join_fight(table.encounter(), table.rulebook, table.id("Ysolde"), 5));
    CHECK(table.order() == "Lurker Orrin Ysolde");
    CHECK(table.next() == "Round 1: Orrin");
    CHECK(table.next() == "Round 2: Lurker");
}
