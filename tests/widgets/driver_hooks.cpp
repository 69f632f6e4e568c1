#include "driver_hooks.h"

#include <algorithm>
#include <string>

namespace driver {

std::vector<Item>* Recorder::items = nullptr;
bool Recorder::is_full_log = false;

void Recorder::begin(Screen& screen) {
    screen.items_.clear();
    items = &screen.items_;
}

void Recorder::end() {
    items = nullptr;
}

} // namespace driver

// NOLINTBEGIN(readability-identifier-naming): these names are ImGui's.
void ImGuiTestEngineHook_ItemAdd(
    ImGuiContext* context, ImGuiID id, const ImRect& rect, const ImGuiLastItemData* item_data
) {
    if (driver::Recorder::items == nullptr) return;
    const ImGuiWindow* window = context->CurrentWindow;
    driver::Item item;
    item.id = id;
    item.seed = window->IDStack.empty() ? 0 : window->IDStack.back();
    item.rect = rect;
    item.seen = rect;
    item.seen.ClipWith(window->ClipRect);
    item.window = window->Name;
    item.is_window = id == window->ID || id == window->MoveId;
    if (item_data != nullptr)
        item.is_disabled = (item_data->InFlags & ImGuiItemFlags_Disabled) != 0;
    driver::Recorder::items->push_back(std::move(item));
}

void ImGuiTestEngineHook_ItemInfo(
    ImGuiContext* /*context*/, ImGuiID id, const char* label, ImGuiItemStatusFlags flags
) {
    if (driver::Recorder::items == nullptr) return;
    auto& items = *driver::Recorder::items;
    const auto found = std::find_if(items.rbegin(), items.rend(), [id](const driver::Item& item) {
        return item.id == id;
    });
    if (found == items.rend()) return;
    found->label = label == nullptr ? "" : label;
    found->is_field = (flags & ImGuiItemStatusFlags_Inputable) != 0;
    found->caption_width = ImGui::CalcTextSize(found->label.c_str(), nullptr, true).x;
    found->is_checked = (flags & ImGuiItemStatusFlags_Checked) != 0;
}

void ImGuiTestEngineHook_Log(ImGuiContext* /*context*/, const char* /*format*/, ...) {}

const char* ImGuiTestEngine_FindItemDebugLabel(ImGuiContext* /*context*/, ImGuiID id) {
    if (driver::Recorder::items == nullptr) return nullptr;
    for (const driver::Item& item : *driver::Recorder::items)
        if (item.id == id) return item.label.c_str();
    return nullptr;
}

// NOLINTEND(readability-identifier-naming)
