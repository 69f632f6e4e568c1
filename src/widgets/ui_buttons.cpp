// What is pressed: buttons, toggles and chips. Each is at least one row high and one row wide.
#include "widgets/far_press.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_internal.h>

#include <algorithm>

namespace widgets {

namespace {

enum class Manner { plain, primary, quiet, on, off };

struct Pressed {
    bool is_pressed = false;
    bool is_hovered = false;
    bool is_held = false;
    ImRect box;
};

// The caption, centred, cut at the edge only if the target itself had to be cut.
void draw_caption(const Pressed& target, const char* label, Ink ink) {
    const ImVec2 size = ImGui::CalcTextSize(label, nullptr, true);
    const float inset = std::max(0.0F, (target.box.GetWidth() - size.x) / 2.0F);
    const ImVec2 from{target.box.Min.x + inset, target.box.Min.y};
    ImGui::PushStyleColor(ImGuiCol_Text, colour(ink));
    ImGui::RenderTextClipped(from, target.box.Max, label, nullptr, &size, {0.0F, 0.5F});
    ImGui::PopStyleColor();
}

void draw_ground(const Pressed& target, Manner manner) {
    ImDrawList* list = ImGui::GetWindowDrawList();
    const ImRect& box = target.box;
    const float rounding = px(5.0F);
    const float lift = target.is_held ? 0.45F : target.is_hovered ? 0.25F : 0.0F;
    if (manner == Manner::primary) {
        list->AddRectFilled(box.Min, box.Max, colour_u32(Ink::accent), rounding);
        if (lift > 0.0F)
            list->AddRectFilled(box.Min, box.Max, colour_u32(Ink::ground, lift * 0.5F), rounding);
        return;
    }
    if (manner != Manner::quiet && manner != Manner::off)
        list->AddRectFilled(box.Min, box.Max, colour_u32(Ink::raised), rounding);
    if (lift > 0.0F) list->AddRectFilled(box.Min, box.Max, colour_u32(Ink::line, lift), rounding);
    const float line = std::max(1.0F, px(1.0F));
    list->AddRect(box.Min, box.Max, colour_u32(Ink::line), rounding, 0, line);
    if (manner != Manner::on) return;
    // On: a bar under the caption, so that it shows without colour too.
    const float inset = px(6.0F);
    list->AddRectFilled(
        {box.Min.x + inset, box.Max.y - px(6.0F)},
        {box.Max.x - inset, box.Max.y - px(3.0F)},
        colour_u32(Ink::accent),
        px(1.5F)
    );
}

Pressed draw_target(const char* label, ImVec2 size) {
    Pressed target;
    target.is_pressed = ImGui::InvisibleButton(label, size);
    target.is_hovered = ImGui::IsItemHovered();
    target.is_held = ImGui::IsItemActive();
    target.box = {ImGui::GetItemRectMin(), ImGui::GetItemRectMax()};
    ImGui::RenderNavHighlight(target.box, ImGui::GetItemID());
    return target;
}

// A finger has no hover: pressing what cannot be used shows the reason at once.
void show_reason(std::string_view why_not) {
    const bool is_touched = ImGui::IsItemHovered(ImGuiHoveredFlags_AllowWhenDisabled) &&
                            ImGui::IsMouseDown(ImGuiMouseButton_Left);
    if (!is_touched && !ImGui::IsItemHovered(ImGuiHoveredFlags_ForTooltip)) return;
    ImGui::SetTooltip("%.*s", static_cast<int>(why_not.size()), why_not.data());
}

bool draw_button(const char* label, Manner manner, std::string_view why_not, float width) {
    const bool is_refused = !why_not.empty();
    if (is_refused) ImGui::BeginDisabled();
    const Pressed target = draw_target(label, {width, row_height()});
    const bool is_far_pressed = is_pressed_from_afar(label, why_not);
    if (is_refused && manner == Manner::primary) manner = Manner::plain;
    draw_ground(target, manner);
    const Ink ink = manner == Manner::primary                          ? Ink::ground
                    : manner == Manner::quiet || manner == Manner::off ? Ink::muted
                                                                       : Ink::text;
    draw_caption(target, label, ink);
    if (is_refused) ImGui::EndDisabled();
    if (is_refused) show_reason(why_not);
    return (target.is_pressed && !is_refused) || is_far_pressed;
}

} // namespace

float button_width(const char* label) {
    const float needed =
        ImGui::CalcTextSize(label, nullptr, true).x + 2.0F * ImGui::GetStyle().FramePadding.x;
    return std::max(needed, row_height());
}

bool button(const char* label, std::string_view why_not) {
    return draw_button(label, Manner::plain, why_not, button_width(label));
}

bool primary_button(const char* label, std::string_view why_not) {
    return draw_button(label, Manner::primary, why_not, button_width(label));
}

bool small_button(const char* label, std::string_view why_not) {
    push_font(TextSize::small);
    const float needed = ImGui::CalcTextSize(label, nullptr, true).x + 2.0F * px(6.0F);
    const bool is_pressed =
        draw_button(label, Manner::quiet, why_not, std::max(needed, row_height()));
    ImGui::PopFont();
    return is_pressed;
}

bool toggle_button(const char* label, bool is_on, std::string_view why_not) {
    return draw_button(label, is_on ? Manner::on : Manner::off, why_not, button_width(label));
}

void same_line_if_fits(float width) {
    const float spacing = ImGui::GetStyle().ItemSpacing.x;
    const float right = ImGui::GetWindowPos().x + ImGui::GetContentRegionMax().x;
    if (ImGui::GetItemRectMax().x + spacing + width <= right) ImGui::SameLine();
}

bool chip(const char* label, Ink ink, std::string_view tooltip) {
    Pressed target = draw_target(label, {button_width(label), row_height()});
    const Pressed whole = target;
    const float inset = px(look().is_touch ? 6.0F : 3.0F);
    target.box.Min.y += inset;
    target.box.Max.y -= inset;
    const float rounding = target.box.GetHeight() / 2.0F;
    ImDrawList* list = ImGui::GetWindowDrawList();
    const float ground = target.is_held ? 0.35F : target.is_hovered ? 0.22F : 0.10F;
    list->AddRectFilled(target.box.Min, target.box.Max, colour_u32(ink, ground), rounding);
    list->AddRect(
        target.box.Min, target.box.Max, colour_u32(ink), rounding, 0, std::max(1.0F, px(1.0F))
    );
    draw_caption(whole, label, ink == Ink::muted ? Ink::muted : Ink::text);
    if (!tooltip.empty())
        ImGui::SetItemTooltip("%.*s", static_cast<int>(tooltip.size()), tooltip.data());
    return target.is_pressed;
}

} // namespace widgets
