#include "fight_table.h"

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

namespace {

Table running(rules::Family family = rules::Family::four_degree) {
    Table table(family);
    table.hero("Ysolde", 50, 20);
    table.hero("Bram", 40, 18);
    table.foe("Lurker", 30, 18);
    table.initiative("Ysolde", 20);
    table.initiative("Lurker", 15);
    table.initiative("Bram", 10);
    REQUIRE(game::begin_fight(table.encounter(), table.rulebook));
    return table;
}

const ActiveCondition& only(const Table& table, const std::string& name) {
    REQUIRE(table.who(name).conditions.size() == 1);
    return table.who(name).conditions.front();
}

ActiveCondition burning(const std::string& damage, const std::string& type = "fire") {
    ActiveCondition condition;
    condition.key = "persistent_damage";
    condition.damage = damage;
    condition.damage_type = type;
    return condition;
}

} // namespace

TEST_CASE("conditions: frightened 2 drops to 1 at the end of its own turn and not at anybody else's"
) {
    // Player Core (ORC), conditions, frightened.
    Table table = running();
    table.give("Lurker", "frightened", 2);
    table.next();
    CHECK(table.state({"Lurker"}) == "Lurker 30 (frightened 2)");
    table.next();
    CHECK(table.state({"Lurker"}) == "Lurker 30 (frightened 1)");
    table.next();
    table.next();
    table.next();
    CHECK(table.state({"Lurker"}) == "Lurker 30");
}

TEST_CASE("conditions: a condition gained twice keeps the higher value and the longer timer") {
    // Player Core (ORC), conditions: redundant conditions.
    Table table = running();
    table.give("Lurker", "slowed", 2, table.rounds(1, "Ysolde", TurnEdge::start));
    table.give("Lurker", "slowed", 1, table.rounds(3, "Ysolde", TurnEdge::start));
    CHECK(only(table, "Lurker").value == 2);
    CHECK(only(table, "Lurker").duration.rounds_left == 3);
}

TEST_CASE("conditions: persistent damage is kept once per type, the stronger one") {
    Table table = running();
    const Id lurker = table.id("Lurker");
    game::add_condition(table.encounter(), table.rulebook, lurker, burning("1d6"));
    game::add_condition(table.encounter(), table.rulebook, lurker, burning("2d4"));
    game::add_condition(table.encounter(), table.rulebook, lurker, burning("1d4"));
    game::add_condition(table.encounter(), table.rulebook, lurker, burning("1d4", "acid"));
    CHECK(table.state({"Lurker"}) == "Lurker 30 (persistent 2d4 fire; persistent 1d4 acid)");
}

TEST_CASE("conditions: the immune do not get it") {
    Table table = running();
    table.change("Lurker").statistics.immunities = {"frightened", "fire"};
    CHECK_FALSE(table.give("Lurker", "frightened", 1));
    CHECK_FALSE(
        game::add_condition(table.encounter(), table.rulebook, table.id("Lurker"), burning("1d6"))
    );
    CHECK(table.give("Lurker", "prone"));
    CHECK_FALSE(table.give("Lurker", "no_such_condition"));
}

TEST_CASE("conditions: srd5 petrified stone cannot be poisoned (5.2.1)") {
    Table table(rules::Family::srd5, rules::SrdEdition::srd_5_2_1);
    table.hero("Perrin", 28, 18);
    table.give("Perrin", "petrified");
    CHECK_FALSE(table.give("Perrin", "poisoned"));
    CHECK(table.hurt("Perrin", 9, "fire") == "Perrin loses 4 fire"); // stone resists all damage
}

TEST_CASE("conditions: drained takes hit points when gained and only the difference when it grows"
) {
    // Player Core (ORC), conditions, drained: value times level.
    Table table = running();
    table.give("Bram", "drained", 1);
    CHECK(table.who("Bram").hp == 36);
    table.give("Bram", "drained", 3);
    CHECK(table.who("Bram").hp == 28);
    CHECK(game::effective_hp_max(table.rulebook, table.who("Bram")) == 28);
    game::set_condition_value(
        table.encounter(), table.rulebook, table.id("Bram"), only(table, "Bram").id, 1
    );
    CHECK(game::effective_hp_max(table.rulebook, table.who("Bram")) == 36);
    CHECK(table.who("Bram").hp == 28); // the maximum returns, the hit points do not
}

TEST_CASE("conditions: unconscious brings prone, which stays after waking") {
    Table table = running();
    table.give("Bram", "unconscious");
    CHECK(table.state({"Bram"}) == "Bram 40 (unconscious; prone)");
    table.end("Bram", "unconscious");
    CHECK(table.state({"Bram"}) == "Bram 40 (prone)");
}

TEST_CASE("conditions: the sixth level of exhaustion kills") {
    // SRD 5.1, Appendix PH-A / Exhaustion.
    Table table = running(rules::Family::srd5);
    table.give("Bram", "exhaustion", 5);
    CHECK_FALSE(table.who("Bram").is_dead);
    game::set_condition_value(
        table.encounter(), table.rulebook, table.id("Bram"), only(table, "Bram").id, 6
    );
    CHECK(table.who("Bram").is_dead);
}

TEST_CASE("timers: rounds count at the chosen edge of the chosen turn") {
    Table table = running();
    table.give("Bram", "prone", 0, table.rounds(2, "Lurker", TurnEdge::start));
    table.give("Ysolde", "prone", 0, table.until("Lurker", TurnEdge::end));
    table.next(); // the lurker's turn starts
    CHECK(only(table, "Bram").duration.rounds_left == 1);
    CHECK(table.state({"Ysolde"}) == "Ysolde 50 (prone)");
    table.next(); // and ends
    CHECK(table.state({"Ysolde"}) == "Ysolde 50");
    table.next();
    table.next();
    CHECK(table.state({"Bram"}) == "Bram 40");
}

TEST_CASE("timers: a paused timer and a paused fading stand still") {
    Table table = running();
    table.give("Lurker", "frightened", 2);
    game::pause_condition(table.encounter(), table.id("Lurker"), only(table, "Lurker").id, true);
    for (int turn = 0; turn < 6; ++turn)
        table.next();
    CHECK(only(table, "Lurker").value == 2);
    game::pause_condition(table.encounter(), table.id("Lurker"), only(table, "Lurker").id, false);
    for (int turn = 0; turn < 3; ++turn)
        table.next();
    CHECK(only(table, "Lurker").value == 1);
}

TEST_CASE("timers: a minute is ten rounds") {
    // Player Core (ORC) and SRD 5.1: a round is six seconds.
    Table table = running();
    table.give("Bram", "quickened", 0, {DurationKind::timed, base::no_id, TurnEdge::end, 0, 60});
    for (int turn = 0; turn < 9 * 3; ++turn)
        table.next();
    CHECK(only(table, "Bram").duration.seconds_left == 6);
    for (int turn = 0; turn < 3; ++turn)
        table.next();
    CHECK(table.state({"Bram"}) == "Bram 40");
}

TEST_CASE("timers: time that passes outside turns runs the timed ones down") {
    Table table = running();
    table.give("Bram", "invisible", 0, {DurationKind::timed, base::no_id, TurnEdge::end, 0, 600});
    CHECK(game::pass_time(table.encounter(), table.rulebook, 540).empty());
    const auto ended = game::pass_time(table.encounter(), table.rulebook, 60);
    REQUIRE(ended.size() == 1);
    CHECK(ended[0].text == "invisible ends");
}

TEST_CASE("timers: the timer of one who is defeated counts on where it stood") {
    Table table = running();
    table.give("Ysolde", "prone", 0, table.rounds(2, "Lurker", TurnEdge::end));
    table.hurt("Lurker", 30);
    table.next(); // Bram stands where the lurker's turn would have ended
    CHECK(only(table, "Ysolde").duration.rounds_left == 1);
    table.next();
    table.next();
    CHECK(table.state({"Ysolde"}) == "Ysolde 50");
}

TEST_CASE("timers: extending adds rounds, shortening never ends") {
    Table table = running();
    table.give("Bram", "prone", 0, table.rounds(2, "Lurker", TurnEdge::start));
    const Id condition = only(table, "Bram").id;
    game::extend_condition(table.encounter(), table.rulebook, table.id("Bram"), condition, 1);
    CHECK(only(table, "Bram").duration.rounds_left == 3);
    game::extend_condition(table.encounter(), table.rulebook, table.id("Bram"), condition, -9);
    CHECK(only(table, "Bram").duration.rounds_left == 1);
    game::set_condition_duration(
        table.encounter(), table.id("Bram"), condition, table.until("Lurker", TurnEdge::start)
    );
    game::extend_condition(table.encounter(), table.rulebook, table.id("Bram"), condition, 1);
    CHECK(only(table, "Bram").duration.rounds_left == 2);
}

TEST_CASE("timers: all running ones stand soonest first") {
    Table table = running();
    table.give("Bram", "prone", 0, table.rounds(3, "Lurker", TurnEdge::start));
    table.give("Ysolde", "frightened", 1);
    table.give("Lurker", "off_guard", 0, table.until("Lurker", TurnEdge::end));
    table.give(
        "Lurker", "drained", 1, {DurationKind::until_rest, base::no_id, TurnEdge::end, 0, 0}
    );
    table.give("Bram", "invisible", 0, {DurationKind::timed, base::no_id, TurnEdge::end, 0, 600});
    table.give("Lurker", "prone");
    std::vector<std::string> said;
    for (const game::RunningTimer& timer :
         game::running_timers(table.encounter(), table.rulebook, true)) {
        const Combatant& combatant = *game::find_combatant(table.encounter(), timer.combatant);
        said.push_back(
            combatant.name + " " +
            game::condition_text(table.rulebook, *game::find_active(combatant, timer.condition))
        );
    }
    CHECK(
        said ==
        std::vector<std::string>{
            "Ysolde frightened 1",
            "Lurker off-guard",
            "Bram prone",
            "Bram invisible",
            "Lurker drained 1",
            "Lurker prone"}
    );
    CHECK(game::running_timers(table.encounter(), table.rulebook, false).size() == 5);
}

TEST_CASE("timers: a night's rest ends what lasts until then and lowers doomed and drained") {
    // Player Core (ORC), Rest and Daily Preparations; SRD 5.1, Resting: one level of exhaustion.
    Table table = running();
    table.give("Bram", "drained", 2);
    table.give("Bram", "doomed", 1);
    table.give("Bram", "fatigued");
    table.give("Bram", "prone", 0, {DurationKind::until_rest, base::no_id, TurnEdge::end, 0, 0});
    table.give("Bram", "clumsy", 1);
    game::rest_conditions(table.encounter(), table.rulebook, table.id("Bram"));
    CHECK(table.state({"Bram"}) == "Bram 32 (drained 1; clumsy 1)");
    Table other = running(rules::Family::srd5);
    other.give("Bram", "exhaustion", 2);
    game::rest_conditions(other.encounter(), other.rulebook, other.id("Bram"));
    CHECK(other.state({"Bram"}) == "Bram 40 (exhaustion 1)");
}

TEST_CASE("conditions: what a chip says") {
    Table table = running();
    ActiveCondition condition;
    condition.key = "sickened";
    condition.value = 2;
    CHECK(game::condition_text(table.rulebook, condition) == "sickened 2");
    CHECK(game::duration_text(table.encounter(), condition) == "until ended");
    condition.check = game::EndCheck{"fortitude", 18, TurnEdge::end, {}};
    CHECK(game::duration_text(table.encounter(), condition) == "DC 18 fortitude");
    condition.duration = table.rounds(2, "Ysolde", TurnEdge::end);
    CHECK(game::duration_text(table.encounter(), condition) == "2 rounds, DC 18 fortitude");
    condition.check.reset();
    condition.duration = table.until("Ysolde", TurnEdge::start);
    CHECK(game::duration_text(table.encounter(), condition) == "start of Ysolde's turn");
    condition.duration = {DurationKind::timed, base::no_id, TurnEdge::end, 0, 90};
    CHECK(game::duration_text(table.encounter(), condition) == "1 min 30 s");
    condition.duration.seconds_left = 7200;
    condition.is_paused = true;
    CHECK(game::duration_text(table.encounter(), condition) == "2 h, paused");
    CHECK(game::condition_text(table.rulebook, burning("1d6")) == "persistent 1d6 fire");
}

TEST_CASE("prompts: helped persistent damage ends on a flat check of 10") {
    // Player Core (ORC), flat checks: 15, or 10 with help.
    Table table = running();
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
        Table table = running();
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
    Table table = running();
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
    Table table = running();
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
    Table table = running();
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
