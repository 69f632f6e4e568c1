// Giving conditions as a game master does: by typing, by arrows, by presses, to one or to several.
#include "driver.h"
#include "fixtures.h"
#include "game/conditions.h"
#include "widgets/condition_timers.h"

#include <doctest/doctest.h>

using driver::inside;
using driver::near;

namespace {

using Driver = driver::PanelDriver<widgets::ConditionTimersView>;

Driver sluice() {
    return {
        fixtures::running(fixtures::sluice_campaign(), fixtures::four_degree()),
        fixtures::four_degree(),
        widgets::draw_condition_timers};
}

void pick_out(Driver& ui, const char* name) {
    ui.selection.combatants = {ui.combatant(name).id};
    ui.frames(2);
}

const game::ActiveCondition* active(const Driver& ui, const char* who, const char* key) {
    return game::find_active(ui.combatant(who), std::string(key));
}

} // namespace

TEST_CASE("condition picker: frightened 2 by keyboard alone, its effect shown before") {
    Driver ui = sluice();
    pick_out(ui, "Ysolde Marr");
    ui.click("Add a condition");
    ui.frames(3);
    ui.type("fright"); // the search field has the keyboard
    CHECK(ui.shows("Ysolde Marr: AC 22 -> 21"));
    ui.click("+##more value");
    CHECK(ui.shows("AC 22 -> 20"));
    ui.click("##search");
    ui.key(ImGuiKey_Enter);
    const game::ActiveCondition* frightened = active(ui, "Ysolde Marr", "frightened");
    REQUIRE(frightened != nullptr);
    CHECK(frightened->value == 2);
    CHECK(ui.last_edit() == "Give frightened 2 to Ysolde Marr");
    CHECK_FALSE(ui.has("Give it"));
    ui.undo();
    CHECK(active(ui, "Ysolde Marr", "frightened") == nullptr);
}

TEST_CASE("condition picker: arrow keys walk the list, Escape leaves it with nothing given") {
    Driver ui = sluice();
    pick_out(ui, "Bram Oake");
    ui.click("Add a condition");
    ui.frames(3);
    const std::string first = ui.view.picker.key;
    ui.key(ImGuiKey_DownArrow);
    ui.key(ImGuiKey_DownArrow);
    const std::string third = ui.view.picker.key;
    CHECK(third != first);
    ui.key(ImGuiKey_UpArrow);
    ui.key(ImGuiKey_UpArrow);
    CHECK(ui.view.picker.key == first);
    ui.key(ImGuiKey_Escape);
    ui.frames(2);
    CHECK_FALSE(ui.has("Give it"));
    CHECK_FALSE(ui.document.can_undo());
}

TEST_CASE("condition picker: until the end of somebody's turn, and for rounds") {
    Driver ui = sluice();
    pick_out(ui, "Orrin Tace");
    ui.click("Add a condition");
    ui.type("off-g");
    ui.click("A turn");
    ui.click("start");
    ui.click("##whose turn");
    ui.click("Mudcaller", inside("##Combo"));
    ui.click("Give it");
    const game::ActiveCondition* off_guard = active(ui, "Orrin Tace", "off_guard");
    REQUIRE(off_guard != nullptr);
    CHECK(off_guard->duration.kind == game::DurationKind::until_turn);
    CHECK(off_guard->duration.edge == game::TurnEdge::start);
    CHECK(off_guard->duration.whose_turn == ui.combatant("Mudcaller").id);
    CHECK(ui.shows("start of Mudcaller's turn"));

    ui.click("Add a condition");
    ui.type("blind");
    ui.click("Rounds");
    ui.click("+##more rounds");
    ui.click("+##more rounds");
    ui.click("Give it");
    const game::ActiveCondition* blinded = active(ui, "Orrin Tace", "blinded");
    REQUIRE(blinded != nullptr);
    CHECK(blinded->duration.rounds_left == 3);
    CHECK(blinded->duration.whose_turn == ui.combatant("Orrin Tace").id);
    CHECK(ui.shows("3 rounds"));
}

TEST_CASE("condition picker: ten minutes, two hours, until rest, until a save") {
    Driver ui = sluice();
    pick_out(ui, "Sefa Lunn");
    const auto give = [&](const char* search) {
        ui.click("Add a condition");
        ui.type(search);
    };
    give("blind");
    ui.click("Time");
    ui.fill("##time", "10");
    ui.click("Give it");
    CHECK(active(ui, "Sefa Lunn", "blinded")->duration.seconds_left == 600);
    give("deaf");
    ui.click("Time");
    ui.click("hours");
    ui.fill("##time", "2");
    ui.click("Give it");
    CHECK(active(ui, "Sefa Lunn", "deafened")->duration.seconds_left == 7200);
    give("clumsy");
    ui.click("A rest");
    ui.click("Give it");
    CHECK(active(ui, "Sefa Lunn", "clumsy")->duration.kind == game::DurationKind::until_rest);
    give("slowed");
    ui.click("A check");
    ui.click("##check");
    ui.click("Will", inside("##Combo"));
    ui.fill("##dc", "21");
    ui.click("start");
    ui.click("Give it");
    const game::ActiveCondition* slowed = active(ui, "Sefa Lunn", "slowed");
    REQUIRE(slowed->check.has_value());
    CHECK(slowed->check->stat == "will");
    CHECK(slowed->check->dc == 21);
    CHECK(slowed->check->at == game::TurnEdge::start);
}

TEST_CASE("condition picker: a minute, or a save each turn, whichever comes first") {
    Driver ui = sluice();
    pick_out(ui, "Sefa Lunn");
    ui.click("Add a condition");
    ui.type("slowed");
    ui.click("Time");
    ui.click("A check may end it sooner");
    ui.click("Give it");
    const game::ActiveCondition* slowed = active(ui, "Sefa Lunn", "slowed");
    REQUIRE(slowed != nullptr);
    CHECK(slowed->duration.seconds_left == 60);
    REQUIRE(slowed->check.has_value());
    CHECK(slowed->check->stat.empty()); // a flat check, DC 15
    CHECK(slowed->check->dc == 15);
}

TEST_CASE("condition picker: persistent damage takes dice, and refuses what is none") {
    Driver ui = sluice();
    pick_out(ui, "Mudcaller");
    ui.click("Add a condition");
    ui.type("persist");
    ui.fill("##damage", "3d0");
    CHECK_FALSE(ui.is_enabled("Give it"));
    ui.fill("##damage", "2d6");
    ui.click("##damage type");
    ui.click("fire", inside("##Combo"));
    ui.click("Give it");
    const game::ActiveCondition* burning = active(ui, "Mudcaller", "persistent_damage");
    REQUIRE(burning != nullptr);
    CHECK(burning->damage == "2d6");
    CHECK(burning->damage_type == "fire");
    CHECK(ui.last_edit() == "Give persistent 2d6 fire to Mudcaller");
}

TEST_CASE("condition picker: who is immune is named, and the others get it") {
    Driver ui = sluice();
    ui.selection.combatants = {ui.combatant("Mudcaller").id, ui.combatant("Reed Lurker 1").id};
    ui.click("Add a condition");
    ui.type("persist");
    ui.click("##damage type");
    ui.click("poison", inside("##Combo"));
    CHECK(ui.shows("Mudcaller is immune"));
    ui.click("Give it");
    CHECK(active(ui, "Reed Lurker 1", "persistent_damage") != nullptr);
    CHECK(active(ui, "Mudcaller", "persistent_damage") == nullptr);
    CHECK(ui.last_edit() == "Give persistent 1d6 poison to Reed Lurker 1; Mudcaller is immune");
}

TEST_CASE("condition picker: a shield raised, in the game master's own words") {
    Driver ui = sluice();
    pick_out(ui, "Bram Oake");
    ui.click("Add a condition");
    ui.type("Shield raised"); // no condition is called that: it becomes an effect of its own
    CHECK(ui.shows("In your own words"));
    ui.fill("##name", "");
    CHECK_FALSE(ui.is_enabled("Give it"));
    CHECK(ui.shows("Name the effect first."));
    ui.fill("##name", "Shield raised");
    ui.click("Add a bonus or penalty");
    ui.fill("##amount", "2");
    CHECK(ui.shows("Bram Oake: AC 19 -> 21"));
    ui.click("A turn");
    ui.fill("##note", "blocks 5");
    ui.click("Give it");
    REQUIRE(ui.combatant("Bram Oake").conditions.size() == 1);
    const game::ActiveCondition& shield = ui.combatant("Bram Oake").conditions.front();
    CHECK(shield.name == "Shield raised");
    REQUIRE(shield.modifiers.size() == 1);
    CHECK(shield.modifiers[0].amount == 2);
    CHECK(shield.modifiers[0].bonus_type == rules::BonusType::circumstance);
    CHECK(shield.note == "blocks 5");
}

TEST_CASE("condition picker: to three at once, chosen inside, and the last choice is remembered") {
    Driver ui = sluice();
    ui.click("Add a condition");
    ui.type("frightened");
    CHECK_FALSE(ui.is_enabled("Give it"));
    CHECK(ui.shows("Choose who gets it first."));
    ui.click("##targets");
    ui.click("  Ysolde Marr", inside("##Combo"));
    ui.click("  Orrin Tace", inside("##Combo"));
    ui.click("  Tiv Hollow", inside("##Combo"));
    ui.key(ImGuiKey_Escape);
    ui.click("+##more value");
    ui.click("+##more value");
    ui.click("Give it");
    CHECK(active(ui, "Ysolde Marr", "frightened")->value == 3);
    CHECK(active(ui, "Orrin Tace", "frightened")->value == 3);
    CHECK(active(ui, "Tiv Hollow", "frightened")->value == 3);
    pick_out(ui, "Bram Oake");
    ui.click("Add a condition");
    CHECK(ui.view.picker.key == "frightened"); // given last, so it is offered first
    CHECK(ui.view.picker.choice.value == 3);
    const driver::Item recent = ui.item("frightened");
    CHECK(recent.rect.Min.y < ui.item("blinded").rect.Min.y);
}

TEST_CASE("condition picker: who caused it is the one whose turn it is, or somebody else") {
    Driver ui = sluice();
    pick_out(ui, "Reed Lurker 2");
    ui.click("Add a condition");
    ui.type("frightened");
    ui.click("Give it");
    CHECK(active(ui, "Reed Lurker 2", "frightened")->source == ui.combatant("Ysolde Marr").id);
    ui.click("Add a condition");
    ui.type("grabbed");
    ui.click("##source");
    ui.click("Orrin Tace", inside("##Combo"));
    ui.click("Give it");
    CHECK(active(ui, "Reed Lurker 2", "grabbed")->source == ui.combatant("Orrin Tace").id);
}

TEST_CASE("condition picker: fits the window at twice the text and with large targets") {
    driver::Settings large;
    large.scale = 2.0F;
    large.is_touch = true;
    Driver ui(
        fixtures::running(fixtures::sluice_campaign(), fixtures::four_degree()),
        fixtures::four_degree(),
        widgets::draw_condition_timers,
        large
    );
    pick_out(ui, "Ysolde Marr");
    ui.click("Add a condition");
    ui.type("clumsy");
    const driver::Item give = ui.item("Give it");
    CHECK(give.rect.Max.y <= large.size.y);
    CHECK(give.rect.Max.x <= large.size.x);
    ui.click("Give it");
    CHECK(active(ui, "Ysolde Marr", "clumsy") != nullptr);
}
