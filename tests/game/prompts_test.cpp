#include "fight_table.h"

#include <algorithm>

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

TEST_CASE("prompts: helped persistent damage ends on a flat check of 10") {
    // Player Core (ORC), flat checks: 15, or 10 with help.
    Table table = reeds();
    game::add_condition(table.encounter(), table.rulebook, table.id("Ysolde"), burning("1d6"));
    table.next();
    game::help_prompt(table.encounter(), table.rulebook, table.encounter().prompts[0].id);
    table.answer("Ysolde", 2);
    CHECK(table.asked() == "Ysolde: Flat check DC 10 ends persistent 1d6 fire");
    CHECK(
        table.answer("Ysolde", 10) ==
        "Ysolde's flat check 10 against 10: success, persistent 1d6 fire ends"
    );
    CHECK(table.state({"Ysolde"}) == "Ysolde 48");
}

TEST_CASE("prompts: recovery checks by degree, natural 20 and 1 included") {
    // Worked examples: Player Core (ORC), recovery check DC 10 + dying: critical success -2,
    // success -1, failure +1, critical failure +2; a natural 20 or 1 shifts the degree by one.
    struct Row {
        int dying, rolled;
        std::string state;
    };

    const std::vector<Row> rows = {
        {1, 11, "Bram 0 (prone; wounded 1; unconscious)"},
        {1, 10, "Bram 0 (dying 2; prone)"},
        {2,
         20,
         "Bram 0 (prone; wounded 1; unconscious)"}, // 20 against 12 is a success, better by one: -2
        {2, 1, "Bram 0 dead"},                      // critical failure: +2 makes 4
        {3, 13, "Bram 0 (dying 2; prone)"},
        {3, 12, "Bram 0 dead"},
        {1, 2, "Bram 0 (dying 2; prone)"}, // 2 against 11 is a plain failure
    };
    for (const Row& row : rows) {
        Table table = reeds();
        table.hurt("Bram", 40);
        const ActiveCondition* dying = game::find_active(table.who("Bram"), std::string("dying"));
        game::set_condition_value(
            table.encounter(), table.rulebook, table.id("Bram"), dying->id, row.dying
        );
        while (table.encounter().prompts.empty())
            table.next();
        CAPTURE(row.dying);
        CAPTURE(row.rolled);
        CHECK(table.encounter().prompts[0].dc == 10 + row.dying);
        table.answer("Bram", row.rolled);
        const std::string state = table.state({"Bram"});
        CHECK((row.state == "Bram 0 dead" ? table.who("Bram").is_dead : state == row.state));
    }
}

TEST_CASE("prompts: a save at the end of the turn, with conditions counted") {
    Table table = reeds();
    table.change("Ysolde").statistics.saves = {{"will", 9}};
    table.give("Ysolde", "frightened", 2);
    ActiveCondition charm;
    charm.key = "controlled";
    charm.check = game::EndCheck{"will", 19, TurnEdge::end, {}};
    charm.duration.kind = DurationKind::until_check;
    game::add_condition(table.encounter(), table.rulebook, table.id("Ysolde"), charm);
    table.next();
    CHECK(table.asked() == "Ysolde: Will DC 19 against controlled");
    // The save is made before fear fades: 9 - 2.
    CHECK(table.encounter().prompts[0].modifier == 7);
    CHECK(
        table.answer("Ysolde", 12) == "Ysolde's will save 19 against 19: success, controlled ends"
    );
}

TEST_CASE("prompts: a save lowers sickened, by two on a critical success") {
    // Player Core (ORC), conditions, sickened.
    Table table = reeds();
    table.change("Ysolde").statistics.saves = {{"fortitude", 12}};
    ActiveCondition sick;
    sick.key = "sickened";
    sick.value = 3;
    sick.check = game::EndCheck{"fortitude", 15, TurnEdge::end, {}};
    game::add_condition(table.encounter(), table.rulebook, table.id("Ysolde"), sick);
    table.next();
    CHECK(table.encounter().prompts[0].modifier == 9); // sickened 3 counts against its own save
    CHECK(
        table.answer("Ysolde", 6) ==
        "Ysolde's fortitude save 15 against 15: success, sickened drops to 2"
    );
    for (int turn = 0; turn < 3; ++turn)
        table.next();
    table.answer("Ysolde", 15); // 15 + 10 = 25: critical success
    CHECK(table.state({"Ysolde"}) == "Ysolde 50");
}

TEST_CASE("prompts: nonsense is refused and the prompt stays") {
    Table table = reeds();
    game::add_condition(table.encounter(), table.rulebook, table.id("Ysolde"), burning("1d6"));
    table.next();
    const Id prompt = table.encounter().prompts[0].id;
    CHECK(game::answer_prompt(table.encounter(), table.rulebook, prompt, -1).empty());
    CHECK(game::answer_prompt(table.encounter(), table.rulebook, prompt, 100000).empty());
    CHECK(game::answer_prompt(table.encounter(), table.rulebook, 9999, 3).empty());
    CHECK(table.encounter().prompts.size() == 1);
    game::set_prompt_aside(table.encounter(), prompt);
    CHECK(table.encounter().prompts.empty());
}

TEST_CASE("prompts: nothing is asked of the fallen any more") {
    Table table = reeds();
    game::add_condition(table.encounter(), table.rulebook, table.id("Lurker"), burning("1d6"));
    table.next();
    table.next(); // the lurker burns
    CHECK(table.asked() == "Lurker: Roll 1d6 fire persistent damage");
    table.hurt("Lurker", 30);
    CHECK(table.asked().empty());
}

TEST_CASE("prompts: persistent damage meets resistances, and each round asks anew") {
    Table table = reeds();
    table.change("Ysolde").statistics.resistances = {{"fire", 4, {}}};
    game::add_condition(table.encounter(), table.rulebook, table.id("Ysolde"), burning("2d6"));
    table.next();
    CHECK(table.answer("Ysolde", 9) == "Persistent damage: Ysolde loses 5 fire");
    CHECK(table.answer("Ysolde", 14).find("stays") != std::string::npos);
    for (int turn = 0; turn < 3; ++turn)
        table.next();
    CHECK(table.answer("Ysolde", 3) == "Persistent damage: Ysolde takes no fire damage");
    CHECK(
        table.answer("Ysolde", 15).find("ends") != std::string::npos
    ); // the flat check is due anyway
    CHECK(table.state({"Ysolde"}) == "Ysolde 45");
}

TEST_CASE("prompts: an open recovery check is asked once, with the DC of now") {
    Table table = reeds();
    table.next();
    table.hurt("Bram", 40);
    table.next();
    table.next();
    CHECK(table.asked() == "Bram: Recovery check: flat DC 11");
    table.hurt("Bram", 1); // dying 2 now, and the check is still open
    for (int turn = 0; turn < 3; ++turn)
        table.next();
    CHECK(table.asked() == "Bram: Recovery check: flat DC 12");
}

TEST_CASE("prompts: exhaustion weighs on death saves too") {
    // SRD 5.1, Appendix PH-A / Exhaustion: saving throws at disadvantage from level 3.
    Table old = reeds(rules::Family::srd5);
    old.give("Bram", "exhaustion", 3);
    old.hurt("Bram", 40);
    old.next();
    old.next();
    CHECK(old.asked() == "Bram: Death save DC 10 (0 good, 0 bad so far), at disadvantage");
    rules::Dice dice(7);
    for (int roll = 0; roll < 20; ++roll) {
        rules::Dice same = dice; // the same two dice, read on the side
        const int first = same.d20();
        const int worse = std::min(first, same.d20());
        CHECK(game::roll_for_prompt(old.encounter().prompts[0], dice) == worse);
    }
    // SRD 5.2.1, Rules Glossary / Exhaustion: every d20 test is lowered by 2 a level.
    Table young(rules::Family::srd5, rules::SrdEdition::srd_5_2_1);
    young.hero("Bram", 40, 18);
    young.give("Bram", "exhaustion", 2);
    young.hurt("Bram", 40);
    young.initiative("Bram", 10);
    REQUIRE(game::begin_fight(young.encounter(), young.rulebook));
    CHECK(young.encounter().prompts[0].modifier == -4);
    CHECK(young.answer("Bram", 13) == "Bram's death save 9: 1 failed death saves");
}

TEST_CASE("prompts: a save that fails by itself is not asked for") {
    // SRD 5.1, Appendix PH-A / Paralyzed: Strength and Dexterity saves fail.
    Table table = reeds(rules::Family::srd5);
    table.change("Ysolde").statistics.saves = {{"dex", 4}, {"wis", 2}};
    ActiveCondition net;
    net.key = "restrained";
    net.check = game::EndCheck{"dex", 12, TurnEdge::end, {}};
    net.duration.kind = DurationKind::until_check;
    game::add_condition(table.encounter(), table.rulebook, table.id("Ysolde"), net);
    table.next();
    // Restrained itself puts Dexterity saves at disadvantage.
    CHECK(table.asked() == "Ysolde: Dexterity DC 12 against restrained, at disadvantage");
    table.answer("Ysolde", 3);
    table.give("Ysolde", "paralyzed");
    for (int turn = 0; turn < 3; ++turn)
        table.next();
    CHECK(table.asked().empty());
    CHECK(table.notices() == "Dexterity fails: restrained stays");
}

TEST_CASE("prompts: a check at the start of the turn comes at its start") {
    Table table = reeds();
    ActiveCondition curse;
    curse.name = "Curse of reeds";
    curse.check = game::EndCheck{"", 11, TurnEdge::start, {}};
    curse.duration.kind = DurationKind::until_check;
    game::add_condition(table.encounter(), table.rulebook, table.id("Lurker"), curse);
    CHECK(table.asked().empty());
    table.next();
    CHECK(table.asked() == "Lurker: Flat check DC 11 against Curse of reeds");
    CHECK(
        table.answer("Lurker", 11) ==
        "Lurker's flat check 11 against 11: success, Curse of reeds ends"
    );
}
