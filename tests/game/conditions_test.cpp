#include "fight_table.h"

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

namespace {

const ActiveCondition& only(const Table& table, const std::string& name) {
    REQUIRE(table.who(name).conditions.size() == 1);
    return table.who(name).conditions.front();
}

} // namespace

TEST_CASE("conditions: frightened 2 drops to 1 at the end of its own turn and not at anybody else's"
) {
    // Player Core (ORC), conditions, frightened.
    Table table = reeds();
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
    Table table = reeds();
    table.give("Lurker", "slowed", 2, table.rounds(1, "Ysolde", TurnEdge::start));
    table.give("Lurker", "slowed", 1, table.rounds(3, "Ysolde", TurnEdge::start));
    CHECK(only(table, "Lurker").value == 2);
    CHECK(only(table, "Lurker").duration.rounds_left == 3);
}

TEST_CASE("conditions: persistent damage is kept once per type, the stronger one") {
    Table table = reeds();
    const Id lurker = table.id("Lurker");
    game::add_condition(table.encounter(), table.rulebook, lurker, burning("1d6"));
    game::add_condition(table.encounter(), table.rulebook, lurker, burning("2d4"));
    game::add_condition(table.encounter(), table.rulebook, lurker, burning("1d4"));
    game::add_condition(table.encounter(), table.rulebook, lurker, burning("1d4", "acid"));
    CHECK(table.state({"Lurker"}) == "Lurker 30 (persistent 2d4 fire; persistent 1d4 acid)");
}

TEST_CASE("conditions: the immune do not get it") {
    Table table = reeds();
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
    Table table = reeds();
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
    Table table = reeds();
    table.give("Bram", "unconscious");
    CHECK(table.state({"Bram"}) == "Bram 40 (unconscious; prone)");
    table.end("Bram", "unconscious");
    CHECK(table.state({"Bram"}) == "Bram 40 (prone)");
}

TEST_CASE("conditions: the sixth level of exhaustion kills") {
    // SRD 5.1, Appendix PH-A / Exhaustion.
    Table table = reeds(rules::Family::srd5);
    table.give("Bram", "exhaustion", 5);
    CHECK_FALSE(table.who("Bram").is_dead);
    game::set_condition_value(
        table.encounter(), table.rulebook, table.id("Bram"), only(table, "Bram").id, 6
    );
    CHECK(table.who("Bram").is_dead);
}

TEST_CASE("conditions: what a chip says") {
    Table table = reeds();
    ActiveCondition condition;
    condition.key = "sickened";
    condition.value = 2;
    CHECK(game::condition_text(table.rulebook, condition) == "sickened 2");
    CHECK(game::duration_text(table.encounter(), table.rulebook, condition) == "until ended");
    condition.check = game::EndCheck{"fortitude", 18, TurnEdge::end, {}};
    CHECK(
        game::duration_text(table.encounter(), table.rulebook, condition) == "DC 18 Fortitude save"
    );
    condition.duration = table.rounds(2, "Ysolde", TurnEdge::end);
    CHECK(
        game::duration_text(table.encounter(), table.rulebook, condition) ==
        "2 rounds, DC 18 Fortitude save"
    );
    condition.check.reset();
    condition.duration = table.until("Ysolde", TurnEdge::start);
    CHECK(
        game::duration_text(table.encounter(), table.rulebook, condition) ==
        "start of Ysolde's turn"
    );
    condition.duration = {DurationKind::timed, base::no_id, TurnEdge::end, 0, 90};
    CHECK(game::duration_text(table.encounter(), table.rulebook, condition) == "1 min 30 s");
    condition.duration.seconds_left = 7200;
    condition.is_paused = true;
    CHECK(game::duration_text(table.encounter(), table.rulebook, condition) == "2 h, paused");
    CHECK(game::condition_text(table.rulebook, burning("1d6")) == "persistent 1d6 fire");
}

TEST_CASE("conditions: a value that makes no sense becomes one that does") {
    Table table = reeds();
    table.give("Bram", "frightened"); // at least 1
    table.give("Ysolde", "prone", 4); // knows no value
    table.give("Lurker", "stunned");  // may have a duration instead of a value
    CHECK(
        table.state({"Bram", "Ysolde", "Lurker"}) ==
        "Bram 40 (frightened 1), Ysolde 50 (prone), Lurker 30 (stunned)"
    );
    Table other = reeds(rules::Family::srd5);
    other.give("Bram", "exhaustion", 2);
    game::set_condition_value(
        other.encounter(), other.rulebook, other.id("Bram"), only(other, "Bram").id, -3
    );
    CHECK(other.state({"Bram"}) == "Bram 40");
}

TEST_CASE("conditions: effects worded by the GM stand beside each other") {
    Table table = reeds();
    ActiveCondition song;
    song.name = "Song of steel";
    song.modifiers = {{"attack", 1, rules::BonusType::status, {}}};
    for (int time = 0; time < 2; ++time)
        game::add_condition(table.encounter(), table.rulebook, table.id("Bram"), song);
    CHECK(table.state({"Bram"}) == "Bram 40 (Song of steel; Song of steel)");
    song.name.clear(); // without a name nobody knows what it is
    CHECK_FALSE(game::add_condition(table.encounter(), table.rulebook, table.id("Bram"), song));
}

TEST_CASE("conditions: what another brings along is not stored and goes with it") {
    // Player Core (ORC), conditions, grabbed: off-guard and immobilized.
    Table table = reeds();
    table.give("Bram", "grabbed");
    CHECK(table.state({"Bram"}) == "Bram 40 (grabbed)");
    CHECK(game::has_condition(table.rulebook, table.who("Bram"), "off_guard"));
    CHECK(table.ac("Bram") == 16);
    table.end("Bram", "grabbed");
    CHECK(table.ac("Bram") == 18);
}

TEST_CASE("conditions: drained that takes the last hit point fells its victim") {
    // Player Core (ORC), conditions, drained: level times value, here 4 of 3 left.
    Table table = reeds();
    table.hurt("Bram", 37);
    table.give("Bram", "drained", 1);
    CHECK(table.state({"Bram"}) == "Bram 0 (drained 1; dying 1; prone)");
}

TEST_CASE("conditions: the dead gain nothing more") {
    Table table = reeds();
    table.hurt("Lurker", 30);
    CHECK_FALSE(table.give("Lurker", "prone"));
}
