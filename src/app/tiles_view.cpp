#include "app/tiles_view.h"

#include "app/panels.h"
#include "app/tab_strip.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_internal.h>

#include <algorithm>
#include <cmath>

namespace app {

using widgets::colour_u32;
using widgets::Ink;
using widgets::px;

namespace {

constexpr ImGuiWindowFlags still_window = ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove |
                                          ImGuiWindowFlags_NoSavedSettings |
                                          ImGuiWindowFlags_NoBringToFrontOnFocus;

void next_window(const Box& box) {
    ImGui::SetNextWindowPos({box.x, box.y});
    ImGui::SetNextWindowSize({std::max(box.width, 1.0F), std::max(box.height, 1.0F)});
}

LayoutNeeds needs() {
    LayoutNeeds needs;
    needs.gap = std::round(px(widgets::look().is_touch ? 20.0F : 10.0F));
    needs.minimum = [](const std::string& panel) {
        const widgets::PanelInfo* info = find_panel(panel);
        if (info == nullptr) return Length2{};
        return Length2{px(info->min_width), px(info->min_height) + tab_strip_height()};
    };
    return needs;
}

void draw_splitter(const SplitterBox& splitter, Tiles& tiles, TilesView& view) {
    const Box& box = splitter.box;
    std::string label = "##splitter";
    for (const int step : splitter.path)
        label += std::to_string(step);
    ImGui::SetCursorScreenPos({box.x, box.y});
    ImGui::InvisibleButton(label.c_str(), {box.width, box.height});
    const bool is_columns = splitter.axis == Axis::columns;
    const bool is_held = ImGui::IsItemActive();
    const bool is_hovered = ImGui::IsItemHovered();
    if (is_held || is_hovered)
        ImGui::SetMouseCursor(is_columns ? ImGuiMouseCursor_ResizeEW : ImGuiMouseCursor_ResizeNS);
    if (is_hovered && ImGui::IsMouseDoubleClicked(ImGuiMouseButton_Left))
        set_ratio(tiles, splitter.path, 0.5F);
    else if (is_held && ImGui::IsMouseDragging(ImGuiMouseButton_Left, 1.0F)) {
        const ImVec2 mouse = ImGui::GetMousePos();
        const Box& all = splitter.around;
        const float room = (is_columns ? all.width - box.width : all.height - box.height);
        const float at =
            is_columns ? mouse.x - all.x - box.width / 2.0F : mouse.y - all.y - box.height / 2.0F;
        const float ratio =
            std::clamp(at / std::max(room, 1.0F), splitter.first_min, splitter.first_max);
        set_ratio(tiles, splitter.path, ratio);
    }
    view.drags_splitter = view.drags_splitter || is_held;
    // A short handle in the middle of the gap.
    const ImVec2 centre{box.x + box.width / 2.0F, box.y + box.height / 2.0F};
    const float half = px(18.0F);
    const float thin = px(1.5F);
    const ImVec2 reach = is_columns ? ImVec2{thin, half} : ImVec2{half, thin};
    ImGui::GetWindowDrawList()->AddRectFilled(
        {centre.x - reach.x, centre.y - reach.y},
        {centre.x + reach.x, centre.y + reach.y},
        colour_u32(is_held || is_hovered ? Ink::accent : Ink::line),
        thin
    );
}

// The ground behind all tiles carries the splitters; no tile covers the gaps.
void draw_ground(const Box& area, const Layout& layout, Tiles& tiles, TilesView& view) {
    next_window(area);
    ImGui::PushStyleColor(ImGuiCol_WindowBg, widgets::colour(Ink::ground));
    ImGui::Begin("###ground", nullptr, still_window | ImGuiWindowFlags_NoNavFocus);
    ImGui::PopStyleColor();
    // New windows that stay behind others go below older ones (ImGui 1.90.1), so this one is put
    // back.
    ImGui::BringWindowToDisplayBack(ImGui::GetCurrentWindow());
    view.drags_splitter = false;
    for (const SplitterBox& splitter : layout.splitters)
        draw_splitter(splitter, tiles, view);
    if (layout.tiles.empty()) {
        ImGui::SetCursorScreenPos({area.x + px(24.0F), area.y + px(24.0F)});
        widgets::empty_state("Every panel of this scene is closed. The menu Panels opens them.");
    }
    ImGui::End();
}

void draw_content(const TileBox& tile, Tiles& tiles, const DrawPanel& draw_panel) {
    Box inside = tile.box;
    inside.y += tab_strip_height();
    inside.height -= tab_strip_height();
    next_window(inside);
    const widgets::PanelInfo* info = find_panel(tile.front);
    const std::string name =
        std::string(info == nullptr ? "" : info->title) + "###panel/" + tile.front;
    const ImGuiWindowFlags flags = still_window & ~ImGuiWindowFlags_NoScrollbar;
    ImGui::Begin(name.c_str(), nullptr, flags);
    const bool is_pressed = ImGui::IsWindowHovered(ImGuiHoveredFlags_ChildWindows) &&
                            (ImGui::IsMouseClicked(ImGuiMouseButton_Left) ||
                             ImGui::IsMouseClicked(ImGuiMouseButton_Right));
    if (is_pressed) tiles.focused = tile.front;
    draw_panel(tile.front);
    ImGui::End();
}

const char* zone_words(Zone zone) {
    switch (zone) {
    case Zone::centre: return "As a tab here";
    case Zone::left: return "Left of it";
    case Zone::right: return "Right of it";
    case Zone::top: return "Above it";
    case Zone::bottom: return "Below it";
    }
    return "";
}

void draw_preview(const Box& box, Zone zone) {
    ImDrawList* list = ImGui::GetForegroundDrawList();
    const ImVec2 from{box.x, box.y};
    const ImVec2 to{box.x + box.width, box.y + box.height};
    list->AddRectFilled(from, to, colour_u32(Ink::accent, 0.22F), px(6.0F));
    list->AddRect(from, to, colour_u32(Ink::accent), px(6.0F), 0, px(3.0F));
    const char* words = zone_words(zone);
    const ImVec2 size = ImGui::CalcTextSize(words);
    const ImVec2 at{box.x + (box.width - size.x) / 2.0F, box.y + (box.height - size.y) / 2.0F};
    const float pad = px(8.0F);
    list->AddRectFilled(
        {at.x - pad, at.y - pad},
        {at.x + size.x + pad, at.y + size.y + pad},
        colour_u32(Ink::ground),
        px(5.0F)
    );
    list->AddText(at, colour_u32(Ink::text), words);
}

// Where the dragged tab would land shows while it is held; it lands when it is let go.
void carry_tab(const Layout& layout, Tiles& tiles, TilesView& view) {
    if (view.dragged.empty()) return;
    if (ImGui::IsKeyPressed(ImGuiKey_Escape, false)) {
        ImGui::ClearActiveID(); // the tab is let go, or it would be carried again at once
        view.dragged.clear();
        return;
    }
    const ImVec2 mouse = ImGui::GetMousePos();
    for (const TileBox& tile : layout.tiles) {
        if (!tile.box.contains(mouse.x, mouse.y)) continue;
        const Zone zone = zone_at(tile.box, mouse.x, mouse.y);
        draw_preview(zone_preview(tile.box, zone), zone);
        if (ImGui::IsMouseReleased(ImGuiMouseButton_Left))
            place_panel(tiles, view.dragged, tile.front, zone);
    }
    if (!ImGui::IsMouseDown(ImGuiMouseButton_Left)) view.dragged.clear();
}

} // namespace

void draw_tiles(Tiles& tiles, TilesView& view, const Box& area, const DrawPanel& draw_panel) {
    const float edge = std::round(px(6.0F));
    const Box inside{area.x + edge, area.y, area.width - 2.0F * edge, area.height - edge};
    const Layout layout = lay_out(tiles, inside, needs());
    draw_ground(area, layout, tiles, view);
    int number = 0;
    for (const TileBox& tile : layout.tiles) {
        next_window({tile.box.x, tile.box.y, tile.box.width, tab_strip_height()});
        draw_tab_strip(tile, number, tiles, view);
        draw_content(tile, tiles, draw_panel);
        number += 1;
    }
    carry_tab(layout, tiles, view);
}

} // namespace app
