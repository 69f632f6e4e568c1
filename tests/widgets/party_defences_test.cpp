// Everybody's numbers side by side, and what they do against a DC.
#include "driver.h"
#include "fixtures.h"
#include "game/conditions.h"
#include "game/roster.h"
#include "widgets/party_defences.h"

#include <doctest/doctest.h>

using driver::inside;

namespace {

using Driver = driver::PanelDriver<widgets::PartyDefencesView>;

Driver sluice(
    game::Campaign campaign = fixtures::sluice_campaign(), const driver::Settings& settings = {}
) {
    return {std::move(campaign), fixtures::four_degree(), widgets::draw_party_defences, settings};
}

void give(
    game::Campaign& campaign,
    const rules::Rulebook& rulebook,
    const std::string& who,
    const char* key,
    int value
) {
    for (const game::Combatant& combatant : campaign.encounter.combatants) {
        if (combatant.name != who) continue;
        game::ActiveCondition condition;
        condition.key = key;
        condition.value = value;
        REQUIRE(game::add_condition(campaign.encounter, rulebook, combatant.id, condition));
        return;
    }
    FAIL("nobody is called " << who);
}

game::Campaign frightened() {
    game::Campaign campaign =
        fixtures::running(fixtures::sluice_campaign(), fixtures::four_degree());
    give(campaign, fixtures::four_degree(), "Ysolde Marr", "frightened", 2);
    return campaign;
}

} // namespace

TEST_CASE("party defences: without a party it says what to do first") {
    Driver ui = sluice(game::Campaign{});
    CHECK(ui.shows("Nobody is in the party yet."));
}

TEST_CASE("party defences: everybody's exact chances against the DC, with the needed roll") {
    // Player Core (ORC), Checks: +10 against DC 20 fails critically on 1, fails on 2 to 9, succeeds
    // on 10 to 19, critically on 20; +12 needs 8 and is critical from 18.
    Driver ui = sluice();
    ui.fill("##asked DC", "20");
    CHECK(ui.shows("Ysolde Marr +10 10+ 5 % 40 % 50 % 5 %"));
    CHECK(ui.shows("Tiv Hollow +12 8+ 5 % 30 % 50 % 15 %"));
    // Fail on 9, 10, 11, 8 and 7 faces: all succeed 11*10*9*12*13 of 20^5, nobody 9*10*11*8*7.
    CHECK(ui.shows("all succeed 5 %"));
    CHECK(ui.shows("nobody succeeds 2 %"));
    ui.click("-##less asked DC");
    CHECK(ui.selection.odds.dc == 19);
    CHECK(ui.shows("Perception: about 2 of 5 fail"));
    CHECK(ui.shows("Ysolde Marr +10 9+ 5 % 35 % 50 % 10 %"));
}

TEST_CASE("party defences: at first the DC is that of the party's level") {
    // GM Core (ORC), table DCs by Level: level 4 is DC 19.
    Driver ui = sluice();
    CHECK(ui.shows("DC 19"));
}

TEST_CASE("party defences: a DC out of range is refused, the old one stays") {
    Driver ui = sluice();
    ui.fill("##asked DC", "500");
    CHECK(ui.shows("DC is 0 to 99."));
    CHECK_FALSE(ui.selection.odds.dc.has_value());
    ui.fill("##asked DC", "21");
    CHECK(ui.selection.odds.dc == 21);
}

TEST_CASE("party defences: the DC is dragged") {
    Driver ui = sluice();
    ui.drag("##slide the DC", {200.0F, 0.0F});
    // +8 to +12: nothing changes any more past DC 33.
    CHECK(ui.selection.odds.dc == 33);
    ui.drag("##slide the DC", {-400.0F, 0.0F});
    CHECK(ui.selection.odds.dc == 9);
}

TEST_CASE("party defences: a column is asked by its title, anything by the list") {
    Driver ui = sluice();
    ui.click("##ask Fortitude");
    CHECK(ui.selection.odds.stat == "fortitude");
    CHECK(ui.shows("Fortitude: about"));
    CHECK(ui.shows("Ysolde Marr +11"));
    ui.click("##asked");
    ui.click("Thievery", inside("##Combo"));
    CHECK(ui.shows("Thievery: about"));
    CHECK_FALSE(ui.has("##ask AC")); // nobody rolls armor class
}

TEST_CASE("party defences: a frightened character stands lower, and a press on the cell says why") {
    // Player Core (ORC), Conditions: frightened 2 takes 2 from all checks and DCs.
    Driver ui = sluice(frightened());
    CHECK(ui.shows("Ysolde Marr 20 -2 +9 -2 +6 -2 +7 -2 +8 -2 18 -2"));
    CHECK(ui.shows("Orrin Tace 20 +9 +12 +8 +9 19"));
    ui.click("##Ysolde Marr, Fortitude");
    CHECK(ui.selection.odds.stat == "fortitude");
    CHECK(ui.shows("Ysolde Marr, Fortitude +9, otherwise +11"));
    CHECK(ui.shows("frightened 2: -2 status"));
    CHECK(ui.shows("Ysolde Marr +9 "));
    ui.click("##Ysolde Marr, Fortitude");
    CHECK_FALSE(ui.shows("otherwise +11"));
    ui.click("##Ysolde Marr, AC");
    CHECK(ui.shows("Ysolde Marr, AC 20, otherwise 22"));
    CHECK(ui.selection.odds.stat == "fortitude");
    ui.click("##Orrin Tace, Reflex");
    CHECK(ui.shows("Orrin Tace, Reflex +12, as on the sheet"));
}

TEST_CASE("party defences: the reasons come up under the pointer too") {
    Driver ui = sluice(frightened());
    CHECK(ui.seen().find("frightened 2") == std::string::npos);
    ui.hover("##Ysolde Marr, Will");
    CHECK(ui.seen().find("frightened 2: -2 status") != std::string::npos);
}

TEST_CASE("party defences: who takes part is ticked") {
    Driver ui = sluice();
    ui.click("##Bram Oake takes part");
    CHECK(ui.shows("of 4 fail"));
    CHECK(ui.shows("Bram Oake takes no part"));
    ui.click("##Bram Oake takes part");
    CHECK(ui.shows("of 5 fail"));
    for (const char* name : {"Ysolde Marr", "Orrin Tace", "Bram Oake", "Sefa Lunn", "Tiv Hollow"})
        ui.click(std::string("##") + name + " takes part");
    CHECK(ui.shows("Nobody takes part. Tick who does."));
    CHECK_FALSE(ui.is_enabled("Roll in secret"));
}

TEST_CASE("party defences: absent characters come on demand, and take part only if ticked") {
    game::Campaign campaign = fixtures::sluice_campaign();
    game::set_present(campaign, campaign.party.characters[1].id, false);
    Driver ui = sluice(std::move(campaign));
    CHECK_FALSE(ui.shows("Orrin Tace"));
    ui.click("Absent too");
    CHECK(ui.shows("Orrin Tace away tonight"));
    CHECK(ui.shows("of 4 fail"));
    ui.click("##Orrin Tace takes part");
    CHECK(ui.shows("of 5 fail"));
}

TEST_CASE("party defences: nobody plays tonight") {
    game::Campaign campaign = fixtures::sluice_campaign();
    for (game::Character& character : campaign.party.characters)
        character.is_present = false;
    Driver ui = sluice(std::move(campaign));
    CHECK(ui.shows("Nobody plays tonight."));
    ui.click("Absent too");
    CHECK(ui.shows("Tiv Hollow away tonight"));
}

TEST_CASE("party defences: turned round, two in five are to fail") {
    // +8 to +12 fail on DC - 9 to DC - 13 faces: 40 of 100 at DC 19, 60 at DC 23, 80 at DC 27.
    Driver ui = sluice();
    ui.click("Find a DC");
    ui.fill("##by members", "60");
    CHECK(ui.shows("Set DC 23"));
    ui.click("###set by members");
    CHECK(ui.selection.odds.dc == 23);
    CHECK(ui.shows("about 3 of 5 fail"));
    ui.fill("##by number", "4");
    ui.click("###set by number");
    CHECK(ui.selection.odds.dc == 27);
    CHECK(ui.shows("about 4 of 5 fail"));
    // The average, +10, fails on DC - 11 faces: 5 of 20 at DC 16.
    ui.fill("##by average", "25");
    CHECK(ui.shows("The average, +10, fails"));
    ui.click("###set by average");
    CHECK(ui.selection.odds.dc == 16);
}

TEST_CASE("party defences: fortune rolls two dice") {
    // Both dice at 9 or less: 81 of 400 ways, of which 1 fails critically.
    Driver ui = sluice();
    ui.fill("##asked DC", "20");
    ui.click("Fortune");
    CHECK(ui.shows("Ysolde Marr +10 10+ 0.25 % 20 % 70 % 9.75 %"));
    ui.click("Misfortune");
    CHECK(ui.selection.odds.mode == rules::RollMode::disadvantage);
    ui.click("Misfortune");
    CHECK(ui.shows("Ysolde Marr +10 10+ 5 % 40 % 50 % 5 %"));
}

TEST_CASE("party defences: srd5 has success and failure, advantage and what fails by a rule") {
    // SRD 5.1, Using Ability Scores: +4 against 15 succeeds on 11 to 20; with advantage on 300 of
    // 400 ways. Conditions: the paralyzed fail Dexterity saves.
    game::Campaign campaign = fixtures::pier_campaign();
    give(campaign, fixtures::srd5(), "Wren Halloway", "paralyzed", 0);
    Driver ui(std::move(campaign), fixtures::srd5(), widgets::draw_party_defences);
    CHECK_FALSE(ui.shows("crit"));
    ui.click("##ask Dexterity save");
    CHECK(ui.shows("Dexterity save: about"));
    CHECK(ui.shows("Joss Keel +4 11+ 50 % 50 %"));
    CHECK(ui.shows("Wren Halloway +2 fails 100 % 0 %"));
    ui.click("Advantage");
    CHECK(ui.shows("Joss Keel +4 11+ 25 % 75 %"));
    CHECK(ui.shows("Wren Halloway +2 fails 100 % 0 %"));
}

TEST_CASE("party defences: one press rolls for everybody, the GM reads it, and it can be undone") {
    Driver ui = sluice();
    ui.fill("##asked DC", "20");
    ui.click("##Bram Oake takes part");
    rules::Dice same{20}; // as the driver's
    ui.click("Roll in secret");
    REQUIRE(ui.campaign().table_rolls.rolls.size() == 1);
    const game::TableRoll& roll = ui.campaign().table_rolls.rolls.front();
    REQUIRE(roll.results.size() == 4);
    CHECK(roll.results[0].natural == same.d20());
    const std::string total = std::to_string(roll.results[0].natural + 10);
    CHECK(ui.shows("Rolled in secret: Perception, DC 20"));
    CHECK(ui.shows("Ysolde Marr " + total));
    CHECK(ui.last_edit().find("Secret Perception, DC 20: Ysolde Marr " + total) == 0);
    CHECK(ui.campaign().history.lines.back().label == ui.last_edit());
    CHECK_FALSE(ui.has("Earlier rolls"));
    ui.click("Roll in secret");
    ui.click("Earlier rolls");
    CHECK(ui.shows("Secret Perception, DC 20: Ysolde Marr " + total));
    ui.undo();
    ui.undo();
    CHECK(ui.campaign().table_rolls.rolls.empty());
    CHECK_FALSE(ui.shows("Rolled in secret"));
}

TEST_CASE("party defences: a campaign open for reading is asked, but nothing is rolled") {
    Driver ui = sluice();
    ui.is_read_only = true;
    ui.frames(2);
    CHECK_FALSE(ui.is_enabled("Roll in secret"));
    ui.key(ImGuiKey_R);
    CHECK(ui.campaign().table_rolls.rolls.empty());
    ui.fill("##asked DC", "25");
    CHECK(ui.shows("DC 25"));
}

TEST_CASE("party defences: by keyboard alone") {
    Driver ui = sluice();
    ui.key(ImGuiKey_UpArrow);
    CHECK(ui.selection.odds.dc == 20);
    ui.key(ImGuiKey_DownArrow);
    ui.key(ImGuiKey_DownArrow);
    CHECK(ui.selection.odds.dc == 18);
    ui.key(ImGuiKey_RightArrow);
    CHECK(ui.selection.odds.stat == "fortitude");
    ui.key(ImGuiKey_LeftArrow);
    ui.key(ImGuiKey_LeftArrow); // the first stays
    CHECK(ui.selection.odds.stat == "perception");
    ui.key(ImGuiKey_R);
    CHECK(ui.campaign().table_rolls.rolls.size() == 1);
    ui.has_keyboard = false;
    ui.key(ImGuiKey_R);
    CHECK(ui.campaign().table_rolls.rolls.size() == 1);
}

TEST_CASE("party defences: a press on a row picks the character for all panels") {
    Driver ui = sluice();
    ui.click("Sefa Lunn");
    CHECK(ui.selection.combatants == std::vector<base::Id>{ui.combatant("Sefa Lunn").id});
}

TEST_CASE("party defences: parts of the grid are put away and brought back") {
    game::Campaign campaign = fixtures::sluice_campaign();
    campaign.party.characters[2].statistics.senses = "smells the tide";
    Driver ui = sluice(std::move(campaign));
    CHECK(ui.shows("Bram Oake: smells the tide"));
    CHECK(ui.has("##Bram Oake, Stealth"));
    ui.click("Skills");
    CHECK_FALSE(ui.has("##Bram Oake, Stealth"));
    ui.click("DCs, speeds, senses");
    CHECK_FALSE(ui.shows("smells the tide"));
    CHECK(ui.has("##Bram Oake, Fortitude"));
}

TEST_CASE("party defences: a small panel with large text and targets, and a wide one") {
    for (const float width : {460.0F, 740.0F, 1900.0F}) {
        CAPTURE(width);
        driver::Settings settings;
        settings.size = {width, 900.0F};
        settings.is_touch = true;
        settings.scale = width < 500.0F ? 1.0F : 2.0F;
        Driver ui = sluice(frightened(), settings);
        ui.click("Find a DC");
        ui.click("Roll in secret");
        ui.click("##Tiv Hollow, Stealth");
        CHECK(ui.selection.odds.stat == "stealth");
        CHECK(ui.shows("Tiv Hollow, Stealth +15"));
    }
}
