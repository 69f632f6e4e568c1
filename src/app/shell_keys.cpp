#include "app/shell_keys.h"

#include "app/actions.h"
#include "app/shell.h"

#include <imgui.h>

namespace app {

namespace {

bool pressed(ImGuiKey key) {
    return ImGui::IsKeyPressed(key, false);
}

// Moving by Tab is switched on by the first Tab and off by the hand, so that arrows and Enter
// belong to the panels until then. In a menu they choose, unless something is typed there; Find
// reads them itself.
void read_navigation(ShellState& state) {
    ImGuiIO& io = ImGui::GetIO();
    const ImGuiPopupFlags any = ImGuiPopupFlags_AnyPopupId | ImGuiPopupFlags_AnyPopupLevel;
    const bool is_in_menu = !state.find.is_open && ImGui::IsPopupOpen("", any);
    const bool is_on = (io.ConfigFlags & ImGuiConfigFlags_NavEnableKeyboard) != 0;
    const bool is_left = ImGui::IsMouseClicked(ImGuiMouseButton_Left) ||
                         (pressed(ImGuiKey_Escape) && !io.WantTextInput);
    if (pressed(ImGuiKey_Tab)) {
        io.ConfigFlags |= ImGuiConfigFlags_NavEnableKeyboard;
        state.moves_in_menu = false;
    } else if (is_left || (state.moves_in_menu && !is_in_menu)) {
        io.ConfigFlags &= ~ImGuiConfigFlags_NavEnableKeyboard;
        state.moves_in_menu = false;
    } else if (is_in_menu && !is_on && !io.WantTextInput) {
        io.ConfigFlags |= ImGuiConfigFlags_NavEnableKeyboard;
        state.moves_in_menu = true;
    }
}

} // namespace

void leave_controls() {
    ImGui::GetIO().ConfigFlags &= ~ImGuiConfigFlags_NavEnableKeyboard;
}

void bring_to_front(ShellState& state, const std::string& panel) {
    const widgets::PanelInfo* info = find_panel(panel);
    if (info == nullptr) return;
    show_panel(state.tiles(), info->key);
    const std::string window = std::string(info->title) + "###panel/" + info->key;
    ImGui::SetWindowFocus(window.c_str());
    leave_controls();
    state.is_panel_chosen_by_key = true;
}

void read_shell_keys(ShellState& state) {
    read_navigation(state);
    if (state.is_help_open && pressed(ImGuiKey_Escape)) state.is_help_open = false;
    if (ImGui::IsMouseClicked(ImGuiMouseButton_Left)) state.is_panel_chosen_by_key = false;
    for (const Action& action : actions()) {
        const bool is_ours = action.run && action.panel.empty() && !action.keys.empty();
        // While text is typed, undo belongs to the field.
        const bool is_taken = action.yields_to_typing && ImGui::GetIO().WantTextInput;
        if (!is_ours || is_taken || !is_pressed(action.keys, action.repeats)) continue;
        carry_out_action(action, state);
    }
}

std::string keyboard_owner(ShellState& state) {
    const Tiles& tiles = state.tiles();
    const bool is_fight = state.settings.scenes.current == "fight" && is_open(tiles, "turn_order");
    if (is_fight && !state.is_panel_chosen_by_key) return "turn_order";
    return tiles.focused;
}

} // namespace app
