// The four hook functions that Dear ImGui built with its test engine calls. They tell the list of
// controls what stands where, if somebody asked for that list; otherwise they do nothing.
#include "app/controls.h"

#include <imgui.h>
#include <imgui_internal.h>

// NOLINTBEGIN(readability-identifier-naming): these names are ImGui's.
void ImGuiTestEngineHook_ItemAdd(
    ImGuiContext* context, ImGuiID id, const ImRect& rect, const ImGuiLastItemData* /*data*/
) {
    const ImGuiWindow* window = context->CurrentWindow;
    if (id == window->ID || id == window->MoveId) return; // the window itself is no control
    ImRect seen = rect;
    seen.ClipWith(window->ClipRect);
    app::ControlList::note_item(
        id, {seen.Min.x, seen.Min.y, seen.GetWidth(), seen.GetHeight()}, window->Name
    );
}

void ImGuiTestEngineHook_ItemInfo(
    ImGuiContext* /*context*/, ImGuiID id, const char* label, ImGuiItemStatusFlags /*flags*/
) {
    app::ControlList::note_label(id, label);
}

void ImGuiTestEngineHook_Log(ImGuiContext* /*context*/, const char* /*format*/, ...) {}

const char* ImGuiTestEngine_FindItemDebugLabel(ImGuiContext* /*context*/, ImGuiID /*id*/) {
    return nullptr;
}

// NOLINTEND(readability-identifier-naming)
