#include "widgets/roll_field.h"

#include "widgets/far_press.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_internal.h>
#include <imgui_stdlib.h>

#include <charconv>

namespace widgets {

std::optional<int> whole_number(std::string_view text) {
    while (!text.empty() && text.front() == ' ')
        text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ')
        text.remove_suffix(1);
    if (!text.empty() && text.front() == '+') {
        text.remove_prefix(1);
        if (!text.empty() && text.front() == '-') return std::nullopt;
    }
    int number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
    return number;
}

static std::string refusal(std::string_view what, int minimum, int maximum) {
    return std::string(what) + " is " + std::to_string(minimum) + " to " + std::to_string(maximum) +
           ".";
}

std::optional<int> roll_field(
    const char* label,
    std::optional<int> shown,
    RollDrafts& drafts,
    base::Id key,
    int minimum,
    int maximum,
    float width,
    std::string_view what
) {
    RollDrafts::Draft& draft = drafts.of[key];
    const ImGuiID id = ImGui::GetID(label);
    const bool was_active = ImGui::GetActiveID() == id;
    if (draft.shown != shown) draft = {{}, {}, shown}; // settled elsewhere meanwhile
    if (!was_active && draft.complaint.empty())
        draft.text = shown.has_value() ? std::to_string(*shown) : std::string();
    if (drafts.focus_next == key) {
        ImGui::SetKeyboardFocusHere();
        drafts.focus_next = base::no_id;
    }
    ImGui::SetNextItemWidth(width);
    meet_far_press(label);
    ImGui::InputTextWithHint(label, "--", &draft.text, ImGuiInputTextFlags_AutoSelectAll);
    if (!draft.complaint.empty()) ImGui::SetItemTooltip("%s", draft.complaint.c_str());
    if (!ImGui::IsItemDeactivated()) return std::nullopt;
    draft.complaint.clear();
    if (draft.text.empty()) return std::nullopt;
    const std::optional<int> number = whole_number(draft.text);
    if (!number.has_value() || *number < minimum || *number > maximum) {
        draft.complaint = refusal(what, minimum, maximum);
        return std::nullopt;
    }
    if (number == shown) return std::nullopt;
    return number;
}

} // namespace widgets
