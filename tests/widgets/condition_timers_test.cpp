// The timers of the whole table: what runs, for how long, and the hand that changes it.
#include "driver.h"
#include "fixtures.h"
#include "game/conditions.h"
#include "game/turns.h"
#include "widgets/condition_timers.h"

#include <doctest/doctest.h>

using driver::inside;
using driver::near;

namespace {

using Driver = driver::PanelDriver<widgets::ConditionTimersView>;

struct Given {
    const char* who = "";
    const char* key = "";
    int value = 0;
    game::Duration duration{};
};

game::Duration rounds(int left) {
    game::Duration duration;
    duration.kind = game::DurationKind::rounds;
    duration.rounds_left = left;
    return duration;
}

base::Id id_of(const game::Campaign& campaign, const std::string& name) {
    for (const game::Combatant& combatant : campaign.encounter.combatants) {
        if (combatant.name == name) return combatant.id;
    }
    return base::no_id;
}

// Frightened 2 on Ysolde, slowed for 3 rounds on Orrin, blinded for good on Bram.
game::Campaign with_timers() {
    const rules::Rulebook& rulebook = fixtures::four_degree();
    game::Campaign campaign = fixtures::running(fixtures::sluice_campaign(), rulebook);
    const auto give = [&](const Given& given) {
        game::ActiveCondition condition;
        condition.key = given.key;
        condition.value = given.value;
        condition.duration = given.duration;
        if (given.duration.kind == game::DurationKind::rounds)
            condition.duration.whose_turn = id_of(campaign, given.who);
        REQUIRE(
            game::add_condition(campaign.encounter, rulebook, id_of(campaign, given.who), condition)
        );
    };
    give({"Bram Oake", "blinded", 0, {}});
    give({"Orrin Tace", "slowed", 1, rounds(3)});
    give({"Ysolde Marr", "frightened", 2, {}});
    return campaign;
}

Driver timers(const driver::Settings& settings = {}) {
    return {with_timers(), fixtures::four_degree(), widgets::draw_condition_timers, settings};
}

float top_of(Driver& ui, const char* who) {
    return ui.item(who).rect.Min.y;
}

const game::ActiveCondition& only(const Driver& ui, const char* who) {
    REQUIRE(ui.combatant(who).conditions.size() == 1);
    return ui.combatant(who).conditions.front();
}

} // namespace

TEST_CASE("condition timers: soonest to end first, open-ended ones last or left out") {
    Driver ui = timers();
    CHECK(top_of(ui, "Ysolde Marr") < top_of(ui, "Orrin Tace"));
    CHECK(top_of(ui, "Orrin Tace") < top_of(ui, "Bram Oake"));
    CHECK(ui.shows("3 rounds"));
    ui.click("Open-ended too");
    CHECK_FALSE(ui.has("Bram Oake"));
    CHECK(ui.has("Orrin Tace"));
}

TEST_CASE("condition timers: an empty list says what it is for") {
    Driver ui(
        fixtures::running(fixtures::sluice_campaign(), fixtures::four_degree()),
        fixtures::four_degree(),
        widgets::draw_condition_timers
    );
    CHECK(ui.shows("No condition runs."));
    CHECK(ui.has("Add a condition"));
}

TEST_CASE("condition timers: a round more, a round less, and never below one") {
    Driver ui = timers();
    ui.click("+1", near("Orrin Tace"));
    CHECK(only(ui, "Orrin Tace").duration.rounds_left == 4);
    CHECK(ui.last_edit() == "Extend slowed 1 of Orrin Tace");
    ui.click("-1", near("Orrin Tace"));
    ui.click("-1", near("Orrin Tace"));
    ui.click("-1", near("Orrin Tace"));
    CHECK(only(ui, "Orrin Tace").duration.rounds_left == 1);
    CHECK_FALSE(ui.is_enabled("-1", near("Orrin Tace")));
    CHECK_FALSE(ui.is_enabled("+1", near("Bram Oake"))); // it counts no rounds
}

TEST_CASE("condition timers: paused, a timer stands still over a turn; resumed, it runs on") {
    Driver ui = timers();
    ui.click("Pause", near("Ysolde Marr"));
    CHECK(only(ui, "Ysolde Marr").is_paused);
    CHECK(ui.shows("paused"));
    CHECK(ui.last_edit() == "Pause frightened 2 of Ysolde Marr");
    ui.click("Resume", near("Ysolde Marr"));
    CHECK_FALSE(only(ui, "Ysolde Marr").is_paused);
}

TEST_CASE("condition timers: what is ended keeps its place until the pointer has left") {
    Driver ui = timers();
    const float below = top_of(ui, "Orrin Tace");
    ui.click("End", near("Ysolde Marr"));
    CHECK(ui.combatant("Ysolde Marr").conditions.empty());
    CHECK(ui.shows("frightened 2 has ended"));
    CHECK(top_of(ui, "Orrin Tace") == below); // the next row has not moved under the pointer
    ui.hover("Add a condition");
    CHECK_FALSE(ui.shows("has ended"));
    CHECK(top_of(ui, "Orrin Tace") < below);
    ui.undo();
    CHECK(only(ui, "Ysolde Marr").value == 2);
    CHECK(top_of(ui, "Ysolde Marr") < top_of(ui, "Orrin Tace"));
}

TEST_CASE("condition timers: the value is changed from the chip") {
    Driver ui = timers();
    ui.click("###what", near("Ysolde Marr"));
    ui.click("Raise");
    CHECK(only(ui, "Ysolde Marr").value == 3);
    ui.click("Lower");
    ui.click("Lower");
    CHECK(only(ui, "Ysolde Marr").value == 1);
}

TEST_CASE("condition timers: a press on the row picks the combatant, the filter shows one alone") {
    Driver ui = timers();
    ui.click("Orrin Tace");
    CHECK(ui.selection.combatants == std::vector<base::Id>{ui.combatant("Orrin Tace").id});
    ui.click("##only");
    ui.click("Bram Oake", inside("##Combo"));
    CHECK(ui.has("Bram Oake"));
    CHECK_FALSE(ui.has("Orrin Tace"));
    ui.click("##only");
    ui.click("Tiv Hollow", inside("##Combo"));
    CHECK(ui.shows("Nothing runs on Tiv Hollow."));
}

TEST_CASE("condition timers: for reading only, the verbs are off and say why") {
    Driver ui = timers();
    ui.is_read_only = true;
    ui.frames(2);
    CHECK_FALSE(ui.is_enabled("End", near("Ysolde Marr")));
    CHECK_FALSE(ui.is_enabled("Add a condition"));
}

TEST_CASE("condition timers: a narrow panel at twice the text with large targets loses nothing") {
    driver::Settings narrow;
    narrow.size = {700.0F, 900.0F};
    narrow.scale = 2.0F;
    narrow.is_touch = true;
    Driver ui = timers(narrow);
    ui.click("+1", near("Orrin Tace"));
    CHECK(only(ui, "Orrin Tace").duration.rounds_left == 4);
    ui.click("End", near("Bram Oake"));
    CHECK(ui.combatant("Bram Oake").conditions.empty());
}

TEST_CASE("condition timers: by keyboard alone: mark, extend, pause, end, give another") {
    Driver ui = timers();
    ui.key(ImGuiKey_DownArrow); // Ysolde, soonest
    ui.key(ImGuiKey_DownArrow);
    CHECK(ui.selection.combatants == std::vector<base::Id>{ui.combatant("Orrin Tace").id});
    ui.key(ImGuiKey_Equal);
    CHECK(only(ui, "Orrin Tace").duration.rounds_left == 4);
    ui.key(ImGuiKey_Minus);
    ui.key(ImGuiKey_P);
    CHECK(only(ui, "Orrin Tace").duration.rounds_left == 3);
    CHECK(only(ui, "Orrin Tace").is_paused);
    ui.key(ImGuiKey_Delete);
    CHECK(ui.combatant("Orrin Tace").conditions.empty());
    ui.key(ImGuiKey_C);
    CHECK(ui.has("Give it"));
    CHECK(ui.view.picker.targets == std::vector<base::Id>{ui.combatant("Orrin Tace").id});
}
