#include "prepared_table.h"

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

TEST_CASE("fights: a prepared encounter opens with numbered opponents and the party that is present"
) {
    Prepared prepared;
    Table& table = prepared.table;
    game::set_present(table.campaign, table.campaign.party.characters[1].id, false);
    game::open_fight(table.campaign, table.rulebook, prepared.plan);
    CHECK(table.encounter().phase == game::Phase::gathering);
    CHECK(table.encounter().name == "The cart");
    CHECK(table.order().find("Orrin") == std::string::npos);
    for (const char* name : {"Reed Lurker 1", "Reed Lurker 2", "Reed Lurker 3", "Mudcaller"})
        CHECK(table.who(name).hp == 30);
    CHECK(table.who("Reed Lurker 1").group == table.who("Reed Lurker 3").group);
    CHECK(table.who("Mudcaller").is_hidden);
    CHECK(game::find_problems(table.campaign, table.rulebook).empty());
}

TEST_CASE("fights: later arrivals are numbered on and rolled while the fight runs") {
    Prepared prepared;
    Table& table = prepared.table;
    game::open_fight(table.campaign, table.rulebook, prepared.plan);
    game::roll_missing_initiative(table.encounter(), table.rulebook, table.dice, std::nullopt);
    REQUIRE(game::begin_fight(table.encounter(), table.rulebook));
    const auto added = game::add_creatures(
        table.campaign, table.rulebook, prepared.lurkers, 2, false, std::nullopt, table.dice
    );
    REQUIRE(added.size() == 2);
    CHECK(table.who("Reed Lurker 4").initiative.has_value());
    CHECK(table.who("Reed Lurker 5").standing == game::Standing::in_order);
    game::add_creatures(table.campaign, table.rulebook, prepared.chief, 1, false, 99, table.dice);
    CHECK(table.who("Mudcaller 2").initiative == 99);
    check_order(table.encounter());
}

TEST_CASE("fights: nothing can be added where no fight is open") {
    Prepared prepared;
    Table& table = prepared.table;
    CHECK(game::add_creatures(
              table.campaign, table.rulebook, prepared.lurkers, 1, false, 10, table.dice
    )
              .empty());
    CHECK(
        game::add_stranger(
            table.encounter(), table.rulebook, "Guard", game::Side::others, 10, 15, 10
        ) == base::no_id
    );
}

TEST_CASE("fights: the end sends opponents away, keeps wounds and moves the clock past midnight") {
    Prepared prepared;
    Table& table = prepared.table;
    table.campaign.clock = {3, 24 * 3600 - 6, {}};
    game::open_fight(table.campaign, table.rulebook, base::no_id);
    for (const char* name : {"Ysolde", "Orrin", "Bram"})
        table.initiative(name, 10);
    REQUIRE(game::begin_fight(table.encounter(), table.rulebook));
    table.hurt("Bram", 11);
    table.give("Bram", "frightened", 3);
    table.give("Bram", "slowed", 1, table.rounds(5, "Bram", TurnEdge::end));
    table.give("Bram", "clumsy", 1, {DurationKind::timed, base::no_id, TurnEdge::end, 0, 3600});
    for (int turn = 0; turn < 6; ++turn)
        table.next();
    CHECK(game::now(table.campaign).day == 4);
    CHECK(game::now(table.campaign).second_of_day == 6); // two rounds of six seconds
    game::end_fight(table.campaign, table.rulebook);
    CHECK(table.campaign.clock.day == 4);
    CHECK(table.campaign.clock.second_of_day == 6);
    CHECK(table.state({"Bram"}) == "Bram 29 (clumsy 1)");
    CHECK(table.who("Bram").standing == game::Standing::absent);
    CHECK(table.encounter().phase == game::Phase::no_fight);
    CHECK(game::find_problems(table.campaign, table.rulebook).empty());
}

TEST_CASE("fights: a hero who comes later joins where its initiative stands") {
    Prepared prepared;
    Table& table = prepared.table;
    game::set_present(table.campaign, table.campaign.party.characters[2].id, false);
    game::open_fight(table.campaign, table.rulebook, base::no_id);
    table.initiative("Ysolde", 20);
    table.initiative("Orrin", 10);
    REQUIRE(game::begin_fight(table.encounter(), table.rulebook));
    CHECK(game::join_fight(table.encounter(), table.rulebook, table.id("Bram"), 15));
    CHECK(table.order() == "Ysolde Bram Orrin");
    CHECK_FALSE(game::join_fight(table.encounter(), table.rulebook, table.id("Bram"), 15)
    ); // is there already
}

TEST_CASE("fights: opening the next fight forgets the foes of the one before") {
    Prepared prepared;
    Table& table = prepared.table;
    game::open_fight(table.campaign, table.rulebook, prepared.plan);
    game::roll_missing_initiative(table.encounter(), table.rulebook, table.dice, std::nullopt);
    REQUIRE(game::begin_fight(table.encounter(), table.rulebook));
    ActiveCondition curse;
    curse.key = "clumsy";
    curse.value = 1;
    curse.source = table.id("Mudcaller");
    curse.duration = table.rounds(5, "Mudcaller", TurnEdge::end);
    game::add_condition(table.encounter(), table.rulebook, table.id("Bram"), curse);
    game::open_fight(table.campaign, table.rulebook, base::no_id);
    CHECK(table.state({"Bram"}) == "Bram 40 (clumsy 1)");
    CHECK(game::find_problems(table.campaign, table.rulebook).empty());
}
