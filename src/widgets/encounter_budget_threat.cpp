// The threat of the Encounter Budget: its name, its numbers and the bar of budgets.
#include "widgets/encounter_budget_parts.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <cctype>

namespace widgets {

namespace {

std::string opening(std::string words) {
    if (!words.empty())
        words.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(words.front())));
    return words;
}

// The longest caption of a mark that ends before the next mark; empty if none does.
std::string fitting_caption(const game::BudgetMark& mark, float room) {
    const std::string xp = std::to_string(mark.xp);
    const std::array<std::string, 2> captions{mark.name + " " + xp, xp};
    for (const std::string& caption : captions)
        if (ImGui::CalcTextSize(caption.c_str()).x <= room) return caption;
    return {};
}

void draw_bar(const game::BudgetBar& bar, bool is_beyond) {
    const float width = ImGui::GetContentRegionAvail().x;
    const float height = px(16.0F);
    const ImVec2 from = ImGui::GetCursorScreenPos();
    ImDrawList* list = ImGui::GetWindowDrawList();
    const float line = std::max(1.0F, px(1.0F));
    const float rounding = px(3.0F);
    const ImVec2 to{from.x + width, from.y + height};
    list->AddRectFilled(from, to, colour_u32(Ink::ground), rounding);
    const float filled = static_cast<float>(bar.filled) * width;
    if (filled >= 1.0F)
        list->AddRectFilled(
            from, {from.x + filled, to.y}, colour_u32(is_beyond ? Ink::harm : Ink::accent), rounding
        );
    list->AddRect(from, to, colour_u32(Ink::line), rounding, 0, line);
    push_font(TextSize::small);
    const float text_height = ImGui::GetTextLineHeight();
    const float tick = px(5.0F);
    for (std::size_t at = 0; at < bar.marks.size(); ++at) {
        const game::BudgetMark& mark = bar.marks[at];
        const float x = from.x + static_cast<float>(mark.at) * width;
        const float next = at + 1 < bar.marks.size()
                               ? from.x + static_cast<float>(bar.marks[at + 1].at) * width
                               : to.x;
        const float thick = mark.is_reached ? px(3.0F) : line;
        list->AddRectFilled(
            {x - thick / 2.0F, from.y}, {x + thick / 2.0F, to.y + tick}, colour_u32(Ink::text)
        );
        const std::string caption = fitting_caption(mark, next - x - px(6.0F));
        list->AddText(
            {x, to.y + tick}, colour_u32(mark.is_reached ? Ink::text : Ink::muted), caption.c_str()
        );
    }
    ImGui::PopFont();
    ImGui::Dummy({width, height + tick + text_height});
}

} // namespace

void draw_line_with_end(std::string_view start, std::string_view end, float width) {
    const ImVec2 at = ImGui::GetCursorPos();
    push_numbers(TextSize::body);
    const float end_width = ImGui::CalcTextSize(end.data(), end.data() + end.size()).x;
    ImGui::PopFont();
    text_fitted(Ink::text, start, std::max(width - end_width - px(12.0F), px(20.0F)));
    ImGui::SameLine(0.0F, 0.0F);
    ImGui::SetCursorPosX(at.x + std::max(0.0F, width - end_width));
    push_numbers(TextSize::body);
    text(Ink::text, end);
    ImGui::PopFont();
}

void draw_budget_threat(const game::EncounterPlan& plan) {
    const rules::EncounterRating& rating = plan.rating;
    const Ink ink = rating.is_beyond ? Ink::harm : Ink::text;
    push_font(TextSize::current);
    text_wrapped(
        ink, rating.threat.empty() ? std::string("No threat yet") : opening(rating.threat)
    );
    ImGui::PopFont();
    text_wrapped(Ink::text, plan.threat_text);
    draw_bar(plan.bar, rating.is_beyond);
    for (const std::string& remark : rating.remarks)
        text_wrapped(rating.is_beyond ? Ink::harm : Ink::muted, remark);
}

} // namespace widgets
