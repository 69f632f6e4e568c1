// A whole fight of six rounds and a bit by the SRD 5.1 rules, checked by hand: the state after
// every turn was worked out on paper from the rules, not taken from the program. Rules used, by
// source (SRD 5.1, CC-BY-4.0, unless another is named):
//   [turn]    Combat / The Order of Combat and Reactions: one action; a round is six seconds
//   [ties]    higher Dexterity first, then the order they were listed in: common practice, no
//   source [resist]  Combat / Damage Resistance and Vulnerability: halved, rounded down, or doubled
//   [zero]    Combat / Dropping to 0 Hit Points: unconscious; death saves at the start of the turn;
//             a 1 counts twice, a 20 wakes with 1; a critical hit at 0 is two failures; three
//             successes make stable; healing wakes and clears the counts; opponents die at 0
//   [temp]    Combat / Temporary Hit Points: lost first, do not add up
//   [conc]    Spellcasting / Concentration: Constitution save of 10 or half the damage; ends when
//             incapacitated
//   [cond]    Appendix PH-A: Conditions
//   [exh]     Appendix PH-A: Exhaustion
//   [adv]     Using Ability Scores / Advantage and Disadvantage: one of each cancel
//   [late]    who comes in above the present turn acts from the next round on (common practice, no
//             source)
#include "replay_script.h"

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

namespace {

void add_hero(
    Table& table, const std::string& name, int hp, int armor_class, int dexterity, int constitution
) {
    game::Character character;
    character.name = name;
    character.statistics.level = 3;
    character.statistics.hit_points = hp;
    character.statistics.armor_class = armor_class;
    character.statistics.abilities = {{"dex", dexterity}, {"con", constitution}};
    character.statistics.saves = {{"con", constitution}, {"wis", 1}};
    character.statistics.speeds_ft = {{"land", 30}};
    character.statistics.attacks = {{"sword", 5, "1d8+3", "slashing", false, false, "", {}}};
    game::add_character(table.campaign, character);
    table.change(name).standing = game::Standing::in_order;
}

Table quay_fight() {
    Table table(rules::Family::srd5);
    add_hero(table, "Perrin", 28, 18, 0, 2);
    add_hero(table, "Wren", 24, 14, 2, 2);
    add_hero(table, "Sable", 21, 15, 3, 1);
    add_hero(table, "Odo", 18, 12, 2, 2);
    add_hero(table, "Hale", 30, 16, 1, 3);
    for (const char* name : {"Cutter 1", "Cutter 2"})
        table.foe(name, 11, 12).statistics.abilities = {{"dex", 1}};
    game::make_group(
        table.encounter(), table.rulebook, {table.id("Cutter 1"), table.id("Cutter 2")}
    );
    Combatant& brute = table.foe("Brute", 59, 11);
    brute.statistics.abilities = {{"dex", -1}, {"str", 4}};
    brute.statistics.resistances = {{"cold", 0, {}}};
    brute.statistics.weaknesses = {{"fire", 0, {}}};
    brute.statistics.speeds_ft = {{"land", 40}};
    for (const auto& [name, total] : std::vector<std::pair<std::string, int>>{
             {"Sable", 19},
             {"Brute", 17},
             {"Perrin", 15},
             {"Cutter 1", 14},
             {"Wren", 14},
             {"Hale", 11},
             {"Odo", 9}}) {
        table.initiative(name, total);
    }
    return table;
}

constexpr const char* rounds_1_and_2 = R"(
Round 1: Sable
    actions 1                                          # [turn]
    order Sable Brute Perrin Wren Cutter 1 Cutter 2 Hale Odo   # [ties] Wren +2, the cutters +1
    hurt Brute 9 piercing
Round 1: Brute
    actions 1
    state Brute 50
    hurt Sable 13 bludgeoning
    give Perrin frightened for 2 rounds at end of Brute
Round 1: Perrin
    actions 1
    state Perrin 28 (frightened: 1 round), Sable 8     # the Brute's own turn just ended
    strike Perrin = 5 disadvantage                     # [cond] frightened
Round 1: Wren
    actions 1
    concentrate Wren on Mist
    give Brute restrained for 10 rounds at start of Wren
    against Brute = 0 advantage                        # [cond] restrained
    speed Brute = 0
Round 1: Cutter 1
    actions 1
    state Wren 24 on Mist, Brute 50 (restrained: 10 rounds)
    hurt Wren 7 slashing
    answer Wren 8 -> Wren's concentration 10 against 10: keeps Mist   # [conc] half of 7 is below 10
Round 1: Cutter 2
    actions 1
    state Wren 17 on Mist
    hurt Odo 5 piercing
Round 1: Hale
    actions 1
    state Odo 13
    hurt Cutter 1 11 slashing -> Cutter 1 loses 11 slashing, is defeated   # [zero]
Round 1: Odo
    actions 1
    order Sable Brute Perrin Wren Cutter 2 Hale Odo
    state Cutter 1 0 dead
    hurt Brute 9 fire -> Brute loses 18 fire           # [resist] doubled
Round 2: Sable
    actions 1
    state Brute 32 (restrained: 10 rounds)
    elapsed fight = 6                                  # [turn]
    hurt Brute 7 cold -> Brute loses 3 cold            # [resist] 7 halved is 3
Round 2: Brute
    actions 1
    state Brute 29 (restrained: 10 rounds)
    # [zero] 8 of 13 are enough, 5 left over are below her maximum of 21
    hurt Sable 13 bludgeoning -> Sable loses 13 bludgeoning, falls unconscious
Round 2: Perrin
    actions 1
    notice Perrin: frightened ends                     # the second end of the Brute's turn
    state Perrin 28, Sable 0 (unconscious; prone)      # no place in the order changes in srd5
    strike Perrin = 5
Round 2: Wren
    actions 1
    state Brute 29 (restrained: 9 rounds)
Round 2: Cutter 2
    actions 1
    hurt Wren 22 piercing -> Wren loses 22 piercing, falls unconscious   # 5 left over, below 24
    said Wren: Concentration on Mist ends: falls       # [conc]
Round 2: Hale
    actions 1
    state Wren 0 (unconscious; prone)
    hurt Cutter 2 6 slashing
Round 2: Odo
    actions 1
    state Cutter 2 5
    hurt Brute 5 fire -> Brute loses 10 fire
)";

constexpr const char* rounds_3_and_4 = R"(
Round 3: Sable
    actions 0                                          # [cond] unconscious: incapacitated
    asked Sable: Death save DC 10 (0 good, 0 bad so far)
    state Brute 19 (restrained: 9 rounds)
    answer Sable 1 -> Sable's death save 1: 2 failed death saves   # [zero] a 1 counts twice
Round 3: Brute
    actions 1
    state Sable 0 (unconscious; prone) saves 0/2
    hurt Hale 13 bludgeoning
Round 3: Perrin
    actions 1
    state Hale 17
    heal Sable 5 -> Sable regains 5, now 5, awake      # [zero]
Round 3: Wren
    actions 0
    asked Wren: Death save DC 10 (0 good, 0 bad so far)
    state Sable 5 (prone), Brute 19 (restrained: 8 rounds)
    answer Wren 12 -> Wren's death save 12: 1 successful death saves
Round 3: Cutter 2
    actions 1
    state Wren 0 (unconscious; prone) saves 1/0
    hurt Wren 6 piercing critical -> Wren loses 6 piercing, 2 failed death saves   # [zero]
Round 3: Hale
    actions 1
    state Wren 0 (unconscious; prone) saves 1/2
    hurt Cutter 2 5 slashing -> Cutter 2 loses 5 slashing, is defeated
Round 3: Odo
    actions 1
    order Sable Brute Perrin Wren Hale Odo
    state Cutter 2 0 dead
    concentrate Odo on Web
    late 11 12 12 Cutter 3
Round 4: Sable
    actions 1
    order Sable Brute Perrin Wren Cutter 3 Hale Odo    # [late] 12 stands above Odo
    state Odo 13 on Web, Cutter 3 11
    end Sable prone
    hurt Brute 8 piercing
Round 4: Brute
    actions 1
    state Sable 5, Brute 11 (restrained: 8 rounds)
    # 13 left over are below his maximum of 18; no save is asked of the unconscious
    hurt Odo 26 bludgeoning -> Odo loses 26 bludgeoning, falls unconscious
    said Odo: Concentration on Web ends: falls
Round 4: Perrin
    actions 1
    state Odo 0 (unconscious; prone)
Round 4: Wren
    actions 0
    asked Wren: Death save DC 10 (1 good, 2 bad so far)
    state Brute 11 (restrained: 7 rounds)
    answer Wren 20 -> Wren's death save 20: awake with 1 HP   # [zero]
Round 4: Cutter 3
    actions 1
    state Wren 1 (prone)
    hurt Hale 4 slashing
Round 4: Hale
    actions 1
    state Hale 13
    temp Hale 5
    temp Hale 3 -> Hale has 5 temporary HP             # [temp]
    hurt Cutter 3 12 slashing -> Cutter 3 loses 12 slashing, is defeated
Round 4: Odo
    actions 0
    order Sable Brute Perrin Wren Hale Odo
    asked Odo: Death save DC 10 (0 good, 0 bad so far)
    state Hale 13+5, Cutter 3 0 dead
    answer Odo 10 -> Odo's death save 10: 1 successful death saves
)";

constexpr const char* rounds_5_to_7 = R"(
Round 5: Sable
    actions 1
    state Odo 0 (unconscious; prone) saves 1/0
    give Sable exhaustion 3
    strike Sable = 5 disadvantage                      # [exh] from level 3
    check Sable dex = 3 disadvantage                   # [exh] saves too
    speed Sable = 15                                   # [exh] halved from level 2
    give Sable invisible for 12 seconds
    strike Sable = 5                                   # [adv] invisible and exhausted
Round 5: Brute
    actions 1
    state Sable 5 (exhaustion 3; invisible: 12 s)
    hurt Hale 13 bludgeoning -> Hale loses 13 bludgeoning (5 temporary)   # [temp]
Round 5: Perrin
    actions 1
    state Hale 5                                       # 13 - (13 - 5)
    give Brute stunned for 2 rounds at end of Perrin   # until the end of his next turn
    check Brute str = 4 fails                          # [cond] stunned
Round 5: Wren
    actions 1
    state Brute 11 (restrained: 6 rounds; stunned: 1 round)
Round 5: Hale
    actions 1
Round 5: Odo
    actions 0
    asked Odo: Death save DC 10 (1 good, 0 bad so far)
    answer Odo 13 -> Odo's death save 13: 2 successful death saves
Round 6: Sable
    actions 1
    state Sable 5 (exhaustion 3; invisible: 6 s), Odo 0 (unconscious; prone) saves 2/0
    hurt Brute 4 piercing
Round 6: Brute
    actions 0                                          # [cond] stunned: incapacitated
    state Brute 7 (restrained: 6 rounds; stunned: 1 round)
Round 6: Perrin
    actions 1
Round 6: Wren
    actions 1
    notice Brute: stunned ends
    state Brute 7 (restrained: 5 rounds)
Round 6: Hale
    actions 1
    hurt Brute 3 slashing
Round 6: Odo
    actions 0
    asked Odo: Death save DC 10 (2 good, 0 bad so far)
    state Brute 4 (restrained: 5 rounds)
    answer Odo 17 -> Odo's death save 17: stable       # [zero] the third success
Round 7: Sable
    actions 1
    notice Sable: invisible ends                       # two rounds are twelve seconds
    state Sable 5 (exhaustion 3), Odo 0 (unconscious; prone) stable
    elapsed fight = 36                                 # [turn]
    hurt Brute 4 piercing -> Brute loses 4 piercing, is defeated
)";

} // namespace

TEST_CASE("replay: seven rounds on the quay, srd5") {
    Table table = quay_fight();
    Replay replay(table);
    replay.play(rounds_1_and_2);
    replay.play(rounds_3_and_4);
    replay.play(rounds_5_to_7);
    CHECK(table.order() == "Sable Perrin Wren Hale Odo");

    game::end_fight(table.campaign, table.rulebook);
    CHECK(
        table.state({"Perrin", "Wren", "Sable", "Odo", "Hale"}) ==
        "Perrin 28, Wren 1 (prone), Sable 5 (exhaustion 3), Odo 0 (unconscious; prone), Hale 5"
    );
    CHECK(game::find_problems(table.campaign, table.rulebook).empty());
}
