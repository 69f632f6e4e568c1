// A trap made up while the party walks on.
#include "driver.h"
#include "fixtures.h"
#include "widgets/hazard_builder.h"

#include <doctest/doctest.h>

namespace {

using Driver = driver::PanelDriver<widgets::HazardBuilderView>;

Driver sluice() {
    return {
        fixtures::running(fixtures::sluice_campaign(), fixtures::four_degree()),
        fixtures::four_degree(),
        widgets::draw_hazard_builder};
}

} // namespace

TEST_CASE("hazard builder: a complex hazard goes into the running fight") {
    // GM Core (ORC), Building Hazards, level 4: high Stealth DC 22, hardness 12 (11 to 13), high AC
    // 21.
    Driver ui = sluice();
    ui.fill("##name", "Swinging beams");
    ui.click("Complex");
    CHECK(ui.shows("Perception finds it, Thievery disables it"));
    CHECK(ui.shows("Ysolde Marr finds it on "));
    ui.click("Into the fight");
    const game::Combatant& hazard = ui.combatant("Swinging beams");
    CHECK(hazard.statistics.hazard == game::Hazard::complex);
    CHECK(hazard.statistics.difficulty_classes.at("stealth_dc") == 22);
    CHECK(hazard.statistics.armor_class == 21);
    CHECK(hazard.statistics.hardness == 12);
    CHECK(hazard.initiative.has_value());
    CHECK(ui.shows("Done: Drop in 1 Swinging beams."));
    ui.undo();
    CHECK(ui.combatant("Swinging beams").id == base::no_id);
}

TEST_CASE("hazard builder: numbers are nudged and typed, it is kept on the shelf") {
    Driver ui = sluice();
    ui.click("+##more stealth_dc");
    CHECK(ui.shows("extreme"));
    ui.fill("##hit_points", "77");
    CHECK_FALSE(ui.is_enabled("+##more hit_points")); // one value at each level
    ui.click("Keep on the shelf");
    const auto& shelf = ui.document.view().shelf.creatures;
    REQUIRE(shelf.size() == 4);
    CHECK(shelf.back().statistics.hit_points == 77);
    CHECK(shelf.back().statistics.difficulty_classes.at("stealth_dc") == 25);
    CHECK(shelf.back().statistics.hazard == game::Hazard::simple);
}

TEST_CASE("hazard builder: srd5 has no such tables and says where its traps stand") {
    Driver ui{fixtures::pier_campaign(), fixtures::srd5(), widgets::draw_hazard_builder};
    CHECK(ui.shows("no tables to build hazards from"));
}

TEST_CASE("hazard builder: a narrow panel at twice the text with large targets") {
    driver::Settings settings;
    settings.size = {760.0F, 1100.0F};
    settings.scale = 2.0F;
    settings.is_touch = true;
    Driver ui{
        fixtures::sluice_campaign(),
        fixtures::four_degree(),
        widgets::draw_hazard_builder,
        settings};
    ui.click("Complex");
    CHECK(ui.view.choice->is_complex);
}
