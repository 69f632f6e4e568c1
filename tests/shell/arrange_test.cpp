// Rearranging a scene by hand: tabs, splitters, filling the window, closing and opening again.
#include "shell_driver.h"

#include <doctest/doctest.h>

#include <algorithm>

using driver::Item;
using driver::running_fight;
using driver::ShellDriver;

namespace {

// Lets go of a tab over this point of the screen.
void carry(ShellDriver& ui, const char* tab, ImVec2 target) {
    const ImRect from = ui.item(tab).rect;
    const ImVec2 start = from.GetCenter();
    ui.drag(tab, {target.x - start.x, target.y - start.y});
}

ImRect box_of(ShellDriver& ui, const std::string& panel) {
    ui.frames(1);
    const std::string name = "###panel/" + panel;
    const ImGuiWindow* window = ImGui::FindWindowByName(name.c_str());
    REQUIRE(window != nullptr);
    return window->Rect();
}

bool is_showing(const std::string& panel) {
    const std::string name = "###panel/" + panel;
    const ImGuiWindow* window = ImGui::FindWindowByName(name.c_str());
    return window != nullptr && window->WasActive;
}

std::size_t count_open(ShellDriver& ui) {
    return app::open_panels(ui.tiles()).size();
}

} // namespace

TEST_CASE("arrange: a tab shows its panel") {
    ShellDriver ui(running_fight());
    CHECK(is_showing("condition_timers"));
    CHECK_FALSE(is_showing("happenings"));
    ui.click("###tab/happenings");
    CHECK(is_showing("happenings"));
    CHECK_FALSE(is_showing("condition_timers"));
}

TEST_CASE("arrange: a panel closed with its cross comes back from the menu where it stood") {
    ShellDriver ui(running_fight());
    const std::size_t before = count_open(ui);
    ui.click("###close/condition_timers");
    CHECK(count_open(ui) == before - 1);
    CHECK_FALSE(ui.has("###tab/condition_timers"));
    ui.click("Panels");
    ui.click("###show/condition_timers");
    CHECK(count_open(ui) == before);
    CHECK(is_showing("condition_timers"));
    // Beside the tab it had before.
    const ImRect one = ui.item("###tab/condition_timers").rect;
    const ImRect two = ui.item("###tab/happenings").rect;
    CHECK(one.Min.y == two.Min.y);
}

TEST_CASE("arrange: every panel closed leaves a hint, and the usual arrangement brings all back") {
    ShellDriver ui(running_fight());
    const app::Tiles usual = ui.tiles();
    while (count_open(ui) > 0) {
        const std::string panel = app::open_panels(ui.tiles()).front();
        ui.click("###tab/" + panel);
        ui.click("###close/" + panel);
    }
    CHECK(ui.shows("Every panel of this scene is closed."));
    ui.click("Panels");
    ui.click("###usual");
    CHECK(ui.tiles() == usual);
}

TEST_CASE("arrange: pressed twice a tab fills the window, and twice again gives the tiles back") {
    ShellDriver ui(running_fight());
    const ImRect before = box_of(ui, "close_up");
    ui.double_click("###tab/close_up");
    const ImRect filled = box_of(ui, "close_up");
    CHECK(filled.GetWidth() > 1200.0F);
    CHECK_FALSE(is_showing("turn_order"));
    ui.double_click("###tab/close_up");
    CHECK(box_of(ui, "close_up").GetWidth() == before.GetWidth());
    CHECK(is_showing("turn_order"));
    ui.double_click("###tab/close_up");
    ui.click("Back to tiles");
    CHECK(is_showing("turn_order"));
}

TEST_CASE("arrange: a tab dropped at the edge of a tile stands beside it") {
    ShellDriver ui(running_fight());
    const std::size_t before = count_open(ui);
    const ImRect board = box_of(ui, "turn_order");
    carry(ui, "###tab/happenings", {board.Min.x + 20.0F, board.GetCenter().y});
    CHECK(count_open(ui) == before);
    CHECK(is_showing("happenings"));
    const ImRect left = box_of(ui, "happenings");
    CHECK(left.Min.x < 20.0F);
    CHECK(box_of(ui, "turn_order").Min.x > left.Max.x);
}

TEST_CASE("arrange: a tab dropped in the middle of a tile becomes a tab there") {
    ShellDriver ui(running_fight());
    const ImRect board = box_of(ui, "turn_order");
    carry(ui, "###tab/party_defences", board.GetCenter());
    CHECK(is_showing("party_defences"));
    carry(ui, "###tab/creature_builder", board.GetCenter());
    carry(ui, "###tab/dice", board.GetCenter());
    carry(ui, "###tab/close_up", board.GetCenter());
    CHECK(is_showing("close_up"));
    CHECK_FALSE(is_showing("turn_order"));
    CHECK(ui.item("###tab/close_up").rect.Min.y == ui.item("###tab/turn_order").rect.Min.y);
    // Its old tile is gone; the timers have the whole right column.
    CHECK(box_of(ui, "condition_timers").GetHeight() > 600.0F);
}

TEST_CASE("arrange: a tab that is dropped outside every tile stays where it was") {
    ShellDriver ui(running_fight());
    const app::Tiles before = ui.tiles();
    carry(ui, "###tab/close_up", {640.0F, 10.0F}); // the top bar
    CHECK(app::open_panels(ui.tiles()) == app::open_panels(before));
    CHECK(ui.tiles().root == before.root);
}

TEST_CASE("arrange: Escape while a tab is carried drops the plan") {
    ShellDriver ui(running_fight());
    const app::Tiles before = ui.tiles();
    const ImVec2 start = ui.item("###tab/close_up").rect.GetCenter();
    ImGuiIO& io = ImGui::GetIO();
    io.AddMousePosEvent(start.x, start.y);
    ui.frames(2);
    io.AddMouseButtonEvent(ImGuiMouseButton_Left, true);
    ui.frames(1);
    io.AddMousePosEvent(60.0F, 400.0F);
    ui.frames(3);
    CHECK(ui.seen().find("Left of it") != std::string::npos);
    ui.key(ImGuiKey_Escape);
    io.AddMouseButtonEvent(ImGuiMouseButton_Left, false);
    ui.frames(3);
    CHECK(ui.tiles().root == before.root);
}

TEST_CASE("arrange: the gap between two tiles is dragged, never past what the panels need") {
    ShellDriver ui(running_fight());
    const float before = box_of(ui, "turn_order").GetWidth();
    ui.drag("##splitter", {-60.0F, 0.0F});
    const float smaller = box_of(ui, "turn_order").GetWidth();
    CHECK(smaller == doctest::Approx(before - 60.0F).epsilon(0.02));
    ui.drag("##splitter", {-2000.0F, 0.0F});
    const widgets::PanelInfo* board = app::find_panel("turn_order");
    REQUIRE(board != nullptr);
    CHECK(box_of(ui, "turn_order").GetWidth() >= board->min_width - 1.0F);
    ui.drag("##splitter", {5000.0F, 0.0F});
    const widgets::PanelInfo* close_up = app::find_panel("close_up");
    REQUIRE(close_up != nullptr);
    CHECK(box_of(ui, "close_up").GetWidth() >= close_up->min_width - 1.0F);
    CHECK(is_showing("turn_order"));
}

TEST_CASE("arrange: each scene keeps its own arrangement") {
    ShellDriver ui(running_fight());
    ui.click("###close/close_up");
    ui.click("Prep");
    ui.click("Fight");
    CHECK_FALSE(app::is_open(ui.tiles(), "close_up"));
    CHECK(app::is_open(ui.tiles(), "turn_order"));
    CHECK(ui.state().settings.scenes.arrangements["prep"] == app::default_tiles("prep"));
}
