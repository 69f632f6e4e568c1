#include "driver.h"
#include "fixtures.h"
#include "widgets/turn_order.h"
#include "widgets/turn_order_select.h"

#include <doctest/doctest.h>

using base::Id;
using widgets::Pick;
using widgets::Selection;

namespace {

const std::vector<Id> rows{4, 7, 2, 9};

game::Encounter fight() {
    game::Encounter encounter;
    encounter.phase = game::Phase::running;
    const auto add = [&](Id id, const char* name, game::Standing standing) {
        game::Combatant combatant;
        combatant.id = id;
        combatant.name = name;
        combatant.standing = standing;
        encounter.combatants.push_back(combatant);
    };
    add(1, "Bram Oake", game::Standing::in_order);
    add(2, "Mudcaller", game::Standing::defeated);
    add(3, "Tiv Hollow", game::Standing::in_order);
    add(4, "Sefa Lunn", game::Standing::delaying);
    add(5, "Orrin Tace", game::Standing::absent);
    encounter.order = {3, 1};
    encounter.current = 3;
    return encounter;
}

} // namespace

TEST_CASE("turn order select: rows are those in order, then the delaying, then the defeated") {
    CHECK(widgets::rows_shown(fight()) == std::vector<Id>{3, 1, 4, 2});
}

TEST_CASE("turn order select: a range goes both ways and keeps its first row") {
    Selection selection{{7}};
    widgets::pick(selection, rows, 9, Pick::range);
    CHECK(selection.combatants == std::vector<Id>{7, 2, 9});
    widgets::pick(selection, rows, 4, Pick::range);
    CHECK(selection.combatants == std::vector<Id>{7, 4});
    widgets::pick(selection, rows, 4, Pick::toggle);
    CHECK(selection.combatants == std::vector<Id>{7});
    widgets::pick(selection, rows, 2, Pick::only);
    CHECK(selection.combatants == std::vector<Id>{2});
}

TEST_CASE("turn order select: arrows stop at the first and the last row") {
    Selection selection;
    widgets::step_pick(selection, rows, 2, 1, false);
    CHECK(selection.combatants == std::vector<Id>{2}); // the first press picks the current one
    widgets::step_pick(selection, rows, 2, 5, false);
    CHECK(selection.combatants == std::vector<Id>{9});
    widgets::step_pick(selection, rows, 2, -9, false);
    CHECK(selection.combatants == std::vector<Id>{4});
    widgets::step_pick(selection, {}, 2, 1, false);
    CHECK(selection.combatants == std::vector<Id>{4});
}

TEST_CASE("turn order select: who has left the fight is let go") {
    Selection selection{{1, 5, 77, 2}};
    widgets::forget_gone(selection, fight());
    CHECK(selection.combatants == std::vector<Id>{1, 2});
}

TEST_CASE("turn order select: verbs reach the picked, else the current one") {
    CHECK(widgets::targets(fight(), Selection{{1, 2}}) == std::vector<Id>{1, 2});
    CHECK(widgets::targets(fight(), {}) == std::vector<Id>{3});
    CHECK(widgets::targets({}, {}).empty());
}

TEST_CASE("turn order select: names are read as a person says them") {
    CHECK(widgets::names_text(fight(), {1}) == "Bram Oake");
    CHECK(widgets::names_text(fight(), {1, 2}) == "Bram Oake and Mudcaller");
    CHECK(widgets::names_text(fight(), {1, 2, 3}) == "3 combatants");
    CHECK(widgets::names_text(fight(), {}) == "nobody");
}

TEST_CASE("turn order select: groups are told apart by letters") {
    game::Encounter encounter = fight();
    encounter.combatants[1].group = 44;
    encounter.combatants[2].group = 17;
    encounter.combatants[3].group = 44;
    CHECK(widgets::group_text(encounter, 44) == "group A");
    CHECK(widgets::group_text(encounter, 17) == "group B");
}

TEST_CASE("bug: a finger picks several rows, without Ctrl") {
    game::Campaign campaign =
        fixtures::running(fixtures::sluice_campaign(), fixtures::four_degree());
    driver::Settings settings;
    settings.is_touch = true;
    driver::PanelDriver<widgets::TurnOrderView> ui(
        std::move(campaign), fixtures::four_degree(), widgets::draw_turn_order, settings
    );
    ui.click("Several");
    ui.click("Orrin Tace");
    ui.click("Reed Lurker 1");
    CHECK(ui.selection.combatants.size() == 2);
    ui.click("Orrin Tace");
    CHECK(ui.selection.combatants.size() == 1);
    ui.click("Several");
    ui.click("Orrin Tace");
    CHECK(ui.selection.combatants == std::vector<base::Id>{ui.combatant("Orrin Tace").id});
}
