// A fight from the empty panel to the first turn, as a game master's hand does it.
#include "driver.h"
#include "fixtures.h"
#include "game/campaign.h"
#include "widgets/turn_order.h"

#include <doctest/doctest.h>

#include <algorithm>

using driver::inside;
using driver::near;

namespace {

using Driver = driver::PanelDriver<widgets::TurnOrderView>;

Driver fresh() {
    return {fixtures::sluice_campaign(), fixtures::four_degree(), widgets::draw_turn_order};
}

Driver gathering() {
    return {
        fixtures::opened(fixtures::sluice_campaign(), fixtures::four_degree()),
        fixtures::four_degree(),
        widgets::draw_turn_order};
}

} // namespace

TEST_CASE("turn order: without a fight the panel says so and offers the prepared ones") {
    Driver ui = fresh();
    CHECK(ui.shows("No fight is on"));
    CHECK(ui.shows("3 Reed Lurker, 1 Mudcaller"));
    ui.click("Open Ambush at the sluice");
    CHECK(ui.encounter().phase == game::Phase::gathering);
    CHECK(ui.shows("Ambush at the sluice"));
    CHECK(ui.has("Reed Lurker 3"));
    CHECK(ui.last_edit() == "Open the fight Ambush at the sluice");
    ui.undo();
    CHECK(ui.encounter().phase == game::Phase::no_fight);
    CHECK(ui.shows("No fight is on"));
}

TEST_CASE("turn order: a fight with the party only") {
    Driver ui = fresh();
    ui.click("Open a fight with the party only");
    CHECK(ui.encounter().phase == game::Phase::gathering);
    CHECK(ui.has("Ysolde Marr"));
    CHECK_FALSE(ui.has("Mudcaller"));
}

TEST_CASE("turn order: without a party a fight cannot be opened, and the button says why") {
    Driver ui({}, fixtures::four_degree(), widgets::draw_turn_order);
    CHECK_FALSE(ui.is_enabled("Open a fight with the party only"));
    ui.hover("Open a fight with the party only");
    CHECK(ui.seen().find("Enter the party first") != std::string::npos);
}

TEST_CASE("turn order: initiative typed from the dice on the table, Enter goes on to the next") {
    Driver ui = gathering();
    CHECK_FALSE(ui.is_enabled("Begin the fight"));
    CHECK(ui.shows("Initiative is missing for"));
    ui.fill("##total", "24", near("Ysolde Marr"));
    CHECK(ui.combatant("Ysolde Marr").initiative == 24);
    CHECK(ui.last_edit() == "Initiative of Ysolde Marr: 24");
    // The keyboard has gone on to Orrin Tace, the next row.
    ui.frames(3);
    ui.type("19");
    ui.key(ImGuiKey_Enter);
    CHECK(ui.combatant("Orrin Tace").initiative == 19);
}

TEST_CASE("turn order: a typed initiative out of reason is refused and the old one stays") {
    Driver ui = gathering();
    ui.fill("##total", "12", near("Bram Oake"));
    ui.fill("##total", "1000", near("Bram Oake"));
    CHECK(ui.combatant("Bram Oake").initiative == 12);
    CHECK(ui.shows("Initiative is -20 to 99."));
    ui.fill("##total", "soon", near("Bram Oake"));
    CHECK(ui.combatant("Bram Oake").initiative == 12);
    ui.fill("##total", "13", near("Bram Oake"));
    CHECK(ui.combatant("Bram Oake").initiative == 13);
    CHECK_FALSE(ui.shows("Initiative is -20 to 99."));
}

TEST_CASE("turn order: rolled for one, for the opponents, and for all that are missing") {
    Driver ui = gathering();
    ui.click("Roll", near("Tiv Hollow"));
    REQUIRE(ui.combatant("Tiv Hollow").initiative.has_value());
    const int rolled = *ui.combatant("Tiv Hollow").initiative;
    CHECK(rolled >= 1 + 12); // perception 12
    CHECK(rolled <= 20 + 12);
    ui.click("Roll for opponents");
    CHECK(ui.combatant("Mudcaller").initiative.has_value());
    CHECK_FALSE(ui.combatant("Bram Oake").initiative.has_value());
    ui.click("Roll all that are missing");
    for (const game::Combatant& combatant : ui.encounter().combatants)
        CHECK(combatant.initiative.has_value());
    CHECK(ui.combatant("Tiv Hollow").initiative == rolled);
    CHECK(ui.shows("Everybody's initiative is set."));
    ui.click("Begin the fight");
    CHECK(ui.encounter().phase == game::Phase::running);
    CHECK(ui.encounter().round == 1);
    CHECK(ui.shows("Round 1"));
}

TEST_CASE("turn order: stealth is rolled instead of perception") {
    Driver ui = gathering();
    ui.click("##stat", near("Tiv Hollow"));
    ui.click("Stealth +15"); // reflex 13 and two more in the fixture
    CHECK(ui.combatant("Tiv Hollow").initiative_stat == "stealth");
    CHECK(ui.shows("Stealth +15"));
}

TEST_CASE("turn order: the place in the order stands beside each row before the fight begins") {
    Driver ui = gathering();
    ui.fill("##total", "20", near("Bram Oake"));
    ui.fill("##total", "22", near("Mudcaller"));
    // Rows stay where they are; the places tell the order.
    CHECK(ui.item("Bram Oake").rect.Min.y < ui.item("Mudcaller").rect.Min.y);
    const std::string seen = ui.seen();
    CHECK(seen.find("1.") != std::string::npos);
    CHECK(seen.find("2.") != std::string::npos);
    CHECK(seen.find("3.") == std::string::npos);
}

TEST_CASE("turn order: several are picked while gathering, then hidden, grouped and removed") {
    Driver ui = gathering();
    ui.click("Reed Lurker 1");
    ui.click_with(ImGuiMod_Shift, "Reed Lurker 3");
    CHECK(ui.selection.combatants.size() == 3);
    ui.click("Hide");
    CHECK(ui.combatant("Reed Lurker 2").is_hidden);
    ui.click("Group");
    CHECK(ui.combatant("Reed Lurker 1").group != base::no_id);
    CHECK(ui.combatant("Reed Lurker 1").group == ui.combatant("Reed Lurker 3").group);
    ui.fill("##total", "15", near("Reed Lurker 2"));
    CHECK(ui.combatant("Reed Lurker 1").initiative == 15);
    ui.click("Mudcaller");
    ui.click("Remove");
    CHECK(ui.combatant("Mudcaller").id == base::no_id);
    ui.undo();
    CHECK(ui.combatant("Mudcaller").id != base::no_id);
}

TEST_CASE("turn order: a fight that is called off leaves the table as it was") {
    Driver ui = gathering();
    ui.click("Call it off");
    CHECK(ui.encounter().phase == game::Phase::no_fight);
    CHECK(ui.combatant("Mudcaller").id == base::no_id);
    CHECK(ui.combatant("Ysolde Marr").id != base::no_id);
}

TEST_CASE("turn order: two more from the shelf and a stranger come before the fight begins") {
    Driver ui = gathering();
    ui.click("Add");
    ui.click("##creature");
    ui.click("Sluice Wight");
    ui.click("+##count");
    ui.click("Drop in");
    CHECK(ui.combatant("Sluice Wight 2").id != base::no_id);
    ui.click("Add");
    ui.fill("##name", "Old Tamsin");
    ui.click("With the party");
    ui.click("Add the stranger");
    CHECK(ui.combatant("Old Tamsin").side == game::Side::party);
    CHECK(ui.combatant("Old Tamsin").hp == 20);
}
