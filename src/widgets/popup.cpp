#include "widgets/popup.h"

#include <imgui.h>

namespace widgets {

bool begin_popup(const char* name) {
    ImGui::SetNextWindowSizeConstraints({0.0F, 0.0F}, ImGui::GetMainViewport()->WorkSize);
    if (!ImGui::BeginPopup(name, ImGuiWindowFlags_AlwaysAutoResize)) return false;
    // A drop-down opened from it lies on top of it: Escape is for that one then.
    const bool is_on_top =
        ImGui::IsWindowFocused(ImGuiFocusedFlags_ChildWindows | ImGuiFocusedFlags_NoPopupHierarchy);
    if (is_on_top && !ImGui::IsAnyItemActive() && ImGui::IsKeyPressed(ImGuiKey_Escape, false))
        ImGui::CloseCurrentPopup();
    return true;
}

} // namespace widgets
