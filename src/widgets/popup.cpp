#include "widgets/popup.h"

#include <imgui.h>

namespace widgets {

bool begin_popup(const char* name) {
    ImGui::SetNextWindowSizeConstraints({0.0F, 0.0F}, ImGui::GetMainViewport()->WorkSize);
    if (!ImGui::BeginPopup(name, ImGuiWindowFlags_AlwaysAutoResize)) return false;
    const bool is_on_top = ImGui::IsWindowFocused(ImGuiFocusedFlags_ChildWindows);
    if (is_on_top && !ImGui::IsAnyItemActive() && ImGui::IsKeyPressed(ImGuiKey_Escape, false))
        ImGui::CloseCurrentPopup();
    return true;
}

} // namespace widgets
