#include "widgets/condition_timers_rows.h"

#include "game/conditions.h"
#include "game/ending_text.h"
#include "widgets/form.h"
#include "widgets/read_only.h"
#include "widgets/turn_order_select.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <string>
#include <utility>

namespace widgets {

using base::Id;
using game::DurationKind;

namespace {

struct TimerRow {
    const PanelContext& context;
    ConditionTimersView& view;
    const game::Combatant& combatant;
    const game::ActiveCondition& condition;
    const ConditionTimersView::Row& words;
    std::string why_not; // nothing can be changed
};

template <class Change>
void ask(const TimerRow& row, const std::string& verb, Change change) {
    row.context.edits.add(
        &game::Campaign::encounter,
        verb + " " + row.words.what + " of " + row.words.who,
        [change,
         rulebook = &row.context.rulebook,
         who = row.words.combatant,
         what = row.words.condition](game::Encounter& encounter) {
            change(encounter, *rulebook, who, what);
        }
    );
}

std::string why_not_extend(const TimerRow& row, int rounds) {
    if (!row.why_not.empty()) return row.why_not;
    const game::Duration& duration = row.condition.duration;
    switch (duration.kind) {
    case DurationKind::timed: return {};
    case DurationKind::rounds:
        return rounds < 0 && duration.rounds_left <= 1 ? "It ends this round already; end it."
                                                       : std::string();
    case DurationKind::until_turn:
        return rounds < 0 ? "It ends at that turn already; end it." : std::string();
    case DurationKind::until_removed:
    case DurationKind::until_rest:
    case DurationKind::until_check: break;
    }
    return "It counts no rounds.";
}

void ask_extend(const TimerRow& row, int rounds) {
    ask(row,
        rounds > 0 ? "Extend" : "Shorten",
        [rounds](game::Encounter& encounter, const rules::Rulebook& rulebook, Id who, Id what) {
            game::extend_condition(encounter, rulebook, who, what, rounds);
        });
}

void ask_pause(const TimerRow& row) {
    const bool is_paused = row.condition.is_paused;
    ask(row,
        is_paused ? "Resume" : "Pause",
        [is_paused](game::Encounter& encounter, const rules::Rulebook&, Id who, Id what) {
            game::pause_condition(encounter, who, what, !is_paused);
        });
}

void ask_end(const TimerRow& row) {
    ask(row,
        "End",
        [](game::Encounter& encounter, const rules::Rulebook& rulebook, Id who, Id what) {
            game::end_condition(encounter, rulebook, who, what);
        });
}

void draw_row_buttons(const TimerRow& row) {
    const float gap = ImGui::GetStyle().ItemInnerSpacing.x;
    if (button("-1", why_not_extend(row, -1))) ask_extend(row, -1);
    ImGui::SameLine(0.0F, gap);
    if (button("+1", why_not_extend(row, 1))) ask_extend(row, 1);
    ImGui::SameLine(0.0F, gap);
    if (button(row.condition.is_paused ? "Resume" : "Pause", row.why_not)) ask_pause(row);
    ImGui::SameLine(0.0F, gap);
    if (button("End", row.why_not)) ask_end(row);
}

float buttons_width() {
    const float gap = ImGui::GetStyle().ItemInnerSpacing.x;
    // "Resume" is wider than "Pause": the row keeps its room for it.
    return button_width("-1") + button_width("+1") + button_width("Resume") + button_width("End") +
           3.0F * gap;
}

std::string ending_words(const TimerRow& row) {
    const game::Encounter& encounter = row.context.campaign.encounter;
    std::string words = game::ending_text(encounter, row.context.rulebook, row.condition);
    const game::Combatant* source = game::find_combatant(encounter, row.condition.source);
    if (source != nullptr && source->id != row.combatant.id) words += "; from " + source->name;
    if (!row.condition.note.empty()) words += "; " + row.condition.note;
    return words;
}

// Where the parts of a row stand; a narrow panel puts the ending and the buttons on a second line.
struct RowPlaces {
    float width = 0.0F;
    bool is_narrow = false;
    float who = 0.0F;  // width of the name
    float what = 0.0F; // width left for the chip
    float line = 0.0F;
};

RowPlaces row_places() {
    RowPlaces places;
    places.width = ImGui::GetContentRegionAvail().x;
    places.line = row_height() + px(4.0F);
    places.is_narrow = places.width < buttons_width() + px(420.0F);
    const float room = places.is_narrow ? places.width : places.width - buttons_width();
    places.who = room * (places.is_narrow ? 0.45F : 0.27F);
    places.what = room * (places.is_narrow ? 0.55F : 0.33F) - px(8.0F);
    return places;
}

void draw_what(const TimerRow& row, float width) {
    // A chip that does not fit is cut like any text, but stays pressable as a whole.
    const float needed = button_width(row.words.what.c_str());
    const Ink ink = row.condition.is_paused ? Ink::muted : Ink::accent;
    if (needed <= width) {
        const rules::ConditionRule* rule =
            rules::find_condition(row.context.rulebook, row.condition.key);
        const std::string tip = rule == nullptr ? std::string("Press to change it") : rule->summary;
        if (chip((row.words.what + "###what").c_str(), ink, tip))
            open_condition_menu(row.view.menu, row.combatant.id, row.condition.id);
        return;
    }
    const ImVec2 at = ImGui::GetCursorPos();
    if (row_ground("###what", width, row_height(), false))
        open_condition_menu(row.view.menu, row.combatant.id, row.condition.id);
    ImGui::SetCursorPos({at.x + px(6.0F), at.y});
    ImGui::AlignTextToFramePadding();
    text_fitted(ink == Ink::muted ? Ink::muted : Ink::text, row.words.what, width - px(6.0F));
}

void draw_running(const TimerRow& row, const RowPlaces& places, ImVec2 at) {
    ImGui::SetCursorPos({at.x + px(10.0F), at.y});
    ImGui::AlignTextToFramePadding();
    const bool is_current = row.combatant.id == row.context.campaign.encounter.current;
    if (is_current) ImGui::PushFont(look().fonts.strong);
    text_fitted(is_current ? Ink::accent : Ink::text, row.words.who, places.who - px(14.0F));
    if (is_current) ImGui::PopFont();
    ImGui::SetCursorPos({at.x + places.who, at.y});
    draw_what(row, places.what);
    const std::string ending = ending_words(row);
    const float second = places.is_narrow ? at.y + places.line : at.y;
    const float buttons_at = at.x + places.width - buttons_width();
    const float ending_at =
        places.is_narrow ? at.x + px(10.0F) : at.x + places.who + places.what + px(8.0F);
    ImGui::SetCursorPos({ending_at, second});
    ImGui::AlignTextToFramePadding();
    push_font(TextSize::small);
    text_fitted(Ink::muted, ending, buttons_at - ending_at - px(8.0F));
    ImGui::PopFont();
    ImGui::SetCursorPos({buttons_at, second});
    draw_row_buttons(row);
}

} // namespace

void draw_timer_row(
    const PanelContext& context, ConditionTimersView& view, const ConditionTimersView::Row& row
) {
    const game::Combatant* combatant =
        game::find_combatant(context.campaign.encounter, row.combatant);
    const game::ActiveCondition* condition =
        combatant == nullptr ? nullptr : game::find_active(*combatant, row.condition);
    const RowPlaces places = row_places();
    const float height = places.is_narrow ? places.line * 2.0F : places.line;
    const ImVec2 at = ImGui::GetCursorPos();
    ImGui::PushID(static_cast<int>(row.condition));
    const bool is_on = is_picked(context.selection, row.combatant);
    if (row_ground(row.who + "###row", places.width, height, is_on) && combatant != nullptr) {
        context.selection.combatants = {row.combatant};
        view.marked = row.condition;
    }
    if (row.condition == view.marked)
        ImGui::GetWindowDrawList()->AddRect(
            ImGui::GetItemRectMin(),
            ImGui::GetItemRectMax(),
            colour_u32(Ink::text),
            0.0F,
            0,
            px(2.0F)
        );
    if (condition == nullptr) {
        ImGui::SetCursorPos({at.x + px(10.0F), at.y});
        ImGui::AlignTextToFramePadding();
        text_fitted(Ink::muted, row.who + ": " + row.what + " has ended", places.width - px(20.0F));
    } else {
        draw_running(
            {context, view, *combatant, *condition, row, read_only_reason(context)}, places, at
        );
    }
    ImGui::PopID();
    ImGui::SetCursorPos({at.x, at.y + height + px(2.0F)});
    ImGui::Dummy({0.0F, 0.0F});
    ImGui::SetCursorPos({at.x, at.y + height + px(2.0F)});
}

void read_timer_keys(const PanelContext& context, ConditionTimersView& view) {
    if (!keys_are_free(context)) return;
    const auto& rows = view.rows;
    auto found = std::find_if(rows.begin(), rows.end(), [&](const auto& row) {
        return row.condition == view.marked;
    });
    int step = 0;
    if (ImGui::IsKeyPressed(ImGuiKey_DownArrow)) step = 1;
    if (ImGui::IsKeyPressed(ImGuiKey_UpArrow)) step = -1;
    if (step != 0 && !rows.empty()) {
        const std::ptrdiff_t from =
            found == rows.end() ? (step > 0 ? -1 : std::ssize(rows)) : found - rows.begin();
        found = rows.begin() + std::clamp<std::ptrdiff_t>(from + step, 0, std::ssize(rows) - 1);
        view.marked = found->condition;
        context.selection.combatants = {found->combatant};
    }
    if (context.is_read_only) return;
    if (ImGui::IsKeyPressed(ImGuiKey_C, false))
        open_condition_picker(view.picker, context.selection.combatants);
    if (found == rows.end()) return;
    const game::Combatant* combatant =
        game::find_combatant(context.campaign.encounter, found->combatant);
    const game::ActiveCondition* condition =
        combatant == nullptr ? nullptr : game::find_active(*combatant, found->condition);
    if (condition == nullptr) return;
    const TimerRow row{context, view, *combatant, *condition, *found, {}};
    const bool is_plus = ImGui::IsKeyPressed(ImGuiKey_Equal) ||
                         ImGui::IsKeyPressed(ImGuiKey_KeypadAdd) ||
                         ImGui::IsKeyPressed(ImGuiKey_RightBracket);
    const bool is_minus =
        ImGui::IsKeyPressed(ImGuiKey_Minus) || ImGui::IsKeyPressed(ImGuiKey_KeypadSubtract);
    if (is_plus && why_not_extend(row, 1).empty()) ask_extend(row, 1);
    if (is_minus && why_not_extend(row, -1).empty()) ask_extend(row, -1);
    if (ImGui::IsKeyPressed(ImGuiKey_P, false)) ask_pause(row);
    if (ImGui::IsKeyPressed(ImGuiKey_Delete, false)) ask_end(row);
}

} // namespace widgets
