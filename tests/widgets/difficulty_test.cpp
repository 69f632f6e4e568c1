// The DCs of the rulebook, each with what this very party makes of it.
#include "driver.h"
#include "fixtures.h"
#include "widgets/difficulty.h"

#include <doctest/doctest.h>

using driver::inside;

namespace {

using Driver = driver::PanelDriver<widgets::DifficultyView>;

Driver sluice(const driver::Settings& settings = {}) {
    return {
        fixtures::sluice_campaign(), fixtures::four_degree(), widgets::draw_difficulty, settings};
}

} // namespace

TEST_CASE("difficulty: a DC by level with the best one's chance and the party's") {
    // GM Core (ORC), table DCs by Level: level 7 is DC 23. Perception +10, +9, +8, +11 and +12 fail
    // there on 12, 13, 14, 11 and 10 faces: 2 succeed, the best on 10 of 20, nobody on 240240 of
    // 3200000.
    Driver ui = sluice();
    CHECK(ui.shows("23 level 7 50 % 2 of 5 92 %"));
    CHECK(ui.shows("By spell rank"));
    CHECK(ui.shows("By proficiency"));
    ui.click("##asked");
    ui.click("Fortitude", inside("##Combo"));
    // Fortitude +11, +9, +12, +8 and +8 against 19 fail on 7, 9, 6, 10 and 10 faces.
    CHECK(ui.shows("19 level 4, the party's 70 % 2.9 of 5 99 %"));
}

TEST_CASE("difficulty: the row of the party's level stands out and is in sight at first") {
    driver::Settings low;
    low.size = {500.0F, 420.0F};
    Driver ui = sluice(low);
    CHECK(ui.seen().find("level 4, the party's") != std::string::npos);
    CHECK(ui.seen().find("level 20") == std::string::npos);
}

TEST_CASE("difficulty: a press on a row asks that DC of the party") {
    Driver ui = sluice();
    ui.click("level 8");
    CHECK(ui.selection.odds.dc == 24);
    ui.click("master");
    CHECK(ui.selection.odds.dc == 30);
    ui.click("rank 3");
    CHECK(ui.selection.odds.dc == 20);
}

TEST_CASE("difficulty: a step and a rarity move every DC, one of each at a time") {
    // GM Core (ORC), table DC Adjustments: very hard +5, hard +2, rare +5.
    Driver ui = sluice();
    ui.click("Very hard +5");
    CHECK(ui.shows("25 level 5"));
    ui.click("Rare +5");
    CHECK(ui.shows("30 level 5"));
    ui.click("Hard +2");
    CHECK(ui.shows("27 level 5"));
    ui.click("level 5");
    CHECK(ui.selection.odds.dc == 27);
    ui.click("Hard +2");
    ui.click("Rare +5");
    CHECK(ui.shows("20 level 5"));
}

TEST_CASE("difficulty: what the GM replaced says so") {
    rules::Rulebook book = fixtures::four_degree();
    book.house_ruled = {{"/dc_adjustments/rarities/2/amount"}, {"/dc_by_level/rows/5/dc"}};
    Driver ui(fixtures::sluice_campaign(), book, widgets::draw_difficulty);
    CHECK(ui.shows("level 5 (house rule)"));
    CHECK_FALSE(ui.shows("level 6 (house rule)"));
    CHECK(ui.has("Rare +5 (house rule)"));
    ui.click("level 5");
    CHECK(ui.selection.odds.dc == 20);
}

TEST_CASE("difficulty: typical DCs and traps of srd5") {
    // SRD 5.1, Typical Difficulty Classes; Traps: deadly saves 16 to 20, attack +9 to +12, 4d10 at
    // levels 1 to 4. Perception +1, +5, +3 against 15: 7, 11 and 9 faces of 20 succeed.
    Driver ui(fixtures::pier_campaign(), fixtures::srd5(), widgets::draw_difficulty);
    CHECK(ui.shows("15 medium 55 % 1.4 of 3 84 %"));
    CHECK(ui.shows("30 nearly impossible 0 % 0 of 3 0 %"));
    CHECK(ui.shows("16 deadly, at least"));
    CHECK(ui.shows("20 deadly, at most"));
    CHECK(ui.shows("attack +3 to +5 +6 to +8 +9 to +12"));
    CHECK(ui.shows("level 1 to 4 1d10 2d10 4d10"));
    ui.click("deadly, at most");
    CHECK(ui.selection.odds.dc == 20);
}

TEST_CASE("difficulty: without a party the DCs stand alone") {
    Driver ui(game::Campaign{}, fixtures::four_degree(), widgets::draw_difficulty);
    CHECK(ui.shows("Nobody takes part, so the DCs stand alone."));
    CHECK(ui.shows("20 level 5"));
    ui.click("level 5");
    CHECK(ui.selection.odds.dc == 20);
}

TEST_CASE("difficulty: a narrow panel at twice the text keeps the DC and the last chance") {
    driver::Settings narrow;
    narrow.size = {560.0F, 900.0F};
    narrow.scale = 2.0F;
    narrow.is_touch = true;
    Driver ui = sluice(narrow);
    CHECK(ui.shows("at least one"));
    ui.click("level 6");
    CHECK(ui.selection.odds.dc == 22);
}
