#include "fight_table.h"

#include <algorithm>

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

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
        const std::string with = table.state({"Lurker"});
        CAPTURE(with);
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

TEST_CASE("turns: reminders of a turn are back each turn, those of a fight are not") {
    Table table = three();
    game::Character hero = table.campaign.party.characters[0];
    hero.reminders = {
        {0, "Raise shield", 1, game::RefreshedBy::turn},
        {0, "Second wind", 1, game::RefreshedBy::fight}};
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

TEST_CASE("turns: advantage and disadvantage on initiative take the better and the worse of two") {
    // SRD 5.2.1, Rules Glossary, Invisible and Incapacitated: initiative at advantage and
    // disadvantage; SRD 5.1 and 5.2.1, Advantage and Disadvantage.
    for (const char* key : {"", "invisible", "incapacitated"}) {
        Table table(rules::Family::srd5, rules::SrdEdition::srd_5_2_1);
        table.foe("Wisp", 10, 10).statistics.abilities = {{"dex", 2}};
        const std::string condition = key;
        if (!condition.empty()) table.give("Wisp", condition);
        for (int roll = 0; roll < 20; ++roll) {
            rules::Dice same = table.dice; // the same two dice, read on the side
            const int first = same.d20();
            const int second = same.d20();
            const int expected = condition.empty()          ? first
                                 : condition == "invisible" ? std::max(first, second)
                                                            : std::min(first, second);
            CHECK(
                game::roll_initiative(
                    table.encounter(), table.rulebook, table.id("Wisp"), table.dice
                ) == expected + 2
            );
        }
    }
}

TEST_CASE("turns: whoever is kept from acting gets no reaction back in four-degree") {
    // Player Core (ORC), encounter mode (from memory). srd5 forbids its use only while it lasts:
    // SRD 5.1, Appendix PH-A, Incapacitated.
    for (const auto& [family, used] :
         {std::pair{rules::Family::four_degree, true}, std::pair{rules::Family::srd5, false}}) {
        Table table = three(family);
        table.give("Lurker", "unconscious");
        table.next();
        CHECK(table.current() == "Lurker");
        CHECK(table.who("Lurker").reaction_used == used);
        CHECK_FALSE(game::can_react(table.rulebook, table.who("Lurker")));
    }
}

TEST_CASE("turns: falling asleep in one's own turn ends one's actions") {
    Table table = three();
    CHECK(table.who("Ysolde").actions_left == 3);
    table.give("Ysolde", "unconscious");
    CHECK(table.who("Ysolde").actions_left == 0);
}

TEST_CASE("turns: actions are spent and given back, never below none or above what there were") {
    Table table = three();
    const Id ysolde = table.id("Ysolde");
    game::spend_action(table.encounter(), ysolde, 2);
    CHECK(table.who("Ysolde").actions_left == 1);
    game::spend_action(table.encounter(), ysolde, 2);
    CHECK(table.who("Ysolde").actions_left == 0);
    game::spend_action(table.encounter(), ysolde, -9);
    CHECK(table.who("Ysolde").actions_left == 3);
}
