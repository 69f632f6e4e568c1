#include "widgets/turn_order_rows.h"

#include "game/hurt.h"
#include "game/turns.h"
#include "widgets/picking.h"
#include "widgets/read_only.h"
#include "widgets/turn_order_select.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_internal.h>

#include <algorithm>
#include <cmath>

namespace widgets {

using base::Id;
using game::Combatant;
using game::Encounter;

namespace {

struct Rows {
    const PanelContext& context;
    TurnOrderRowsView& view;
    const RowPopups& popups;
    RowLayout layout;
    std::vector<Id> shown;
    Id next = base::no_id;
};

// The pressable ground of a row. A picked row has a frame and a bar, the current one a wide bar.
void draw_row_ground(const Rows& rows, const Combatant& combatant, float height) {
    Selection& selection = rows.context.selection;
    ImGui::SetNextItemAllowOverlap();
    const std::string label = combatant.name + "###row";
    if (ImGui::InvisibleButton(label.c_str(), {rows.layout.width, height}))
        pick(selection, rows.shown, combatant.id, pick_by_hand(rows.view.picks_several));
    if (ImGui::IsItemClicked(ImGuiMouseButton_Right)) {
        if (!is_picked(selection, combatant.id)) selection.combatants = {combatant.id};
        rows.view.wants_more = true;
    }
    const ImVec2 from = ImGui::GetItemRectMin();
    const ImVec2 to = ImGui::GetItemRectMax();
    const bool is_current = combatant.id == rows.context.campaign.encounter.current;
    const bool is_on = is_picked(selection, combatant.id);
    ImDrawList* list = ImGui::GetWindowDrawList();
    if (is_current || is_on || ImGui::IsItemHovered())
        list->AddRectFilled(from, to, colour_u32(Ink::raised, is_current || is_on ? 1.0F : 0.5F));
    if (is_current) list->AddRectFilled(from, {from.x + px(6.0F), to.y}, colour_u32(Ink::accent));
    if (is_on) list->AddRect(from, to, colour_u32(Ink::text), 0.0F, 0, px(2.0F));
}

// The first line: initiative, name, words, and (if there is room) chips, HP, AC.
void draw_row_first_line(const Rows& rows, const Combatant& combatant, ImVec2 at, float line) {
    const RowLayout& layout = rows.layout;
    const Encounter& encounter = rows.context.campaign.encounter;
    const bool is_current = combatant.id == encounter.current;
    const bool is_muted = combatant.has_acted && !is_current;
    const Ink ink = is_muted ? Ink::muted : Ink::text;
    const auto centre = [&](float x) {
        ImGui::SetCursorPos({at.x + x, at.y + (line - ImGui::GetTextLineHeight()) / 2.0F});
    };
    push_numbers(is_current ? TextSize::name : TextSize::body);
    centre(px(12.0F));
    const bool has_place = combatant.standing == game::Standing::in_order;
    text(
        ink,
        has_place && combatant.initiative.has_value() ? std::to_string(*combatant.initiative)
                                                      : std::string("--")
    );
    ImGui::PopFont();
    push_font(is_current ? TextSize::current : TextSize::name);
    centre(layout.initiative);
    const float wanted = ImGui::CalcTextSize(combatant.name.c_str()).x;
    text_fitted(is_current ? Ink::accent : ink, combatant.name, layout.name);
    ImGui::PopFont();
    const float words_at = layout.initiative + std::min(wanted, layout.name) + px(8.0F);
    const float right = layout.width - layout.hp - layout.armor_class - px(20.0F);
    push_font(TextSize::small);
    const std::string words = state_words(rows.context, combatant, rows.next);
    const bool has_chips = !combatant.conditions.empty() && !is_current && !layout.is_narrow;
    const float words_width =
        has_chips
            ? std::min(ImGui::CalcTextSize(words.c_str()).x + px(4.0F), (right - words_at) * 0.5F)
            : right - words_at;
    if (!words.empty() && words_width > px(24.0F)) {
        centre(words_at);
        const Ink words_ink = is_current                  ? Ink::accent
                              : combatant.id == rows.next ? Ink::text
                                                          : Ink::muted;
        text_fitted(words_ink, words, words_width);
    }
    ImGui::PopFont();
    const float middle = (line - row_height()) / 2.0F;
    if (has_chips) {
        const float chips_at = words_at + (words.empty() ? 0.0F : words_width + px(8.0F));
        ImGui::SetCursorPos({at.x + chips_at, at.y + middle});
        draw_row_chips(rows.context, combatant, rows.popups, right - chips_at);
    }
    ImGui::SetCursorPos({at.x + right + px(8.0F), at.y + middle});
    draw_row_hp(rows.context, combatant, rows.popups, layout.hp);
    centre(layout.width - layout.armor_class + px(6.0F));
    draw_row_armor_class(rows.context, combatant);
}

// A row has a second line where there is no room for chips on the first.
bool has_second_line(const Rows& rows, const Combatant& combatant) {
    return rows.layout.is_narrow && !combatant.conditions.empty() &&
           combatant.id != rows.context.campaign.encounter.current;
}

float details_height(const Rows& rows, const Combatant& combatant) {
    const TurnOrderRowsView& view = rows.view;
    if (view.measured == combatant.id && view.measured_width == rows.layout.width)
        return view.measured_height;
    return current_row_details_height(rows.context, combatant);
}

// Whole pixels, so that rows below each other end where the list ends.
float height_of(const Rows& rows, const Combatant& combatant) {
    const float line = rows.layout.line;
    if (combatant.id == rows.context.campaign.encounter.current)
        return std::round(line * 1.5F + details_height(rows, combatant));
    return std::round(has_second_line(rows, combatant) ? line * 2.0F : line);
}

// The details just drawn are the last item. If they need another height, the next frame gives it.
void measure_details(const Rows& rows, const Combatant& combatant) {
    TurnOrderRowsView& view = rows.view;
    const float needed = ImGui::GetItemRectSize().y + ImGui::GetStyle().ItemSpacing.y + px(4.0F);
    const float given = details_height(rows, combatant);
    if (std::abs(needed - given) > 0.5F) ask_frame_in(0.0);
    view.measured = combatant.id;
    view.measured_width = rows.layout.width;
    view.measured_height = needed;
}

void draw_row(const Rows& rows, const Combatant& combatant) {
    ImGui::PushID(static_cast<int>(combatant.id));
    const ImVec2 at = ImGui::GetCursorPos();
    const float height = height_of(rows, combatant);
    const bool is_current = combatant.id == rows.context.campaign.encounter.current;
    draw_row_ground(rows, combatant, height);
    // Rows scrolled out of sight cost nothing, except where the text of all is read out.
    const ImGuiContext& gui = *ImGui::GetCurrentContext();
    if (ImGui::IsItemVisible() || gui.LogEnabled) {
        const float line = rows.layout.line * (is_current ? 1.5F : 1.0F);
        draw_row_first_line(rows, combatant, at, line);
        if (is_current) {
            ImGui::SetCursorPos({at.x + rows.layout.initiative, at.y + line});
            ImGui::BeginGroup();
            draw_current_row_details(rows.context, combatant, rows.popups);
            ImGui::EndGroup();
            measure_details(rows, combatant);
        } else if (has_second_line(rows, combatant)) {
            ImGui::SetCursorPos({at.x + rows.layout.initiative, at.y + line});
            const float width = rows.layout.width - rows.layout.initiative;
            draw_row_chips(rows.context, combatant, rows.popups, width);
        }
    }
    const float below = at.y + height + std::round(px(2.0F));
    ImGui::SetCursorPos({at.x, below});
    ImGui::Dummy({0.0F, 0.0F});
    ImGui::SetCursorPos({at.x, below});
    ImGui::PopID();
}

void draw_defeated(const Rows& rows) {
    const Encounter& encounter = rows.context.campaign.encounter;
    bool has_heading = false;
    for (const Combatant& combatant : encounter.combatants) {
        if (combatant.standing != game::Standing::defeated) continue;
        if (!has_heading) heading("Defeated");
        has_heading = true;
        ImGui::PushID(static_cast<int>(combatant.id));
        const ImVec2 at = ImGui::GetCursorPos();
        draw_row_ground(rows, combatant, row_height());
        ImGui::SetCursorPos({at.x + rows.layout.initiative, at.y});
        ImGui::AlignTextToFramePadding();
        text(Ink::muted, combatant.name + (combatant.is_dead ? " (dead)" : ""));
        ImGui::SetCursorPos({at.x + rows.layout.width - button_width("Back"), at.y});
        if (button("Back", read_only_reason(rows.context)))
            rows.context.edits.add(
                &game::Campaign::encounter,
                combatant.name + " is back in the fight",
                [id = combatant.id, &rulebook = rows.context.rulebook](Encounter& changed) {
                    game::set_defeated(changed, rulebook, id, false);
                }
            );
        ImGui::PopID();
    }
}

} // namespace

void draw_turn_order_rows(
    const PanelContext& context, TurnOrderRowsView& view, const RowPopups& popups, float below
) {
    const Encounter& encounter = context.campaign.encounter;
    ImGui::BeginChild("rows", {0.0F, -below}, ImGuiChildFlags_None);
    const Rows rows{
        context,
        view,
        popups,
        row_layout(ImGui::GetContentRegionAvail().x),
        rows_shown(encounter),
        game::upcoming(encounter, 1)};
    const Id after_next = game::upcoming(encounter, 2);
    const Id measured_before = view.measured;
    float current_top = 0.0F;
    float reach = 0.0F; // lower edge of the current and the next two, where they follow below it
    for (const Id id : rows.shown) {
        const Combatant* combatant = game::find_combatant(encounter, id);
        if (combatant == nullptr || combatant->standing == game::Standing::defeated) continue;
        const float top = ImGui::GetCursorPosY();
        draw_row(rows, *combatant);
        if (id == encounter.current) current_top = top;
        if (id == encounter.current || id == rows.next || id == after_next)
            reach = std::max(reach, ImGui::GetCursorPosY());
    }
    draw_defeated(rows);
    const float height = ImGui::GetWindowHeight();
    const bool is_followed = view.followed == encounter.current &&
                             view.followed_round == encounter.round &&
                             view.followed_height == height;
    if (!is_followed) {
        view.followed = encounter.current;
        view.followed_round = encounter.round;
        view.followed_height = height;
        const float scroll = ImGui::GetScrollY();
        if (reach > scroll + height) ImGui::SetScrollY(std::min(current_top, reach - height));
        if (current_top < scroll) ImGui::SetScrollY(current_top);
    }
    if (view.measured != measured_before) view.followed = base::no_id; // once more at full height
    ImGui::EndChild();
}

} // namespace widgets
