// Preparing fights in the evening and starting them at the table.
#include "driver.h"
#include "fixtures.h"
#include "widgets/encounter_preparation.h"

#include <doctest/doctest.h>

#include <algorithm>

using driver::inside;
using driver::near;

namespace {

using Driver = driver::PanelDriver<widgets::EncounterPreparationView>;

Driver sluice(const driver::Settings& settings = {}) {
    return {
        fixtures::sluice_campaign(),
        fixtures::four_degree(),
        widgets::draw_encounter_preparation,
        settings};
}

const game::PreparedEncounter& encounter(const Driver& ui, const std::string& name) {
    static const game::PreparedEncounter none{};
    for (const game::PreparedEncounter& each : ui.campaign().preparation.encounters) {
        if (each.name == name) return each;
    }
    return none;
}

auto opponents(const Driver& ui) {
    const auto& all = ui.encounter().combatants;
    return std::count_if(all.begin(), all.end(), [](const game::Combatant& combatant) {
        return combatant.side == game::Side::opponents;
    });
}

void add_creature(Driver& ui, const char* name, int place, const char* count) {
    ui.click("Add creatures");
    ui.click(name, inside("##Popup"));
    ui.fill("##count " + std::to_string(place), count);
}

} // namespace

TEST_CASE("prepared encounters: nine opponents of three kinds, started with one press") {
    Driver ui = sluice();
    ui.click("Prepare an encounter");
    ui.frames(3);
    ui.fill("##name", "The flooded mill");
    add_creature(ui, "Reed Lurker", 0, "6");
    add_creature(ui, "Mudcaller", 1, "1");
    add_creature(ui, "Sluice Wight", 2, "2");
    ui.click("One initiative##0");
    ui.click("Hidden##2");
    ui.click("##note");
    ui.type("The wheel still turns.");
    ui.click("##name"); // leaves the note
    const game::PreparedEncounter& mill = encounter(ui, "The flooded mill");
    REQUIRE(mill.creatures.size() == 3);
    CHECK(mill.creatures[0].count == 6);
    CHECK(mill.creatures[0].shares_initiative);
    CHECK(mill.creatures[2].is_hidden);
    CHECK(mill.note == "The wheel still turns.");
    ui.click("Start this fight##form");
    CHECK(ui.encounter().phase == game::Phase::gathering);
    CHECK(ui.encounter().name == "The flooded mill");
    CHECK(opponents(ui) == 9);
    CHECK(ui.combatant("Reed Lurker 1").group == ui.combatant("Reed Lurker 6").group);
    CHECK(ui.combatant("Sluice Wight 2").is_hidden);
    CHECK(ui.last_edit() == "Start the fight The flooded mill");
    ui.undo();
    CHECK(ui.encounter().phase == game::Phase::no_fight);
}

TEST_CASE("bug: a prepared encounter is named by typing at once") {
    Driver ui = sluice();
    ui.click("Prepare an encounter");
    ui.frames(3);
    ui.type("The dry weir");
    ui.key(ImGuiKey_Enter);
    CHECK(encounter(ui, "The dry weir").name == "The dry weir");
}

TEST_CASE("prepared encounters: while a fight is on, the creatures can join it") {
    Driver ui(
        fixtures::running(fixtures::sluice_campaign(), fixtures::four_degree()),
        fixtures::four_degree(),
        widgets::draw_encounter_preparation
    );
    CHECK(ui.shows("Ambush at the sluice is on."));
    CHECK_FALSE(ui.has("Start this fight"));
    ui.click("Add to the fight");
    CHECK(opponents(ui) == 8);
    CHECK(ui.combatant("Reed Lurker 6").initiative.has_value());
    CHECK(ui.encounter().order.size() == 13);
    ui.undo();
    CHECK(opponents(ui) == 4);
}

TEST_CASE("prepared encounters: nothing prepared says what to do first") {
    Driver ui(game::Campaign{}, fixtures::four_degree(), widgets::draw_encounter_preparation);
    CHECK(ui.shows("No encounter is prepared."));
    ui.click("Prepare an encounter");
    CHECK(ui.shows("The Creature Shelf is empty"));
    CHECK_FALSE(ui.is_enabled("Start this fight##form"));
}

TEST_CASE("prepared encounters: fifty is the most of one kind, and a name is needed") {
    Driver ui = sluice();
    ui.click("Ambush at the sluice");
    ui.fill("##count 0", "51");
    CHECK(encounter(ui, "Ambush at the sluice").creatures[0].count == 3);
    CHECK(ui.shows("How many is 1 to 50."));
    ui.fill("##name", "");
    CHECK(ui.shows("A name is needed."));
    CHECK(encounter(ui, "Ambush at the sluice").id != base::no_id);
}

TEST_CASE("prepared encounters: creatures and encounters are removed, undo brings them back") {
    Driver ui = sluice();
    ui.click("Ambush at the sluice");
    ui.click("Remove##1");
    CHECK(encounter(ui, "Ambush at the sluice").creatures.size() == 1);
    CHECK(ui.last_edit() == "Ambush at the sluice: without Mudcaller");
    ui.undo();
    CHECK(encounter(ui, "Ambush at the sluice").creatures.size() == 2);
    ui.click("Remove the encounter");
    CHECK(ui.campaign().preparation.encounters.empty());
    ui.undo();
    CHECK(ui.has("Ambush at the sluice"));
}

TEST_CASE("prepared encounters: a narrow panel at twice the text with large targets") {
    driver::Settings narrow;
    narrow.size = {720.0F, 760.0F};
    narrow.scale = 2.0F;
    narrow.is_touch = true;
    Driver ui = sluice(narrow);
    ui.click("Ambush at the sluice");
    ui.click("+##more count 1");
    CHECK(encounter(ui, "Ambush at the sluice").creatures[1].count == 2);
    ui.click("Back to all encounters");
    ui.click("Start this fight");
    CHECK(opponents(ui) == 5);
}
