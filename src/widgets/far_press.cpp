#include "widgets/far_press.h"

#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_internal.h>

#include <algorithm>

namespace widgets {

namespace {

FarPress* wanted = nullptr;

bool is_called(std::string_view label, std::string_view name) {
    const std::size_t mark = std::min(label.find("##"), label.size());
    return name == label || name == label.substr(0, mark) ||
           (mark < label.size() && name == label.substr(mark));
}

bool is_wanted(std::string_view label) {
    if (wanted == nullptr || wanted->is_met) return false;
    std::string_view names = wanted->label;
    while (!names.empty()) {
        const std::size_t end = std::min(names.find('|'), names.size());
        if (is_called(label, names.substr(0, end))) return true;
        names.remove_prefix(std::min(end + 1, names.size()));
    }
    return false;
}

bool is_disabled() {
    return (ImGui::GetCurrentContext()->CurrentItemFlags & ImGuiItemFlags_Disabled) != 0;
}

} // namespace

void set_far_press(FarPress* press) {
    wanted = press;
}

bool is_pressed_from_afar(const char* label, std::string_view why_not) {
    if (!is_wanted(label)) return false;
    wanted->is_met = true;
    if (!why_not.empty())
        wanted->why_not = why_not;
    else if (is_disabled())
        wanted->why_not = "It cannot be used now.";
    if (!wanted->why_not.empty()) return false;
    // The keyboard goes on from here, and what belongs to it comes into sight.
    ImGui::SetFocusID(ImGui::GetItemID(), ImGui::GetCurrentWindow());
    ImGui::ScrollToItem(ImGuiScrollFlags_AlwaysCenterY);
    return true;
}

void meet_far_press(const char* label) {
    if (!is_wanted(label)) return;
    wanted->is_met = true;
    if (is_disabled()) {
        wanted->why_not = "It cannot be used now.";
        return;
    }
    ImGui::SetWindowFocus();
    const ImVec2 at = ImGui::GetCursorScreenPos();
    const bool is_in_sight = ImGui::IsRectVisible(at, {at.x + 1.0F, at.y + row_height()});
    if (!is_in_sight) ImGui::SetScrollFromPosY(ImGui::GetCursorPosY() - ImGui::GetScrollY());
    ImGuiContext& g = *ImGui::GetCurrentContext();
    g.NavNextActivateId = ImGui::GetID(label);
    g.NavNextActivateFlags = ImGuiActivateFlags_PreferInput;
}

} // namespace widgets
