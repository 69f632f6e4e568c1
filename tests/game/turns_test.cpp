#include "fight_table.h"

#include <random>
#include <set>

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

namespace {

Table three(rules::Family family = rules::Family::four_degree) {
    Table table(family);
    table.hero("Ysolde", 50, 20);
    table.hero("Orrin", 40, 20);
    table.foe("Lurker", 30, 18);
    table.initiative("Ysolde", 20);
    table.initiative("Lurker", 15);
    table.initiative("Orrin", 10);
    REQUIRE(game::begin_fight(table.encounter(), table.rulebook));
    return table;
}

} // namespace

TEST_CASE("turns: a fight cannot begin while somebody has no initiative") {
    Table table(rules::Family::four_degree);
    table.hero("Ysolde", 50, 20);
    table.foe("Lurker", 30, 18);
    table.initiative("Ysolde", 12);
    CHECK_FALSE(game::begin_fight(table.encounter(), table.rulebook));
    CHECK(table.encounter().phase == game::Phase::gathering);
    table.initiative("Lurker", 9);
    CHECK(game::begin_fight(table.encounter(), table.rulebook));
}

TEST_CASE("turns: rolled initiative adds the modifier of the stat that is rolled") {
    Table table(rules::Family::four_degree);
    Combatant& scout = table.hero("Orrin", 40, 20);
    scout.statistics.perception = 7;
    scout.statistics.skills = {{"stealth", 12}};
    CHECK(game::initiative_modifier(table.rulebook, table.who("Orrin")) == 7);
    game::set_initiative_stat(table.encounter(), table.id("Orrin"), "stealth");
    CHECK(game::initiative_modifier(table.rulebook, table.who("Orrin")) == 12);
    table.give("Orrin", "frightened", 1); // a check like any other
    CHECK(game::initiative_modifier(table.rulebook, table.who("Orrin")) == 11);
    const int total =
        game::roll_initiative(table.encounter(), table.rulebook, table.id("Orrin"), table.dice);
    CHECK(total >= 12);
    CHECK(total <= 31);
    CHECK(table.who("Orrin").initiative == total);
}

TEST_CASE("turns: a group rolls once and stands together") {
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

TEST_CASE("turns: quickened adds an action, slowed takes some, none act below zero") {
    // Player Core (ORC), conditions, quickened and slowed.
    const std::vector<std::pair<std::vector<std::pair<std::string, int>>, int>> cases = {
        {{}, 3},
        {{{"quickened", 0}}, 4},
        {{{"slowed", 1}}, 2},
        {{{"slowed", 2}, {"quickened", 0}}, 2},
        {{{"slowed", 5}}, 0},
        {{{"paralyzed", 0}}, 3},
        {{{"unconscious", 0}}, 0},
    };
    for (const auto& [conditions, actions] : cases) {
        Table table = three();
        for (const auto& [key, value] : conditions)
            table.give("Lurker", key, value);
        table.next();
        CHECK(table.current() == "Lurker");
        CAPTURE(conditions.size());
        CHECK(table.who("Lurker").actions_left == actions);
    }
}

TEST_CASE("turns: stunned 4 takes three actions of one turn and one of the next") {
    // Worked example: Player Core (ORC), stunned: actions lost reduce the value.
    Table table = three();
    table.give("Lurker", "stunned", 4);
    table.next();
    CHECK(table.who("Lurker").actions_left == 0);
    CHECK(table.state({"Lurker"}) == "Lurker 30 (stunned 1)");
    table.next();
    table.next();
    table.next();
    CHECK(table.current() == "Lurker");
    CHECK(table.who("Lurker").actions_left == 2);
    CHECK(table.state({"Lurker"}) == "Lurker 30");
}

TEST_CASE("turns: actions lost to stunned count toward those lost to slowed") {
    // Player Core (ORC), conditions, stunned: stunned 1 and slowed 2 leave one action of three.
    Table table = three();
    table.give("Lurker", "stunned", 1);
    table.give("Lurker", "slowed", 2);
    table.next();
    CHECK(table.who("Lurker").actions_left == 1);
}

TEST_CASE("turns: reactions, attacks and readied actions start afresh") {
    Table table = three();
    game::set_reaction_used(table.encounter(), table.id("Ysolde"), true);
    game::set_attacks_made(table.encounter(), table.id("Ysolde"), 2);
    game::ready_action(table.encounter(), table.id("Ysolde"), "it moves: strike");
    for (int turn = 0; turn < 3; ++turn)
        table.next();
    CHECK(table.current() == "Ysolde");
    CHECK_FALSE(table.who("Ysolde").reaction_used);
    CHECK(table.who("Ysolde").attacks_made == 0);
    CHECK(table.who("Ysolde").readied.empty());
}

TEST_CASE("turns: a readied action spends the reaction, and only once") {
    Table table = three();
    game::ready_action(table.encounter(), table.id("Ysolde"), "it moves: strike");
    table.next();
    CHECK(game::use_readied(table.encounter(), table.rulebook, table.id("Ysolde")));
    CHECK(table.who("Ysolde").reaction_used);
    CHECK_FALSE(game::use_readied(table.encounter(), table.rulebook, table.id("Ysolde")));
}

TEST_CASE("turns: a delayer that waits a whole round loses that turn and is back at its old place"
) {
    Table table = three();
    table.next(); // the lurker
    REQUIRE(game::delay_turn(table.encounter(), table.rulebook));
    CHECK(table.current() == "Orrin");
    CHECK(table.order() == "Ysolde Orrin");
    CHECK(table.next() == "Round 2: Ysolde");
    CHECK(game::upcoming(table.encounter(), 1) == table.id("Orrin")); // unless it is back by then
    CHECK(table.next() == "Round 2: Lurker");
    CHECK(table.order() == "Ysolde Lurker Orrin");
    CHECK(table.who("Lurker").actions_left == 3);
}

TEST_CASE("turns: the first in order may delay and comes back at the top of the round") {
    Table table = three();
    REQUIRE(game::delay_turn(table.encounter(), table.rulebook));
    CHECK(table.next() == "Round 1: Orrin");
    CHECK(table.next() == "Round 2: Ysolde");
}

TEST_CASE("turns: two that delay one after the other come back in the same order") {
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

TEST_CASE("turns: persistent damage does not wait for one who delays") {
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

TEST_CASE("turns: confused and fleeing creatures cannot delay") {
    for (const char* key : {"confused", "fleeing", "unconscious"}) {
        Table table = three();
        table.give("Ysolde", key);
        CAPTURE(key);
        CHECK_FALSE(game::delay_turn(table.encounter(), table.rulebook));
    }
}

TEST_CASE("turns: when the current one falls the next one's turn starts") {
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

TEST_CASE("turns: who comes back after acting does not act twice in a round") {
    Table table = three();
    table.next();
    table.next(); // Orrin; Ysolde and the lurker have acted
    game::set_initiative(table.encounter(), table.rulebook, table.id("Lurker"), 5);
    CHECK(table.order() == "Ysolde Orrin Lurker");
    CHECK(table.next() == "Round 2: Ysolde");
}

TEST_CASE("turns: a late arrival below the current one acts this round") {
    Table table = three();
    const Id late = game::add_stranger(
        table.encounter(), table.rulebook, "Hound", game::Side::opponents, 10, 15, 12
    );
    CHECK(table.order() == "Ysolde Lurker Hound Orrin");
    table.next();
    table.next();
    CHECK(table.encounter().current == late);
}

TEST_CASE("turns: removing a combatant leaves nothing behind that points at it") {
    Table table = three();
    table.give("Ysolde", "frightened", 1, table.until("Lurker", TurnEdge::end));
    const Id gone = table.id("Lurker");
    game::remove_combatant(table.encounter(), table.rulebook, gone);
    CHECK(game::find_combatant(table.encounter(), gone) == nullptr);
    CHECK(game::find_problems(table.campaign, table.rulebook).empty());
    // The timer counts on where that turn stood: at the start of the next one's turn.
    const ActiveCondition* fear = game::find_active(table.who("Ysolde"), std::string("frightened"));
    REQUIRE(fear != nullptr);
    CHECK(fear->duration.whose_turn == table.id("Orrin"));
}

TEST_CASE("turns: reminders of a turn are back each turn, those of a fight are not") {
    Table table = three();
    game::Character hero = table.campaign.party.characters[0];
    hero.reminders = {
        {0, "Raise shield", 1, game::RefreshedBy::turn, {}},
        {0, "Second wind", 1, game::RefreshedBy::fight, {}}};
    game::update_character(table.campaign, hero);
    const std::vector<game::Reminder> known = table.who("Ysolde").reminders;
    REQUIRE(known.size() == 2);
    for (const game::Reminder& reminder : known) {
        game::use_reminder(table.encounter(), table.id("Ysolde"), reminder.id, 1);
        game::use_reminder(
            table.encounter(), table.id("Ysolde"), reminder.id, 1
        ); // never more than there are
        CHECK(table.who("Ysolde").reminders_used.at(reminder.id) == 1);
    }
    for (int turn = 0; turn < 3; ++turn)
        table.next();
    CHECK(table.who("Ysolde").reminders_used.count(known[0].id) == 0);
    CHECK(table.who("Ysolde").reminders_used.count(known[1].id) == 1);
}

TEST_CASE(
    "turns: whatever is done, the order holds whoever takes turns, and nobody acts twice in a round"
) {
    for (const rules::Family family : {rules::Family::four_degree, rules::Family::srd5}) {
        Table table(family);
        for (const char* name : {"A", "B", "C"})
            table.hero(name, 40, 15);
        for (const char* name : {"X", "Y", "Z"})
            table.foe(name, 25, 15);
        std::mt19937 random(20260131);
        const auto pick = [&](std::size_t count) {
            return std::uniform_int_distribution<std::size_t>(0, count - 1)(random);
        };
        game::roll_missing_initiative(table.encounter(), table.rulebook, table.dice, std::nullopt);
        REQUIRE(game::begin_fight(table.encounter(), table.rulebook));
        std::set<Id> acted;
        int round = 1;
        for (int step = 0; step < 3000; ++step) {
            Encounter& encounter = table.encounter();
            const Id someone = encounter.combatants[pick(encounter.combatants.size())].id;
            const Id before = encounter.current;
            switch (pick(12)) {
            case 0: game::delay_turn(encounter, table.rulebook); break;
            case 1: game::return_from_delay(encounter, table.rulebook, someone); break;
            case 2:
                game::hurt(
                    encounter,
                    table.rulebook,
                    someone,
                    {static_cast<int>(pick(20)), "fire", false, false, pick(5) == 0, false}
                );
                break;
            case 3:
                game::heal(encounter, table.rulebook, someone, static_cast<int>(pick(30)));
                break;
            case 4: game::set_defeated(encounter, table.rulebook, someone, pick(2) == 0); break;
            case 5:
                game::move_in_order(
                    encounter, someone, encounter.combatants[pick(encounter.combatants.size())].id
                );
                break;
            case 6:
                game::set_initiative(
                    encounter, table.rulebook, someone, static_cast<int>(pick(30))
                );
                break;
            case 7:
                if (!encounter.prompts.empty()) {
                    const game::Prompt prompt = encounter.prompts[pick(encounter.prompts.size())];
                    game::answer_prompt(
                        encounter,
                        table.rulebook,
                        prompt.id,
                        game::roll_for_prompt(prompt, table.dice)
                    );
                }
                break;
            case 8:
                table.give(game::find_combatant(encounter, someone)->name, "frightened", 2);
                break;
            default: game::advance_turn(encounter, table.rulebook); break;
            }
            check_order(encounter);
            if (encounter.order.empty()) { // everybody is down: somebody gets up again
                for (Combatant& combatant : encounter.combatants)
                    game::set_defeated(encounter, table.rulebook, combatant.id, false);
                acted.clear();
                round = encounter.round;
            }
            if (encounter.round != round) {
                acted.clear();
                round = encounter.round;
            }
            if (encounter.current != before && encounter.current != base::no_id) {
                // A delayed turn that is taken up again is the same turn; the GM's own moves may
                // pass somebody over.
                if (!acted.insert(encounter.current).second)
                    CHECK(game::find_combatant(encounter, encounter.current)->has_acted == false);
            }
        }
        CHECK(game::find_problems(table.campaign, table.rulebook).empty());
    }
}
