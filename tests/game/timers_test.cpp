#include "fight_table.h"

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

namespace {

const ActiveCondition& only(const Table& table, const std::string& name) {
    REQUIRE(table.who(name).conditions.size() == 1);
    return table.who(name).conditions.front();
}

} // namespace

TEST_CASE("timers: rounds count at the chosen edge of the chosen turn") {
    Table table = reeds();
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
    Table table = reeds();
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
    Table table = reeds();
    table.give("Bram", "quickened", 0, {DurationKind::timed, base::no_id, TurnEdge::end, 0, 60});
    for (int turn = 0; turn < 9 * 3; ++turn)
        table.next();
    CHECK(only(table, "Bram").duration.seconds_left == 6);
    for (int turn = 0; turn < 3; ++turn)
        table.next();
    CHECK(table.state({"Bram"}) == "Bram 40");
}

TEST_CASE("timers: time that passes outside turns runs the timed ones down") {
    Table table = reeds();
    table.give("Bram", "invisible", 0, {DurationKind::timed, base::no_id, TurnEdge::end, 0, 600});
    CHECK(game::pass_time(table.encounter(), table.rulebook, 540).empty());
    const auto ended = game::pass_time(table.encounter(), table.rulebook, 60);
    REQUIRE(ended.size() == 1);
    CHECK(ended[0].text == "invisible ends");
}

TEST_CASE("timers: the timer of one who is defeated counts on where it stood") {
    Table table = reeds();
    table.give("Ysolde", "prone", 0, table.rounds(2, "Lurker", TurnEdge::end));
    table.hurt("Lurker", 30);
    table.next(); // Bram stands where the lurker's turn would have ended
    CHECK(only(table, "Ysolde").duration.rounds_left == 1);
    table.next();
    table.next();
    CHECK(table.state({"Ysolde"}) == "Ysolde 50");
}

TEST_CASE("timers: extending adds rounds, shortening never ends") {
    Table table = reeds();
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
    Table table = reeds();
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
    Table table = reeds();
    table.give("Bram", "drained", 2);
    table.give("Bram", "doomed", 1);
    table.give("Bram", "fatigued");
    table.give("Bram", "prone", 0, {DurationKind::until_rest, base::no_id, TurnEdge::end, 0, 0});
    table.give("Bram", "clumsy", 1);
    game::rest_conditions(table.encounter(), table.rulebook, table.id("Bram"));
    CHECK(table.state({"Bram"}) == "Bram 32 (drained 1; clumsy 1)");
    Table other = reeds(rules::Family::srd5);
    other.give("Bram", "exhaustion", 2);
    game::rest_conditions(other.encounter(), other.rulebook, other.id("Bram"));
    CHECK(other.state({"Bram"}) == "Bram 40 (exhaustion 1)");
}

TEST_CASE("timers: until the start of the next turn of one who falls in its own turn lasts a round"
) {
    // What counts at the start of a turn that is gone counts at the end of the turn before it.
    Table table = reeds();
    table.next(); // the lurker's turn
    table.give("Ysolde", "prone", 0, table.until("Lurker", TurnEdge::start));
    table.hurt("Lurker", 30);
    CHECK(table.current() == "Bram");
    CHECK(table.state({"Ysolde"}) == "Ysolde 50 (prone)"); // not at once
    CHECK(table.next() == "Round 2: Ysolde");
    CHECK(table.state({"Ysolde"}) == "Ysolde 50 (prone)");
    CHECK(table.next() == "Round 2: Bram"); // where the lurker's turn would have started
    CHECK(table.state({"Ysolde"}) == "Ysolde 50");
}

TEST_CASE("timers: when all whose turn could count are gone, the top of the round counts") {
    Table table = reeds();
    table.give("Ysolde", "prone", 0, table.rounds(2, "Ysolde", TurnEdge::end));
    for (const char* name : {"Lurker", "Bram", "Ysolde"})
        game::set_defeated(table.encounter(), table.rulebook, table.id(name), true);
    CHECK(only(table, "Ysolde").duration.whose_turn == base::no_id);
    game::set_defeated(table.encounter(), table.rulebook, table.id("Ysolde"), false);
    table.next();
    table.next();
    CHECK(table.state({"Ysolde"}) == "Ysolde 50");
}

TEST_CASE("timers: one who delays keeps the timers of its turn, which count when it really ends") {
    Table table = reeds();
    table.give("Lurker", "slowed", 1, table.rounds(2, "Ysolde", TurnEdge::end));
    REQUIRE(game::delay_turn(table.encounter(), table.rulebook));
    CHECK(only(table, "Lurker").duration.rounds_left == 2);
    REQUIRE(game::return_from_delay(table.encounter(), table.rulebook, table.id("Ysolde")));
    CHECK(only(table, "Lurker").duration.rounds_left == 2);
    table.next();
    CHECK(only(table, "Lurker").duration.rounds_left == 1);
}

TEST_CASE("timers: rounds without anybody's turn count at the top of the round") {
    Table table = reeds();
    table.give("Bram", "prone", 0, {DurationKind::rounds, base::no_id, TurnEdge::end, 2, 0});
    CHECK(
        game::duration_text(table.encounter(), table.rulebook, only(table, "Bram")) == "2 rounds"
    );
    for (int turn = 0; turn < 3; ++turn)
        table.next();
    CHECK(only(table, "Bram").duration.rounds_left == 1);
    for (int turn = 0; turn < 3; ++turn)
        table.next();
    CHECK(table.state({"Bram"}) == "Bram 40");
    CHECK(table.notices() == "prone ends");
}

TEST_CASE("timers: the list says how long each can run, in seconds of the world") {
    // Three in the order, six seconds a round: a turn is two seconds.
    Table table = reeds();
    table.give("Bram", "prone", 0, table.until("Lurker", TurnEdge::start));      // 1 turn
    table.give("Bram", "off_guard", 0, table.until("Lurker", TurnEdge::end));    // 2 turns
    table.give("Bram", "clumsy", 1, table.rounds(3, "Ysolde", TurnEdge::start)); // 3 rounds
    table.give("Bram", "frightened", 2); // ends of Bram's turns
    table.give("Bram", "fatigued", 0, {DurationKind::timed, base::no_id, TurnEdge::end, 0, 7});
    std::vector<std::pair<std::string, long long>> listed;
    for (const game::RunningTimer& timer :
         game::running_timers(table.encounter(), table.rulebook, false)) {
        listed.emplace_back(
            game::find_active(table.who("Bram"), timer.condition)->key, timer.seconds_to_end
        );
    }
    CHECK(
        listed ==
        std::vector<std::pair<std::string, long long>>{
            {"prone", 2}, {"off_guard", 4}, {"fatigued", 7}, {"frightened", 12}, {"clumsy", 18}}
    );
}

TEST_CASE("timers: nobody watches what runs on the fallen") {
    Table table = reeds();
    table.give("Lurker", "frightened", 3);
    CHECK(game::running_timers(table.encounter(), table.rulebook, true).size() == 1);
    table.hurt("Lurker", 30);
    CHECK(game::running_timers(table.encounter(), table.rulebook, true).empty());
}
