#include "widgets/entry_list.h"

#include "widgets/form.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>

namespace widgets {

void take_wanted_entry(const PanelContext& context, const PanelInfo& info, base::Id& edited) {
    const Wanted wanted = take_wanted(context.selection, info);
    if (wanted.id != base::no_id) edited = wanted.id;
}

bool has_room_for_two() {
    return ImGui::GetContentRegionAvail().x >= px(900.0F);
}

EntryColumns entry_columns(float left, float right, std::size_t wanted) {
    EntryColumns columns;
    columns.width = ImGui::GetContentRegionAvail().x;
    columns.left = left;
    columns.right = right;
    push_numbers(TextSize::body);
    columns.cell = ImGui::CalcTextSize("9999").x + px(10.0F);
    ImGui::PopFont();
    const float room = columns.width - left - right;
    const float narrowest_name = std::min(px(150.0F), room);
    const float cells = std::max(0.0F, room - narrowest_name) / columns.cell;
    columns.count = std::min(wanted, static_cast<std::size_t>(cells));
    columns.name = room - columns.cell * static_cast<float>(columns.count);
    push_font(TextSize::small);
    const float small_line = ImGui::GetTextLineHeight();
    ImGui::PopFont();
    columns.row =
        std::max(row_height(), ImGui::GetTextLineHeight() + small_line + px(8.0F)) + px(2.0F);
    return columns;
}

void draw_entry_titles(const EntryColumns& columns, const std::vector<std::string>& titles) {
    const ImVec2 at = ImGui::GetCursorPos();
    push_font(TextSize::small);
    for (std::size_t place = 0; place < columns.count; ++place) {
        const float x = columns.left + columns.name + columns.cell * static_cast<float>(place);
        ImGui::SetCursorPos({at.x + x, at.y});
        const std::string& title = titles[place];
        text_right_aligned(Ink::muted, title, columns.cell - px(6.0F));
    }
    ImGui::SetCursorPos({at.x, at.y + ImGui::GetTextLineHeight() + px(2.0F)});
    ImGui::PopFont();
    ImGui::Dummy({0.0F, 0.0F});
    ImGui::SetCursorPosX(at.x);
}

bool draw_entry_row(
    const EntryColumns& columns,
    const std::string& name,
    const std::string& second_line,
    const std::vector<std::string>& numbers,
    bool is_on
) {
    const ImVec2 at = ImGui::GetCursorPos();
    const bool is_pressed = row_ground(name + "###row", columns.width, columns.row, is_on);
    const float inset = columns.left + px(8.0F);
    const float name_width = columns.name - px(10.0F);
    const float line = ImGui::GetTextLineHeight();
    const float top = second_line.empty() ? (columns.row - line) / 2.0F : px(4.0F);
    ImGui::SetCursorPos({at.x + inset, at.y + top});
    ImGui::PushFont(look().fonts.strong);
    text_fitted(Ink::text, name, name_width);
    ImGui::PopFont();
    if (!second_line.empty()) {
        push_font(TextSize::small);
        ImGui::SetCursorPos(
            {at.x + inset, at.y + columns.row - ImGui::GetTextLineHeight() - px(3.0F)}
        );
        text_fitted(Ink::muted, second_line, name_width);
        ImGui::PopFont();
    }
    push_numbers(TextSize::body);
    for (std::size_t place = 0; place < columns.count; ++place) {
        const float x = columns.left + columns.name + columns.cell * static_cast<float>(place);
        ImGui::SetCursorPos({at.x + x, at.y + (columns.row - ImGui::GetTextLineHeight()) / 2.0F});
        text_right_aligned(Ink::text, numbers[place], columns.cell - px(6.0F));
    }
    ImGui::PopFont();
    ImGui::SetCursorPos({at.x, at.y + columns.row + px(2.0F)});
    ImGui::Dummy({0.0F, 0.0F});
    ImGui::SetCursorPos({at.x, at.y + columns.row + px(2.0F)});
    return is_pressed;
}

void read_entry_keys(
    const PanelContext& context, const std::vector<base::Id>& shown, base::Id& edited
) {
    if (shown.empty() || !keys_are_free(context)) return;
    if (ImGui::IsKeyPressed(ImGuiKey_Escape, false)) edited = base::no_id;
    int step = 0;
    if (ImGui::IsKeyPressed(ImGuiKey_DownArrow)) step = 1;
    if (ImGui::IsKeyPressed(ImGuiKey_UpArrow)) step = -1;
    if (step == 0) return;
    const auto found = std::find(shown.begin(), shown.end(), edited);
    std::ptrdiff_t place = found - shown.begin();
    if (found == shown.end())
        place = step > 0 ? 0 : std::ssize(shown) - 1;
    else
        place = std::clamp<std::ptrdiff_t>(place + step, 0, std::ssize(shown) - 1);
    edited = shown[static_cast<std::size_t>(place)];
}

} // namespace widgets
