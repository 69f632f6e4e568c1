// A whole fight of six rounds and a bit, checked by hand: the state after every turn was worked out
// on paper from the rules, not taken from the program. Rules used, by source:
//   [turn]    Player Core (ORC), encounter mode: three actions at the start of each turn; a round
//             is six seconds
//   [ties]    Player Core (ORC), Roll Initiative: an opponent acts before a player character
//   [fright]  Player Core (ORC), conditions, frightened: -value on checks and DCs, one less at the
//             end of each own turn
//   [persist] Player Core (ORC), conditions, persistent damage, and flat checks: damage at the end
//             of the turn, then a flat check of 15
//   [grab]    Player Core (ORC), conditions, grabbed and off-guard: -2 circumstance to AC
//   [stack]   Player Core (ORC), bonuses and penalties: of one type the worst counts, different
//             types add up
//   [slow]    Player Core (ORC), conditions, slowed: that many actions fewer
//   [quick]   Player Core (ORC), conditions, quickened: one action more
//   [stun]    Player Core (ORC), conditions, stunned: actions lost reduce the value
//   [sick]    Player Core (ORC), conditions, sickened: -value on checks; a save lowers it by 1, by
//             2 on a critical success
//   [degree]  Player Core (ORC), Checks, degree of success: a natural 20 is one degree better
//   [dying]   Player Core (ORC), Hit Points, Healing, and Dying: dying 1, or 2 from a critical hit,
//             and wounded on top; moves to before the turn that dropped it; recovery check of 10 +
//             dying at the start of the turn; whoever loses dying is wounded by one more
//   [weak]    Player Core (ORC), Damage: half first, then weakness adds, then resistance subtracts
//   [temp]    Player Core (ORC), Hit Points: temporary ones go first and do not add up
//   [delay]   Player Core (ORC), Delay (from memory)
//   [late]    who comes in above the present turn acts from the next round on (common practice, no
//             source)
#include "replay_script.h"

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

namespace {

Table reed_fight() {
    Table table(rules::Family::four_degree);
    table.hero("Ysolde", 58, 22);
    table.hero("Orrin", 46, 21).statistics.saves = {{"fortitude", 8}};
    table.campaign.party.characters.back().statistics.saves = {{"fortitude", 8}};
    table.hero("Bram", 46, 19);
    table.hero("Tamsin", 36, 19);
    table.hero("Kettil", 54, 21);
    for (const char* name : {"Lurker 1", "Lurker 2"}) {
        Combatant& lurker = table.foe(name, 30, 18);
        lurker.statistics.weaknesses = {{"fire", 3, {}}};
        lurker.statistics.resistances = {{"cold", 3, {}}};
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

constexpr const char* rounds_1_and_2 = R"(
Round 1: Mudcaller
    actions 3   # [turn]
    order Mudcaller Ysolde Hound 1 Hound 2 Orrin Lurker 1 Bram Lurker 2 Tamsin Kettil  # [ties] 19
    give Ysolde frightened 2
    give Bram frightened 2
Round 1: Ysolde
    actions 3
    state Ysolde 58 (frightened 2), Bram 46 (frightened 2)
    ac Ysolde = 20                                                # [fright] 22 - 2
    hurt Hound 1 12 slashing
    effect Ysolde ac 2 Shield raised, until start of Ysolde
    ac Ysolde = 22                                                # [stack] 22 - 2 + 2
Round 1: Hound 1
    actions 3
    notice Ysolde: frightened drops to 1                          # [fright]
    state Ysolde 58 (frightened 1; Shield raised), Hound 1 4
    hurt Ysolde 7 piercing
Round 1: Hound 2
    actions 3
    state Ysolde 51 (frightened 1; Shield raised)
    hurt Orrin 5 piercing
Round 1: Orrin
    actions 3
    state Orrin 41
    delay                                                         # [delay]
Round 1: Lurker 1
    actions 3
    order Mudcaller Ysolde Hound 1 Hound 2 Lurker 1 Bram Lurker 2 Tamsin Kettil
    state Orrin 41 delaying
    hurt Bram 9 piercing
    give Bram grabbed
    ac Bram = 15                                                  # [grab] [stack] 19 - 2 - 2
Round 1: Bram
    actions 3
    state Bram 37 (frightened 2; grabbed)
    heal Ysolde 12 -> Ysolde regains 7, now 58
Round 1: Lurker 2
    actions 3
    notice Bram: frightened drops to 1
    state Ysolde 58 (frightened 1; Shield raised), Bram 37 (frightened 1; grabbed)
    hurt Tamsin 8 piercing
    return Orrin                                                  # [delay] after this turn
Round 1: Orrin
    actions 3
    notice Orrin: Returns from delaying with 3 actions
    order Mudcaller Ysolde Hound 1 Hound 2 Lurker 1 Bram Lurker 2 Orrin Tamsin Kettil
    state Orrin 41, Tamsin 28
    hurt Hound 2 17 piercing -> Hound 2 loses 17 piercing, is defeated
Round 1: Tamsin
    actions 3
    order Mudcaller Ysolde Hound 1 Lurker 1 Bram Lurker 2 Orrin Tamsin Kettil
    state Hound 2 0 dead
    hurt Lurker 1 6 fire -> Lurker 1 loses 9 fire                 # [weak] 6 + 3
    burn Lurker 1 1d6 fire
Round 1: Kettil
    actions 3
    state Lurker 1 21 (persistent 1d6 fire)
    hurt Mudcaller 14 piercing
Round 2: Mudcaller
    actions 3
    state Mudcaller 46
    elapsed fight = 6                                             # [turn]
    give Kettil slowed 1 for 2 rounds at start of Mudcaller
    hurt Ysolde 28 acid critical
Round 2: Ysolde
    actions 3
    notice Ysolde: Shield raised ends
    state Ysolde 30 (frightened 1), Kettil 54 (slowed 1: 2 rounds)
    ac Ysolde = 21                                                # [fright] 22 - 1
    hurt Hound 1 10 slashing
Round 2: Lurker 1
    actions 3
    notice Ysolde: frightened ends
    order Mudcaller Ysolde Lurker 1 Bram Lurker 2 Orrin Tamsin Kettil
    state Ysolde 30, Hound 1 0 dead
    ac Bram = 16                                                  # [stack] 19 - 2 - 1
    hurt Bram 20 piercing critical
Round 2: Bram
    actions 3
    asked Lurker 1: Roll 1d6 fire persistent damage               # [persist]
    state Bram 17 (frightened 1; grabbed)
    answer Lurker 1 4 -> Persistent damage: Lurker 1 loses 7 fire # [weak] 4 + 3
    answer Lurker 1 9 -> Lurker 1's flat check 9 against 15: failure, persistent 1d6 fire stays
    end Bram grabbed
Round 2: Lurker 2
    actions 3
    notice Bram: frightened ends
    state Bram 17, Lurker 1 14 (persistent 1d6 fire)
    ac Bram = 19
    hurt Tamsin 10 piercing
Round 2: Orrin
    actions 3
    state Tamsin 18
    hurt Lurker 2 11 piercing
Round 2: Tamsin
    actions 3
    state Lurker 2 19
    hurt Lurker 1 12 cold -> Lurker 1 loses 9 cold                # [weak] 12 - 3
    temp Bram 8
    temp Bram 5 -> Bram has 8 temporary HP                        # [temp]
Round 2: Kettil
    actions 2                                                     # [slow] 3 - 1
    state Bram 17+8, Lurker 1 5 (persistent 1d6 fire)
    hurt Lurker 1 9 piercing -> Lurker 1 loses 9 piercing, is defeated
)";

constexpr const char* rounds_3_and_4 = R"(
Round 3: Mudcaller
    actions 3
    order Mudcaller Ysolde Bram Lurker 2 Orrin Tamsin Kettil
    state Kettil 54 (slowed 1: 1 round), Lurker 1 0 (persistent 1d6 fire) dead
    hurt Bram 28 acid critical -> Bram loses 28 acid (8 temporary), is dying 2  # [temp] [dying]
Round 3: Ysolde
    actions 3
    order Bram Mudcaller Ysolde Lurker 2 Orrin Tamsin Kettil      # [dying] before the Mudcaller
    state Bram 0 (dying 2; prone)
    ac Bram = 13                                                  # unconscious: 19 - 4 - 2
    hurt Mudcaller 15 slashing
    give Mudcaller stunned 4
Round 3: Lurker 2
    actions 3
    state Mudcaller 31 (stunned 4)
    hurt Ysolde 9 piercing
Round 3: Orrin
    actions 3
    state Ysolde 21
    hurt Lurker 2 12 piercing
Round 3: Tamsin
    actions 3
    state Lurker 2 7
    hurt Lurker 2 15 fire half -> Lurker 2 loses 10 fire, is defeated  # [weak] 15, half 7, + 3
Round 3: Kettil
    actions 2
    order Bram Mudcaller Ysolde Orrin Tamsin Kettil
    state Lurker 2 0 dead
    hurt Mudcaller 10 piercing
Round 4: Bram
    actions 0                                                     # cannot act
    asked Bram: Recovery check: flat DC 12                        # [dying] 10 + 2
    state Mudcaller 21 (stunned 4)
    answer Bram 8 -> Bram's recovery check 8 against 12: dying 3
Round 4: Mudcaller
    actions 0                                                     # [stun] all three
    notice Kettil: slowed 1 ends; Mudcaller: stunned 4 takes 3 actions
    state Bram 0 (dying 3; prone), Kettil 54, Mudcaller 21 (stunned 1)
Round 4: Ysolde
    actions 3
    heal Bram 6 -> Bram regains 6, now 6, awake
Round 4: Orrin
    actions 3
    state Bram 6 (prone; wounded 1)                               # [dying]
    late 30 18 22 Lurker 3
    give Tamsin quickened for 2 rounds at end of Tamsin
Round 4: Tamsin
    actions 4                                                     # [quick]
    order Bram Mudcaller Lurker 3 Ysolde Orrin Tamsin Kettil      # [late] 22: above Orrin
    state Tamsin 18 (quickened: 2 rounds), Lurker 3 30
    hurt Mudcaller 5 fire
Round 4: Kettil
    actions 3                                                     # slowed no more
    state Tamsin 18 (quickened: 1 round), Mudcaller 16 (stunned 1)
    hurt Mudcaller 4 piercing
)";

constexpr const char* rounds_5_to_7 = R"(
Round 5: Bram
    actions 3
    state Mudcaller 12 (stunned 1)
    end Bram prone
    heal Bram 16 -> Bram regains 16, now 22
Round 5: Mudcaller
    actions 2                                                     # [stun] the fourth of four
    notice Mudcaller: stunned 1 takes 1 action
    state Bram 22 (wounded 1), Mudcaller 12
    hurt Ysolde 14 bludgeoning
    give Orrin sickened 2 save fortitude 18
    check Orrin fortitude = 6                                     # [sick] 8 - 2
Round 5: Lurker 3
    actions 3
    state Ysolde 7, Orrin 41 (sickened 2)
    hurt Ysolde 9 piercing -> Ysolde loses 9 piercing, is dying 1
Round 5: Orrin                                                    # [dying] Ysolde's turn is gone
    actions 3
    order Bram Mudcaller Ysolde Lurker 3 Orrin Tamsin Kettil
    state Ysolde 0 (dying 1; prone)
    hurt Mudcaller 12 piercing -> Mudcaller loses 12 piercing, is defeated
Round 5: Tamsin
    actions 4
    asked Orrin: Fortitude DC 18 against sickened 2
    order Bram Ysolde Lurker 3 Orrin Tamsin Kettil
    state Mudcaller 0 dead
    answer Orrin 12 -> Orrin's fortitude save 18 against 18: success, sickened drops to 1
    hurt Lurker 3 12 fire
Round 5: Kettil
    actions 3
    notice Tamsin: quickened ends
    state Orrin 41 (sickened 1), Tamsin 18, Lurker 3 18
    hurt Lurker 3 11 piercing
Round 6: Bram
    actions 3
    state Lurker 3 7
    heal Ysolde 10 -> Ysolde regains 10, now 10, awake
Round 6: Ysolde                                                   # awake: no recovery check
    actions 3
    state Ysolde 10 (prone; wounded 1)
    hurt Lurker 3 5 slashing
Round 6: Lurker 3
    actions 3
    state Lurker 3 2
    hurt Bram 25 piercing -> Bram loses 25 piercing, is dying 2   # [dying] 1 and wounded 1
Round 6: Orrin
    actions 3
    order Ysolde Bram Lurker 3 Orrin Tamsin Kettil
    state Bram 0 (wounded 1; dying 2; prone)
    hurt Lurker 3 2 piercing -> Lurker 3 loses 2 piercing, is defeated
Round 6: Tamsin
    actions 3
    asked Orrin: Fortitude DC 18 against sickened 1
    order Ysolde Bram Orrin Tamsin Kettil
    state Lurker 3 0 dead
    # [degree] 20 + 7 is no 28, but a natural 20 makes the success critical: two less, it ends
    answer Orrin 20 -> Orrin's fortitude save 27 against 18: critical success, sickened ends
Round 6: Kettil
    actions 3
    state Orrin 41
Round 7: Ysolde
    actions 3
    end Ysolde prone
Round 7: Bram
    actions 0
    asked Bram: Recovery check: flat DC 12
    state Ysolde 10 (wounded 1)
    # [dying] [degree] critical success: two less, no longer dying, wounded 2, asleep at 0
    answer Bram 20 -> Bram's recovery check 20 against 12: no longer dying
Round 7: Orrin
    actions 3
    state Bram 0 (wounded 2; prone; unconscious)
    elapsed fight = 36                                            # [turn] six rounds
)";

} // namespace

TEST_CASE("replay: seven rounds in the reeds, four-degree") {
    Table table = reed_fight();
    Replay replay(table);
    replay.play(rounds_1_and_2);
    replay.play(rounds_3_and_4);
    replay.play(rounds_5_to_7);

    table.campaign.clock = {12, 86390, {}};
    game::end_fight(table.campaign, table.rulebook);
    // Thirty-six seconds later it is the next day; wounds and lasting conditions stay, opponents
    // are gone.
    CHECK(table.campaign.clock.day == 13);
    CHECK(table.campaign.clock.second_of_day == 26);
    CHECK(
        table.state({"Ysolde", "Orrin", "Bram", "Tamsin", "Kettil"}) ==
        "Ysolde 10 (wounded 1), Orrin 41, Bram 0 (wounded 2; prone; unconscious), Tamsin 18, "
        "Kettil 54"
    );
    CHECK(table.encounter().combatants.size() == 5);
    CHECK(game::find_problems(table.campaign, table.rulebook).empty());
}
