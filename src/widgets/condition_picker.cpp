// The popup as a whole: who gets it, the list, the choice, the verb.
#include "widgets/condition_picker.h"

#include "widgets/combatant_choice.h"
#include "widgets/condition_picker_parts.h"
#include "widgets/form.h"
#include "widgets/house_rule_mark.h"
#include "widgets/popup.h"
#include "widgets/turn_order_select.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <utility>

namespace widgets {

using base::Id;

void open_condition_picker(ConditionPickerView& view, std::vector<Id> targets) {
    view.is_wanted = true;
    view.targets = std::move(targets);
    view.search.clear();
    view.note.clear();
    view.complaint.clear();
}

// Who gets it: a drop-down that stays open, so that several can be ticked one after the other.
static void draw_picker_targets(const PanelContext& context, ConditionPickerView& view) {
    const game::Encounter& encounter = context.campaign.encounter;
    std::erase_if(view.targets, [&](Id id) {
        return game::find_combatant(encounter, id) == nullptr;
    });
    Flow flow;
    flow.field("To", px(260.0F));
    const std::string words =
        view.targets.empty() ? std::string("choose who") : names_text(encounter, view.targets);
    if (begin_choice("##targets", words, px(260.0F))) {
        for (const game::Combatant* combatant : combatants_at_the_table(encounter)) {
            ImGui::PushID(static_cast<int>(combatant->id));
            const auto found = std::find(view.targets.begin(), view.targets.end(), combatant->id);
            const bool is_target = found != view.targets.end();
            if (choice_row((is_target ? "+ " : "  ") + combatant->name, is_target, true)) {
                if (is_target)
                    view.targets.erase(found);
                else
                    view.targets.push_back(combatant->id);
            }
            ImGui::PopID();
        }
        ImGui::EndCombo();
    }
    Flow::end_field();
}

static void draw_picker_footer(const PanelContext& context, ConditionPickerView& view) {
    const std::string why_not = why_not_give(context, view);
    if (primary_button("Give it", why_not)) give_chosen(context, view);
    ImGui::SameLine();
    if (button("Leave it")) ImGui::CloseCurrentPopup();
    ImGui::SameLine();
    ImGui::AlignTextToFramePadding();
    if (!view.complaint.empty() && !why_not.empty())
        text_fitted(Ink::harm, "! " + view.complaint, ImGui::GetContentRegionAvail().x);
    else
        text_fitted(
            Ink::muted,
            why_not.empty() ? std::string("Enter gives it.") : why_not,
            ImGui::GetContentRegionAvail().x
        );
}

static void draw_picker_body(const PanelContext& context, ConditionPickerView& view, ImVec2 size) {
    const ImGuiStyle& style = ImGui::GetStyle();
    const float narrowest_for_two = px(520.0F);
    const float footer = row_height() + style.ItemSpacing.y;
    const bool is_on_top =
        ImGui::IsWindowFocused(ImGuiFocusedFlags_ChildWindows | ImGuiFocusedFlags_NoPopupHierarchy);
    // A field that is left by Enter has had its Enter: only the next one gives.
    const bool was_typing = ImGui::IsAnyItemActive();
    draw_picker_targets(context, view);
    bool is_entered = draw_condition_search(context, view);
    if (!was_typing && is_on_top)
        is_entered = is_entered || ImGui::IsKeyPressed(ImGuiKey_Enter, false) ||
                     ImGui::IsKeyPressed(ImGuiKey_KeypadEnter, false);
    const float room = std::max(size.y - ImGui::GetCursorPosY() - footer, row_height() * 3.0F);
    const bool is_wide = size.x >= narrowest_for_two;
    const ImVec2 list = is_wide ? ImVec2(size.x * 0.42F, room) : ImVec2(0.0F, room * 0.42F);
    const float list_width = is_wide ? list.x : size.x;
    if (ImGui::BeginChild("list", {list_width, list.y}, ImGuiChildFlags_Border))
        draw_condition_list(context, view);
    ImGui::EndChild();
    if (is_wide) ImGui::SameLine();
    const ImVec2 choice{
        is_wide ? size.x - list_width - style.ItemSpacing.x : size.x,
        is_wide ? room : room - list.y - style.ItemSpacing.y};
    if (ImGui::BeginChild("choice", choice, ImGuiChildFlags_Border)) {
        draw_condition_choice(context, view);
    }
    ImGui::EndChild();
    draw_picker_footer(context, view);
    draw_house_rule_mark(context, {"/conditions"});
    if (!is_entered) return;
    view.complaint = why_not_give(context, view);
    view.wants_search_focus = true; // Enter has left it
    if (view.complaint.empty()) give_chosen(context, view);
}

void draw_condition_picker(const PanelContext& context, ConditionPickerView& view) {
    const char* popup = "give a condition";
    if (std::exchange(view.is_wanted, false)) {
        ImGui::OpenPopup(popup);
        view.wants_search_focus = true;
        const bool is_running = context.campaign.encounter.phase == game::Phase::running;
        view.source = is_running ? context.campaign.encounter.current : base::no_id;
        const auto& all = context.rulebook.conditions;
        if (!view.recent.empty())
            pick_condition(context, view, view.recent.front());
        else if (!all.empty())
            pick_condition(context, view, all.front().key);
    }
    const ImVec2 window = ImGui::GetMainViewport()->WorkSize;
    const ImVec2 padding = ImGui::GetStyle().WindowPadding;
    const ImVec2 size{
        std::min(px(780.0F), window.x - 2.0F * padding.x - px(8.0F)),
        std::min(px(600.0F), window.y - 2.0F * padding.y - px(8.0F))};
    const ImVec2 middle = ImGui::GetMainViewport()->GetCenter();
    ImGui::SetNextWindowPos(middle, ImGuiCond_Appearing, {0.5F, 0.5F});
    if (!begin_popup(popup)) return;
    draw_picker_body(context, view, size);
    ImGui::EndPopup();
}

} // namespace widgets
