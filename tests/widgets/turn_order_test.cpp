// A running fight, as a game master's hand does it: turns, picking, verbs, order, undo.
#include "driver.h"
#include "fixtures.h"
#include "game/conditions.h"
#include "game/turns.h"
#include "widgets/turn_order.h"

#include <doctest/doctest.h>

using driver::near;

namespace {

using Driver = driver::PanelDriver<widgets::TurnOrderView>;

Driver sluice(const driver::Settings& settings = {}) {
    return {
        fixtures::running(fixtures::sluice_campaign(), fixtures::four_degree()),
        fixtures::four_degree(),
        widgets::draw_turn_order,
        settings};
}

Driver pier() {
    return {
        fixtures::running(fixtures::pier_campaign(), fixtures::srd5()),
        fixtures::srd5(),
        widgets::draw_turn_order};
}

std::string current_name(const Driver& ui) {
    const game::Combatant* current = game::find_combatant(ui.encounter(), ui.encounter().current);
    return current == nullptr ? "" : current->name;
}

} // namespace

TEST_CASE("turn order: the rows say in words who is up, who is next and who is done") {
    Driver ui = sluice();
    CHECK(current_name(ui) == "Ysolde Marr");
    CHECK(ui.shows("Round 1"));
    CHECK(ui.shows("Next: Reed Lurker 2, then Orrin Tace"));
    ui.click("Next turn");
    CHECK(current_name(ui) == "Reed Lurker 2");
    const std::string text = ui.text();
    CHECK(text.find("done") != std::string::npos);
    CHECK(text.find("next") != std::string::npos);
    CHECK(text.find("now") != std::string::npos);
    // The order on the screen is the order of the fight.
    CHECK(ui.item("Reed Lurker 2").rect.Min.y < ui.item("Orrin Tace").rect.Min.y);
    CHECK(ui.item("Orrin Tace").rect.Min.y < ui.item("Bram Oake").rect.Min.y);
}

TEST_CASE("turn order: Enter and Space step through a whole round") {
    Driver ui = sluice();
    for (int turn = 0; turn < 9; ++turn)
        ui.key(turn % 2 == 0 ? ImGuiKey_Enter : ImGuiKey_Space);
    CHECK(ui.encounter().round == 2);
    CHECK(current_name(ui) == "Ysolde Marr");
    CHECK(ui.shows("0:06")); // a round takes 6 seconds
    ui.undo();
    CHECK(ui.encounter().round == 1);
    CHECK(current_name(ui) == "Bram Oake");
}

TEST_CASE("turn order: keys do nothing while another panel has the keyboard") {
    Driver ui = sluice();
    ui.has_keyboard = false;
    ui.key(ImGuiKey_Enter);
    ui.type("7h");
    CHECK(current_name(ui) == "Ysolde Marr");
    CHECK_FALSE(ui.document.can_undo());
}

TEST_CASE("turn order: a click picks, Ctrl adds, Shift takes the range, Escape lets go") {
    Driver ui = sluice();
    ui.click("Orrin Tace");
    CHECK(ui.selection.combatants.size() == 1);
    CHECK(ui.shows("For Orrin Tace:"));
    ui.click_with(ImGuiMod_Ctrl, "Bram Oake");
    CHECK(ui.shows("For Orrin Tace and Bram Oake picked:"));
    ui.click("Reed Lurker 2");
    ui.click_with(ImGuiMod_Shift, "Sefa Lunn");
    CHECK(ui.selection.combatants.size() == 4);
    CHECK(ui.selection.combatants.back() == ui.combatant("Sefa Lunn").id);
    ui.key(ImGuiKey_Escape);
    CHECK(ui.selection.combatants.empty());
    CHECK(ui.shows("For Ysolde Marr (current"));
}

TEST_CASE("turn order: arrow keys move the picked row") {
    Driver ui = sluice();
    ui.key(ImGuiKey_DownArrow);
    CHECK(ui.selection.combatants.back() == ui.combatant("Ysolde Marr").id);
    ui.key(ImGuiKey_DownArrow);
    ui.key(ImGuiKey_DownArrow, ImGuiMod_Shift);
    CHECK(
        ui.selection.combatants ==
        std::vector{ui.combatant("Reed Lurker 2").id, ui.combatant("Orrin Tace").id}
    );
    ui.key(ImGuiKey_UpArrow);
    CHECK(ui.selection.combatants == std::vector{ui.combatant("Reed Lurker 2").id});
}

TEST_CASE("turn order: actions are spent and given back by their pips") {
    Driver ui = sluice();
    CHECK(ui.shows("3 of 3 actions"));
    ui.click("3##action");
    CHECK(ui.combatant("Ysolde Marr").actions_left == 2);
    CHECK(ui.last_edit() == "Ysolde Marr spends 1 action");
    ui.click("1##action");
    CHECK(ui.combatant("Ysolde Marr").actions_left == 0);
    CHECK(ui.shows("0 of 3 actions"));
    ui.click("2##action");
    CHECK(ui.combatant("Ysolde Marr").actions_left == 2);
}

TEST_CASE("turn order: attacks made bring the penalty of the next one (Player Core, ORC)") {
    Driver ui = sluice();
    CHECK(ui.shows("next attack +0"));
    ui.click("Attack made");
    CHECK(ui.shows("next attack -5, agile -4"));
    ui.click("Attack made");
    CHECK(ui.shows("next attack -10, agile -8"));
    ui.click("Attack made");
    CHECK(ui.shows("next attack -10, agile -8"));
    ui.click("Not made");
    CHECK(ui.combatant("Ysolde Marr").attacks_made == 2);
}

TEST_CASE("turn order: the reaction is used, by the one whose turn it is and by another") {
    Driver ui = sluice();
    ui.click("Reaction ready");
    CHECK(ui.combatant("Ysolde Marr").reaction_used);
    CHECK(ui.shows("Reaction used"));
    ui.click("Bram Oake");
    ui.click("Use reaction");
    CHECK(ui.combatant("Bram Oake").reaction_used);
    CHECK(ui.last_edit() == "Bram Oake uses its reaction");
}

TEST_CASE("turn order: a reminder of the character counts its uses") {
    Driver ui = sluice();
    ui.click("Second breath: 1 left");
    CHECK(ui.shows("Second breath: 0 left"));
    CHECK(ui.last_edit() == "Ysolde Marr uses: Second breath");
    ui.click("Second breath: 0 left");
    CHECK(ui.shows("Second breath: 1 left"));
}

TEST_CASE("turn order: delay steps out of the order and return comes back after the current") {
    Driver ui = sluice();
    ui.click("Delay");
    CHECK(ui.combatant("Ysolde Marr").standing == game::Standing::delaying);
    CHECK(current_name(ui) == "Reed Lurker 2");
    CHECK(ui.shows("delays"));
    ui.click("Ysolde Marr");
    ui.click("Return");
    CHECK(ui.combatant("Ysolde Marr").standing == game::Standing::in_order);
    CHECK(ui.last_edit() == "Ysolde Marr returns");
}

TEST_CASE("turn order: only the current combatant may delay, and the button says so") {
    Driver ui = sluice();
    ui.click("Bram Oake");
    CHECK_FALSE(ui.is_enabled("Delay"));
    ui.hover("Delay");
    CHECK(ui.seen().find("Only on its own turn") != std::string::npos);
}

TEST_CASE("turn order: srd5 has no delay and offers none, nor attack penalties") {
    Driver ui = pier();
    CHECK(current_name(ui) == "Wren Halloway");
    CHECK_FALSE(ui.has("Delay"));
    CHECK_FALSE(ui.has("Attack made"));
    CHECK(ui.has("Ready"));
}

TEST_CASE("turn order: an action is readied, shown, used with the reaction") {
    Driver ui = sluice();
    ui.click("Ready");
    ui.type("the gate opens: shoot");
    ui.key(ImGuiKey_Enter);
    CHECK(ui.combatant("Ysolde Marr").readied == "the gate opens: shoot");
    CHECK(ui.shows("readied: the gate opens: shoot"));
    ui.click("Next turn");
    ui.click("Ysolde Marr");
    ui.click("Use readied");
    CHECK(ui.combatant("Ysolde Marr").readied.empty());
    CHECK(ui.combatant("Ysolde Marr").reaction_used);
}

TEST_CASE("turn order: hidden is said in a word and taken back") {
    Driver ui = sluice();
    ui.click("Mudcaller");
    ui.click("Hide");
    CHECK(ui.combatant("Mudcaller").is_hidden);
    CHECK(ui.text().find("hidden") != std::string::npos);
    ui.click("Show");
    CHECK_FALSE(ui.combatant("Mudcaller").is_hidden);
}

TEST_CASE("turn order: a defeated one moves below and comes back") {
    Driver ui = sluice();
    ui.click("Reed Lurker 2");
    ui.click("More");
    ui.click("Defeated");
    CHECK(ui.combatant("Reed Lurker 2").standing == game::Standing::defeated);
    CHECK(ui.item("Reed Lurker 2").rect.Min.y > ui.item("Bram Oake").rect.Min.y);
    ui.click("Back");
    CHECK(ui.combatant("Reed Lurker 2").standing == game::Standing::in_order);
    CHECK(ui.last_edit() == "Reed Lurker 2 is back in the fight");
}

TEST_CASE("turn order: initiative retyped, moved by hand, grouped, renamed, noted") {
    Driver ui = sluice();
    ui.click("Bram Oake");
    ui.click("More");
    ui.fill("##initiative", "20");
    CHECK(ui.combatant("Bram Oake").initiative == 20);
    ui.click("Move up");
    CHECK(ui.encounter().order[1] == ui.combatant("Bram Oake").id);
    ui.fill("##note", "owes the ferryman");
    CHECK(ui.combatant("Bram Oake").note == "owes the ferryman");
    CHECK_FALSE(ui.has("##name")); // a character's name is changed in the Party panel
    ui.key(ImGuiKey_Escape);
    ui.click("Mudcaller");
    ui.click("More");
    ui.fill("##name", "Old Mudcaller");
    CHECK(ui.combatant("Old Mudcaller").id != base::no_id);
    ui.key(ImGuiKey_Escape);
    ui.click("Reed Lurker 1");
    ui.click_with(ImGuiMod_Ctrl, "Reed Lurker 3");
    ui.click("More");
    ui.click("Group");
    CHECK(ui.combatant("Reed Lurker 1").group != base::no_id);
    CHECK(ui.combatant("Reed Lurker 3").initiative == 17); // the highest among them
    ui.click("Leave the group");
    CHECK(ui.combatant("Reed Lurker 1").group == base::no_id);
}

TEST_CASE("turn order: a late arrival comes with the initiative that was typed") {
    Driver ui = sluice();
    ui.click("Add");
    ui.fill("##initiative", "16");
    ui.click("Drop in");
    const game::Combatant& late = ui.combatant("Reed Lurker 4");
    REQUIRE(late.id != base::no_id);
    CHECK(late.initiative == 16);
    CHECK(ui.item("Reed Lurker 4").rect.Min.y < ui.item("Sefa Lunn").rect.Min.y);
    CHECK(ui.item("Reed Lurker 4").rect.Min.y > ui.item("Reed Lurker 1").rect.Min.y);
    ui.click("Add");
    ui.fill("##name", "Old Tamsin");
    ui.click("Add the stranger");
    CHECK(ui.combatant("Old Tamsin").initiative.has_value()); // rolled, since none was typed
}

TEST_CASE("turn order: removed for good, and one undo brings it back") {
    Driver ui = sluice();
    ui.click("Reed Lurker 3");
    ui.click("More");
    ui.click("Remove");
    CHECK(ui.combatant("Reed Lurker 3").id == base::no_id);
    CHECK(ui.selection.combatants.empty());
    ui.undo();
    CHECK(ui.combatant("Reed Lurker 3").id != base::no_id);
}

TEST_CASE("turn order: the fight ends, opponents leave, the party keeps its wounds") {
    Driver ui = sluice();
    ui.type("7h");
    ui.click("End fight");
    CHECK(ui.encounter().phase == game::Phase::no_fight);
    CHECK(ui.combatant("Reed Lurker 1").id == base::no_id);
    CHECK(ui.combatant("Ysolde Marr").hp == 45);
    ui.undo();
    CHECK(ui.encounter().phase == game::Phase::running);
}

TEST_CASE("turn order: read-only shows everything and changes nothing") {
    Driver ui = sluice();
    ui.is_read_only = true;
    CHECK_FALSE(ui.is_enabled("Next turn"));
    ui.key(ImGuiKey_Enter);
    ui.type("7h");
    CHECK_FALSE(ui.is_enabled("Hurt"));
    CHECK_FALSE(ui.document.can_undo());
}

TEST_CASE("turn order: in a small window the current and the next two stay in sight") {
    driver::Settings small;
    small.size = {700.0F, 520.0F};
    Driver ui = sluice(small);
    for (int turn = 0; turn < 14; ++turn) {
        CAPTURE(turn);
        ui.key(ImGuiKey_Enter);
        ui.frames(2);
        const std::string seen = ui.seen();
        CHECK(seen.find(current_name(ui)) != std::string::npos);
        for (const int steps : {1, 2}) {
            const base::Id id = game::upcoming(ui.encounter(), steps);
            CHECK(seen.find(game::find_combatant(ui.encounter(), id)->name) != std::string::npos);
        }
    }
}

TEST_CASE("turn order: every target is large enough for a finger") {
    driver::Settings touch;
    touch.is_touch = true;
    Driver ui = sluice(touch);
    CHECK(widgets::row_height() >= 44.0F);
    ui.click("Hurt"); // the driver checks every target of every frame
    ui.key(ImGuiKey_Escape);
    ui.click("More");
    ui.key(ImGuiKey_Escape);
    ui.click("Add");
    CHECK(ui.has("Drop in"));
}

TEST_CASE("turn order: at 200 % text the fight can still be run") {
    driver::Settings large;
    large.scale = 2.0F;
    Driver ui = sluice(large);
    ui.click("Next turn");
    CHECK(current_name(ui) == "Reed Lurker 2");
    ui.click("Hurt");
    ui.click("7");
    ui.click("Hurt", driver::inside("##Popup"));
    CHECK(ui.combatant("Reed Lurker 2").hp == 27);
}
