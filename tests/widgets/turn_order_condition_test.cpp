// Conditions from the turn order: given, read off the row, changed by a press on the chip.
#include "driver.h"
#include "fixtures.h"
#include "game/conditions.h"
#include "widgets/turn_order.h"

#include <doctest/doctest.h>

#include <utility>

using driver::near;

namespace {

using Driver = driver::PanelDriver<widgets::TurnOrderView>;

base::Id id_of(const game::Encounter& encounter, std::string_view name) {
    for (const game::Combatant& combatant : encounter.combatants)
        if (combatant.name == name) return combatant.id;
    return base::no_id;
}

game::ActiveCondition condition(const char* key, int value, int rounds = 0) {
    game::ActiveCondition active;
    active.key = key;
    active.value = value;
    if (rounds > 0) {
        active.duration.kind = game::DurationKind::rounds;
        active.duration.rounds_left = rounds;
    }
    return active;
}

Driver with(std::string_view name, const std::vector<game::ActiveCondition>& conditions) {
    game::Campaign campaign =
        fixtures::running(fixtures::sluice_campaign(), fixtures::four_degree());
    for (const game::ActiveCondition& each : conditions)
        REQUIRE(game::add_condition(
            campaign.encounter, fixtures::four_degree(), id_of(campaign.encounter, name), each
        ));
    return {std::move(campaign), fixtures::four_degree(), widgets::draw_turn_order};
}

} // namespace

TEST_CASE("turn order condition: given to the picked ones through the picker") {
    Driver ui = with("Bram Oake", {});
    ui.click("Orrin Tace");
    ui.click_with(ImGuiMod_Ctrl, "Sefa Lunn");
    ui.click("Condition");
    ui.fill("##search", "prone");
    if (ui.has("Give it")) ui.click("Give it");
    CHECK(game::find_active(ui.combatant("Orrin Tace"), "prone") != nullptr);
    CHECK(game::find_active(ui.combatant("Sefa Lunn"), "prone") != nullptr);
    CHECK(ui.has("prone", near("Orrin Tace")));
}

TEST_CASE("turn order condition: frightened 2 lowers the AC, says so, and fades with the turn") {
    Driver ui = with("Ysolde Marr", {condition("frightened", 2)});
    CHECK(ui.shows("AC 20 (-2)")); // 22, status penalty 2: Player Core (ORC), frightened
    CHECK(ui.has("frightened 2, end of turn"));
    ui.click("Next turn");
    CHECK(ui.has("frightened 1, end of turn", near("Ysolde Marr")));
    CHECK(ui.shows("AC 21 (-1)"));
}

TEST_CASE("turn order condition: a chip's menu raises, lowers, pauses and ends") {
    Driver ui = with("Bram Oake", {condition("frightened", 1)});
    ui.click("frightened 1, end of turn");
    CHECK(ui.shows("Bram Oake: frightened 1"));
    ui.click("Raise");
    CHECK(ui.combatant("Bram Oake").conditions.front().value == 2);
    ui.click("Pause");
    CHECK(ui.combatant("Bram Oake").conditions.front().is_paused);
    ui.click("Run on");
    CHECK_FALSE(ui.combatant("Bram Oake").conditions.front().is_paused);
    ui.click("Lower");
    CHECK(ui.combatant("Bram Oake").conditions.front().value == 1);
    ui.click("End it");
    CHECK(ui.combatant("Bram Oake").conditions.empty());
    CHECK(ui.last_edit() == "End frightened 1 of Bram Oake");
    ui.undo();
    CHECK(ui.combatant("Bram Oake").conditions.size() == 1);
}

TEST_CASE("turn order condition: a running timer is made longer and shorter") {
    Driver ui = with("Bram Oake", {condition("slowed", 1, 2)});
    ui.click("slowed 1, 2 rounds");
    ui.click("1 round more");
    CHECK(ui.combatant("Bram Oake").conditions.front().duration.rounds_left == 3);
    ui.click("1 round less");
    ui.click("1 round less");
    CHECK(ui.combatant("Bram Oake").conditions.front().duration.rounds_left == 1);
}

TEST_CASE("turn order condition: more conditions than the row has room for stand behind a chip") {
    Driver ui = with(
        "Bram Oake",
        {condition("frightened", 1),
         condition("sickened", 1),
         condition("slowed", 1, 3),
         condition("enfeebled", 1, 10),
         condition("clumsy", 1, 10),
         condition("stupefied", 1, 10)}
    );
    std::string rest;
    for (const std::string& label : ui.labels())
        if (label.rfind('+', 0) == 0 && label.find("###rest") != std::string::npos) rest = label;
    REQUIRE_FALSE(rest.empty());
    ui.click(rest);
    ui.click("stupefied 1, 10 rounds", driver::inside("##Popup"));
    CHECK(ui.shows("Bram Oake: stupefied 1"));
    ui.click("End it");
    CHECK(game::find_active(ui.combatant("Bram Oake"), "stupefied") == nullptr);
}
