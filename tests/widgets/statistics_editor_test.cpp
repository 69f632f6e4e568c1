// The form for numbers by itself: every kind of field over one creature.
#include "driver.h"
#include "fixtures.h"
#include "game/roster.h"
#include "widgets/statistics_editor.h"

#include <doctest/doctest.h>

using driver::inside;

namespace {

// The form over the first creature of the shelf.
void draw_first_creature(
    const widgets::PanelContext& context, widgets::StatisticsEditorView& view
) {
    const game::Creature& creature = context.campaign.shelf.creatures.front();
    widgets::draw_statistics_editor(
        {context,
         view,
         creature.statistics,
         creature.name,
         true,
         [&](const std::string& label,
             const std::string& typed_in,
             const widgets::StatisticsForm::Change& change) {
             context.edits.add(
                 &game::Campaign::shelf,
                 label,
                 [change](game::CreatureShelf& shelf) {
                     change(shelf.creatures.front().statistics);
                 },
                 typed_in
             );
         }}
    );
}

using Driver = driver::PanelDriver<widgets::StatisticsEditorView>;

Driver lurker() {
    return {fixtures::sluice_campaign(), fixtures::four_degree(), draw_first_creature};
}

const game::Statistics& numbers(const Driver& ui) {
    return ui.campaign().shelf.creatures.front().statistics;
}

} // namespace

TEST_CASE("statistics editor: speeds are added, changed and taken away") {
    Driver ui = lurker();
    ui.click("Add a speed");
    ui.click("swim speed", inside("##Popup"));
    ui.fill("##swim", "40");
    CHECK(numbers(ui).speeds_ft.at("swim") == 40);
    ui.fill("##swim", "2000");
    CHECK(numbers(ui).speeds_ft.at("swim") == 40);
    CHECK(ui.shows("Swim speed is 0 to 1000."));
    ui.click("x##without land");
    CHECK(numbers(ui).speeds_ft.count("land") == 0);
    CHECK(ui.last_edit() == "Take speed from Reed Lurker");
}

TEST_CASE("statistics editor: senses are typed, and what is typed in one go undoes as one") {
    Driver ui = lurker();
    ui.click("##senses");
    ui.type("dark");
    ui.wait(1.2);
    ui.type("vision");
    ui.key(ImGuiKey_Enter);
    CHECK(numbers(ui).senses == "darkvision");
    ui.undo();
    CHECK(numbers(ui).senses.empty());
}

TEST_CASE("statistics editor: two attacks, the first taken away, the second keeps its fields") {
    Driver ui = lurker();
    ui.click("Add an attack");
    ui.fill("##attack name 1", "tail");
    ui.fill("##attack traits 1", "reach 10 feet");
    ui.click("ranged##attack 1");
    ui.click("Remove##attack 0");
    REQUIRE(numbers(ui).attacks.size() == 1);
    CHECK(numbers(ui).attacks[0].name == "tail");
    CHECK(numbers(ui).attacks[0].traits == "reach 10 feet");
    CHECK(numbers(ui).attacks[0].is_ranged);
    CHECK(ui.last_edit() == "Take blade from Reed Lurker");
}

TEST_CASE("statistics editor: a weakness and an immunity to a condition, and away again") {
    Driver ui = lurker();
    ui.click("Add a weakness");
    ui.click("cold iron", inside("##Popup"));
    ui.fill("##weakness cold_iron", "4");
    CHECK(numbers(ui).weaknesses.at(0).amount == 4);
    ui.click("x##weakness cold_iron");
    CHECK(numbers(ui).weaknesses.empty());
    ui.click("Add an immunity");
    ui.click("frightened", inside("##Popup"));
    CHECK(numbers(ui).immunities == std::vector<std::string>{"frightened"});
    ui.click("frightened x##immunity frightened");
    CHECK(numbers(ui).immunities.empty());
}
