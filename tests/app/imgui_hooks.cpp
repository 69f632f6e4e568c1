// Dear ImGui is built with its test hooks on; these tests draw nothing, so the hooks are empty.
#include <imgui.h>
#include <imgui_internal.h>

// NOLINTBEGIN(readability-identifier-naming): these names are ImGui's.
void ImGuiTestEngineHook_ItemAdd(
    ImGuiContext* /*context*/,
    ImGuiID /*id*/,
    const ImRect& /*rect*/,
    const ImGuiLastItemData* /*data*/
) {}

void ImGuiTestEngineHook_ItemInfo(
    ImGuiContext* /*context*/, ImGuiID /*id*/, const char* /*label*/, ImGuiItemStatusFlags /*flags*/
) {}

void ImGuiTestEngineHook_Log(ImGuiContext* /*context*/, const char* /*format*/, ...) {}

const char* ImGuiTestEngine_FindItemDebugLabel(ImGuiContext* /*context*/, ImGuiID /*id*/) {
    return nullptr;
}

// NOLINTEND(readability-identifier-naming)
