#include "app/tab_strip.h"

#include "app/panels.h"
#include "widgets/form.h"
#include "widgets/popup.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_internal.h>

#include <algorithm>

namespace app {

using widgets::colour_u32;
using widgets::Ink;
using widgets::px;

namespace {

constexpr ImGuiWindowFlags strip_window =
    ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings |
    ImGuiWindowFlags_NoBringToFrontOnFocus | ImGuiWindowFlags_NoScrollWithMouse;

std::string title_of(const std::string& panel) {
    const widgets::PanelInfo* info = find_panel(panel);
    return info == nullptr ? panel : std::string(info->title);
}

void draw_tab_shape(const ImRect& box, const std::string& title, bool is_front, bool is_focused) {
    ImDrawList* list = ImGui::GetWindowDrawList();
    const float rounding = px(6.0F);
    const bool is_hovered = ImGui::IsItemHovered();
    if (is_front || is_hovered)
        list->AddRectFilled(
            box.Min,
            box.Max,
            colour_u32(is_front ? Ink::panel : Ink::raised),
            rounding,
            ImDrawFlags_RoundCornersTop
        );
    if (is_front && is_focused)
        list->AddRectFilled(
            {box.Min.x + rounding, box.Min.y},
            {box.Max.x - rounding, box.Min.y + px(3.0F)},
            colour_u32(Ink::accent),
            px(1.5F)
        );
    const ImVec2 size = ImGui::CalcTextSize(title.c_str());
    const float pad = px(12.0F);
    const float top = box.Min.y + (box.GetHeight() - size.y) / 2.0F;
    ImGui::PushStyleColor(ImGuiCol_Text, widgets::colour(is_front ? Ink::text : Ink::muted));
    ImGui::RenderTextEllipsis(
        list,
        {box.Min.x + pad, top},
        {box.Max.x - px(4.0F), box.Max.y},
        box.Max.x - px(4.0F),
        box.Max.x - px(4.0F),
        title.c_str(),
        nullptr,
        &size
    );
    ImGui::PopStyleColor();
}

struct Strip {
    const TileBox& tile;
    Tiles& tiles;
    TilesView& view;
    std::vector<std::string> shown{};  // as tabs
    std::vector<std::string> hidden{}; // in the menu at the end
    float tab_width = 0.0F;            // at most; captions that are longer are cut
};

void draw_tab(const Strip& strip, const std::string& panel) {
    const std::string title = title_of(panel);
    const bool is_front = panel == strip.tile.front;
    ImGui::PushFont(
        is_front ? widgets::look().fonts.strong : widgets::font(widgets::TextSize::body)
    );
    const float wanted = ImGui::CalcTextSize(title.c_str()).x + px(20.0F);
    const float width = std::max(std::min(wanted, strip.tab_width), widgets::row_height());
    const std::string label = title + "###tab/" + panel;
    const bool is_pressed = ImGui::InvisibleButton(label.c_str(), {width, tab_strip_height()});
    const ImRect box{ImGui::GetItemRectMin(), ImGui::GetItemRectMax()};
    const bool is_hovered = ImGui::IsItemHovered();
    ImGui::RenderNavHighlight(box, ImGui::GetItemID());
    if (ImGui::IsItemActive() && ImGui::IsMouseDragging(ImGuiMouseButton_Left, px(10.0F)))
        strip.view.dragged = panel;
    draw_tab_shape(box, title, is_front, strip.tiles.focused == panel);
    ImGui::PopFont();
    if (is_pressed && strip.view.dragged.empty()) show_panel(strip.tiles, panel);
    if (is_hovered && ImGui::IsMouseDoubleClicked(ImGuiMouseButton_Left))
        toggle_filling(strip.tiles, panel);
    if (wanted > width) ImGui::SetItemTooltip("%s", title.c_str());
    if (ImGui::IsItemClicked(ImGuiMouseButton_Middle)) close_panel(strip.tiles, panel);
}

// "3 more": what is not shown.
std::string more_label(std::size_t count) {
    return std::to_string(count) + " more###more tabs";
}

// So much of its caption every tab shows; what does not fit so goes into a menu.
float least_tab() {
    return std::max(px(84.0F), widgets::row_height());
}

void share_room(Strip& strip, float room) {
    const float gap = px(2.0F);
    const std::vector<std::string>& all = strip.tile.panels;
    std::size_t count = all.size();
    if (static_cast<float>(count) * (least_tab() + gap) > room) {
        room -= widgets::button_width(more_label(count).c_str()) + px(4.0F);
        count = static_cast<std::size_t>(std::max(1.0F, room / (least_tab() + gap)));
    }
    strip.tab_width = room / static_cast<float>(std::max<std::size_t>(count, 1)) - gap;
    const auto front = std::find(all.begin(), all.end(), strip.tile.front);
    // The one in front always has its tab, as the last where it would not be among them.
    const bool is_late = front - all.begin() >= static_cast<std::ptrdiff_t>(count);
    for (const std::string& panel : all) {
        const bool is_front = panel == strip.tile.front;
        const bool has_room = strip.shown.size() + (is_late ? 1 : 0) < count;
        (is_front || has_room ? strip.shown : strip.hidden).push_back(panel);
    }
}

void draw_hidden_tabs(const Strip& strip) {
    const std::string label = more_label(strip.hidden.size());
    if (widgets::button(label.c_str())) ImGui::OpenPopup("more tabs");
    ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {px(8.0F), px(6.0F)});
    if (widgets::begin_popup("more tabs")) {
        for (const std::string& panel : strip.hidden) {
            const std::string row = title_of(panel) + "###tab/" + panel;
            if (widgets::choice_row(row, false)) show_panel(strip.tiles, panel);
        }
        ImGui::EndPopup();
    }
    ImGui::PopStyleVar();
}

// A cross needs no word; its label serves assistive scripts and tests.
bool cross_button(const std::string& label) {
    const float side = widgets::row_height();
    const bool is_pressed = ImGui::InvisibleButton(label.c_str(), {side, side});
    const ImRect box{ImGui::GetItemRectMin(), ImGui::GetItemRectMax()};
    ImGui::RenderNavHighlight(box, ImGui::GetItemID());
    ImDrawList* list = ImGui::GetWindowDrawList();
    const bool is_hovered = ImGui::IsItemHovered();
    if (is_hovered) list->AddRectFilled(box.Min, box.Max, colour_u32(Ink::raised), px(5.0F));
    const ImVec2 centre = box.GetCenter();
    const float reach = px(5.0F);
    const ImU32 ink = colour_u32(is_hovered ? Ink::text : Ink::muted);
    const float line = std::max(1.0F, px(1.5F));
    list->AddLine(
        {centre.x - reach, centre.y - reach}, {centre.x + reach, centre.y + reach}, ink, line
    );
    list->AddLine(
        {centre.x - reach, centre.y + reach}, {centre.x + reach, centre.y - reach}, ink, line
    );
    return is_pressed;
}

} // namespace

float tab_strip_height() {
    return widgets::row_height() + px(4.0F);
}

void draw_tab_strip(const TileBox& tile, int number, Tiles& tiles, TilesView& view) {
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {0.0F, 0.0F});
    ImGui::PushStyleColor(ImGuiCol_WindowBg, widgets::colour(Ink::ground));
    const std::string name = "###tabs" + std::to_string(number);
    ImGui::Begin(name.c_str(), nullptr, strip_window);
    ImGui::PopStyleColor();
    ImGui::PopStyleVar(); // tooltips and the menu keep their edge
    ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {px(2.0F), 0.0F});
    const bool fills = tiles.filling == tile.front;
    const float cross = widgets::row_height() + px(4.0F);
    const float back = fills ? widgets::button_width("Back to tiles") + px(4.0F) : 0.0F;
    const float room = ImGui::GetWindowWidth() - cross - back;
    Strip strip{tile, tiles, view};
    share_room(strip, room);
    const ImVec2 corner = ImGui::GetWindowPos();
    ImGui::PushClipRect(corner, {corner.x + room, corner.y + tab_strip_height()}, true);
    for (const std::string& panel : strip.shown) {
        draw_tab(strip, panel);
        ImGui::SameLine();
    }
    if (!strip.hidden.empty()) {
        ImGui::SetCursorPosY(px(2.0F));
        draw_hidden_tabs(strip);
    }
    ImGui::PopClipRect();
    if (fills) {
        ImGui::SetCursorPos({ImGui::GetWindowWidth() - cross - back, px(2.0F)});
        if (widgets::button("Back to tiles")) toggle_filling(tiles, tile.front);
    }
    ImGui::SetCursorPos({ImGui::GetWindowWidth() - cross, px(2.0F)});
    const std::string front = tile.front;
    if (cross_button("Close " + title_of(front) + "###close/" + front)) close_panel(tiles, front);
    ImGui::SetItemTooltip("Close; the menu Panels opens it again");
    ImGui::End();
    ImGui::PopStyleVar();
}

} // namespace app
