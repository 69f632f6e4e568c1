#include "prepared_table.h"

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

TEST_CASE("roster: a lower maximum caps what is left, a higher one keeps the unhurt unhurt") {
    Prepared prepared;
    Table& table = prepared.table;
    game::Character bram = table.campaign.party.characters[2];
    bram.statistics.hit_points = 30;
    game::update_character(table.campaign, bram);
    CHECK(table.who("Bram").hp == 30);
    bram.statistics.hit_points = 44;
    game::update_character(table.campaign, bram);
    CHECK(table.who("Bram").hp == 44);
    table.change("Bram").hp = 5;
    bram.statistics.hit_points = 50;
    game::update_character(table.campaign, bram);
    CHECK(table.who("Bram").hp == 5);
}

TEST_CASE("roster: a hero who leaves the party leaves the fight too") {
    Prepared prepared;
    Table& table = prepared.table;
    game::open_fight(table.campaign, table.rulebook, prepared.plan);
    game::roll_missing_initiative(table.encounter(), table.rulebook, table.dice, std::nullopt);
    REQUIRE(game::begin_fight(table.encounter(), table.rulebook));
    for (const char* name : {"Ysolde", "Orrin", "Bram"}) {
        const Id character = table.who(name).character;
        game::remove_character(table.campaign, table.rulebook, character);
        check_order(table.encounter());
    }
    CHECK(table.campaign.party.characters.empty());
    CHECK(game::find_problems(table.campaign, table.rulebook).empty());
}

TEST_CASE("roster: when the hero whose turn it is leaves the party, the next turn starts properly"
) {
    Prepared prepared;
    Table& table = prepared.table;
    game::open_fight(table.campaign, table.rulebook, base::no_id);
    table.initiative("Ysolde", 20);
    table.initiative("Orrin", 15);
    table.initiative("Bram", 10);
    REQUIRE(game::begin_fight(table.encounter(), table.rulebook));
    table.give("Bram", "prone", 0, table.until("Ysolde", TurnEdge::end));
    game::remove_character(table.campaign, table.rulebook, table.who("Ysolde").character);
    CHECK(table.current() == "Orrin");
    CHECK(table.who("Orrin").actions_left == 3);
    CHECK(table.state({"Bram"}) == "Bram 40"); // where her turn ended
    CHECK(game::find_problems(table.campaign, table.rulebook).empty());
}
