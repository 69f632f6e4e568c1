// Hurting and healing by keys and by the pad, as a game master's hand does it.
#include "driver.h"
#include "fixtures.h"
#include "widgets/turn_order.h"

#include <doctest/doctest.h>

using driver::inside;
using driver::near;

namespace {

using Driver = driver::PanelDriver<widgets::TurnOrderView>;

Driver sluice() {
    return {
        fixtures::running(fixtures::sluice_campaign(), fixtures::four_degree()),
        fixtures::four_degree(),
        widgets::draw_turn_order};
}

const driver::Where on_pad = inside("##Popup");

} // namespace

TEST_CASE("number pad: digits and H hurt the picked one") {
    Driver ui = sluice();
    ui.click("Reed Lurker 2");
    ui.type("1");
    CHECK(ui.has("Full")); // the pad is open
    ui.type("2");
    CHECK(ui.shows("12"));
    ui.type("h");
    CHECK(ui.combatant("Reed Lurker 2").hp == 34 - 12);
    CHECK(ui.last_edit().rfind("Hurt Reed Lurker 2 by 12", 0) == 0);
    CHECK_FALSE(ui.has("Full"));
    ui.undo();
    CHECK(ui.combatant("Reed Lurker 2").hp == 34);
}

TEST_CASE("number pad: G heals, T gives temporary HP, Enter does what the button opened") {
    Driver ui = sluice();
    ui.click("Bram Oake");
    ui.type("20h");
    CHECK(ui.combatant("Bram Oake").hp == 30);
    ui.type("8g");
    CHECK(ui.combatant("Bram Oake").hp == 38);
    ui.type("5T");
    CHECK(ui.combatant("Bram Oake").temp_hp == 5);
    CHECK(ui.shows("+5"));
    ui.click("Heal");
    ui.type("4");
    ui.key(ImGuiKey_Enter);
    CHECK(ui.combatant("Bram Oake").hp == 42);
    CHECK(ui.last_edit().rfind("Heal Bram Oake by 4", 0) == 0);
}

TEST_CASE("number pad: with fingers only, by the HP bar, with a correction") {
    Driver ui = sluice();
    ui.click("###hp", near("Mudcaller"));
    ui.click("1", on_pad);
    ui.click("9", on_pad);
    ui.click("Back", on_pad);
    ui.click("4", on_pad);
    CHECK(ui.shows("14"));
    ui.click("Hurt", on_pad);
    CHECK(ui.combatant("Mudcaller").hp == 60 - 14);
}

TEST_CASE("number pad: the preview says what resistance and weakness make of it") {
    Driver ui = sluice();
    ui.click("Reed Lurker 1");
    ui.type("7");
    ui.click("fire", on_pad);
    CHECK(ui.shows("loses 2")); // resists 5
    ui.type("h");
    CHECK(ui.combatant("Reed Lurker 1").hp == 34 - 2);
    CHECK(ui.last_edit().rfind("Hurt Reed Lurker 1 by 7 fire", 0) == 0);
    ui.click("Mudcaller");
    ui.type("7");
    ui.click("cold", on_pad);
    CHECK(ui.shows("loses 12")); // weak to cold by 5
    ui.key(ImGuiKey_Escape);
    CHECK(ui.combatant("Mudcaller").hp == 60);
}

TEST_CASE("number pad: the last used type is offered first and stays chosen") {
    Driver ui = sluice();
    ui.click("Mudcaller");
    ui.type("7");
    ui.click("sonic", on_pad);
    ui.type("h");
    ui.type("3");
    const std::string seen = ui.seen();
    CHECK(seen.find("sonic") < seen.find("bludgeoning")); // the first of the rulebook
    ui.type("h");
    CHECK(ui.last_edit().rfind("Hurt Mudcaller by 3 sonic", 0) == 0);
}

TEST_CASE("number pad: an area effect hits three, one saved for half, one fails critically") {
    Driver ui = sluice();
    ui.click("Orrin Tace");
    ui.click_with(ImGuiMod_Ctrl, "Bram Oake");
    ui.click_with(ImGuiMod_Ctrl, "Sefa Lunn");
    ui.type("15");
    ui.click("Half", near("Orrin Tace"));
    ui.click("Double", near("Sefa Lunn"));
    ui.type("h");
    CHECK(ui.combatant("Orrin Tace").hp == 44 - 7); // halved, rounded down
    CHECK(ui.combatant("Bram Oake").hp == 50 - 15);
    CHECK(ui.combatant("Sefa Lunn").hp == 38 - 30);
    CHECK(ui.last_edit().rfind("Hurt 3 combatants by 15", 0) == 0);
    ui.undo(); // one edit for all of them
    CHECK(ui.combatant("Orrin Tace").hp == 44);
    CHECK(ui.combatant("Sefa Lunn").hp == 38);
}

TEST_CASE("number pad: all of them for half, one left out by a press on its name") {
    Driver ui = sluice();
    ui.click("Orrin Tace");
    ui.click_with(ImGuiMod_Ctrl, "Bram Oake");
    ui.click_with(ImGuiMod_Ctrl, "Sefa Lunn");
    ui.type("9");
    ui.click("All half");
    ui.click("Sefa Lunn", on_pad);
    ui.type("h");
    CHECK(ui.combatant("Orrin Tace").hp == 44 - 4);
    CHECK(ui.combatant("Bram Oake").hp == 50 - 4);
    CHECK(ui.combatant("Sefa Lunn").hp == 38);
}

TEST_CASE("number pad: an opponent at 0 is defeated and leaves the order") {
    Driver ui = sluice();
    ui.click("Reed Lurker 3");
    ui.type("40");
    ui.type("h");
    CHECK(ui.combatant("Reed Lurker 3").standing == game::Standing::defeated);
    CHECK(ui.shows("Defeated"));
    ui.undo();
    CHECK(ui.combatant("Reed Lurker 3").standing == game::Standing::in_order);
}

TEST_CASE("number pad: a critical hit that drops a PC brings dying 2 (Player Core, ORC)") {
    Driver ui = sluice();
    ui.click("Sefa Lunn");
    ui.type("40");
    ui.click("Critical hit", on_pad);
    ui.type("h");
    const game::ActiveCondition* dying = game::find_active(ui.combatant("Sefa Lunn"), "dying");
    REQUIRE(dying != nullptr);
    CHECK(dying->value == 2);
    CHECK(ui.shows("dying 2"));
}

TEST_CASE("number pad: without a number its verbs are off, and four digits are the most") {
    Driver ui = sluice();
    ui.click("Hurt");
    CHECK_FALSE(ui.is_enabled("Hurt", on_pad));
    ui.type("98765");
    CHECK(ui.shows("9876"));
    CHECK_FALSE(ui.shows("98765"));
    ui.key(ImGuiKey_Escape);
    CHECK_FALSE(ui.document.can_undo());
}
