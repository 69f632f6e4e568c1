// How hard tonight's fight is, what would change it, and the XP afterwards.
#include "driver.h"
#include "fixtures.h"
#include "widgets/encounter_budget_panel.h"

#include <doctest/doctest.h>

#include <algorithm>

using driver::inside;

namespace {

using Driver = driver::PanelDriver<widgets::EncounterBudgetView>;

Driver sluice(const driver::Settings& settings = {}) {
    return {
        fixtures::sluice_campaign(),
        fixtures::four_degree(),
        widgets::draw_encounter_budget,
        settings};
}

const game::PreparedEncounter& ambush(const Driver& ui) {
    return ui.campaign().preparation.encounters.front();
}

void add(Driver& ui, const char* creature) {
    ui.click("Add a creature");
    ui.click(creature, inside("##Popup"));
}

} // namespace

TEST_CASE("encounter budget: the threat, its numbers and the XP of each stand there at once") {
    // GM Core (ORC), tables Creature XP and Encounter Budget: five of level 4; three of level 2 at
    // 20 and one of level 4 at 40 are 100, the moderate budget of five; severe is 150.
    Driver ui = sluice();
    CHECK(ui.shows("Moderate"));
    CHECK(ui.shows("100 XP: moderate (100); 50 to severe (150)"));
    CHECK(ui.shows("level 2, 20 XP each"));
    CHECK(ui.shows("Party: 5 characters, level 4"));
    // The bar names its budgets.
    CHECK(ui.shows("severe 150"));
}

TEST_CASE("encounter budget: one more, one less, and none of them, each with one press") {
    Driver ui = sluice();
    ui.click("+##more budget count 0");
    CHECK(ambush(ui).creatures[0].count == 4);
    CHECK(ui.shows("120 XP: moderate (100); 30 to severe (150)"));
    CHECK(ui.last_edit() == "Ambush at the sluice: 4 Reed Lurker");
    ui.click("-##less budget count 1");
    REQUIRE(ambush(ui).creatures.size() == 1);
    CHECK(ui.last_edit() == "Ambush at the sluice: without Mudcaller");
    ui.undo();
    CHECK(ambush(ui).creatures.size() == 2);
    add(ui, "Sluice Wight");
    REQUIRE(ambush(ui).creatures.size() == 3);
    CHECK(ui.shows("150 XP: severe (150); 50 to extreme (200)"));
    add(ui, "Reed Lurker"); // joins those that are there
    CHECK(ambush(ui).creatures.size() == 3);
    CHECK(ambush(ui).creatures[0].count == 5);
}

TEST_CASE("encounter budget: who is away is counted out here, and nobody's evening changes") {
    Driver ui = sluice();
    ui.click("Bram Oake##counted 3");
    CHECK(ui.shows("Party: 4 characters, level 4"));
    CHECK(ui.shows("100 XP: moderate (80); 20 to severe (120)"));
    CHECK(ui.shows("Counted for this plan only"));
    CHECK(ui.campaign().party.characters[2].is_present);
    CHECK(ui.last_edit().empty());
    ui.click("As tonight");
    CHECK(ui.shows("Party: 5 characters, level 4"));
    for (const char* label :
         {"Ysolde Marr##counted 1",
          "Orrin Tace##counted 2",
          "Bram Oake##counted 3",
          "Sefa Lunn##counted 4",
          "Tiv Hollow##counted 5"})
        ui.click(label);
    CHECK(ui.shows("Nobody of the party is present."));
}

TEST_CASE("encounter budget: hazards by level, simple or complex") {
    // GM Core (ORC), table XP Awards (hazards): 8 for a simple, 40 for a complex one of the party's
    // level, 60 one level above.
    Driver ui = sluice();
    ui.click("Add a hazard");
    CHECK(ui.shows("108 XP: moderate"));
    ui.click("Complex##0");
    CHECK(ui.shows("140 XP: moderate"));
    ui.click("+##more hazard level 0");
    CHECK(ui.shows("160 XP: severe"));
    ui.fill("##hazard name 0", "Sluice gate");
    CHECK(ui.shows("Sluice gate, complex hazard"));
    CHECK(ambush(ui).hazards[0].level == 5);
    ui.click("-##less hazard count 0");
    CHECK(ambush(ui).hazards.empty());
}

TEST_CASE("encounter budget: asked for a severe fight, it says how, and one press does it") {
    Driver ui = sluice();
    ui.click("severe##aim");
    CHECK(ui.shows("add 1 Mudcaller, add 1 Reed Lurker") == false); // one step is enough
    const auto wanted = ui.view.suggestions;
    REQUIRE_FALSE(wanted.empty());
    for (const game::PlanSuggestion& each : wanted) {
        CHECK(each.xp >= 150);
        CHECK(each.xp < 200);
    }
    // 50 XP more: no plain creature lands on 150, the nearest single step adds 60. An elite
    // Mudcaller is of level 5 (Monster Core (ORC), Adjusting Creatures) and worth 60 as well.
    ui.click("##add 1 Elite Mudcaller");
    CHECK(ambush(ui).creatures.back().count == 1);
    CHECK(ui.campaign().shelf.creatures.back().name == "Elite Mudcaller");
    CHECK(ui.shows("160 XP: severe (150)"));
    CHECK(ui.last_edit() == "Ambush at the sluice: add 1 Elite Mudcaller");
    ui.undo();
    CHECK(ui.campaign().shelf.creatures.size() == 3);
    CHECK(ui.shows("100 XP: moderate (100)"));
    ui.click("moderate##aim");
    CHECK(ui.shows("It is just that already."));
    ui.click("moderate##aim");
    CHECK_FALSE(ui.shows("It is just that already."));
}

TEST_CASE("encounter budget: what the tables do not rate is said plainly") {
    game::Campaign campaign = fixtures::sluice_campaign();
    campaign.shelf.creatures[1].statistics.level = 9;
    Driver ui(campaign, fixtures::four_degree(), widgets::draw_encounter_budget);
    CHECK(ui.shows("Beyond extreme"));
    CHECK(ui.shows("A creature of level 9 is more than 4 levels above the party (4)"));
    CHECK(ui.shows("level 9, not rated"));
    ui.click("severe##aim");
    CHECK(ui.shows("Take away what is too dangerous for the tables first."));
}

TEST_CASE("encounter budget: after the fight the party is awarded with one press") {
    Driver ui = sluice();
    CHECK(ui.shows("0 of 1000 XP"));
    // GM Core (ORC), XP awards: the budget of five stands for 80 XP each (worked example enc-08).
    ui.click("Award to the party");
    for (const game::Character& character : ui.campaign().party.characters)
        CHECK(character.experience == 80);
    CHECK(ui.last_edit() == "Award 80 XP to the whole party");
    CHECK(ui.shows("80 of 1000 XP"));
    ui.undo();
    CHECK(ui.campaign().party.characters[0].experience == 0);
    // A deed: GM Core (ORC), table XP Awards, moderate accomplishment.
    ui.click("##award for");
    ui.click("moderate accomplishment: 30", inside("##Combo"));
    ui.click("Award to the party");
    CHECK(ui.campaign().party.characters[0].experience == 30);
    ui.fill("##award", "985");
    ui.click("Award to the party");
    CHECK(ui.campaign().party.characters[0].statistics.level == 5);
    CHECK(
        ui.last_edit() ==
        "Award 985 XP to the whole party; Ysolde Marr, Orrin Tace, Bram Oake, Sefa "
        "Lunn and Tiv Hollow reach level 5 (only the level is raised)"
    );
    CHECK(ui.shows("15 of 1000 XP"));
}

TEST_CASE("encounter budget: the fight starts from here, and another is prepared") {
    Driver ui = sluice();
    ui.click("Prepare another");
    ui.frames(2);
    CHECK(ui.shows("No threat yet"));
    CHECK(ui.shows("0 XP; 80 to low (80)"));
    CHECK_FALSE(ui.is_enabled("Start this fight##budget"));
    ui.click("low##aim");
    ui.click("##add 2 Mudcaller");
    CHECK(ui.shows("80 XP: low (80)"));
    ui.click("##encounter");
    ui.click("Ambush at the sluice", inside("##Combo"));
    ui.click("Start this fight##budget");
    CHECK(ui.encounter().phase == game::Phase::gathering);
    CHECK(ui.encounter().name == "Ambush at the sluice");
}

TEST_CASE("encounter budget: nothing prepared, nobody in the party") {
    Driver ui(game::Campaign{}, fixtures::four_degree(), widgets::draw_encounter_budget);
    CHECK(ui.shows("Prepare an encounter here"));
    ui.click("Prepare an encounter");
    ui.frames(2);
    CHECK(ui.shows("Nobody of the party is present."));
    CHECK(ui.shows("Enter the player characters in the Party panel."));
}

TEST_CASE("encounter budget: srd5 counts challenge and stays within a difficulty") {
    // SRD 5.2.1, Combat Encounters: three of level 3 have 450, 675 and 1200 XP; CR 1/2 is 100.
    Driver ui(fixtures::pier_campaign(), fixtures::srd5(), widgets::draw_encounter_budget);
    CHECK(ui.shows("300 XP: low (up to 450); 150 left"));
    CHECK(ui.shows("CR 1/2, 100 XP each"));
    CHECK(ui.shows("SRD 5.1 has no budget"));
    CHECK_FALSE(ui.has("Add a hazard"));
    ui.click("Award to the party");
    CHECK(ui.campaign().party.characters[0].experience == 100);
}

TEST_CASE("encounter budget: for reading only nothing changes") {
    Driver ui = sluice();
    ui.is_read_only = true;
    ui.frames(2);
    CHECK_FALSE(ui.is_enabled("Award to the party"));
    CHECK_FALSE(ui.is_enabled("+##more budget count 0"));
    CHECK_FALSE(ui.is_enabled("Prepare another"));
    ui.click("severe##aim"); // looking is free
    CHECK(ui.shows("Press one to do it:"));
    CHECK_FALSE(ui.is_enabled("##add 1 Elite Mudcaller"));
}

TEST_CASE("encounter budget: a narrow panel at twice the text with large targets") {
    driver::Settings narrow;
    narrow.size = {720.0F, 760.0F};
    narrow.scale = 2.0F;
    narrow.is_touch = true;
    Driver ui = sluice(narrow);
    ui.click("+##more budget count 0");
    CHECK(ambush(ui).creatures[0].count == 4);
    ui.click("extreme##aim");
    ui.click("Award to the party");
    CHECK(ui.campaign().party.characters[0].experience > 0);
}

TEST_CASE("encounter budget: it says so when house rules count, and other tables leave it alone") {
    rules::Rulebook book = fixtures::four_degree();
    book.house_ruled = {{"/dc_by_level/rows/7/dc", "23", "24"}};
    Driver other(fixtures::sluice_campaign(), book, widgets::draw_encounter_budget);
    CHECK_FALSE(other.shows("house rules count here"));
    book.house_ruled = {{"/creature_xp/rows/4/xp", "40", "50"}};
    Driver ui(fixtures::sluice_campaign(), book, widgets::draw_encounter_budget);
    CHECK(ui.shows("house rules count here"));
}
