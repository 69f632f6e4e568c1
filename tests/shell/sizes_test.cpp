// Every scene at every size, text scale and density: after each frame the driver checks that no
// target is too small, no caption cut off, no id used twice, nothing broken.
#include "shell_driver.h"

#include <doctest/doctest.h>

#include <array>
#include <string>

using driver::inside;
using driver::running_fight;
using driver::ShellDriver;

namespace {

driver::Settings at(float width, float height, float scale, bool is_touch = false) {
    driver::Settings settings;
    settings.size = {width, height};
    settings.scale = scale;
    settings.is_touch = is_touch;
    return settings;
}

app::Settings in_scene(const char* scene) {
    app::Settings settings;
    settings.scenes.current = scene;
    return settings;
}

// Tabs and crosses are as large as any other target.
void check_tabs(ShellDriver& ui) {
    const float least = widgets::row_height() - 0.5F;
    for (const std::string& label : ui.labels()) {
        const bool is_tab = label.find("###tab/") != std::string::npos;
        if (!is_tab && label.find("###close/") == std::string::npos) continue;
        CAPTURE(label);
        const ImRect rect = ui.item(label).rect;
        CHECK(rect.GetHeight() >= least);
        CHECK(rect.GetWidth() >= least);
    }
}

// Nothing that can be pressed lies outside the window.
void check_all_inside(ShellDriver& ui, float width) {
    const ImGuiContext& context = *ImGui::GetCurrentContext();
    for (const ImGuiWindow* window : context.Windows) {
        if (!window->WasActive || window->ParentWindow != nullptr) continue;
        CAPTURE(std::string(window->Name));
        CHECK(window->Pos.x >= -0.5F);
        CHECK(window->Pos.x + window->Size.x <= width + 0.5F);
    }
    ui.frames(1);
}

} // namespace

TEST_CASE("sizes: every scene stands at 1280x800 and 1920x1200, at 80, 100, 200 and 250 % text") {
    for (const app::SceneInfo& scene : app::scene_infos)
        for (const auto& size : {std::array{1280.0F, 800.0F}, std::array{1920.0F, 1200.0F}})
            for (const float scale : {0.8F, 1.0F, 2.0F, 2.5F})
                for (const bool is_touch : {false, true}) {
                    CAPTURE(std::string(scene.key));
                    CAPTURE(size[0]);
                    CAPTURE(scale);
                    CAPTURE(is_touch);
                    ShellDriver ui(
                        running_fight(), at(size[0], size[1], scale, is_touch), in_scene(scene.key)
                    );
                    check_all_inside(ui, size[0]);
                    check_tabs(ui);
                }
}

TEST_CASE("sizes: at 200 % text the columns of the Fight scene become one, with tabs") {
    ShellDriver ui(running_fight(), at(1280.0F, 800.0F, 2.0F));
    const float line = ui.item("###tab/turn_order").rect.Min.y;
    CHECK(ui.item("###tab/close_up").rect.Min.y == line);
    CHECK(ui.item("###more tabs").rect.Min.y < line + widgets::row_height());
    ui.click("###more tabs");
    for (const char* tab : {"###tab/condition_timers", "###tab/happenings"}) {
        CAPTURE(tab);
        CHECK(ui.has(tab));
    }
    ui.key(ImGuiKey_Escape);
    ui.frames(2);
    CHECK(ui.shows("Ysolde Marr"));
    ui.click("###tab/close_up");
    CHECK(ui.tiles().focused == "close_up");
    ui.click("###tab/turn_order");
    // The arrangement itself is untouched: with smaller text the columns are back.
    CHECK(ui.tiles().root == app::default_tiles("fight").root);
}

TEST_CASE("sizes: a window as small as it gets still runs the fight") {
    ShellDriver ui(running_fight(), at(360.0F, 480.0F, 1.0F));
    CHECK(ui.current() == "Ysolde Marr");
    ui.key(ImGuiKey_Enter);
    CHECK(ui.current() == "Reed Lurker 2");
    check_all_inside(ui, 360.0F);
}

TEST_CASE("sizes: every scene bears an empty campaign") {
    for (const app::SceneInfo& scene : app::scene_infos) {
        CAPTURE(std::string(scene.key));
        ShellDriver ui(game::Campaign{}, at(1280.0F, 800.0F, 1.0F), in_scene(scene.key));
        CHECK(ui.shows("New campaign"));
    }
}

TEST_CASE("bug: at 200 % text the current combatant was out of sight") {
    ShellDriver ui(running_fight(), at(1280.0F, 800.0F, 2.0F));
    CHECK(ui.seen().find("Attack made") != std::string::npos);
    ui.key(ImGuiKey_Enter);
    ui.key(ImGuiKey_Enter);
    ui.key(ImGuiKey_Enter);
    CHECK(ui.seen().find("Attack made") != std::string::npos);
    CHECK(ui.seen().find(ui.current()) != std::string::npos);
}

TEST_CASE("bug: in a narrow panel what the current combatant can do stood over the next row") {
    ShellDriver ui(running_fight(), at(400.0F, 900.0F, 1.0F));
    const ImRect row = ui.item("Ysolde Marr", inside("turn_order")).rect;
    const ImRect attack = ui.item("Attack made").rect;
    CHECK(attack.Max.y <= row.Max.y);
    CHECK(ui.item("Reed Lurker 2", inside("turn_order")).rect.Min.y >= row.Max.y);
}

TEST_CASE("bug: with more tabs than fit, the one in front was out of sight and under the cross") {
    ShellDriver ui(running_fight(), at(700.0F, 800.0F, 1.5F, true), in_scene("roam"));
    ui.key(ImGuiKey_F11, ImGuiMod_Shift); // Dice, the last tab of all
    ui.frames(3);
    const driver::Item tab = ui.item("###tab/dice");
    CHECK(tab.seen.GetWidth() >= widgets::row_height() - 0.5F);
    CHECK(tab.rect.Max.x <= ui.item("###close/dice").rect.Min.x + 0.5F);
}
