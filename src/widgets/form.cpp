#include "widgets/form.h"

#include "game/roster.h"
#include "rules/dice.h"
#include "widgets/far_press.h"

#include <imgui.h>
#include <imgui_internal.h>

#include <algorithm>

namespace widgets {

void Flow::next(float width) {
    if (!is_first_) same_line_if_fits(width);
    is_first_ = false;
}

void Flow::field(std::string_view name, float field_width) {
    const float name_width = ImGui::CalcTextSize(name.data(), name.data() + name.size()).x;
    next(name_width + ImGui::GetStyle().ItemInnerSpacing.x + field_width);
    ImGui::BeginGroup();
    ImGui::AlignTextToFramePadding();
    text(Ink::muted, name);
    ImGui::SameLine(0.0F, ImGui::GetStyle().ItemInnerSpacing.x);
}

void Flow::end_field() {
    ImGui::EndGroup();
}

static std::optional<std::string> take_or_refuse(
    const std::string& label,
    std::optional<std::string> typed,
    std::string_view value,
    FormDrafts& drafts,
    const TextCheck& check
) {
    if (!typed.has_value()) return std::nullopt;
    const std::string complaint = check(*typed);
    drafts.complaints.erase(label);
    if (!complaint.empty()) {
        drafts.complaints[label] = complaint;
        return std::nullopt;
    }
    if (*typed == value) return std::nullopt;
    return typed;
}

void give_keyboard_to_next_field() {
    ImGui::SetWindowFocus(); // the library looks for the field only in the part that has the focus
    ImGui::SetKeyboardFocusHere();
}

std::optional<std::string> checked_text(
    const std::string& label,
    std::string_view value,
    FormDrafts& drafts,
    double now_seconds,
    float width,
    const TextCheck& check
) {
    TextDraft& draft = drafts.texts[label];
    const float narrowest = row_height();
    auto typed = text_field(label.c_str(), value, draft, now_seconds, std::max(width, narrowest));
    return take_or_refuse(label, std::move(typed), value, drafts, check);
}

std::optional<std::string> long_text(
    const std::string& label,
    std::string_view value,
    FormDrafts& drafts,
    double now_seconds,
    float height
) {
    TextDraft& draft = drafts.texts[label];
    const ImVec2 size{ImGui::GetContentRegionAvail().x, std::max(height, row_height())};
    auto typed = text_area(label.c_str(), value, draft, now_seconds, size);
    return take_or_refuse(label, std::move(typed), value, drafts, check_text);
}

void draw_complaints(const FormDrafts& drafts, std::string_view label_begin) {
    for (const auto& [label, words] : drafts.complaints) {
        if (label.compare(0, label_begin.size(), label_begin) == 0) complaint(words);
    }
}

std::string check_name(const std::string& text) {
    if (text.find_first_not_of(' ') == std::string::npos) return "A name is needed.";
    if (text.size() > game::Limits::name_bytes_max) return "The name is too long.";
    return {};
}

std::string check_text(const std::string& text) {
    if (text.size() > game::Limits::text_bytes_max) return "The text is too long.";
    return {};
}

std::string check_dice(const std::string& text) {
    if (text.find_first_not_of(' ') == std::string::npos) return {};
    const auto dice = rules::parse_dice(text);
    return dice.ok() ? std::string() : dice.error().message;
}

float width_of_letters(int letters) {
    const float letter = ImGui::CalcTextSize("0").x;
    return letter * static_cast<float>(letters) + 2.0F * ImGui::GetStyle().FramePadding.x;
}

float stepper_width() {
    const float gap = ImGui::GetStyle().ItemInnerSpacing.x;
    return button_width("-") + button_width("+") + width_of_letters(4) + 2.0F * gap;
}

std::optional<int>
stepper(const std::string& label, int value, int minimum, int maximum, std::string_view what) {
    const float gap = ImGui::GetStyle().ItemInnerSpacing.x;
    std::optional<int> changed;
    const auto at_edge = [&](int edge) {
        return value == edge ? std::string(what) + " is " + std::to_string(minimum) + " to " +
                                   std::to_string(maximum) + "."
                             : std::string();
    };
    if (button(("-##less " + label).c_str(), at_edge(minimum))) changed = value - 1;
    ImGui::SameLine(0.0F, gap);
    const auto typed =
        number_field(("##" + label).c_str(), value, minimum, maximum, width_of_letters(4), what);
    if (typed.has_value()) changed = typed;
    ImGui::SameLine(0.0F, gap);
    if (button(("+##more " + label).c_str(), at_edge(maximum))) changed = value + 1;
    return changed;
}

bool begin_choice(const char* label, const std::string& chosen, float width) {
    ImGui::SetNextItemWidth(std::max(width, row_height()));
    // The library reports the labels of all controls but this one.
    [[maybe_unused]] ImGuiContext& g = *ImGui::GetCurrentContext();
    [[maybe_unused]] const ImGuiID id = ImGui::GetID(label);
    meet_far_press(label);
    const bool is_open = ImGui::BeginCombo(label, chosen.c_str(), ImGuiComboFlags_HeightLarge);
    IMGUI_TEST_ENGINE_ITEM_INFO(id, label, ImGuiItemStatusFlags_None);
    if (!is_open) return false;
    if (ImGui::IsKeyPressed(ImGuiKey_Escape, false)) ImGui::CloseCurrentPopup();
    return true;
}

bool choice_row(const std::string& words, bool is_chosen, bool stays_open) {
    // The least a row of a drop-down may be wide, whatever its words are.
    const float width = std::max(
        ImGui::CalcTextSize(words.c_str(), nullptr, true).x, ImGui::GetContentRegionAvail().x
    );
    return ImGui::Selectable(
        words.c_str(),
        is_chosen,
        stays_open ? ImGuiSelectableFlags_DontClosePopups : ImGuiSelectableFlags_None,
        {std::max(width, row_height()), row_height()}
    );
}

bool row_ground(const std::string& label, float width, float height, bool is_on) {
    const ImVec2 at = ImGui::GetCursorPos();
    ImGui::SetNextItemAllowOverlap();
    const bool is_pressed =
        ImGui::InvisibleButton(label.c_str(), {std::max(width, row_height()), height});
    const ImVec2 from = ImGui::GetItemRectMin();
    const ImVec2 to = ImGui::GetItemRectMax();
    ImDrawList* list = ImGui::GetWindowDrawList();
    if (is_on || ImGui::IsItemHovered())
        list->AddRectFilled(from, to, colour_u32(Ink::raised, is_on ? 1.0F : 0.5F));
    if (is_on) list->AddRectFilled(from, {from.x + px(4.0F), to.y}, colour_u32(Ink::accent));
    ImGui::RenderNavHighlight({from, to}, ImGui::GetItemID());
    ImGui::SetCursorPos(at);
    return is_pressed;
}

bool keys_are_free(const PanelContext& context) {
    const ImGuiIO& io = ImGui::GetIO();
    const ImGuiPopupFlags any = ImGuiPopupFlags_AnyPopupId | ImGuiPopupFlags_AnyPopupLevel;
    const bool is_taken = io.WantTextInput || ImGui::IsAnyItemActive() || io.NavVisible ||
                          ImGui::IsPopupOpen("", any);
    return context.has_keyboard && !is_taken && !io.KeyCtrl && !io.KeyAlt && !io.KeySuper;
}

} // namespace widgets
