// One combatant in full, and why each number is what it is.
#include "driver.h"
#include "fixtures.h"
#include "game/conditions.h"
#include "game/hurt.h"
#include "game/turns.h"
#include "widgets/close_up.h"

#include <doctest/doctest.h>

using driver::inside;
using driver::near;

namespace {

using Driver = driver::PanelDriver<widgets::CloseUpView>;

base::Id id_of(const game::Campaign& campaign, const std::string& name) {
    for (const game::Combatant& combatant : campaign.encounter.combatants) {
        if (combatant.name == name) return combatant.id;
    }
    return base::no_id;
}

void give(
    game::Campaign& campaign,
    const rules::Rulebook& rulebook,
    const std::string& who,
    const std::string& key,
    int value
) {
    game::ActiveCondition condition;
    condition.key = key;
    condition.value = value;
    REQUIRE(game::add_condition(campaign.encounter, rulebook, id_of(campaign, who), condition));
}

Driver sluice(game::Campaign campaign, const driver::Settings& settings = {}) {
    return {std::move(campaign), fixtures::four_degree(), widgets::draw_close_up, settings};
}

game::Campaign running() {
    return fixtures::running(fixtures::sluice_campaign(), fixtures::four_degree());
}

} // namespace

TEST_CASE("close-up: nobody picked, it shows whose turn it is") {
    Driver ui = sluice(running());
    CHECK(ui.shows("Ysolde Marr"));
    CHECK(ui.shows("52/52"));
    ui.selection.combatants = {ui.combatant("Mudcaller").id};
    ui.frames(2);
    CHECK(ui.shows("Weak to"));
    CHECK(ui.shows("cold 5"));
    CHECK(ui.shows("Immune to"));
}

TEST_CASE("close-up: without anybody it says what to do first") {
    Driver ui(game::Campaign{}, fixtures::four_degree(), widgets::draw_close_up);
    CHECK(ui.shows("Nobody is at the table yet."));
    ui.click("Go to the party");
    CHECK(ui.selection.wanted_panel == "party_roster");
    Driver idle = sluice(fixtures::sluice_campaign());
    CHECK(idle.shows("Pick somebody"));
}

TEST_CASE("close-up: of two status penalties the worse counts, and both are named") {
    // Player Core (ORC), bonuses and penalties: only the worst penalty of a type applies.
    game::Campaign campaign = running();
    give(campaign, fixtures::four_degree(), "Ysolde Marr", "frightened", 2);
    give(campaign, fixtures::four_degree(), "Ysolde Marr", "sickened", 1);
    Driver ui = sluice(std::move(campaign));
    const std::string text = ui.text();
    CHECK(text.find("20") != std::string::npos); // AC 22 less 2
    CHECK(text.find("frightened 2: -2 status") != std::string::npos);
    CHECK(text.find("sickened 1: -1 status, beaten by a worse one") != std::string::npos);
    CHECK(ui.seen().find("-2") != std::string::npos);
    CHECK(ui.shows("Why"));
}

TEST_CASE("close-up: a condition that brings another names it") {
    game::Campaign campaign = running();
    give(campaign, fixtures::four_degree(), "Ysolde Marr", "grabbed", 0);
    Driver ui = sluice(std::move(campaign));
    CHECK(ui.shows("also off-guard, by grabbed"));
}

TEST_CASE("close-up: attacks of the turn with their penalties") {
    // Player Core (ORC), Multiple Attack Penalty: -5 on the second, -10 on the third attack.
    game::Campaign campaign = running();
    game::set_attacks_made(campaign.encounter, id_of(campaign, "Ysolde Marr"), 1);
    Driver ui = sluice(std::move(campaign));
    CHECK(ui.shows("in a turn +12, +7, +2"));
    CHECK(ui.shows("blade +7 (-5)"));
    CHECK(ui.shows("multiple attack penalty: -5"));
}

TEST_CASE("close-up: a condition is given, changed and ended from here") {
    Driver ui = sluice(running());
    ui.click("Add a condition");
    ui.type("clumsy");
    ui.click("Give it");
    CHECK(game::find_active(ui.combatant("Ysolde Marr"), std::string("clumsy")) != nullptr);
    ui.click("###condition");
    ui.click("End it");
    CHECK(ui.combatant("Ysolde Marr").conditions.empty());
}

TEST_CASE("close-up: a note for the fight and the notes of the character") {
    Driver ui = sluice(running());
    ui.click("##fight note");
    ui.type("stands in the doorway");
    ui.click("##notes");
    CHECK(ui.combatant("Ysolde Marr").note == "stands in the doorway");
    ui.type("Sworn to the charter");
    ui.wait(1.2);
    ui.frames(2);
    CHECK(ui.campaign().party.characters[0].notes == "Sworn to the charter");
}

TEST_CASE("close-up: a reminder is used and given back") {
    Driver ui = sluice(running());
    CHECK(ui.shows("1 of 1 left"));
    ui.click("Used##Second breath");
    CHECK(ui.shows("0 of 1 left"));
    CHECK_FALSE(ui.is_enabled("Used##Second breath"));
    ui.click("Give back##Second breath");
    CHECK(ui.shows("1 of 1 left"));
}

TEST_CASE("close-up: somebody else is chosen from the list") {
    Driver ui = sluice(running());
    ui.click("##whom");
    ui.click("Reed Lurker 3", inside("##Combo"));
    CHECK(ui.selection.combatants == std::vector<base::Id>{ui.combatant("Reed Lurker 3").id});
    CHECK(ui.shows("fire 5"));
}

TEST_CASE("close-up: death saves and concentration of srd5") {
    // SRD 5.1, Combat / Dropping to 0 Hit Points: three failures kill, three successes stabilize.
    const rules::Rulebook& rulebook = fixtures::srd5();
    game::Campaign campaign = fixtures::running(fixtures::pier_campaign(), rulebook);
    game::Damage damage;
    damage.amount = 21;
    game::hurt(campaign.encounter, rulebook, id_of(campaign, "Joss Keel"), damage);
    Driver ui(std::move(campaign), rulebook, widgets::draw_close_up);
    ui.selection.combatants = {ui.combatant("Joss Keel").id};
    ui.frames(2);
    ui.click("1##failed");
    ui.click("2##failed");
    CHECK(ui.combatant("Joss Keel").death_saves.failures == 2);
    ui.click("2##failed");
    CHECK(ui.combatant("Joss Keel").death_saves.failures == 1);
    ui.click("1##made");
    ui.click("2##made");
    ui.click("3##made");
    CHECK(ui.combatant("Joss Keel").death_saves.is_stable);

    ui.selection.combatants = {ui.combatant("Wren Halloway").id};
    ui.frames(2);
    ui.fill("##concentration", "the lantern ward");
    CHECK(ui.combatant("Wren Halloway").concentrating_on == "the lantern ward");
    CHECK(ui.last_edit() == "Wren Halloway concentrates on the lantern ward");
    ui.click("Ends##concentration");
    CHECK(ui.combatant("Wren Halloway").concentrating_on.empty());
}

TEST_CASE("close-up: a narrow panel at twice the text with large targets") {
    driver::Settings narrow;
    narrow.size = {640.0F, 900.0F};
    narrow.scale = 2.0F;
    narrow.is_touch = true;
    game::Campaign campaign = running();
    give(campaign, fixtures::four_degree(), "Ysolde Marr", "frightened", 2);
    Driver ui = sluice(std::move(campaign), narrow);
    ui.click("Used##Second breath");
    CHECK(ui.shows("0 of 1 left"));
}
