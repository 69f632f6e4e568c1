// Words on the screen: coloured, wrapped, fitted, headings and empty states.
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_internal.h>

#include <algorithm>

namespace widgets {

static const char* begin_of(std::string_view text) {
    return text.empty() ? "" : text.data();
}

void text(Ink ink, std::string_view text) {
    ImGui::PushStyleColor(ImGuiCol_Text, colour(ink));
    const char* begin = begin_of(text);
    ImGui::TextUnformatted(begin, begin + text.size());
    ImGui::PopStyleColor();
}

void text_wrapped(Ink ink, std::string_view text) {
    ImGui::PushTextWrapPos(0.0F);
    widgets::text(ink, text);
    ImGui::PopTextWrapPos();
}

void text_right_aligned(Ink ink, std::string_view text, float width) {
    const char* begin = begin_of(text);
    const float needed = ImGui::CalcTextSize(begin, begin + text.size()).x;
    ImGui::SetCursorPosX(ImGui::GetCursorPosX() + std::max(0.0F, width - needed));
    widgets::text(ink, text);
}

void text_fitted(Ink ink, std::string_view text, float width) {
    const char* begin = begin_of(text);
    const char* end = begin + text.size();
    const ImVec2 whole = ImGui::CalcTextSize(begin, end);
    if (whole.x <= width) {
        widgets::text(ink, text);
        return;
    }
    ImGuiWindow* window = ImGui::GetCurrentWindow();
    if (window->SkipItems) return;
    const ImVec2 at{
        window->DC.CursorPos.x, window->DC.CursorPos.y + window->DC.CurrLineTextBaseOffset};
    const ImVec2 size{std::max(width, 1.0F), whole.y};
    const ImRect box{at, {at.x + size.x, at.y + size.y}};
    ImGui::ItemSize(size, 0.0F);
    if (!ImGui::ItemAdd(box, 0)) return;
    ImGui::PushStyleColor(ImGuiCol_Text, colour(ink));
    ImGui::RenderTextEllipsis(
        window->DrawList, box.Min, box.Max, box.Max.x, box.Max.x, begin, end, &whole
    );
    ImGui::PopStyleColor();
    ImGui::SetItemTooltip("%.*s", static_cast<int>(text.size()), begin);
}

void heading(std::string_view text) {
    ImGui::Dummy({0.0F, px(2.0F)});
    ImGui::PushFont(look().fonts.strong);
    text_wrapped(Ink::text, text);
    ImGui::PopFont();
}

void empty_state(std::string_view what_it_is_for) {
    ImGui::Dummy({0.0F, px(8.0F)});
    push_font(TextSize::name);
    text_wrapped(Ink::muted, what_it_is_for);
    ImGui::PopFont();
    ImGui::Dummy({0.0F, px(8.0F)});
}

void complaint(std::string_view text) {
    push_font(TextSize::small);
    text_wrapped(Ink::harm, "! " + std::string(text));
    ImGui::PopFont();
}

} // namespace widgets
