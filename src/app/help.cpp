#include "app/help.h"

#include "app/actions.h"
#include "app/panels.h"
#include "app/scenes.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <string_view>

namespace app {

using widgets::Ink;
using widgets::px;

namespace {

void draw_pair(const char* left, const char* right) {
    ImGui::TableNextRow();
    ImGui::TableNextColumn();
    widgets::text_wrapped(Ink::accent, left);
    ImGui::TableNextColumn();
    widgets::text_wrapped(Ink::text, right);
}

bool begin_pairs(const char* name, float left_width) {
    if (!ImGui::BeginTable(name, 2)) return false;
    ImGui::TableSetupColumn("", ImGuiTableColumnFlags_WidthFixed, left_width);
    ImGui::TableSetupColumn("");
    return true;
}

// The keys that work everywhere, or those of one panel.
void draw_key_list(const char* title, std::string_view panel) {
    widgets::heading(title);
    if (!begin_pairs(title, px(190.0F))) return;
    for (const Action& action : actions())
        if (action.is_in_help && action.panel == panel && !action.keys.empty())
            draw_pair(action.keys.c_str(), action.title.c_str());
    ImGui::EndTable();
}

void draw_keys() {
    draw_key_list("Keys", {});
    draw_key_list("Keys of the Turn Order", "turn_order");
    draw_key_list("Keys of Party Defences", "party_defences");
    draw_key_list("Keys of the Name Picker", "name_picker");
    draw_key_list("Keys of the Day Book", "day_book");
}

void draw_places() {
    widgets::heading("Panels");
    if (begin_pairs("panels", px(190.0F))) {
        for (const widgets::PanelInfo* info : panel_infos()) {
            std::string title = info->title;
            if (*info->shortcut != '\0') title += std::string("  ") + info->shortcut;
            draw_pair(title.c_str(), info->help);
        }
        ImGui::EndTable();
    }
    widgets::heading("Scenes");
    if (begin_pairs("scenes", px(190.0F))) {
        for (const SceneInfo& info : scene_infos)
            draw_pair(info.title, info.help);
        ImGui::EndTable();
    }
    widgets::heading("Tiles");
    widgets::text_wrapped(
        Ink::text,
        "Drag a tab onto another tile: its middle makes it a tab there, its edges put it beside. "
        "Drag the gap between two tiles to resize them, press it twice to halve. A panel closed "
        "with its cross comes back from the menu Panels."
    );
}

} // namespace

void draw_help(bool& is_open) {
    if (!is_open) return;
    const ImVec2 display = ImGui::GetIO().DisplaySize;
    const float width = std::min(px(1080.0F), display.x - px(32.0F));
    const float height = std::min(px(620.0F), display.y - px(32.0F));
    ImGui::SetNextWindowPos({(display.x - width) / 2.0F, (display.y - height) / 2.0F});
    ImGui::SetNextWindowSize({width, height});
    ImGui::PushStyleVar(ImGuiStyleVar_WindowBorderSize, std::max(1.0F, px(2.0F)));
    ImGui::PushStyleVar(ImGuiStyleVar_WindowRounding, px(8.0F));
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {px(20.0F), px(14.0F)});
    ImGui::SetNextWindowFocus();
    ImGui::Begin(
        "###help",
        nullptr,
        ImGuiWindowFlags_NoTitleBar | ImGuiWindowFlags_NoResize | ImGuiWindowFlags_NoMove |
            ImGuiWindowFlags_NoSavedSettings
    );
    widgets::push_font(widgets::TextSize::name);
    widgets::text(Ink::text, "Help");
    ImGui::PopFont();
    ImGui::SameLine(ImGui::GetContentRegionMax().x - widgets::button_width("Close help"));
    if (widgets::button("Close help")) is_open = false;
    const bool is_wide = width > px(840.0F);
    if (is_wide && ImGui::BeginTable("columns", 2)) {
        ImGui::TableNextColumn();
        draw_keys();
        ImGui::TableNextColumn();
        draw_places();
        ImGui::EndTable();
    } else if (!is_wide) {
        draw_keys();
        draw_places();
    }
    ImGui::End();
    ImGui::PopStyleVar(3);
}

} // namespace app
