// What the rules ask for, rolled by the program or typed from the dice on the table.
#include "driver.h"
#include "fixtures.h"
#include "game/conditions.h"
#include "game/hurt.h"
#include "widgets/turn_order.h"

#include <doctest/doctest.h>

#include <algorithm>

using driver::near;

namespace {

using Driver = driver::PanelDriver<widgets::TurnOrderView>;

// Orrin Tace burns, Ysolde Marr is dying; it is the turn before Orrin Tace's ends.
game::Campaign burning() {
    game::Campaign campaign =
        fixtures::running(fixtures::sluice_campaign(), fixtures::four_degree());
    game::ActiveCondition fire;
    fire.key = "persistent_damage";
    fire.damage = "1d6";
    fire.damage_type = "fire";
    const auto& first = campaign.encounter.order.front(); // Ysolde Marr, whose turn it is
    REQUIRE(game::add_condition(campaign.encounter, fixtures::four_degree(), first, fire));
    return campaign;
}

Driver at_table() {
    return {burning(), fixtures::four_degree(), widgets::draw_turn_order};
}

} // namespace

TEST_CASE("prompt list: persistent damage is due at the end of the turn, typed, then its check") {
    Driver ui = at_table();
    CHECK_FALSE(ui.has("Roll all due"));
    ui.click("Next turn");
    REQUIRE(ui.encounter().prompts.size() == 1);
    CHECK(ui.shows("Due now: 1"));
    CHECK(ui.shows("Ysolde Marr: "));
    ui.fill("##rolled", "4");
    CHECK(ui.combatant("Ysolde Marr").hp == 52 - 4);
    // Its flat check comes next; a 20 ends the burning.
    REQUIRE(ui.encounter().prompts.size() == 1);
    ui.fill("##rolled", "20");
    CHECK(ui.encounter().prompts.empty());
    CHECK(ui.combatant("Ysolde Marr").conditions.empty());
    ui.undo();
    CHECK(ui.combatant("Ysolde Marr").conditions.size() == 1);
}

TEST_CASE("prompt list: a roll that no die shows is refused in one line") {
    Driver ui = at_table();
    ui.click("Next turn");
    ui.fill("##rolled", "4");
    ui.fill("##rolled", "21");
    CHECK(ui.shows("A d20 is 1 to 20."));
    CHECK(ui.encounter().prompts.size() == 1);
}

TEST_CASE("prompt list: rolled by the program, one and all") {
    Driver ui = at_table();
    ui.click("Next turn");
    ui.click("Roll");
    CHECK(ui.combatant("Ysolde Marr").hp < 52);
    CHECK(ui.combatant("Ysolde Marr").hp >= 52 - 6);
    CHECK(ui.encounter().prompts.size() == 1); // the flat check
    ui.undo();
    ui.click("Roll all due"); // the damage and the flat check that it brings
    CHECK(ui.encounter().prompts.empty());
    CHECK(ui.combatant("Ysolde Marr").hp < 52);
}

TEST_CASE("prompt list: help makes the flat check easier, setting aside drops it") {
    Driver ui = at_table();
    ui.click("Next turn");
    CHECK(ui.encounter().prompts.front().dc == 15); // Player Core (ORC), persistent damage
    ui.click("Helped");
    CHECK(ui.encounter().prompts.front().dc == 10); // Player Core (ORC), assisted recovery
    CHECK(ui.last_edit() == "Help Ysolde Marr");
    ui.click("Set aside");
    CHECK(ui.encounter().prompts.empty());
}

TEST_CASE("prompt list: nothing moves on the screen when something becomes due or is answered") {
    Driver ui = at_table();
    const float before = ui.item("Ysolde Marr").rect.Min.y;
    ui.type("60h"); // dying: a recovery check will be due
    ui.undo();
    ui.click("Next turn");
    const float due = ui.item("Ysolde Marr").rect.Min.y;
    ui.click("Set aside");
    CHECK(ui.item("Ysolde Marr").rect.Min.y == due);
    CHECK(due == before);
}

TEST_CASE("prompt list: a dying PC's recovery check at the start of its turn (Player Core, ORC)") {
    Driver ui = at_table();
    ui.click("Bram Oake");
    ui.type("50h");
    REQUIRE(game::find_active(ui.combatant("Bram Oake"), "dying") != nullptr);
    for (int turn = 0; turn < 20 && ui.encounter().current != ui.combatant("Bram Oake").id; ++turn)
        ui.click("Next turn");
    CHECK(ui.shows("Bram Oake: "));
    // Dying 1: the DC is 11; a 20 is a critical success.
    const auto& prompts = ui.encounter().prompts;
    const auto is_recovery = [](const game::Prompt& prompt) {
        return prompt.kind == game::PromptKind::recovery_check;
    };
    CHECK(std::any_of(prompts.begin(), prompts.end(), is_recovery));
}

TEST_CASE("prompt list: srd5 death saves and concentration ask in the same place") {
    game::Campaign campaign = fixtures::running(fixtures::pier_campaign(), fixtures::srd5());
    for (game::Combatant& combatant : campaign.encounter.combatants)
        if (combatant.name == "Wren Halloway") combatant.concentrating_on = "fog over the pier";
    driver::PanelDriver<widgets::TurnOrderView> ui(
        campaign, fixtures::srd5(), widgets::draw_turn_order
    );
    CHECK(ui.shows("concentrates on fog over the pier"));
    ui.type("9h"); // DC 10 at least
    REQUIRE(ui.encounter().prompts.size() == 1);
    CHECK(ui.encounter().prompts.front().kind == game::PromptKind::concentration);
    ui.fill("##rolled", "1");
    CHECK(ui.combatant("Wren Halloway").concentrating_on.empty());
    ui.click("Joss Keel");
    ui.type("22h");
    for (int turn = 0; turn < 9 && ui.encounter().current != ui.combatant("Joss Keel").id; ++turn)
        ui.click("Next turn");
    REQUIRE(ui.encounter().prompts.size() == 1);
    CHECK(ui.encounter().prompts.front().kind == game::PromptKind::death_save);
    ui.fill("##rolled", "12");
    CHECK(ui.combatant("Joss Keel").death_saves.successes == 1);
    CHECK(ui.shows("death saves 1 made, 0 failed"));
}
