// Creatures that join a fight from the shelf or a prepared encounter.
#include "fight_table.h"
#include "game/reinforcements.h"
#include "game/shelf.h"

#include <doctest/doctest.h>

using fight_table::Table;

namespace {

base::Id put_on_shelf(Table& table, const char* name, int hp) {
    game::Creature creature;
    creature.name = name;
    creature.statistics.hit_points = hp;
    return game::add_creature(table.campaign.shelf, creature);
}

} // namespace

TEST_CASE("reinforcements: with no fight on, one with the party is opened for them") {
    Table table(rules::Family::four_degree);
    table.hero("Ysolde", 52, 22);
    table.campaign.encounter.phase = game::Phase::no_fight;
    const base::Id lurker = put_on_shelf(table, "Lurker", 30);
    const auto ids =
        game::drop_in(table.campaign, table.rulebook, lurker, 2, false, std::nullopt, table.dice);
    CHECK(ids.size() == 2);
    CHECK(table.encounter().phase == game::Phase::gathering);
    CHECK(table.who("Ysolde").standing == game::Standing::in_order);
    CHECK(table.who("Lurker 2").hp == 30);
}

TEST_CASE("reinforcements: a prepared encounter joins with its groups and what is hidden") {
    Table table(rules::Family::four_degree);
    table.hero("Ysolde", 52, 22);
    table.initiative("Ysolde", 20);
    game::begin_fight(table.encounter(), table.rulebook);
    game::PreparedEncounter prepared;
    prepared.name = "The mill";
    game::PreparedCreatures lurkers;
    lurkers.creature = put_on_shelf(table, "Lurker", 30);
    lurkers.count = 3;
    lurkers.shares_initiative = true;
    game::PreparedCreatures wight;
    wight.creature = put_on_shelf(table, "Wight", 45);
    wight.is_hidden = true;
    prepared.creatures = {lurkers, wight};
    const base::Id id = game::add_prepared(table.campaign.preparation, prepared);
    CHECK(game::join_prepared(table.campaign, table.rulebook, id, table.dice) == 4);
    CHECK(table.who("Wight").is_hidden);
    CHECK(table.who("Lurker 1").initiative == table.who("Lurker 3").initiative);
    CHECK(table.encounter().order.size() == 5);
    fight_table::check_order(table.encounter());
    CHECK(game::join_prepared(table.campaign, table.rulebook, 99, table.dice) == 0);
}

TEST_CASE("shelf: a creature taken off leaves no encounter that names it") {
    Table table(rules::Family::four_degree);
    const base::Id lurker = put_on_shelf(table, "Lurker", 30);
    const base::Id copy = game::copy_creature(table.campaign.shelf, lurker);
    CHECK(game::find_creature(table.campaign.shelf, copy)->name == "Copy of Lurker");
    const base::Id second = game::copy_creature(table.campaign.shelf, lurker);
    CHECK(game::find_creature(table.campaign.shelf, second)->name == "Copy of Lurker 2");
    game::PreparedEncounter prepared;
    prepared.name = "The mill";
    game::PreparedCreatures part;
    part.creature = lurker;
    part.count = 2;
    game::PreparedCreatures other;
    other.creature = copy;
    prepared.creatures = {part, other};
    game::add_prepared(table.campaign.preparation, prepared);
    CHECK(game::creatures_text(table.campaign.shelf, prepared) == "2 Lurker, 1 Copy of Lurker");
    game::take_off_shelf(table.campaign, lurker);
    CHECK(game::find_creature(table.campaign.shelf, lurker) == nullptr);
    CHECK(table.campaign.preparation.encounters[0].creatures.size() == 1);
    CHECK(game::copy_creature(table.campaign.shelf, lurker) == base::no_id);
}
