#include "fight_table.h"

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

namespace {

struct Prepared {
    Table table{rules::Family::four_degree};
    Id lurkers = base::no_id;
    Id chief = base::no_id;
    Id plan = base::no_id;

    Prepared() {
        game::Campaign& campaign = table.campaign;
        campaign.encounter = {};
        for (const char* name : {"Ysolde", "Orrin", "Bram"}) {
            game::Character character;
            character.name = name;
            character.statistics.hit_points = 40;
            game::add_character(campaign, character);
        }
        game::Creature lurker;
        lurker.name = "Reed Lurker";
        lurker.statistics.hit_points = 30;
        lurkers = game::add_creature(campaign.shelf, lurker);
        lurker.name = "Mudcaller";
        chief = game::add_creature(campaign.shelf, lurker);
        game::PreparedEncounter encounter;
        encounter.name = "The cart";
        encounter.creatures = {{lurkers, 3, true, false, {}}, {chief, 1, false, true, {}}};
        plan = game::add_prepared(campaign.preparation, encounter);
    }
};

} // namespace

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
    CHECK(game::time_text(game::now(table.campaign)) == "Day 4, 00:00");
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
        game::remove_character(table.campaign, character);
        check_order(table.encounter());
    }
    CHECK(table.campaign.party.characters.empty());
    CHECK(game::find_problems(table.campaign, table.rulebook).empty());
}

TEST_CASE("problems: each kind is found where it stands") {
    const auto first = [](auto change) {
        Prepared prepared;
        Table& table = prepared.table;
        game::open_fight(table.campaign, table.rulebook, prepared.plan);
        change(table.campaign);
        const auto problems = game::find_problems(table.campaign, table.rulebook);
        return problems.empty() ? std::string("none")
                                : problems.front().pointer + " " + problems.front().text;
    };
    using game::Campaign;
    CHECK(first([](Campaign&) {}) == "none");
    CHECK(first([](Campaign& c) {
              c.party.characters[1].id = c.party.characters[0].id;
          }).find("/party/characters/1/id The id 1 is used twice.") == 0);
    CHECK(first([](Campaign& c) {
              c.party.characters[1].name.clear();
          }) == "/party/characters/1/name The name is empty.");
    CHECK(first([](Campaign& c) {
              c.party.characters[0].statistics.saves["luck"] = 3;
          }) == "/party/characters/0/statistics/saves/luck \"luck\" is not in the rulebook.");
    CHECK(first([](Campaign& c) {
              c.shelf.creatures[0].statistics.attacks = {
                  {"claw", 5, "3d0", "slashing", false, false, "", {}}};
          }).find("/shelf/creatures/0/statistics/attacks/0/damage") == 0);
    CHECK(
        first([](Campaign& c) { c.preparation.encounters[0].creatures[1].creature = 77; }) ==
        "/preparation/encounters/0/creatures/1/creature There is no creature 77 on the shelf."
    );
    CHECK(first([](Campaign& c) {
              c.encounter.combatants[0].hp = 41;
          }) == "/encounter/combatants/0/hp Hit points are above the maximum of 40.");
    CHECK(first([](Campaign& c) {
              c.encounter.order.push_back(c.encounter.order[0]);
          }).find("Listed twice.") != std::string::npos);
    CHECK(first([](Campaign& c) {
              c.encounter.order.pop_back();
          }).find("is missing in the order.") != std::string::npos);
    CHECK(first([](Campaign& c) {
              c.encounter.combatants[0].conditions = {{}};
          }).find("/encounter/combatants/0/conditions/0/id") == 0);
    CHECK(first([](Campaign& c) {
              c.encounter.phase = game::Phase::running;
          }) == "/encounter/round A running fight is in round 1 or later.");
}
