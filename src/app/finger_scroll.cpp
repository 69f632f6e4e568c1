#include "app/finger_scroll.h"

#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_internal.h>

#include <cmath>

namespace app {

namespace {

// The innermost window under the finger that is longer than its place.
ImGuiWindow* scrollable_under_finger() {
    ImGuiWindow* window = ImGui::GetCurrentContext()->HoveredWindow;
    while (window != nullptr && window->ScrollMax.y <= 0.0F)
        window =
            (window->Flags & ImGuiWindowFlags_ChildWindow) != 0 ? window->ParentWindow : nullptr;
    return window;
}

// A scroll bar follows the hand by itself, and in a text a drag marks words.
bool is_held_by_control(ImGuiWindow* window) {
    const ImGuiContext& g = *ImGui::GetCurrentContext();
    return g.ActiveId != 0 && (g.ActiveId == ImGui::GetWindowScrollbarID(window, ImGuiAxis_Y) ||
                               g.ActiveId == g.InputTextState.ID);
}

} // namespace

void scroll_by_finger(FingerScroll& scroll) {
    const ImGuiIO& io = ImGui::GetIO();
    if (!widgets::look().is_touch || !ImGui::IsMouseDown(ImGuiMouseButton_Left)) {
        scroll = {};
        return;
    }
    if (ImGui::IsMouseClicked(ImGuiMouseButton_Left)) {
        const ImGuiWindow* under = scrollable_under_finger();
        scroll = {under == nullptr ? 0 : under->ID, false};
        return;
    }
    ImGuiWindow* window = scroll.window == 0 ? nullptr : ImGui::FindWindowByID(scroll.window);
    if (window == nullptr) return;
    if (!scroll.is_dragged) {
        const ImVec2 way = ImGui::GetMouseDragDelta(ImGuiMouseButton_Left, widgets::px(12.0F));
        if (std::abs(way.y) <= std::abs(way.x) || is_held_by_control(window)) return;
        ImGui::ClearActiveID(); // what lies under the finger is not pressed
        scroll.is_dragged = true;
    }
    ImGui::SetScrollY(window, window->Scroll.y - io.MouseDelta.y);
}

} // namespace app
