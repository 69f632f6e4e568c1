#include "app/shell_menus.h"

#include "app/shell.h"
#include "widgets/popup.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <string>

namespace app {

using widgets::Ink;
using widgets::px;

void draw_panels_menu(ShellState& state) {
    if (!widgets::begin_popup("panels menu")) return;
    Tiles& tiles = state.tiles();
    for (const widgets::PanelInfo* info : panel_infos()) {
        const bool is_there = is_open(tiles, info->key);
        std::string label = info->title;
        if (*info->shortcut != '\0') label += std::string("  (") + info->shortcut + ")";
        label += std::string("###show/") + info->key;
        if (widgets::toggle_button(label.c_str(), is_there)) {
            show_panel(tiles, info->key);
            ImGui::CloseCurrentPopup();
        }
        ImGui::SetItemTooltip("%s", info->help);
    }
    ImGui::Separator();
    const widgets::PanelInfo* used = find_panel(tiles.focused);
    if (used != nullptr && is_open(tiles, used->key)) {
        const bool fills = tiles.filling == used->key;
        const std::string words =
            fills ? "Back to tiles###fill"
                  : std::string("Fill the window with ") + used->title + "###fill";
        if (widgets::button(words.c_str())) {
            toggle_filling(tiles, used->key);
            ImGui::CloseCurrentPopup();
        }
    }
    const std::string scene = find_scene(state.settings.scenes.current)->title;
    if (widgets::button(("Usual arrangement of " + scene + "###usual").c_str())) {
        tiles = default_tiles(state.settings.scenes.current);
        ImGui::CloseCurrentPopup();
    }
    ImGui::EndPopup();
}

void draw_settings_menu(ShellState& state) {
    if (!widgets::begin_popup("settings menu")) return;
    Preferences& preferences = state.settings.preferences;
    widgets::heading("Theme");
    const bool is_dark = preferences.theme == widgets::ThemeName::dark;
    if (widgets::toggle_button("Dark", is_dark)) preferences.theme = widgets::ThemeName::dark;
    ImGui::SameLine();
    if (widgets::toggle_button("Paper", !is_dark)) preferences.theme = widgets::ThemeName::paper;
    widgets::heading("Text size");
    int& percent = preferences.text_scale_percent;
    const bool is_least = percent <= text_scale_min;
    const bool is_most = percent >= text_scale_max;
    if (widgets::button("Smaller", is_least ? "It does not get smaller." : ""))
        percent = text_scale_after(percent, -1);
    ImGui::SameLine();
    ImGui::AlignTextToFramePadding();
    widgets::text(Ink::text, std::to_string(percent) + " %");
    ImGui::SameLine();
    if (widgets::button("Larger", is_most ? "It does not get larger." : ""))
        percent = text_scale_after(percent, 1);
    widgets::heading("Targets");
    bool& is_touch = preferences.is_touch;
    if (widgets::toggle_button("For fingers", is_touch)) is_touch = true;
    ImGui::SameLine();
    if (widgets::toggle_button("For the mouse", !is_touch)) is_touch = false;
    ImGui::Separator();
    if (widgets::button("Save and end")) state.wants_to_quit = true; // a tablet shows no cross
    ImGui::EndPopup();
}

} // namespace app
