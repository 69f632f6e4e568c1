#include "widgets/condition_timers.h"

#include "game/conditions.h"
#include "widgets/combatant_choice.h"
#include "widgets/condition_timers_rows.h"
#include "widgets/form.h"
#include "widgets/read_only.h"
#include "widgets/turn_order_select.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>

namespace widgets {

using base::Id;

const PanelInfo condition_timers_info{
    "condition_timers",
    "Condition Timers",
    "Every running condition across the table, soonest to end first.",
    "F3",
    320.0F,
    200.0F};

static ConditionTimersView::Row row_of(const PanelContext& context, Id combatant, Id condition) {
    ConditionTimersView::Row row{combatant, condition, {}, {}};
    const game::Combatant* who = game::find_combatant(context.campaign.encounter, combatant);
    const game::ActiveCondition* what = who == nullptr ? nullptr : find_active(*who, condition);
    if (what == nullptr) return row;
    row.who = who->name;
    row.what = game::condition_text(context.rulebook, *what);
    return row;
}

static bool is_there(const std::vector<ConditionTimersView::Row>& rows, Id condition) {
    return std::any_of(rows.begin(), rows.end(), [condition](const auto& row) {
        return row.condition == condition;
    });
}

// Takes up what runs now. `is_held`: the pointer is over the rows, so nothing moves: what is new
// comes below, what has ended keeps its place.
static void take_up_rows(const PanelContext& context, ConditionTimersView& view, bool is_held) {
    const game::Encounter& encounter = context.campaign.encounter;
    const bool is_new_turn = view.turn_of != encounter.current || view.round != encounter.round;
    view.turn_of = encounter.current;
    view.round = encounter.round;
    if (!is_held || is_new_turn) view.rows.clear();
    const auto timers = game::running_timers(encounter, context.rulebook, view.with_open_ended);
    for (const game::RunningTimer& timer : timers) {
        if (view.only != base::no_id && timer.combatant != view.only) continue;
        const auto row = row_of(context, timer.combatant, timer.condition);
        if (!is_there(view.rows, timer.condition))
            view.rows.push_back(row);
        else
            std::replace_if(
                view.rows.begin(),
                view.rows.end(),
                [&](const auto& each) { return each.condition == timer.condition; },
                row
            );
    }
}

static void draw_timers_header(const PanelContext& context, ConditionTimersView& view) {
    if (game::find_combatant(context.campaign.encounter, view.only) == nullptr)
        view.only = base::no_id;
    Flow flow;
    const char* add = "Add a condition";
    flow.next(button_width(add));
    if (button(add, read_only_reason(context))) {
        const auto& picked = context.selection.combatants;
        open_condition_picker(
            view.picker, view.only != base::no_id ? std::vector<Id>{view.only} : picked
        );
    }
    const float width = px(150.0F);
    flow.next(width);
    const Id before = view.only;
    draw_combatant_choice(context, "##only", view.only, "Everybody", width);
    if (view.only != before) view.rows.clear();
    const char* open_ended = "Open-ended too";
    flow.next(button_width(open_ended));
    if (toggle_button(open_ended, view.with_open_ended)) {
        view.with_open_ended = !view.with_open_ended;
        view.rows.clear();
    }
}

static void draw_timers_empty(const PanelContext& context, const ConditionTimersView& view) {
    if (view.only != base::no_id)
        text_wrapped(
            Ink::muted,
            "Nothing runs on " + names_text(context.campaign.encounter, {view.only}) + "."
        );
    else
        empty_state("No condition runs. Conditions count down here, soonest to end first.");
}

void draw_condition_timers(const PanelContext& context, ConditionTimersView& view) {
    draw_timers_header(context, view);
    if (ImGui::BeginChild("timers", {0.0F, 0.0F})) {
        const bool is_held = ImGui::IsWindowHovered(
            ImGuiHoveredFlags_ChildWindows | ImGuiHoveredFlags_AllowWhenBlockedByActiveItem
        );
        take_up_rows(context, view, is_held);
        if (view.rows.empty()) draw_timers_empty(context, view);
        read_timer_keys(context, view);
        for (const ConditionTimersView::Row& row : view.rows)
            draw_timer_row(context, view, row);
    }
    ImGui::EndChild();
    draw_condition_menu(context, view.menu);
    draw_condition_picker(context, view.picker);
}

} // namespace widgets
