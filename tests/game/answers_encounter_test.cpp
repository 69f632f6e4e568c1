// Questions about DCs, budgets, fights, XP and recovery.
#include "asking.h"

using namespace asking;

TEST_CASE("ask: a DC by level, rank, proficiency, and its adjustments") {
    // GM Core (ORC), tables DCs by Level, Simple DCs, DC Adjustments; worked example dc-02.
    CHECK(whole(answer("dc level 7").values, "dc") == 23);
    CHECK(answer("dc level 7 hard rare").title == "DC 30");
    CHECK(answer("dc level 7 hard rare").lines.front() == "level 7: 23, hard +2, rare +5");
    CHECK(whole(answer("dc level 7 very hard").values, "dc") == 28);
    CHECK(whole(answer("dc level 7 incredibly-easy").values, "dc") == 13);
    CHECK(whole(answer("dc rank 3 rare").values, "dc") == 25);
    CHECK(whole(answer("dc trained").values, "dc") == 15);
    CHECK(whole(answer("dc expert uncommon").values, "dc") == 22);
    CHECK(whole(answer("dc hard").values, "adjustment") == 2);
    CHECK(answer("dc hard").title == "The DC changes by +2");
    CHECK(whole(answer("dc").values, "dcs/legendary") == 40);
    // SRD 5.1, Ability Checks / Typical Difficulty Classes.
    CHECK(whole(srd_answer("dc hard").values, "dc") == 20);
    CHECK(whole(srd_answer("dc very hard").values, "dc") == 25);
    CHECK(refusal("dc level 7", srd()) == "This rulebook has no DCs by level.");
    CHECK(refusal("dc level 26") == "There is no DC for level 26: the table runs from 0 to 25.");
}

TEST_CASE("ask: the budget of a party") {
    // GM Core (ORC), table Encounter Budget; worked examples enc-01, enc-03, enc-05.
    CHECK(whole(answer("budget party 5 level 3").values, "budgets/moderate") == 100);
    CHECK(whole(answer("budget party 6 level 3").values, "budgets/low") == 100);
    CHECK(whole(answer("budget party 7 level 3").values, "budgets/extreme") == 280);
    CHECK(whole(answer("budget levels 3 3 4 2").values, "party_level") == 3);
    // SRD 5.2.1, Gameplay Toolbox / Combat Encounters: 50 and 150 and 500 for low.
    CHECK(whole(srd_answer("budget levels 1 3 5").values, "budgets/low") == 700);
    CHECK(refusal("budget party 4 level 21").find("level 21 has no budget") != std::string::npos);
}

TEST_CASE("ask: how hard a fight is") {
    // Worked example enc-06: GM Core (ORC), tables Creature XP and Encounter Budget.
    const game::Answer fight = answer("encounter party 4 level 3 vs 1 level 5 2 level 2");
    CHECK(whole(fight.values, "xp") == 140);
    CHECK(text(fight.values, "threat") == "severe");
    CHECK(text(fight.values, "next_budget") == "extreme");
    CHECK(whole(fight.values, "xp_to_next") == 20);
    CHECK(fight.title == "Severe: 140 XP against 4 characters of level 3");
    const auto opponents = rows(fight.values, "opponents");
    REQUIRE(opponents.size() == 2);
    CHECK(whole(opponents[0], "xp_each") == 80);
    CHECK(whole(opponents[1], "xp_each") == 30);
    // Worked example enc-08: 100 XP against five characters award 80 to each. 60 and 40 here.
    CHECK(
        whole(answer("encounter party 5 level 5 vs level 6 level 5").values, "xp_award_each") == 80
    );
    // GM Core (ORC), table XP Awards (hazards): 8 for a simple, 40 for a complex one of the party's
    // level.
    CHECK(whole(answer("encounter party 4 level 5 vs 1 hazard 5").values, "xp") == 8);
    CHECK(whole(answer("encounter party 4 level 5 vs 1 complex hazard 5").values, "xp") == 40);
    const game::Answer above = answer("encounter party 4 level 4 vs level 9");
    CHECK(above.title.find("Beyond extreme") == 0);
    CHECK(says(above, "too dangerous for the table"));
    // SRD 5.2.1: four of level 1 have 300 XP for moderate; two of CR 1/2 and one of 1/4 are 250.
    const game::Answer pier = srd_answer("encounter party 4 level 1 vs 2 cr 1/2 1 cr 0.25");
    CHECK(text(pier.values, "threat") == "moderate");
    CHECK(whole(pier.values, "xp") == 250);
}

TEST_CASE("ask: what an opponent is worth, and when a level is reached") {
    // GM Core (ORC), table Creature XP: two levels above the party 80.
    CHECK(whole(answer("xp level 6 party 4").values, "xp") == 80);
    CHECK(whole(answer("xp complex hazard 4 party 4").values, "xp") == 40);
    CHECK(whole(srd_answer("xp cr 5").values, "xp") == 1800); // SRD 5.1, Monsters
    // Worked example enc-10: GM Core (ORC), 1,000 XP a level, the rest carries over.
    const game::Answer up = answer("xp have 940 gain 110 level 3");
    CHECK(whole(up.values, "level") == 4);
    CHECK(whole(up.values, "xp") == 50);
    CHECK(refusal("xp level 9 party 4").find("no XP for level 9") != std::string::npos);
}

TEST_CASE("ask: treating wounds, with every DC that may be chosen") {
    // Player Core (ORC), Treat Wounds: worked examples heal-02 and heal-05, expert and trained.
    const game::Answer heal = answer("heal expert +13");
    const auto choices = rows(heal.values, "choices");
    REQUIRE(choices.size() == 2);
    CHECK(exact(choices[0], "hp_restored") == "63/5");
    CHECK(exact(choices[0], "hp_net") == "99/8");
    CHECK(exact(choices[1], "hp_restored") == "151/10");
    CHECK(exact(choices[1], "hp_lost") == "9/40");
    CHECK(exact(choices[1], "hp_net") == "119/8");
    CHECK(exact(choices[1], "degrees/critical_success") == "1/5");
    CHECK(text(heal.values, "best_rank") == "expert");
    CHECK(
        exact(rows(answer("heal expert +13 hour").values, "choices")[1], "hp_restored") == "151/5"
    );
    // heal-04: legendary at +30.
    CHECK(exact(rows(answer("heal legendary +30").values, "choices")[3], "hp_net") == "1307/40");
    CHECK(refusal("heal trained +7", srd()) == "This rulebook has no treating of wounds.");
}

TEST_CASE("ask: rests") {
    // Player Core (ORC), Rest: Constitution modifier, at least 1, times level.
    CHECK(whole(answer("rest con +2 level 5").values, "hp") == 10);
    CHECK(whole(answer("rest con -1 level 5").values, "hp") == 5);
    CHECK(whole(answer("rest con +3 level 5 rough").values, "hp") == 7);     // from memory
    CHECK(whole(answer("rest con +3 level 5 full day").values, "hp") == 30); // from memory
    // SRD 5.1, Resting: 3d8 + 3 x 2 = 19.5 on average; a long rest returns half the total.
    const game::Answer rest = srd_answer("rest short 3d8 con +2");
    CHECK(decimal(rest.values, "mean") == doctest::Approx(19.5));
    CHECK(whole(rest.values, "lowest") == 9);
    const rules::Rulebook older = srd_book(rules::SrdEdition::srd_5_1);
    const game::Answer night = answer("rest long 5 spent 4", older, nullptr);
    CHECK(whole(night.values, "hit_dice_regained") == 2);
    CHECK(whole(srd_answer("rest long 5 spent 4").values, "hit_dice_regained") == 4); // SRD 5.2.1
    CHECK(refusal("rest short 3d8+1", srd()).find("Hit dice are dice alone") == 0);
}

TEST_CASE("ask: what a condition does, in words") {
    // Player Core (ORC), Conditions, frightened: a status penalty of its value to checks and DCs.
    const game::Answer scared = answer("condition frightened 2");
    CHECK(scared.title == "frightened 2");
    CHECK(says(scared, "-2 to every check and every DC (status)"));
    CHECK(says(scared, "Falls by 1 at the end of its own turn."));
    CHECK(says(answer("condition frightened"), "-1 for each to every check"));
    CHECK(answer("condition off guard").title == "off-guard");
    CHECK(answer("condition off-guard").title == "off-guard");
    // SRD 5.1, Conditions, unconscious.
    const game::Answer asleep = srd_answer("condition unconscious");
    CHECK(says(asleep, "fails Strength saves and Dexterity saves"));
    CHECK(says(asleep, "is also incapacitated"));
    CHECK(
        refusal("condition frigtened") ==
        "There is no condition \"frigtened\" in this rulebook. There is friendly, frightened."
    );
    CHECK(says(answer("condition"), "frightened"));
}

TEST_CASE("ask: every effect of every condition has words") {
    for (const rules::Rulebook* book : {&four(), &srd()}) {
        for (const rules::ConditionRule& rule : book->conditions) {
            CAPTURE(rule.key);
            std::string words = "condition " + rule.key;
            const game::Answer found = answer(words, *book, nullptr);
            for (const std::string& line : found.lines) {
                CAPTURE(line);
                CHECK(line.size() > 2);
                CHECK(line.find('_') == std::string::npos);
            }
        }
    }
}
