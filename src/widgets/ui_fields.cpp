// What is typed into, the bar of hit points, and the wishes for later frames.
#include "widgets/far_press.h"
#include "widgets/roll_field.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_internal.h>
#include <imgui_stdlib.h>

#include <algorithm>
#include <utility>

namespace widgets {

namespace {

constexpr double typing_pause_seconds = 1.0;
constexpr double refusal_seconds = 5.0;

std::optional<double> frame_wish;

// The last refusal of a number field, shown under it until it is old or something else is edited.
struct Refusal {
    const ImGuiContext* screen = nullptr;
    ImGuiID field = 0;
    std::string text;
    double until = 0.0;
};

Refusal last_refusal;

void show_refusal(ImGuiID field) {
    const bool is_mine =
        last_refusal.screen == ImGui::GetCurrentContext() && last_refusal.field == field;
    const double left = last_refusal.until - ImGui::GetTime();
    if (!is_mine || left <= 0.0) return;
    ask_frame_in(left);
    const ImVec2 below{ImGui::GetItemRectMin().x, ImGui::GetItemRectMax().y + px(4.0F)};
    ImGui::SetNextWindowPos(below);
    if (ImGui::BeginTooltip()) {
        text(Ink::harm, "! " + last_refusal.text);
        ImGui::EndTooltip();
    }
}

void refuse(ImGuiID field, std::string text) {
    last_refusal = {
        ImGui::GetCurrentContext(), field, std::move(text), ImGui::GetTime() + refusal_seconds};
}

// Called after the field itself: what of the draft is to be committed now.
std::optional<std::string>
settle(std::string_view value, TextDraft& draft, double now_seconds, bool is_active) {
    if (is_active && !draft.is_active) {
        draft.is_active = true;
        draft.committed = std::string(value);
        draft.changed_at = 0.0;
    }
    if (!draft.is_active) return std::nullopt;
    const bool is_changed = draft.text != draft.committed;
    if (!is_active) {
        draft.is_active = false;
        draft.changed_at = 0.0;
        if (!is_changed) return std::nullopt;
        draft.committed = draft.text;
        return draft.text;
    }
    if (!is_changed) {
        draft.changed_at = 0.0;
        return std::nullopt;
    }
    if (draft.changed_at <= 0.0) draft.changed_at = now_seconds;
    const double waited = now_seconds - draft.changed_at;
    if (waited < typing_pause_seconds) {
        ask_frame_in(typing_pause_seconds - waited);
        return std::nullopt;
    }
    draft.committed = draft.text;
    draft.changed_at = 0.0;
    return draft.text;
}

Ink hp_ink(int hp, int hp_max) {
    if (hp * 4 <= hp_max) return Ink::harm;
    return hp * 2 <= hp_max ? Ink::accent : Ink::good;
}

void draw_hp_shape(int hp, int hp_max, int temp_hp, ImVec2 from, ImVec2 to) {
    ImDrawList* list = ImGui::GetWindowDrawList();
    const float rounding = px(3.0F);
    const float whole = static_cast<float>(std::max(hp_max, hp + temp_hp));
    const float width = to.x - from.x;
    const auto at = [&](int amount) {
        return from.x + width * static_cast<float>(std::max(amount, 0)) / whole;
    };
    list->AddRectFilled(from, to, colour_u32(Ink::ground), rounding);
    if (hp > 0) list->AddRectFilled(from, {at(hp), to.y}, colour_u32(hp_ink(hp, hp_max)), rounding);
    if (temp_hp > 0) {
        // Temporary hit points stand on top as an outlined piece, told apart by shape.
        const ImVec2 start{at(hp), from.y + px(2.0F)};
        list->AddRectFilled(
            start, {at(hp + temp_hp), to.y - px(2.0F)}, colour_u32(Ink::text, 0.5F)
        );
    }
    list->AddRect(from, to, colour_u32(Ink::line), rounding, 0, std::max(1.0F, px(1.0F)));
}

} // namespace

void ask_frame_in(double seconds) {
    frame_wish = frame_wish.has_value() ? std::min(*frame_wish, seconds) : seconds;
}

std::optional<double> take_frame_wish() {
    return std::exchange(frame_wish, std::nullopt);
}

void hp_bar(int hp, int hp_max, int temp_hp, ImVec2 size) {
    const std::string number = std::to_string(hp) + "/" + std::to_string(hp_max);
    const std::string extra = temp_hp > 0 ? " +" + std::to_string(temp_hp) : std::string();
    push_numbers(TextSize::body);
    const float number_width =
        std::max(ImGui::CalcTextSize("000/000").x, ImGui::CalcTextSize((number + extra).c_str()).x);
    const ImVec2 at = ImGui::GetCursorPos();
    const ImVec2 from = ImGui::GetCursorScreenPos();
    const float bar = size.x - number_width - px(8.0F);
    const float thickness = std::min(px(14.0F), size.y);
    const float top = from.y + (size.y - thickness) / 2.0F;
    if (bar >= px(28.0F) && hp_max > 0)
        draw_hp_shape(hp, hp_max, temp_hp, {from.x, top}, {from.x + bar, top + thickness});
    const float line = ImGui::GetTextLineHeight();
    ImGui::SetCursorPos({at.x + size.x - number_width, at.y + (size.y - line) / 2.0F});
    const Ink ink = hp_max > 0 && hp * 4 <= hp_max ? Ink::harm : Ink::text;
    text_right_aligned(ink, number + extra, number_width);
    ImGui::PopFont();
    ImGui::SetCursorPos(at);
    ImGui::Dummy(size);
}

std::optional<int> number_field(
    const char* label, int value, int minimum, int maximum, float width, std::string_view what
) {
    std::string typed = std::to_string(value);
    const ImGuiID id = ImGui::GetID(label);
    ImGui::SetNextItemWidth(std::max(width, row_height()));
    ImGui::PushFont(look().fonts.numbers);
    meet_far_press(label);
    ImGui::InputText(label, &typed, ImGuiInputTextFlags_AutoSelectAll);
    ImGui::PopFont();
    const bool is_left = ImGui::IsItemDeactivatedAfterEdit();
    if (ImGui::IsItemActive() && last_refusal.field == id) last_refusal.until = 0.0;
    std::optional<int> result;
    if (is_left) {
        const std::optional<int> number = whole_number(typed);
        if (!number.has_value() || *number < minimum || *number > maximum)
            refuse(
                id,
                std::string(what) + " is " + std::to_string(minimum) + " to " +
                    std::to_string(maximum) + "."
            );
        else if (*number != value)
            result = number;
    }
    show_refusal(id);
    return result;
}

std::optional<std::string> text_field(
    const char* label, std::string_view value, TextDraft& draft, double now_seconds, float width
) {
    if (!draft.is_active) draft.text = std::string(value);
    ImGui::SetNextItemWidth(width);
    meet_far_press(label);
    ImGui::InputText(label, &draft.text);
    return settle(value, draft, now_seconds, ImGui::IsItemActive());
}

std::optional<std::string> text_area(
    const char* label, std::string_view value, TextDraft& draft, double now_seconds, ImVec2 size
) {
    if (!draft.is_active) draft.text = std::string(value);
    meet_far_press(label);
    ImGui::InputTextMultiline(label, &draft.text, size);
    return settle(value, draft, now_seconds, ImGui::IsItemActive());
}

} // namespace widgets
