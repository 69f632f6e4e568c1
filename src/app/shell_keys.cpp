#include "app/shell_keys.h"

#include "app/shell.h"

#include <imgui.h>
#include <imgui_internal.h>

#include <cstddef>

namespace app {

namespace {

// Is "F2" or "Shift+F2" pressed now? False for anything else.
bool is_function_key_pressed(const std::string& shortcut) {
    const bool is_shifted = ImGui::GetIO().KeyShift;
    for (int number = 1; number <= 12; ++number)
        if (shortcut == (is_shifted ? "Shift+F" : "F") + std::to_string(number))
            return ImGui::IsKeyPressed(static_cast<ImGuiKey>(ImGuiKey_F1 + number - 1), false);
    return false;
}

bool pressed(ImGuiKey key) {
    return ImGui::IsKeyPressed(key, false);
}

void scale_text(ShellState& state, int steps) {
    int& percent = state.settings.preferences.text_scale_percent;
    percent = text_scale_after(percent, steps);
}

void read_control_keys(ShellState& state) {
    const ImGuiIO& io = ImGui::GetIO();
    Preferences& preferences = state.settings.preferences;
    // While text is typed, undo belongs to the field.
    if (!io.WantTextInput) {
        const bool is_z = ImGui::IsKeyPressed(ImGuiKey_Z);
        if (is_z && !io.KeyShift) state.edits.undo();
        if ((is_z && io.KeyShift) || ImGui::IsKeyPressed(ImGuiKey_Y)) state.edits.redo();
    }
    for (std::size_t i = 0; i < scene_infos.size(); ++i)
        if (pressed(static_cast<ImGuiKey>(ImGuiKey_1 + static_cast<int>(i))))
            state.settings.scenes.current = scene_infos[i].key;
    if (pressed(ImGuiKey_N)) {
        bring_to_front(state, "session_sheet");
        state.selection.wants_note = true;
    }
    if (pressed(ImGuiKey_Q)) state.wants_to_quit = true;
    const bool is_plus = ImGui::IsKeyPressed(ImGuiKey_Equal) ||
                         ImGui::IsKeyPressed(ImGuiKey_KeypadAdd) ||
                         ImGui::IsKeyPressed(ImGuiKey_RightBracket);
    if (is_plus) scale_text(state, 1);
    if (ImGui::IsKeyPressed(ImGuiKey_Minus) || ImGui::IsKeyPressed(ImGuiKey_KeypadSubtract))
        scale_text(state, -1);
    if (pressed(ImGuiKey_0) || pressed(ImGuiKey_Keypad0)) preferences.text_scale_percent = 100;
    if (pressed(ImGuiKey_T) && !io.WantTextInput)
        preferences.theme = preferences.theme == widgets::ThemeName::dark
                                ? widgets::ThemeName::paper
                                : widgets::ThemeName::dark;
}

// Moving by Tab is switched on by the first Tab and off by the hand, so that arrows and Enter
// belong to the panels until then.
void read_navigation() {
    ImGuiIO& io = ImGui::GetIO();
    if (pressed(ImGuiKey_Tab)) io.ConfigFlags |= ImGuiConfigFlags_NavEnableKeyboard;
    const bool is_left = ImGui::IsMouseClicked(ImGuiMouseButton_Left) ||
                         (pressed(ImGuiKey_Escape) && !io.WantTextInput);
    if (is_left) io.ConfigFlags &= ~ImGuiConfigFlags_NavEnableKeyboard;
}

} // namespace

void bring_to_front(ShellState& state, const std::string& panel) {
    const widgets::PanelInfo* info = find_panel(panel);
    if (info == nullptr) return;
    show_panel(state.tiles(), info->key);
    const std::string window = std::string(info->title) + "###panel/" + info->key;
    ImGui::SetWindowFocus(window.c_str());
    state.is_panel_chosen_by_key = true;
}

void read_shell_keys(ShellState& state) {
    read_navigation();
    if (is_function_key_pressed("F1")) state.is_help_open = !state.is_help_open;
    if (state.is_help_open && pressed(ImGuiKey_Escape)) state.is_help_open = false;
    if (ImGui::IsMouseClicked(ImGuiMouseButton_Left)) state.is_panel_chosen_by_key = false;
    for (const widgets::PanelInfo* info : panel_infos()) {
        if (!is_function_key_pressed(info->shortcut)) continue;
        bring_to_front(state, info->key);
    }
    if (ImGui::GetIO().KeyCtrl) read_control_keys(state);
}

std::string keyboard_owner(ShellState& state) {
    const Tiles& tiles = state.tiles();
    const bool is_fight = state.settings.scenes.current == "fight" && is_open(tiles, "turn_order");
    if (is_fight && !state.is_panel_chosen_by_key) return "turn_order";
    return tiles.focused;
}

} // namespace app
