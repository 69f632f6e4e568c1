#include "app/chords.h"

#include <initializer_list>

namespace app {

static bool is_modifier(ImGuiKey key) {
    for (const ImGuiKey modifier :
         {ImGuiKey_LeftCtrl,
          ImGuiKey_RightCtrl,
          ImGuiKey_LeftShift,
          ImGuiKey_RightShift,
          ImGuiKey_LeftAlt,
          ImGuiKey_RightAlt,
          ImGuiMod_Ctrl,
          ImGuiMod_Shift,
          ImGuiMod_Alt})
        if (key == modifier) return true;
    return false;
}

void Chords::before_frame() {
    ImVector<ImGuiInputEvent>& queue = ImGui::GetCurrentContext()->InputEventsQueue;
    bool has_press = false;
    for (int at = 0; at < queue.Size; ++at) {
        const ImGuiInputEvent& event = queue[at];
        if (event.Type != ImGuiInputEventType_Key) continue;
        const bool is_release_of_modifier = !event.Key.Down && is_modifier(event.Key.Key);
        if (event.Key.Down && !is_modifier(event.Key.Key)) has_press = true;
        if (!has_press || !is_release_of_modifier) continue;
        for (int later = at; later < queue.Size; ++later)
            held_.push_back(queue[later]);
        queue.resize(at);
        return;
    }
}

void Chords::after_frame() {
    ImVector<ImGuiInputEvent>& queue = ImGui::GetCurrentContext()->InputEventsQueue;
    for (const ImGuiInputEvent& event : held_)
        queue.push_back(event);
    held_.clear();
}

} // namespace app
