// Entering an opponent, finding it again, and dropping it into a fight.
#include "driver.h"
#include "fixtures.h"
#include "widgets/creature_shelf.h"

#include <doctest/doctest.h>

using driver::inside;
using driver::near;

namespace {

using Driver = driver::PanelDriver<widgets::CreatureShelfView>;

Driver sluice(const driver::Settings& settings = {}) {
    return {
        fixtures::sluice_campaign(),
        fixtures::four_degree(),
        widgets::draw_creature_shelf,
        settings};
}

const game::Creature& creature(const Driver& ui, const std::string& name) {
    static const game::Creature none{};
    for (const game::Creature& each : ui.campaign().shelf.creatures) {
        if (each.name == name) return each;
    }
    return none;
}

} // namespace

TEST_CASE("creature shelf: an opponent entered from nothing") {
    Driver ui(game::Campaign{}, fixtures::four_degree(), widgets::draw_creature_shelf);
    CHECK(ui.shows("The shelf is empty."));
    ui.click("New creature");
    ui.frames(3);
    ui.fill("##name", "Salt Crab");
    ui.fill("##level", "-1");
    ui.fill("##ac", "15");
    ui.fill("##hp", "9");
    ui.fill("##save fortitude", "6");
    ui.click("Add an attack");
    ui.fill("##attack name 0", "claw");
    ui.fill("##attack bonus 0", "7");
    ui.fill("##attack damage 0", "1d6+1");
    ui.click("##attack type 0");
    ui.click("slashing", inside("##Combo"));
    const game::Creature& crab = creature(ui, "Salt Crab");
    REQUIRE(crab.id != base::no_id);
    CHECK(crab.statistics.level == -1);
    CHECK(crab.statistics.armor_class == 15);
    CHECK(crab.statistics.hit_points == 9);
    CHECK(crab.statistics.attacks.at(0).damage_type == "slashing");
    ui.fill("##level", "31");
    CHECK(creature(ui, "Salt Crab").statistics.level == -1);
    CHECK(ui.shows("Level is -1 to 30."));
}

TEST_CASE("bug: a new creature is named by typing at once, also as the second one") {
    Driver ui(game::Campaign{}, fixtures::four_degree(), widgets::draw_creature_shelf);
    for (const char* name : {"Salt Crab", "Silt Hound"}) {
        ui.click("New creature");
        ui.frames(3);
        ui.type(name);
        ui.key(ImGuiKey_Enter);
        CHECK(creature(ui, name).name == name);
    }
}

TEST_CASE("creature shelf: a challenge rating instead of a level in srd5") {
    Driver ui(fixtures::pier_campaign(), fixtures::srd5(), widgets::draw_creature_shelf);
    ui.click("Dock Rat");
    CHECK_FALSE(ui.has("##level"));
    ui.click("##challenge");
    ui.click("1/8", inside("##Combo"));
    CHECK(creature(ui, "Dock Rat").statistics.challenge == 0.125);
    CHECK(ui.last_edit() == "CR of Dock Rat: 1/8");
}

TEST_CASE("creature shelf: found by typing, sorted by AC") {
    Driver ui = sluice();
    ui.fill("##search", "mud");
    CHECK(ui.has("Mudcaller"));
    CHECK_FALSE(ui.has("Reed Lurker"));
    ui.fill("##search", "nothing like it");
    CHECK(ui.shows("No creature on the shelf fits that."));
    ui.fill("##search", "");
    ui.click("##sort");
    ui.click("AC", inside("##Combo"));
    CHECK(ui.item("Reed Lurker").rect.Min.y < ui.item("Sluice Wight").rect.Min.y); // 17 and 18
    CHECK(ui.item("Sluice Wight").rect.Min.y < ui.item("Mudcaller").rect.Min.y);   // 20
}

TEST_CASE("creature shelf: a copy is changed, the first one is not") {
    Driver ui = sluice();
    ui.click("Reed Lurker");
    ui.click("Copy");
    ui.frames(3);
    ui.fill("##name", "Old Lurker");
    ui.fill("##hp", "50");
    CHECK(creature(ui, "Old Lurker").statistics.hit_points == 50);
    CHECK(creature(ui, "Reed Lurker").statistics.hit_points == 34);
}

TEST_CASE("creature shelf: taken off, it leaves the prepared encounter too; undo brings both back"
) {
    Driver ui = sluice();
    ui.click("Mudcaller");
    ui.click("Take off the shelf");
    CHECK(creature(ui, "Mudcaller").id == base::no_id);
    CHECK(ui.campaign().preparation.encounters[0].creatures.size() == 1);
    ui.undo();
    CHECK(creature(ui, "Mudcaller").id != base::no_id);
    CHECK(ui.campaign().preparation.encounters[0].creatures.size() == 2);
}

TEST_CASE("creature shelf: three dropped into the running fight, initiative typed") {
    Driver ui(
        fixtures::running(fixtures::sluice_campaign(), fixtures::four_degree()),
        fixtures::four_degree(),
        widgets::draw_creature_shelf
    );
    ui.click("Drop in", near("Sluice Wight"));
    CHECK(ui.shows("in round 1"));
    ui.click("+##more count");
    ui.click("+##more count");
    ui.fill("##initiative", "18");
    ui.click("Drop in##now");
    CHECK(ui.combatant("Sluice Wight 3").initiative == 18);
    CHECK(ui.encounter().order.size() == 12);
    CHECK(ui.last_edit() == "Drop in 3 Sluice Wight");
    ui.undo();
    CHECK(ui.encounter().order.size() == 9);
}

TEST_CASE("creature shelf: initiative out of reason is refused, empty it is rolled") {
    Driver ui(
        fixtures::running(fixtures::sluice_campaign(), fixtures::four_degree()),
        fixtures::four_degree(),
        widgets::draw_creature_shelf
    );
    ui.click("Drop in", near("Sluice Wight"));
    ui.fill("##initiative", "soon");
    ui.click("Drop in##now");
    CHECK(ui.shows("Initiative is -20 to 99, or empty to roll it."));
    CHECK(ui.combatant("Sluice Wight").id == base::no_id);
    ui.fill("##initiative", "");
    ui.click("Drop in##now");
    CHECK(ui.combatant("Sluice Wight").initiative.has_value());
}

TEST_CASE("creature shelf: with no fight on, one with the party is opened") {
    Driver ui = sluice();
    ui.click("Drop in", near("Mudcaller"));
    CHECK(ui.shows("No fight is on"));
    ui.click("Drop in##now");
    CHECK(ui.encounter().phase == game::Phase::gathering);
    CHECK(ui.combatant("Mudcaller").id != base::no_id);
    CHECK(ui.combatant("Ysolde Marr").standing == game::Standing::in_order);
}

TEST_CASE("creature shelf: a narrow panel at twice the text with large targets") {
    driver::Settings narrow;
    narrow.size = {840.0F, 760.0F};
    narrow.scale = 2.0F;
    narrow.is_touch = true;
    Driver ui = sluice(narrow);
    ui.click("Mudcaller");
    ui.fill("##ac", "21");
    CHECK(creature(ui, "Mudcaller").statistics.armor_class == 21);
    ui.click("Back to the shelf");
    CHECK(ui.has("Sluice Wight"));
}

TEST_CASE("creature shelf: arrow keys walk from entry to entry, Escape closes the form") {
    Driver ui = sluice();
    ui.key(ImGuiKey_DownArrow); // Mudcaller, first by name
    ui.key(ImGuiKey_DownArrow);
    CHECK(ui.view.edited == creature(ui, "Reed Lurker").id);
    ui.key(ImGuiKey_UpArrow);
    CHECK(ui.view.edited == creature(ui, "Mudcaller").id);
    ui.key(ImGuiKey_Escape);
    CHECK(ui.view.edited == base::no_id);
}
