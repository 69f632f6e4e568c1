// Creatures of the library and the builder on their way into the fight and onto the shelf.
#include "fight_table.h"
#include "game/creature_building.h"
#include "game/placing.h"

#include <doctest/doctest.h>

#include <set>

using fight_table::Table;
using rules::Family;

namespace {

game::Statistics lurker(Family family) {
    rules::BuildChoice choice;
    choice.archetype = "stalker";
    choice.level = 3;
    choice.challenge = 3;
    return game::built_statistics(fight_table::rulebook_of(family), choice);
}

} // namespace

TEST_CASE("placing: so many at once, numbered, in the running order with initiative rolled") {
    Table table = fight_table::reeds();
    game::Placing placing;
    placing.count = 3;
    const auto ids = game::place_creature(
        table.campaign,
        table.rulebook,
        "Reed Lurker",
        lurker(Family::four_degree),
        placing,
        table.dice
    );
    CHECK(ids.size() == 3);
    for (const char* name : {"Reed Lurker 1", "Reed Lurker 2", "Reed Lurker 3"}) {
        CHECK(table.who(name).initiative.has_value());
        CHECK(table.who(name).hp == lurker(Family::four_degree).hit_points);
        CHECK(table.who(name).creature == base::no_id);
    }
    CHECK(table.encounter().order.size() == 6);
    CHECK(table.current() == "Ysolde");
    fight_table::check_order(table.encounter());
    placing.count = 1;
    game::place_creature(
        table.campaign,
        table.rulebook,
        "Reed Lurker",
        lurker(Family::four_degree),
        placing,
        table.dice
    );
    CHECK(table.who("Reed Lurker 4").hp > 0);
    const auto problems = game::find_problems(table.campaign, table.rulebook);
    CHECK((problems.empty() ? "" : problems.front().pointer + problems.front().text) == "");
}

TEST_CASE("placing: hidden ones that share an initiative, into a fight that is opened for them") {
    Table table(Family::srd5);
    table.hero("Ysolde", 40, 16);
    table.campaign.encounter.phase = game::Phase::no_fight;
    game::Placing placing;
    placing.count = 2;
    placing.shares_initiative = true;
    placing.is_hidden = true;
    placing.initiative = 14;
    game::place_creature(
        table.campaign, table.rulebook, "Wight", lurker(Family::srd5), placing, table.dice
    );
    CHECK(table.encounter().phase == game::Phase::gathering);
    CHECK(table.who("Wight 1").initiative == 14);
    CHECK(table.who("Wight 2").initiative == 14);
    CHECK(table.who("Wight 1").group == table.who("Wight 2").group);
    CHECK(table.who("Wight 2").is_hidden);
    CHECK(table.who("Ysolde").standing == game::Standing::in_order);
}

TEST_CASE("placing: hit points rolled from hit dice, each for itself and within what dice allow") {
    Table table(Family::srd5);
    game::Statistics ogre;
    ogre.hit_points = 59;
    ogre.hit_dice = "7d10+21"; // SRD 5.1, Monsters (O), Ogre
    game::Placing placing;
    placing.count = 50;
    placing.hit_points = game::HitPointsBy::rolled;
    const auto ids =
        game::place_creature(table.campaign, table.rulebook, "Ogre", ogre, placing, table.dice);
    REQUIRE(ids.size() == 50);
    std::set<int> seen;
    double sum = 0;
    for (const base::Id id : ids) {
        const game::Combatant& each = *game::find_combatant(table.encounter(), id);
        CHECK(each.hp == each.statistics.hit_points);
        CHECK(each.hp >= 28);
        CHECK(each.hp <= 91);
        seen.insert(each.hp);
        sum += each.hp;
    }
    CHECK(seen.size() > 10);
    CHECK(sum / 50 == doctest::Approx(59.5).epsilon(0.1)); // the dice are seeded
    ogre.hit_dice.clear();
    const auto plain =
        game::place_creature(table.campaign, table.rulebook, "Giant", ogre, placing, table.dice);
    CHECK(game::find_combatant(table.encounter(), plain[0])->hp == 59);
    ogre.hit_dice = "1d8-20";
    game::place_creature(table.campaign, table.rulebook, "Wisp", ogre, placing, table.dice);
    CHECK(table.who("Wisp 1").hp == 1);
}

TEST_CASE("placing: no name or a mad count changes nothing") {
    Table table(Family::srd5);
    table.campaign.encounter.phase = game::Phase::no_fight;
    const game::Campaign before = table.campaign;
    game::Placing placing;
    const auto place = [&](const std::string& name, int count) {
        placing.count = count;
        return game::place_creature(
            table.campaign, table.rulebook, name, lurker(Family::srd5), placing, table.dice
        );
    };
    CHECK(place("", 1).empty());
    CHECK(place("Wight", 0).empty());
    CHECK(place("Wight", 51).empty());
    CHECK(table.campaign == before);
}

TEST_CASE("placing: kept on the shelf under a name of its own") {
    game::CreatureShelf shelf;
    const game::Statistics statistics = lurker(Family::srd5);
    const base::Id first = game::keep_on_shelf(shelf, "Reed Lurker", statistics);
    const base::Id second = game::keep_on_shelf(shelf, "Reed Lurker", statistics);
    CHECK(game::find_creature(shelf, first)->name == "Reed Lurker");
    CHECK(game::find_creature(shelf, second)->name == "Reed Lurker 2");
    CHECK(game::find_creature(shelf, second)->statistics == statistics);
    CHECK(game::keep_on_shelf(shelf, "", statistics) == base::no_id);
    CHECK(shelf.creatures.size() == 2);
}
