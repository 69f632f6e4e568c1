// A whole fight of six rounds, checked by hand against the rules; every expected state was worked
// out on paper. Rules used, by source:
//   [turn]      Player Core (ORC), encounter mode: three actions and a reaction at the start of
//   each turn [ties]      Player Core (ORC), Roll Initiative: an opponent acts before a player
//   character on a tie [fright]    Player Core (ORC), conditions, frightened: -value to checks and
//   DCs, drops at the end of the own turn [persist]   Player Core (ORC), conditions, persistent
//   damage: damage at the end of the turn, then flat check DC 15 [grab]      Player Core (ORC),
//   conditions, grabbed: off-guard, -2 circumstance to AC [stack]     Player Core (ORC), bonuses
//   and penalties: different types add up [slow]      Player Core (ORC), conditions, slowed: that
//   many actions fewer [stun]      Player Core (ORC), conditions, stunned: actions lost reduce the
//   value [dying]     Player Core (ORC), Hit Points, Healing, and Dying: dying 1, or 2 from a
//   critical hit; moves before the turn
//               that dropped it; recovery check DC 10 + dying; healing ends dying and leaves
//               wounded 1
//   [weak]      Player Core (ORC), Damage: weakness adds, resistance subtracts
//   [temp]      Player Core (ORC), temporary Hit Points are lost first
//   [delay]     Player Core (ORC), Delay (from memory)
#include "fight_table.h"

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

namespace {

const std::vector<std::string> party = {"Ysolde", "Orrin", "Bram", "Tamsin", "Kettil"};

Table reed_fight() {
    Table table(rules::Family::four_degree);
    table.hero("Ysolde", 58, 22);
    table.hero("Orrin", 46, 21);
    table.hero("Bram", 46, 19);
    table.hero("Tamsin", 36, 19);
    table.hero("Kettil", 54, 21);
    for (const char* name : {"Lurker 1", "Lurker 2"}) {
        Combatant& lurker = table.foe(name, 30, 18);
        lurker.statistics.weaknesses = {{"fire", 3}};
        lurker.statistics.resistances = {{"cold", 3}};
    }
    table.foe("Mudcaller", 60, 20);
    table.foe("Hound 1", 16, 16);
    table.foe("Hound 2", 16, 16);
    game::make_group(table.encounter(), table.rulebook, {table.id("Hound 1"), table.id("Hound 2")});
    for (const auto& [name, total] : std::vector<std::pair<std::string, int>>{
             {"Mudcaller", 24},
             {"Ysolde", 21},
             {"Orrin", 19},
             {"Hound 1", 19},
             {"Lurker 1", 17},
             {"Bram", 15},
             {"Lurker 2", 13},
             {"Tamsin", 12},
             {"Kettil", 9}}) {
        table.initiative(name, total);
    }
    return table;
}

void play_round_1(Table& table) {
    REQUIRE(game::begin_fight(table.encounter(), table.rulebook));
    // [ties] the hounds act before Orrin on 19; the group stands together.
    CHECK(
        table.order() ==
        "Mudcaller Ysolde Hound 1 Hound 2 Orrin Lurker 1 Bram Lurker 2 Tamsin Kettil"
    );
    CHECK(table.current() == "Mudcaller");
    CHECK(table.who("Mudcaller").actions_left == 3); // [turn]

    table.give("Ysolde", "frightened", 2);
    table.give("Bram", "frightened", 2);
    CHECK(table.next() == "Round 1: Ysolde");
    CHECK(
        table.state(party) ==
        "Ysolde 58 (frightened 2), Orrin 46, Bram 46 (frightened 2), Tamsin 36, Kettil 54"
    );
    CHECK(table.ac("Ysolde") == 20); // [fright] 22 - 2

    table.hurt("Hound 1", 12);
    ActiveCondition shield;
    shield.name = "Shield raised";
    shield.modifiers = {{"ac", 2, rules::BonusType::circumstance}};
    shield.duration = table.until("Ysolde", TurnEdge::start);
    REQUIRE(game::add_condition(table.encounter(), table.rulebook, table.id("Ysolde"), shield));
    CHECK(table.ac("Ysolde") == 22); // [stack] 22 - 2 status + 2 circumstance
    CHECK(table.next() == "Round 1: Hound 1");
    CHECK(table.notices() == "frightened drops to 1"); // [fright]
    CHECK(
        table.state({"Ysolde", "Hound 1"}) == "Ysolde 58 (frightened 1; Shield raised), Hound 1 4"
    );

    table.hurt("Ysolde", 7, "piercing");
    CHECK(table.next() == "Round 1: Hound 2");
    table.hurt("Orrin", 5, "piercing");
    CHECK(table.next() == "Round 1: Orrin");
    CHECK(
        table.state(party) == "Ysolde 51 (frightened 1; Shield raised), Orrin 41, Bram 46 "
                              "(frightened 2), Tamsin 36, Kettil 54"
    );

    REQUIRE(game::delay_turn(table.encounter(), table.rulebook)); // [delay] Orrin steps out
    CHECK(table.current() == "Lurker 1");
    CHECK(table.order() == "Mudcaller Ysolde Hound 1 Hound 2 Lurker 1 Bram Lurker 2 Tamsin Kettil");
    table.hurt("Bram", 9, "piercing");
    table.give("Bram", "grabbed");
    CHECK(table.ac("Bram") == 15); // [grab] [fright] [stack] 19 - 2 circumstance - 2 status
    CHECK(table.next() == "Round 1: Bram");

    CHECK(table.heal("Ysolde", 12) == "Ysolde regains 7, now 58"); // never above the maximum
    CHECK(table.next() == "Round 1: Lurker 2");
    CHECK(
        table.state({"Ysolde", "Bram"}) ==
        "Ysolde 58 (frightened 1; Shield raised), Bram 37 (frightened 1; grabbed)"
    );

    table.hurt("Tamsin", 8, "piercing");
    REQUIRE(game::return_from_delay(table.encounter(), table.rulebook, table.id("Orrin"))
    ); // [delay]
    CHECK(table.current() == "Orrin");
    CHECK(table.who("Orrin").actions_left == 3);
    CHECK(table.who("Orrin").initiative == 13);
    CHECK(table.hurt("Hound 2", 17, "piercing") == "Hound 2 loses 17 piercing, is defeated");
    CHECK(table.order() == "Mudcaller Ysolde Hound 1 Lurker 1 Bram Lurker 2 Orrin Tamsin Kettil");
    CHECK(table.next() == "Round 1: Tamsin");

    CHECK(table.hurt("Lurker 1", 6, "fire") == "Lurker 1 loses 9 fire"); // [weak] 6 + 3
    ActiveCondition burning;
    burning.key = "persistent_damage";
    burning.damage = "1d6";
    burning.damage_type = "fire";
    REQUIRE(game::add_condition(table.encounter(), table.rulebook, table.id("Lurker 1"), burning));
    CHECK(table.next() == "Round 1: Kettil");
    CHECK(table.state({"Lurker 1", "Tamsin"}) == "Lurker 1 21 (persistent 1d6 fire), Tamsin 28");

    table.hurt("Mudcaller", 14, "piercing");
    CHECK(table.next() == "Round 2: Mudcaller");
    CHECK(table.encounter().elapsed_seconds == 6); // [turn] a round takes six seconds
}

void play_round_2(Table& table) {
    table.give("Kettil", "slowed", 1, table.rounds(2, "Mudcaller", TurnEdge::start));
    table.critical("Ysolde", 28, "acid");
    CHECK(table.next() == "Round 2: Ysolde");
    CHECK(table.notices() == "Shield raised ends"); // until the start of her turn
    CHECK(
        table.state(party) == "Ysolde 30 (frightened 1), Orrin 41, Bram 37 (frightened 1; "
                              "grabbed), Tamsin 28, Kettil 54 (slowed 1)"
    );
    CHECK(table.ac("Ysolde") == 21); // [fright] 22 - 1

    table.hurt("Hound 1", 10);
    CHECK(table.next() == "Round 2: Lurker 1");
    CHECK(
        table.state({"Ysolde", "Hound 1"}) == "Ysolde 30, Hound 1 0 dead"
    ); // [fright] 1 drops to 0 and ends
    CHECK(table.order() == "Mudcaller Ysolde Lurker 1 Bram Lurker 2 Orrin Tamsin Kettil");

    CHECK(table.ac("Bram") == 16); // 19 - 2 - 1
    table.critical("Bram", 20, "piercing");
    CHECK(table.next() == "Round 2: Bram");
    CHECK(table.asked() == "Lurker 1: Roll 1d6 fire persistent damage"); // [persist]
    CHECK(
        table.answer("Lurker 1", 4) == "Persistent damage: Lurker 1 loses 7 fire"
    ); // [weak] 4 + 3
    CHECK(table.asked() == "Lurker 1: Flat check DC 15 ends persistent 1d6 fire");
    CHECK(
        table.answer("Lurker 1", 9) ==
        "Lurker 1's flat check 9 against 15: failure, persistent 1d6 fire stays"
    );
    CHECK(
        table.state({"Bram", "Lurker 1"}) ==
        "Bram 17 (frightened 1; grabbed), Lurker 1 14 (persistent 1d6 fire)"
    );

    table.end("Bram", "grabbed");
    CHECK(table.next() == "Round 2: Lurker 2");
    CHECK(table.state({"Bram"}) == "Bram 17");
    CHECK(table.ac("Bram") == 19);

    table.hurt("Tamsin", 10, "piercing");
    CHECK(table.next() == "Round 2: Orrin");
    table.hurt("Lurker 2", 11, "piercing");
    CHECK(table.next() == "Round 2: Tamsin");
    CHECK(table.hurt("Lurker 1", 12, "cold") == "Lurker 1 loses 9 cold"); // [weak] resists 3
    game::give_temp_hp(table.encounter(), table.id("Bram"), 8);
    CHECK(table.next() == "Round 2: Kettil");
    CHECK(table.who("Kettil").actions_left == 2); // [slow] 3 - 1
    CHECK(
        table.state({"Bram", "Tamsin", "Lurker 1", "Lurker 2"}) ==
        "Bram 17+8, Tamsin 18, Lurker 1 5 (persistent 1d6 fire), Lurker 2 19"
    );

    CHECK(table.hurt("Lurker 1", 9, "piercing") == "Lurker 1 loses 9 piercing, is defeated");
    CHECK(table.next() == "Round 3: Mudcaller");
    CHECK(table.order() == "Mudcaller Ysolde Bram Lurker 2 Orrin Tamsin Kettil");
}

void play_round_3(Table& table) {
    CHECK(
        table.state({"Kettil"}) == "Kettil 54 (slowed 1)"
    ); // one of two rounds has run at the Mudcaller's start
    CHECK(game::find_active(table.who("Kettil"), std::string("slowed"))->duration.rounds_left == 1);

    // [temp] 8 of 28 are absorbed, 20 take 17 to 0; [dying] a critical hit: dying 2; Bram moves
    // before the Mudcaller.
    CHECK(table.critical("Bram", 28, "acid") == "Bram loses 28 acid (8 temporary), is dying 2");
    CHECK(table.order() == "Bram Mudcaller Ysolde Lurker 2 Orrin Tamsin Kettil");
    CHECK(table.who("Bram").initiative == 24);
    CHECK(table.current() == "Mudcaller");
    CHECK(table.state({"Bram"}) == "Bram 0 (dying 2; prone)"); // unconscious brings prone
    CHECK(table.ac("Bram") == 13); // 19 - 4 status (unconscious) - 2 circumstance (off-guard)

    CHECK(table.next() == "Round 3: Ysolde");
    table.hurt("Mudcaller", 15);
    table.give("Mudcaller", "stunned", 4);
    CHECK(table.next() == "Round 3: Lurker 2");
    table.hurt("Ysolde", 9, "piercing");
    CHECK(table.next() == "Round 3: Orrin");
    CHECK(table.state({"Ysolde", "Mudcaller"}) == "Ysolde 21, Mudcaller 31 (stunned 4)");

    table.hurt("Lurker 2", 12, "piercing");
    CHECK(table.next() == "Round 3: Tamsin");
    // A saved area effect: 15 halved is 7, [weak] + 3 fire = 10; the lurker has 7.
    CHECK(table.half("Lurker 2", 15, "fire") == "Lurker 2 loses 10 fire, is defeated");
    CHECK(table.next() == "Round 3: Kettil");
    CHECK(table.who("Kettil").actions_left == 2);
    table.hurt("Mudcaller", 10, "piercing");
    CHECK(table.next() == "Round 4: Bram");
    CHECK(table.encounter().elapsed_seconds == 18);
}

void play_round_4(Table& table) {
    CHECK(table.who("Bram").actions_left == 0);                 // unconscious: cannot act
    CHECK(table.asked() == "Bram: Recovery check: flat DC 12"); // [dying] 10 + 2
    CHECK(table.answer("Bram", 8) == "Bram's recovery check 8 against 12: dying 3");
    CHECK(table.next() == "Round 4: Mudcaller");
    CHECK(
        table.notices() == "slowed 1 ends; stunned 4 takes 3 actions"
    ); // [stun] and the second of two rounds
    CHECK(table.who("Mudcaller").actions_left == 0);
    CHECK(table.state({"Mudcaller", "Kettil"}) == "Mudcaller 21 (stunned 1), Kettil 54");

    CHECK(table.next() == "Round 4: Ysolde");
    CHECK(table.heal("Bram", 6) == "Bram regains 6, now 6, awake"); // [dying]
    CHECK(table.state({"Bram"}) == "Bram 6 (prone; wounded 1)");
    CHECK(table.next() == "Round 4: Orrin");

    // A third lurker comes in late with 22: above the present turn, so it acts from the next round
    // on.
    const Id late = game::add_stranger(
        table.encounter(), table.rulebook, "Lurker 3", game::Side::opponents, 30, 18, 22
    );
    REQUIRE(late != base::no_id);
    table.change("Lurker 3").statistics.weaknesses = {{"fire", 3}};
    CHECK(table.order() == "Bram Mudcaller Lurker 3 Ysolde Orrin Tamsin Kettil");
    CHECK(table.next() == "Round 4: Tamsin");
    CHECK(table.next() == "Round 4: Kettil");
    CHECK(table.who("Kettil").actions_left == 3); // slowed no more
    table.hurt("Mudcaller", 9, "piercing");
    CHECK(table.next() == "Round 5: Bram");
}

void play_round_5(Table& table) {
    CHECK(table.who("Bram").actions_left == 3);
    table.end("Bram", "prone");
    table.heal("Bram", 16);
    CHECK(table.state({"Bram"}) == "Bram 22 (wounded 1)");
    CHECK(table.next() == "Round 5: Mudcaller");
    CHECK(table.who("Mudcaller").actions_left == 2); // [stun] the last of four lost actions: 3 - 1
    CHECK(table.state({"Mudcaller"}) == "Mudcaller 12");
    table.hurt("Ysolde", 14, "bludgeoning");
    CHECK(table.next() == "Round 5: Lurker 3");

    // [dying] Ysolde falls and moves before the lurker: her turn of this round is gone.
    CHECK(table.hurt("Ysolde", 9, "piercing") == "Ysolde loses 9 piercing, is dying 1");
    CHECK(table.order() == "Bram Mudcaller Ysolde Lurker 3 Orrin Tamsin Kettil");
    CHECK(table.next() == "Round 5: Orrin");
    CHECK(table.hurt("Mudcaller", 12, "piercing") == "Mudcaller loses 12 piercing, is defeated");
    CHECK(table.next() == "Round 5: Tamsin");
    table.hurt("Lurker 3", 9, "fire");
    CHECK(table.next() == "Round 5: Kettil");
    CHECK(
        table.state({"Ysolde", "Lurker 3"}) == "Ysolde 0 (dying 1; prone), Lurker 3 18"
    ); // 30 - 9 - 3
    table.hurt("Lurker 3", 17, "piercing");
    CHECK(table.next() == "Round 6: Bram");
}

void play_round_6(Table& table) {
    CHECK(table.heal("Ysolde", 10) == "Ysolde regains 10, now 10, awake");
    CHECK(table.next() == "Round 6: Ysolde");
    CHECK(table.asked().empty()); // no recovery check for one who is awake
    CHECK(table.who("Ysolde").actions_left == 3);
    CHECK(table.hurt("Lurker 3", 5) == "Lurker 3 loses 5 slashing, is defeated");
    CHECK(table.next() == "Round 6: Orrin");
    CHECK(table.encounter().elapsed_seconds == 30);
}

} // namespace

TEST_CASE("replay: six rounds in the reeds, four-degree") {
    Table table = reed_fight();
    play_round_1(table);
    play_round_2(table);
    play_round_3(table);
    play_round_4(table);
    play_round_5(table);
    play_round_6(table);
    check_order(table.encounter());

    table.campaign.clock = {12, 86390, {}};
    game::end_fight(table.campaign, table.rulebook);
    // Thirty seconds later it is the next day; wounds and lasting conditions stay, opponents are
    // gone.
    CHECK(table.campaign.clock.day == 13);
    CHECK(table.campaign.clock.second_of_day == 20);
    CHECK(
        table.state(party) ==
        "Ysolde 10 (prone; wounded 1), Orrin 41, Bram 22 (wounded 1), Tamsin 18, Kettil 54"
    );
    CHECK(table.encounter().combatants.size() == 5);
    CHECK(game::find_problems(table.campaign, table.rulebook).empty());
}
