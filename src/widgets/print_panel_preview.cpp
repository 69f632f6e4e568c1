#include "widgets/form.h"
#include "widgets/print_panel_parts.h"

#include <imgui.h>

#include <algorithm>

namespace widgets {

namespace {

// White paper would dazzle in a dim room.
constexpr std::uint32_t paper_in_the_dark = IM_COL32(0xC4, 0xBE, 0xB2, 0xFF);
constexpr std::uint32_t paper_in_the_light = IM_COL32_WHITE;

void turn_pages(const PanelContext& context, PrintPanelView& view, std::size_t sides) {
    const std::size_t last = sides == 0 ? 0 : sides - 1;
    view.side = std::min(view.side, last);
    const std::string at =
        sides == 0 ? std::string("Nothing to see yet")
                   : "Side " + std::to_string(view.side + 1) + " of " + std::to_string(sides);
    Flow flow;
    flow.next(button_width("Before"));
    const bool goes_back = button("Before", view.side == 0 ? "This is the first side." : "");
    flow.next(button_width("Next"));
    const bool goes_on = button("Next", view.side >= last ? "This is the last side." : "");
    flow.next(button_width("Larger"));
    if (toggle_button("Larger", view.is_large)) view.is_large = !view.is_large;
    flow.next(ImGui::CalcTextSize(at.c_str()).x);
    ImGui::AlignTextToFramePadding();
    text(Ink::muted, at);
    const bool has_keys = keys_are_free(context);
    if ((goes_back || (has_keys && ImGui::IsKeyPressed(ImGuiKey_PageUp))) && view.side > 0)
        view.side -= 1;
    if ((goes_on || (has_keys && ImGui::IsKeyPressed(ImGuiKey_PageDown))) && view.side < last)
        view.side += 1;
}

// As large as fits, or as wide as there is room.
float width_of_side(const PanelContext& context, bool is_large) {
    const print::SizeMm sheet = print::sheet_size(context.print_desk->choices().order.setup);
    const ImVec2 room = ImGui::GetContentRegionAvail();
    const auto share = static_cast<float>(sheet.width / sheet.height);
    const float fitting = std::min(room.x, room.y * share);
    return std::max(px(40.0F), is_large ? std::max(room.x - px(16.0F), fitting * 2.0F) : fitting);
}

} // namespace

void draw_print_preview(const PanelContext& context, PrintPanelView& view) {
    PrintDesk& desk = *context.print_desk;
    turn_pages(context, view, desk.state().sides);
    const bool is_scrolled = view.is_large;
    if (ImGui::BeginChild(
            "side",
            {0.0F, 0.0F},
            ImGuiChildFlags_None,
            is_scrolled ? ImGuiWindowFlags_HorizontalScrollbar : ImGuiWindowFlags_NoScrollbar
        )) {
        const float width = width_of_side(context, view.is_large);
        desk.show(view.side, static_cast<int>(width));
        const PrintState& state = desk.state();
        if (!state.problem.empty()) {
            text_wrapped(Ink::harm, state.problem);
        } else if (state.picture.width > 0) {
            const ImVec2 size{
                width,
                width * static_cast<float>(state.picture.height) /
                    static_cast<float>(state.picture.width)};
            const ImVec2 at = ImGui::GetCursorScreenPos();
            ImGui::GetWindowDrawList()->AddImage(
                reinterpret_cast<ImTextureID>( // NOLINT(performance-no-int-to-ptr): its type
                    static_cast<std::uintptr_t>(state.picture.texture)
                ),
                at,
                {at.x + size.x, at.y + size.y},
                {0.0F, 0.0F},
                {1.0F, 1.0F},
                look().theme == ThemeName::dark ? paper_in_the_dark : paper_in_the_light
            );
            if (ImGui::InvisibleButton("Page##picture", size)) view.is_large = !view.is_large;
        }
    }
    ImGui::EndChild();
}

} // namespace widgets
