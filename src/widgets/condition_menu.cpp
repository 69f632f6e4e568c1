#include "widgets/condition_menu.h"

#include "game/conditions.h"
#include "widgets/popup.h"
#include "widgets/read_only.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <string>
#include <utility>

namespace widgets {

using base::Id;
using game::Encounter;

void open_condition_menu(ConditionMenuView& view, Id combatant, Id condition) {
    view = {true, combatant, condition};
}

namespace {

struct Chosen {
    const PanelContext& context;
    const game::Combatant& combatant;
    const game::ActiveCondition& condition;
    std::string text;    // "frightened 2"
    std::string why_not; // not empty: nothing can be changed
};

template <class Change>
void ask(const Chosen& chosen, std::string label, Change change) {
    const rules::Rulebook* rulebook = &chosen.context.rulebook;
    chosen.context.edits.add(
        &game::Campaign::encounter,
        std::move(label),
        [change, rulebook, who = chosen.combatant.id, what = chosen.condition.id](
            Encounter& encounter
        ) { change(encounter, *rulebook, who, what); }
    );
}

void ask_value(const Chosen& chosen, int value) {
    const std::string name = chosen.combatant.name;
    ask(chosen,
        chosen.text + " of " + name + " becomes " + std::to_string(value),
        [value](Encounter& encounter, const rules::Rulebook& rulebook, Id who, Id what) {
            game::set_condition_value(encounter, rulebook, who, what, value);
        });
}

void draw_condition_menu_value(const Chosen& chosen) {
    const rules::ConditionRule* rule =
        rules::find_condition(chosen.context.rulebook, chosen.condition.key);
    if (rule == nullptr || !rule->has_value) return;
    const int value = chosen.condition.value;
    const bool is_at_most = rule->max_value > 0 && value >= rule->max_value;
    if (button("Lower", chosen.why_not)) ask_value(chosen, value - 1);
    ImGui::SameLine();
    push_numbers(TextSize::name);
    ImGui::AlignTextToFramePadding();
    text(Ink::text, std::to_string(value));
    ImGui::PopFont();
    ImGui::SameLine();
    if (button("Raise", is_at_most ? std::string("It does not go higher.") : chosen.why_not))
        ask_value(chosen, value + 1);
}

void draw_condition_menu_timer(const Chosen& chosen) {
    const game::DurationKind kind = chosen.condition.duration.kind;
    const bool runs = kind == game::DurationKind::rounds || kind == game::DurationKind::timed ||
                      kind == game::DurationKind::until_turn;
    if (!runs) return;
    const auto extend = [&](int rounds, const char* verb) {
        ask(chosen,
            std::string(verb) + " " + chosen.text + " of " + chosen.combatant.name,
            [rounds](Encounter& encounter, const rules::Rulebook& rulebook, Id who, Id what) {
                game::extend_condition(encounter, rulebook, who, what, rounds);
            });
    };
    if (button("1 round more", chosen.why_not)) extend(1, "Extend");
    ImGui::SameLine();
    if (button("1 round less", chosen.why_not)) extend(-1, "Shorten");
}

void draw_condition_menu_body(const Chosen& chosen) {
    push_font(TextSize::name);
    text(Ink::text, chosen.combatant.name + ": " + chosen.text);
    ImGui::PopFont();
    const rules::ConditionRule* rule =
        rules::find_condition(chosen.context.rulebook, chosen.condition.key);
    ImGui::PushTextWrapPos(px(360.0F));
    if (rule != nullptr && !rule->summary.empty()) text_wrapped(Ink::text, rule->summary);
    if (!chosen.condition.note.empty()) text_wrapped(Ink::muted, chosen.condition.note);
    ImGui::PopTextWrapPos();
    const std::string how_long = game::duration_text(
        chosen.context.campaign.encounter, chosen.context.rulebook, chosen.condition
    );
    text(Ink::muted, "Ends: " + how_long + (chosen.condition.is_paused ? " (paused)" : ""));
    draw_condition_menu_value(chosen);
    draw_condition_menu_timer(chosen);
    const bool is_paused = chosen.condition.is_paused;
    if (button(is_paused ? "Run on" : "Pause", chosen.why_not))
        ask(chosen,
            (is_paused ? "Run on: " : "Pause ") + chosen.text + " of " + chosen.combatant.name,
            [is_paused](Encounter& encounter, const rules::Rulebook&, Id who, Id what) {
                game::pause_condition(encounter, who, what, !is_paused);
            });
    ImGui::SameLine();
    if (button("End it", chosen.why_not)) {
        ask(chosen,
            "End " + chosen.text + " of " + chosen.combatant.name,
            [](Encounter& encounter, const rules::Rulebook& rulebook, Id who, Id what) {
                game::end_condition(encounter, rulebook, who, what);
            });
        ImGui::CloseCurrentPopup();
    }
}

// All conditions of one combatant, where the row had no room for them.
void draw_condition_menu_list(
    const PanelContext& context, ConditionMenuView& view, const game::Combatant& combatant
) {
    push_font(TextSize::name);
    text(Ink::text, combatant.name);
    ImGui::PopFont();
    for (const game::ActiveCondition& condition : combatant.conditions) {
        ImGui::PushID(static_cast<int>(condition.id));
        const std::string words =
            game::condition_text(context.rulebook, condition) + ", " +
            game::duration_text(context.campaign.encounter, context.rulebook, condition);
        if (button(words.c_str())) view.condition = condition.id;
        ImGui::PopID();
    }
}

} // namespace

void draw_condition_menu(const PanelContext& context, ConditionMenuView& view) {
    const char* popup = "condition menu";
    if (std::exchange(view.is_wanted, false)) ImGui::OpenPopup(popup);
    if (!begin_popup(popup)) return;
    const game::Combatant* combatant =
        game::find_combatant(context.campaign.encounter, view.combatant);
    const game::ActiveCondition* condition =
        combatant == nullptr ? nullptr : game::find_active(*combatant, view.condition);
    if (combatant != nullptr && view.condition == base::no_id)
        draw_condition_menu_list(context, view, *combatant);
    else if (condition == nullptr)
        ImGui::CloseCurrentPopup(); // it ended meanwhile
    else
        draw_condition_menu_body(
            {context,
             *combatant,
             *condition,
             game::condition_text(context.rulebook, *condition),
             read_only_reason(context)}
        );
    ImGui::EndPopup();
}

} // namespace widgets
