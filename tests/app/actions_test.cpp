// The list of everything the program can be told to do.
#include "app/actions.h"
#include "app/panels.h"
#include "app/scenes.h"

#include <doctest/doctest.h>
#include <imgui.h>

#include <map>
#include <set>
#include <string>

namespace {

// A frame in which these keys went down.
struct Pressing {
    Pressing(ImGuiKey key, int modifiers) {
        ImGui::CreateContext();
        ImGuiIO& io = ImGui::GetIO();
        io.IniFilename = nullptr;
        io.DisplaySize = {800.0F, 600.0F};
        io.Fonts->Build();
        ImGui::NewFrame();
        ImGui::EndFrame();
        if ((modifiers & ImGuiMod_Ctrl) != 0) io.AddKeyEvent(ImGuiMod_Ctrl, true);
        if ((modifiers & ImGuiMod_Shift) != 0) io.AddKeyEvent(ImGuiMod_Shift, true);
        io.AddKeyEvent(key, true);
        ImGui::NewFrame();
        if (!ImGui::IsKeyPressed(key, false)) { // the library takes one event of a kind a frame
            ImGui::EndFrame();
            ImGui::NewFrame();
        }
    }

    ~Pressing() {
        ImGui::EndFrame();
        ImGui::DestroyContext();
    }

    Pressing(const Pressing&) = delete;
    Pressing& operator=(const Pressing&) = delete;
};

} // namespace

TEST_CASE("actions: each has a key of its own, and no two share a combination") {
    std::set<std::string> keys;
    std::map<std::string, std::string> combinations;
    for (const app::Action& action : app::actions()) {
        CAPTURE(action.key);
        CHECK(keys.insert(action.key).second);
        CHECK_FALSE(action.title.empty());
        CHECK(app::find_action(action.key) == &action);
        if (action.keys.empty()) continue;
        CHECK(combinations.emplace(action.panel + ": " + action.keys, action.key).second);
    }
    CHECK(app::find_action("no such action") == nullptr);
}

TEST_CASE("actions: every panel and every scene can be gone to") {
    for (const widgets::PanelInfo* info : app::panel_infos()) {
        const app::Action* action = app::find_action(std::string("panel/") + info->key);
        REQUIRE(action != nullptr);
        CHECK(action->keys == info->shortcut);
        CHECK(action->run);
    }
    for (const app::SceneInfo& info : app::scene_infos)
        CHECK(app::find_action(std::string("scene/") + info.key) != nullptr);
}

TEST_CASE("actions: the words for a key are what the key does") {
    {
        const Pressing pressing(ImGuiKey_Z, ImGuiMod_Ctrl);
        CHECK(app::is_pressed("Ctrl+Z", false));
        CHECK_FALSE(app::is_pressed("Z", false));
        CHECK_FALSE(app::is_pressed("Ctrl+Shift+Z", false));
        CHECK(app::is_pressed("Ctrl+Y, Ctrl+Z", false));
    }
    {
        const Pressing pressing(ImGuiKey_F10, ImGuiMod_Shift);
        CHECK(app::is_pressed("Shift+F10", false));
        CHECK_FALSE(app::is_pressed("F10", false));
        CHECK_FALSE(app::is_pressed("Shift+F1", false));
    }
    {
        const Pressing pressing(
            ImGuiKey_Equal, ImGuiMod_Ctrl | ImGuiMod_Shift
        ); // the + of many keyboards
        CHECK(app::is_pressed("Ctrl+Plus", false));
        CHECK_FALSE(app::is_pressed("Ctrl+Minus", false));
    }
    {
        const Pressing pressing(ImGuiKey_Keypad0, ImGuiMod_Ctrl);
        CHECK(app::is_pressed("Ctrl+0", false));
    }
    {
        const Pressing pressing(ImGuiKey_F, 0);
        for (const char* words :
             {"", "Digits, then H or G", "Ctrl+", "F13", "F0", "Fx", "Double press on a tab"})
            CHECK_FALSE(app::is_pressed(words, false));
        CHECK(app::is_pressed("F", false));
    }
}
