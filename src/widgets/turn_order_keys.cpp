#include "widgets/turn_order_keys.h"

#include "game/turns.h"
#include "widgets/turn_order_select.h"

#include <imgui.h>

#include <optional>
#include <string>

namespace widgets {

void ask_next_turn(const PanelContext& context) {
    context.edits.add(
        &game::Campaign::encounter,
        "Next turn",
        [book = &context.rulebook](game::Encounter& encounter) {
            return game::advance_turn(encounter, *book);
        }
    );
}

// Keys belong to an open popup, a text field, or the button that the keyboard stands on.
static bool keys_are_taken() {
    const ImGuiIO& io = ImGui::GetIO();
    const ImGuiPopupFlags any = ImGuiPopupFlags_AnyPopupId | ImGuiPopupFlags_AnyPopupLevel;
    return io.WantTextInput || ImGui::IsAnyItemActive() || ImGui::IsPopupOpen("", any);
}

static void read_numbers(const PanelContext& context, TurnOrderView& view) {
    const std::vector<base::Id> who = targets(context.campaign.encounter, context.selection);
    if (who.empty() || context.is_read_only) return;
    std::string digits;
    std::optional<PadVerb> verb;
    for (const ImWchar typed : ImGui::GetIO().InputQueueCharacters) {
        if (typed >= '0' && typed <= '9') digits += static_cast<char>(typed);
        if (typed == 'h' || typed == 'H') verb = PadVerb::hurt;
        if (typed == 'g' || typed == 'G') verb = PadVerb::heal;
        if (typed == 't' || typed == 'T') verb = PadVerb::temp_hp;
        if (typed == 'c' || typed == 'C') view.actions.wants_condition = true;
    }
    if (!digits.empty() || verb.has_value())
        open_number_pad(view.pad, verb.value_or(PadVerb::hurt), who, digits);
}

static void read_arrows(const PanelContext& context) {
    const game::Encounter& encounter = context.campaign.encounter;
    const bool extends = ImGui::GetIO().KeyShift;
    const auto step = [&](int rows) {
        step_pick(context.selection, rows_shown(encounter), encounter.current, rows, extends);
    };
    if (ImGui::IsKeyPressed(ImGuiKey_DownArrow)) step(1);
    if (ImGui::IsKeyPressed(ImGuiKey_UpArrow)) step(-1);
    if (ImGui::IsKeyPressed(ImGuiKey_Escape, false)) context.selection.combatants.clear();
}

void read_turn_order_keys(const PanelContext& context, TurnOrderView& view) {
    if (!context.has_keyboard || keys_are_taken()) return;
    const ImGuiIO& io = ImGui::GetIO();
    if (io.KeyCtrl || io.KeyAlt || io.KeySuper) return;
    read_arrows(context);
    read_numbers(context, view);
    if (io.NavVisible || context.is_read_only) return;
    const bool is_next = ImGui::IsKeyPressed(ImGuiKey_Enter, false) ||
                         ImGui::IsKeyPressed(ImGuiKey_KeypadEnter, false) ||
                         ImGui::IsKeyPressed(ImGuiKey_Space, false);
    if (is_next) ask_next_turn(context);
}

} // namespace widgets
