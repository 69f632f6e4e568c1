// Entering and keeping the party, field by field, as before the first session.
#include "driver.h"
#include "fixtures.h"
#include "widgets/party_roster.h"

#include <doctest/doctest.h>

using driver::inside;
using driver::near;

namespace {

using Driver = driver::PanelDriver<widgets::PartyRosterView>;

Driver sluice(const driver::Settings& settings = {}) {
    return {
        fixtures::sluice_campaign(), fixtures::four_degree(), widgets::draw_party_roster, settings};
}

Driver empty_table() {
    return {game::Campaign{}, fixtures::four_degree(), widgets::draw_party_roster};
}

const game::Character& character(const Driver& ui, const std::string& name) {
    static const game::Character nobody{};
    for (const game::Character& each : ui.campaign().party.characters) {
        if (each.name == name) return each;
    }
    return nobody;
}

} // namespace

TEST_CASE("party: a player character entered from nothing, with all defences") {
    Driver ui = empty_table();
    CHECK(ui.shows("Nobody is in the party yet."));
    ui.click("Add a player character");
    ui.frames(3);
    ui.fill("##name", "Marla Venn");
    ui.fill("##player", "Ida");
    ui.fill("##calling", "bell warden");
    ui.fill("##level", "4");
    ui.fill("##ac", "21");
    ui.fill("##hp", "56");
    ui.fill("##perception", "9");
    ui.fill("##save fortitude", "12");
    ui.fill("##save reflex", "8");
    ui.fill("##save will", "10");
    ui.fill("##ability str", "4");
    ui.fill("##land", "20");
    const game::Character& marla = character(ui, "Marla Venn");
    REQUIRE(marla.id != base::no_id);
    CHECK(marla.player == "Ida");
    CHECK(marla.calling == "bell warden");
    CHECK(marla.statistics.level == 4);
    CHECK(marla.statistics.armor_class == 21);
    CHECK(marla.statistics.hit_points == 56);
    CHECK(marla.statistics.perception == 9);
    CHECK(marla.statistics.saves.at("fortitude") == 12);
    CHECK(marla.statistics.saves.at("reflex") == 8);
    CHECK(marla.statistics.saves.at("will") == 10);
    CHECK(marla.statistics.abilities.at("str") == 4);
    CHECK(marla.statistics.speeds_ft.at("land") == 20);
    // She stands at the table with full hit points, ready for a fight.
    CHECK(ui.combatant("Marla Venn").hp == 56);
}

TEST_CASE("bug: a new player character is named by typing at once") {
    Driver ui = empty_table();
    ui.click("Add a player character");
    ui.frames(3);
    ui.type("Marla Venn");
    ui.key(ImGuiKey_Enter);
    REQUIRE(ui.campaign().party.characters.size() == 1);
    CHECK(ui.campaign().party.characters.front().name == "Marla Venn");
}

TEST_CASE("party: skills, an attack with dice, a resistance, an immunity and a DC are added") {
    Driver ui = sluice();
    ui.click("Bram Oake");
    ui.click("Add a skill");
    ui.click("Medicine", inside("##Popup"));
    ui.fill("##skill medicine", "11");
    CHECK(character(ui, "Bram Oake").statistics.skills.at("medicine") == 11);
    ui.click("x##without stealth");
    CHECK(character(ui, "Bram Oake").statistics.skills.count("stealth") == 0);
    ui.click("Add an attack");
    ui.fill("##attack name 1", "bell mace");
    ui.fill("##attack bonus 1", "13");
    ui.fill("##attack damage 1", "1d6 + 4");
    ui.click("agile##attack 1");
    const game::Attack& mace = character(ui, "Bram Oake").statistics.attacks.at(1);
    CHECK(mace.name == "bell mace");
    CHECK(mace.bonus == 13);
    CHECK(mace.damage == "1d6 + 4");
    CHECK(mace.is_agile);
    ui.click("Add a resistance");
    ui.click("cold", inside("##Popup"));
    ui.fill("##resistance cold", "3");
    CHECK(character(ui, "Bram Oake").statistics.resistances.at(0).type == "cold");
    CHECK(character(ui, "Bram Oake").statistics.resistances.at(0).amount == 3);
    ui.click("Add an immunity");
    ui.click("poison", inside("##Popup"));
    CHECK(character(ui, "Bram Oake").statistics.immunities == std::vector<std::string>{"poison"});
    ui.click("Add a DC");
    ui.click("spell DC", inside("##Popup"));
    ui.fill("##spell_dc", "21");
    CHECK(character(ui, "Bram Oake").statistics.difficulty_classes.at("spell_dc") == 21);
}

TEST_CASE("party: AC 500 is refused in one line and the old number stays") {
    Driver ui = sluice();
    ui.click("Bram Oake");
    ui.fill("##ac", "500");
    CHECK(character(ui, "Bram Oake").statistics.armor_class == 19);
    CHECK(ui.shows("AC is 0 to 99."));
    CHECK_FALSE(ui.document.can_undo());
    ui.fill("##ac", "nineteen");
    CHECK(character(ui, "Bram Oake").statistics.armor_class == 19);
    ui.fill("##hp", "0");
    CHECK(character(ui, "Bram Oake").statistics.hit_points == 50);
    CHECK(ui.shows("HP is 1 to 9999."));
}

TEST_CASE("party: an empty name and dice that are none are refused, nothing is lost") {
    Driver ui = sluice();
    ui.click("Bram Oake");
    ui.fill("##name", " ");
    CHECK(character(ui, "Bram Oake").id != base::no_id);
    CHECK(ui.shows("A name is needed."));
    ui.fill("##attack damage 0", "3d0");
    CHECK(character(ui, "Bram Oake").statistics.attacks.at(0).damage == "1d8+4");
    CHECK(ui.shows("!"));
    ui.fill("##attack damage 0", "2d8+4");
    CHECK(character(ui, "Bram Oake").statistics.attacks.at(0).damage == "2d8+4");
}

TEST_CASE("party: an edit says what it did, and undo takes it back") {
    Driver ui = sluice();
    ui.click("Ysolde Marr");
    ui.fill("##ac", "23");
    CHECK(character(ui, "Ysolde Marr").statistics.armor_class == 23);
    CHECK(ui.last_edit() == "AC of Ysolde Marr: 23");
    ui.fill("##ac", "24");
    ui.undo();
    CHECK(character(ui, "Ysolde Marr").statistics.armor_class == 23);
    ui.undo();
    CHECK(character(ui, "Ysolde Marr").statistics.armor_class == 22);
    ui.redo();
    CHECK(character(ui, "Ysolde Marr").statistics.armor_class == 23);
}

TEST_CASE("party: notes survive typing with pauses and undo as one") {
    Driver ui = sluice();
    ui.click("Sefa Lunn");
    ui.click("##notes");
    ui.type("Owes the ferryman");
    ui.wait(1.2);
    ui.frames(2);
    CHECK(character(ui, "Sefa Lunn").notes == "Owes the ferryman");
    ui.type(" two favours");
    ui.wait(1.2);
    ui.frames(2);
    CHECK(character(ui, "Sefa Lunn").notes == "Owes the ferryman two favours");
    ui.click("##player"); // leaves the field
    ui.undo();
    CHECK(character(ui, "Sefa Lunn").notes.empty());
}

TEST_CASE("party: away tonight, back again, removed, and back by undo") {
    Driver ui = sluice();
    ui.click("Tonight", near("Tiv Hollow"));
    CHECK_FALSE(character(ui, "Tiv Hollow").is_present);
    CHECK(ui.last_edit() == "Tiv Hollow is away tonight");
    ui.click("Tonight", near("Tiv Hollow"));
    CHECK(character(ui, "Tiv Hollow").is_present);
    ui.click("Tiv Hollow");
    ui.click("Remove from the party");
    CHECK(character(ui, "Tiv Hollow").id == base::no_id);
    CHECK(ui.combatant("Tiv Hollow").id == base::no_id);
    ui.undo();
    CHECK(character(ui, "Tiv Hollow").id != base::no_id);
    CHECK(ui.combatant("Tiv Hollow").id != base::no_id);
}

TEST_CASE("party: a reminder with two uses a fight") {
    Driver ui = sluice();
    ui.click("Orrin Tace");
    ui.click("Add a reminder");
    REQUIRE(character(ui, "Orrin Tace").reminders.size() == 1);
    const std::string id = std::to_string(character(ui, "Orrin Tace").reminders[0].id);
    ui.fill("##reminder " + id, "Nimble dodge");
    ui.click("+##more uses " + id);
    ui.click("##refreshed " + id);
    ui.click("each turn", inside("##Combo"));
    const game::Reminder& reminder = character(ui, "Orrin Tace").reminders[0];
    CHECK(reminder.text == "Nimble dodge");
    CHECK(reminder.uses == 2);
    CHECK(reminder.refreshed_by == game::RefreshedBy::turn);
    CHECK(ui.combatant("Orrin Tace").reminders.size() == 1);
}

TEST_CASE("party: initiative follows the usual stat until it has a number of its own") {
    Driver ui = sluice();
    ui.click("Sefa Lunn");
    ui.click("Initiative of its own");
    CHECK(character(ui, "Sefa Lunn").statistics.initiative == 11); // her Perception
    ui.fill("##initiative", "14");
    CHECK(character(ui, "Sefa Lunn").statistics.initiative == 14);
    ui.click("Initiative of its own");
    CHECK_FALSE(character(ui, "Sefa Lunn").statistics.initiative.has_value());
}

TEST_CASE("party: a change during a fight reaches the combatant at once") {
    Driver ui(
        fixtures::running(fixtures::sluice_campaign(), fixtures::four_degree()),
        fixtures::four_degree(),
        widgets::draw_party_roster
    );
    ui.click("Ysolde Marr");
    ui.fill("##ac", "24");
    CHECK(ui.combatant("Ysolde Marr").statistics.armor_class == 24);
    ui.fill("##hp", "60");
    CHECK(ui.combatant("Ysolde Marr").hp == 60); // unhurt stays unhurt
}

TEST_CASE("party: six saves and no weakness amounts in srd5") {
    Driver ui(fixtures::pier_campaign(), fixtures::srd5(), widgets::draw_party_roster);
    ui.click("Wren Halloway");
    ui.fill("##save dex", "6");
    CHECK(character(ui, "Wren Halloway").statistics.saves.at("dex") == 6);
    ui.click("Add a vulnerability");
    ui.click("cold", inside("##Popup"));
    CHECK(character(ui, "Wren Halloway").statistics.weaknesses.at(0).amount == 0);
    CHECK_FALSE(ui.has("##vulnerability cold"));
}

TEST_CASE("party: a narrow panel at twice the text with large targets; back to the list") {
    driver::Settings narrow;
    narrow.size = {840.0F, 760.0F};
    narrow.scale = 2.0F;
    narrow.is_touch = true;
    Driver ui = sluice(narrow);
    ui.click("Bram Oake");
    ui.fill("##ac", "20");
    CHECK(character(ui, "Bram Oake").statistics.armor_class == 20);
    ui.click("Back to the party");
    CHECK(ui.has("Ysolde Marr"));
}

TEST_CASE("party: for reading only, nothing can be changed") {
    Driver ui = sluice();
    ui.is_read_only = true;
    ui.click("Bram Oake");
    CHECK_FALSE(ui.is_enabled("##ac"));
    CHECK_FALSE(ui.is_enabled("Remove from the party"));
}

TEST_CASE("party: experience is typed, and the way to the next level stands beside it") {
    Driver ui = sluice();
    ui.click("Ysolde Marr");
    ui.fill("##experience", "640");
    CHECK(character(ui, "Ysolde Marr").experience == 640);
    CHECK(ui.shows("640 of 1000 XP"));
    CHECK_FALSE(ui.has("Add hit dice")); // four-degree has none
    ui.undo();
    CHECK(character(ui, "Ysolde Marr").experience == 0);
}

TEST_CASE("party: srd5 characters have hit dice of one size or two") {
    Driver ui(fixtures::pier_campaign(), fixtures::srd5(), widgets::draw_party_roster);
    ui.click("Perrin Dask");
    ui.click("Add hit dice");
    REQUIRE(character(ui, "Perrin Dask").hit_dice.size() == 1);
    CHECK(character(ui, "Perrin Dask").hit_dice[0].total == 3); // level 3
    ui.click("##hit die 0");
    ui.click("d10", inside("##Combo"));
    ui.click("+##more hit dice spent 0");
    CHECK(character(ui, "Perrin Dask").hit_dice[0].sides == 10);
    CHECK(character(ui, "Perrin Dask").hit_dice[0].spent == 1);
    ui.click("Add hit dice");
    CHECK(character(ui, "Perrin Dask").hit_dice[1].sides == 8);
    ui.click("-##less hit dice 0");
    ui.click("-##less hit dice 0");
    CHECK(character(ui, "Perrin Dask").hit_dice[0].total == 1);
    ui.click("Remove##hit dice 0");
    CHECK(character(ui, "Perrin Dask").hit_dice.size() == 1);
}
