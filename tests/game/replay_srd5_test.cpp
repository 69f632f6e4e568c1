// A whole fight of six rounds by the SRD 5.1 rules, checked by hand; every expected state was
// worked out on paper. Rules used, by source (SRD 5.1, CC-BY-4.0, unless another is named):
//   [turn]    Combat / The Order of Combat; one action and one reaction
//   [ties]    higher Dexterity first: common practice, no source
//   [resist]  Combat / Damage Resistance and Vulnerability: halved (rounded down), then doubled
//   [zero]    Combat / Dropping to 0 Hit Points: unconscious, death saves, damage at 0, stable,
//   instant death [conc]    Spellcasting / Concentration: Constitution save DC 10 or half the
//   damage [cond]    Appendix PH-A: Conditions [exh]     Appendix PH-A: Exhaustion
#include "fight_table.h"

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

namespace {

const std::vector<std::string> party = {"Perrin", "Wren", "Sable", "Odo", "Hale"};

Table quay_fight() {
    Table table(rules::Family::srd5);
    const auto hero = [&](const char* name, int hp, int armor_class, int dexterity, int constitution
                      ) {
        game::Character character;
        character.name = name;
        character.statistics.level = 3;
        character.statistics.hit_points = hp;
        character.statistics.armor_class = armor_class;
        character.statistics.abilities = {{"dex", dexterity}, {"con", constitution}};
        character.statistics.saves = {{"con", constitution}, {"wis", 1}};
        character.statistics.speeds_ft = {{"land", 30}};
        game::add_character(table.campaign, character);
        table.change(name).standing = game::Standing::in_order;
    };
    hero("Perrin", 28, 18, 0, 2);
    hero("Wren", 24, 14, 2, 2);
    hero("Sable", 21, 15, 3, 1);
    hero("Odo", 18, 12, 2, 2);
    hero("Hale", 30, 16, 1, 3);
    for (const char* name : {"Cutter 1", "Cutter 2"})
        table.foe(name, 11, 12).statistics.abilities = {{"dex", 1}};
    Combatant& brute = table.foe("Brute", 59, 11);
    brute.statistics.abilities = {{"dex", -1}, {"str", 4}};
    brute.statistics.resistances = {{"cold", 0}};
    brute.statistics.weaknesses = {{"fire", 0}};
    for (const auto& [name, total] : std::vector<std::pair<std::string, int>>{
             {"Sable", 19},
             {"Brute", 17},
             {"Perrin", 15},
             {"Cutter 1", 14},
             {"Cutter 2", 14},
             {"Wren", 14},
             {"Hale", 11},
             {"Odo", 9}}) {
        table.initiative(name, total);
    }
    return table;
}

void play_round_1(Table& table) {
    REQUIRE(game::begin_fight(table.encounter(), table.rulebook));
    // [ties] three on 14: Wren has +2, the cutters +1 each and keep their order.
    CHECK(table.order() == "Sable Brute Perrin Wren Cutter 1 Cutter 2 Hale Odo");
    CHECK(table.who("Sable").actions_left == 1);                      // [turn]
    CHECK_FALSE(game::delay_turn(table.encounter(), table.rulebook)); // srd5 has no delay

    table.hurt("Brute", 9, "piercing");
    CHECK(table.next() == "Round 1: Brute");
    CHECK(table.hurt("Sable", 13, "bludgeoning") == "Sable loses 13 bludgeoning");
    table.give("Perrin", "frightened", 0, table.rounds(2, "Brute", TurnEdge::end));
    CHECK(table.next() == "Round 1: Perrin");
    // The Brute's own turn ended just now: one of the two counted ends has passed.
    CHECK(
        game::find_active(table.who("Perrin"), std::string("frightened"))->duration.rounds_left == 1
    );
    const game::Attack sword{"longsword", 5, "1d8+3", "slashing", false, false, "", {}};
    CHECK(
        game::effective_attack(table.rulebook, table.who("Perrin"), sword).mode ==
        rules::RollMode::disadvantage
    ); // [cond]
    CHECK(game::effective_attack(table.rulebook, table.who("Perrin"), sword).total == 5);

    CHECK(table.next() == "Round 1: Wren");
    table.change("Wren").concentrating_on = "Mist";
    table.give("Brute", "restrained", 0, table.rounds(10, "Wren", TurnEdge::start));
    CHECK(game::effective_speed_ft(table.rulebook, table.who("Brute"), "land") == 0); // [cond]
    CHECK(
        game::attacks_against(table.rulebook, table.who("Brute")).mode == rules::RollMode::advantage
    );
    CHECK(table.next() == "Round 1: Cutter 1");
    table.hurt("Wren", 7, "slashing");
    // [conc] half of 7 is 3, so the DC is 10; the Constitution save is +2.
    CHECK(table.asked() == "Wren: Constitution save DC 10 keeps Mist");
    CHECK(table.answer("Wren", 8) == "Wren's concentration 10 against 10: keeps Mist");
    CHECK(table.next() == "Round 1: Cutter 2");
    table.hurt("Odo", 5, "piercing");
    CHECK(table.next() == "Round 1: Hale");
    CHECK(
        table.hurt("Cutter 1", 11) == "Cutter 1 loses 11 slashing, is defeated"
    ); // [zero] opponents die at 0
    CHECK(table.next() == "Round 1: Odo");
    CHECK(
        table.hurt("Brute", 9, "fire") == "Brute loses 18 fire"
    ); // [resist] vulnerability doubles
    CHECK(table.next() == "Round 2: Sable");
    CHECK(
        table.state({"Perrin", "Wren", "Sable", "Odo", "Hale", "Brute"}) ==
        "Perrin 28 (frightened), Wren 17, Sable 8, Odo 13, Hale 30, Brute 32 (restrained)"
    );
}

void play_round_2(Table& table) {
    CHECK(
        table.hurt("Brute", 7, "cold") == "Brute loses 3 cold"
    ); // [resist] 7 halved, rounded down
    CHECK(table.next() == "Round 2: Brute");
    // Sable has 8: 13 brings her to 0 with 5 left over, below her maximum of 21. [zero]
    CHECK(
        table.hurt("Sable", 13, "bludgeoning") == "Sable loses 13 bludgeoning, falls unconscious"
    );
    CHECK(table.order() == "Sable Brute Perrin Wren Cutter 2 Hale Odo"); // no shift in srd5
    CHECK(table.state({"Sable"}) == "Sable 0 (unconscious; prone)");
    CHECK(table.next() == "Round 2: Perrin");
    CHECK(table.notices() == "frightened ends"); // the second end of the Brute's turn
    CHECK(table.next() == "Round 2: Wren");
    CHECK(
        game::find_active(table.who("Brute"), std::string("restrained"))->duration.rounds_left == 9
    );
    CHECK(table.next() == "Round 2: Cutter 2");
    CHECK(
        table.hurt("Wren", 22, "piercing") == "Wren loses 22 piercing, falls unconscious"
    );                                                 // 17, 5 left over < 24
    CHECK(table.who("Wren").concentrating_on.empty()); // [conc] ends when incapacitated
    CHECK(table.next() == "Round 2: Hale");
    table.hurt("Cutter 2", 6);
    CHECK(table.next() == "Round 2: Odo");
    CHECK(table.hurt("Brute", 5, "fire") == "Brute loses 10 fire");
    CHECK(table.next() == "Round 3: Sable");
    CHECK(
        table.state({"Perrin", "Wren", "Sable", "Odo", "Hale", "Brute", "Cutter 2"}) ==
        "Perrin 28, Wren 0 (unconscious; prone), Sable 0 (unconscious; prone), Odo 13, Hale 30, "
        "Brute 19 (restrained), Cutter 2 5"
    );
}

void play_round_3(Table& table) {
    CHECK(table.who("Sable").actions_left == 0); // [cond] unconscious: incapacitated
    CHECK(table.asked() == "Sable: Death save DC 10 (0 good, 0 bad so far)"); // [zero]
    CHECK(
        table.answer("Sable", 1) == "Sable's death save 1: 2 failed death saves"
    ); // a 1 counts twice
    CHECK(table.next() == "Round 3: Brute");
    table.hurt("Hale", 13, "bludgeoning");
    CHECK(table.next() == "Round 3: Perrin");
    CHECK(table.heal("Sable", 5) == "Sable regains 5, now 5, awake"); // [zero] counts start afresh
    CHECK(table.who("Sable").death_saves.failures == 0);
    CHECK(table.state({"Sable"}) == "Sable 5 (prone)");
    CHECK(table.next() == "Round 3: Wren");
    CHECK(table.answer("Wren", 12) == "Wren's death save 12: 1 successful death saves");
    CHECK(table.next() == "Round 3: Cutter 2");
    // A critical hit at 0 HP counts as two failures. [zero]
    CHECK(table.critical("Wren", 6, "piercing") == "Wren loses 6 piercing, 2 failed death saves");
    CHECK(table.next() == "Round 3: Hale");
    CHECK(table.hurt("Cutter 2", 5) == "Cutter 2 loses 5 slashing, is defeated");
    CHECK(table.next() == "Round 3: Odo");
    table.change("Odo").concentrating_on = "Web";
    CHECK(table.next() == "Round 4: Sable");
    CHECK(table.order() == "Sable Brute Perrin Wren Hale Odo");
}

void play_round_4(Table& table) {
    table.end("Sable", "prone");
    table.hurt("Brute", 8, "piercing");
    CHECK(table.next() == "Round 4: Brute");
    CHECK(
        table.hurt("Odo", 26, "bludgeoning") == "Odo loses 26 bludgeoning, falls unconscious"
    ); // 13 left over < 18
    CHECK(table.who("Odo").concentrating_on.empty());
    CHECK(table.asked().empty()); // no save is asked of the unconscious
    CHECK(table.next() == "Round 4: Perrin");
    CHECK(table.next() == "Round 4: Wren");
    CHECK(table.answer("Wren", 20) == "Wren's death save 20: awake with 1 HP"); // [zero]
    CHECK(
        table.state({"Wren", "Odo", "Brute"}) ==
        "Wren 1 (prone), Odo 0 (unconscious; prone), Brute 11 (restrained)"
    );
    CHECK(table.next() == "Round 4: Hale");
    game::give_temp_hp(table.encounter(), table.id("Hale"), 5);
    game::give_temp_hp(
        table.encounter(), table.id("Hale"), 3
    ); // temporary HP do not add up: 5 stay
    CHECK(table.next() == "Round 4: Odo");
    CHECK(table.answer("Odo", 10) == "Odo's death save 10: 1 successful death saves");
    CHECK(table.next() == "Round 5: Sable");
    CHECK(table.state({"Hale"}) == "Hale 17+5");
}

void play_round_5(Table& table) {
    table.give("Sable", "exhaustion", 3);
    // [exh] level 3: attacks and saves at disadvantage, speed halved from level 2.
    const game::Attack rapier{"rapier", 5, "1d8+3", "piercing", false, false, "finesse", {}};
    CHECK(
        game::effective_attack(table.rulebook, table.who("Sable"), rapier).mode ==
        rules::RollMode::disadvantage
    );
    CHECK(
        game::effective_check(table.rulebook, table.who("Sable"), "dex").mode ==
        rules::RollMode::disadvantage
    );
    CHECK(game::effective_speed_ft(table.rulebook, table.who("Sable"), "land") == 15);
    table.give("Sable", "invisible"); // advantage on attacks cancels the disadvantage
    CHECK(
        game::effective_attack(table.rulebook, table.who("Sable"), rapier).mode ==
        rules::RollMode::normal
    );
    CHECK(table.next() == "Round 5: Brute");
    CHECK(table.hurt("Hale", 13, "bludgeoning") == "Hale loses 13 bludgeoning (5 temporary)");
    CHECK(table.next() == "Round 5: Perrin");
    table.give("Brute", "stunned", 0, table.until("Perrin", TurnEdge::end));
    CHECK(game::effective_check(table.rulebook, table.who("Brute"), "str").fails
    ); // [cond] fails Str and Dex saves
    CHECK_FALSE(game::can_react(table.rulebook, table.who("Brute")));
    CHECK(table.next() == "Round 5: Wren");
    // It was given in Perrin's own turn, so the end of that same turn ends it: the GM picks "next
    // turn" by rounds.
    CHECK(table.notices() == "stunned ends");
    CHECK(table.next() == "Round 5: Hale");
    table.give("Brute", "stunned", 0, table.rounds(1, "Hale", TurnEdge::start));
    CHECK(table.next() == "Round 5: Odo");
    CHECK(table.answer("Odo", 13) == "Odo's death save 13: 2 successful death saves");
    CHECK(table.next() == "Round 6: Sable");
    CHECK(
        table.state(party) == "Perrin 28, Wren 1 (prone), Sable 5 (exhaustion 3; invisible), Odo 0 "
                              "(unconscious; prone), Hale 9"
    );
}

void play_round_6(Table& table) {
    table.hurt("Brute", 4, "piercing");
    CHECK(table.next() == "Round 6: Brute");
    CHECK(table.who("Brute").actions_left == 0); // [cond] stunned: incapacitated
    CHECK(table.next() == "Round 6: Perrin");
    CHECK(table.next() == "Round 6: Wren");
    CHECK(table.next() == "Round 6: Hale");
    CHECK(table.notices() == "stunned ends"); // the start of Hale's next turn
    CHECK(table.hurt("Brute", 7) == "Brute loses 7 slashing, is defeated");
    CHECK(table.next() == "Round 6: Odo");
    CHECK(table.answer("Odo", 17) == "Odo's death save 17: stable"); // [zero] the third success
    CHECK(table.who("Odo").death_saves.is_stable);
    CHECK(table.next() == "Round 7: Sable");
    CHECK(table.encounter().elapsed_seconds == 36);
}

} // namespace

TEST_CASE("replay: six rounds on the quay, srd5") {
    Table table = quay_fight();
    play_round_1(table);
    play_round_2(table);
    play_round_3(table);
    play_round_4(table);
    play_round_5(table);
    play_round_6(table);
    check_order(table.encounter());
    game::end_fight(table.campaign, table.rulebook);
    CHECK(
        table.state(party) == "Perrin 28, Wren 1 (prone), Sable 5 (exhaustion 3; invisible), Odo 0 "
                              "(unconscious; prone), Hale 9"
    );
    CHECK(game::find_problems(table.campaign, table.rulebook).empty());
}
