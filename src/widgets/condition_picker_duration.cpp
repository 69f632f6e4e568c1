// How long it holds: until ended, an edge of a turn, rounds, time, a rest, a check.
#include "game/roster.h"
#include "widgets/combatant_choice.h"
#include "widgets/condition_picker_parts.h"
#include "widgets/form.h"
#include "widgets/stat_words.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <utility>

namespace widgets {

namespace {

using game::Duration;
using game::DurationKind;
using game::TurnEdge;

constexpr int seconds_a_minute = 60;
constexpr int seconds_an_hour = 3600;
constexpr int most_rounds = 999;
constexpr int most_of_a_unit = 999;

void choose_kind(Duration& duration, DurationKind kind) {
    duration.kind = kind;
    if (kind == DurationKind::rounds && duration.rounds_left < 1) duration.rounds_left = 1;
    if (kind == DurationKind::timed && duration.seconds_left < 1)
        duration.seconds_left = seconds_a_minute;
}

void draw_kinds(Duration& duration) {
    static constexpr std::array<std::pair<DurationKind, const char*>, 6> kinds{
        std::pair{DurationKind::until_removed, "Until ended"},
        std::pair{DurationKind::until_turn, "A turn"},
        std::pair{DurationKind::rounds, "Rounds"},
        std::pair{DurationKind::timed, "Time"},
        std::pair{DurationKind::until_rest, "A rest"},
        std::pair{DurationKind::until_check, "A check"}};
    Flow flow;
    for (const auto& [kind, caption] : kinds) {
        flow.next(button_width(caption));
        if (toggle_button(caption, duration.kind == kind)) choose_kind(duration, kind);
    }
}

void draw_edge(Flow& flow, const char* group, TurnEdge& edge) {
    ImGui::PushID(group);
    flow.next(button_width("start"));
    if (toggle_button("start", edge == TurnEdge::start)) edge = TurnEdge::start;
    flow.next(button_width("end"));
    if (toggle_button("end", edge == TurnEdge::end)) edge = TurnEdge::end;
    ImGui::PopID();
}

std::string whose_words(const PanelContext& context, const ConditionChoice& choice) {
    const game::Encounter& encounter = context.campaign.encounter;
    switch (choice.turn_of) {
    case TurnOf::own: return "its own";
    case TurnOf::current: return "whose turn it is";
    case TurnOf::somebody: {
        const game::Combatant* whose = game::find_combatant(encounter, choice.duration.whose_turn);
        return whose == nullptr ? std::string("its own") : whose->name;
    }
    }
    return {};
}

void draw_whose(const PanelContext& context, Flow& flow, ConditionChoice& choice) {
    const float width = px(190.0F);
    flow.field("of the turn of", width);
    if (begin_choice("##whose turn", whose_words(context, choice), width)) {
        if (choice_row("its own", choice.turn_of == TurnOf::own)) choice.turn_of = TurnOf::own;
        const bool is_running = context.campaign.encounter.phase == game::Phase::running;
        if (is_running && choice_row("whose turn it is", choice.turn_of == TurnOf::current))
            choice.turn_of = TurnOf::current;
        for (const game::Combatant* each : combatants_at_the_table(context.campaign.encounter)) {
            ImGui::PushID(static_cast<int>(each->id));
            const bool is_chosen =
                choice.turn_of == TurnOf::somebody && choice.duration.whose_turn == each->id;
            if (choice_row(each->name, is_chosen)) {
                choice.turn_of = TurnOf::somebody;
                choice.duration.whose_turn = each->id;
            }
            ImGui::PopID();
        }
        ImGui::EndCombo();
    }
    Flow::end_field();
}

void draw_rounds(Flow& flow, Duration& duration) {
    flow.next(stepper_width());
    ImGui::BeginGroup();
    const auto typed = stepper("rounds", duration.rounds_left, 1, most_rounds, "Rounds");
    if (typed.has_value()) duration.rounds_left = *typed;
    ImGui::EndGroup();
}

// Whole hours are shown as hours, everything else as minutes.
void draw_time(Duration& duration) {
    const bool is_hours = duration.seconds_left % seconds_an_hour == 0;
    const int unit = is_hours ? seconds_an_hour : seconds_a_minute;
    const int shown = std::max(1, duration.seconds_left / unit);
    Flow flow;
    flow.next(stepper_width());
    ImGui::BeginGroup();
    const auto typed = stepper("time", shown, 1, most_of_a_unit, "The time");
    if (typed.has_value()) duration.seconds_left = *typed * unit;
    ImGui::EndGroup();
    flow.next(button_width("minutes"));
    if (toggle_button("minutes", !is_hours)) duration.seconds_left = shown * seconds_a_minute;
    flow.next(button_width("hours"));
    if (toggle_button("hours", is_hours)) duration.seconds_left = shown * seconds_an_hour;
}

void draw_check_stat(const PanelContext& context, game::EndCheck& check) {
    const float width = px(160.0F);
    const std::string now =
        check.stat.empty() ? std::string("Flat check") : stat_words(context.rulebook, check.stat);
    if (!begin_choice("##check", now, width)) return;
    if (choice_row("Flat check", check.stat.empty())) check.stat.clear();
    const auto offer = [&](const std::vector<rules::StatName>& stats) {
        for (const rules::StatName& stat : stats) {
            if (choice_row(stat.name, stat.key == check.stat)) check.stat = stat.key;
        }
    };
    offer(context.rulebook.saves);
    offer(context.rulebook.skills);
    ImGui::EndCombo();
}

void draw_check(const PanelContext& context, game::EndCheck& check) {
    Flow flow;
    flow.next(px(160.0F));
    draw_check_stat(context, check);
    flow.field("DC", stepper_width());
    const auto typed = stepper("dc", check.dc, game::Limits::dc_min, game::Limits::dc_max, "A DC");
    if (typed.has_value()) check.dc = *typed;
    Flow::end_field();
    flow.field("at the", button_width("start") + button_width("end"));
    ImGui::PushID("check");
    if (toggle_button("start", check.at == TurnEdge::start)) check.at = TurnEdge::start;
    ImGui::SameLine();
    if (toggle_button("end", check.at == TurnEdge::end)) check.at = TurnEdge::end;
    ImGui::PopID();
    ImGui::SameLine();
    ImGui::AlignTextToFramePadding();
    text(Ink::muted, "of its turn");
    Flow::end_field();
}

} // namespace

void draw_condition_duration(const PanelContext& context, ConditionPickerView& view) {
    ConditionChoice& choice = view.choice;
    Duration& duration = choice.duration;
    draw_kinds(duration);
    Flow flow;
    switch (duration.kind) {
    case DurationKind::until_removed:
        text_wrapped(Ink::muted, "Until you end it, or the rules do.");
        break;
    case DurationKind::until_turn:
        draw_edge(flow, "turn", duration.edge);
        draw_whose(context, flow, choice);
        break;
    case DurationKind::rounds:
        draw_rounds(flow, duration);
        draw_edge(flow, "turn", duration.edge);
        draw_whose(context, flow, choice);
        break;
    case DurationKind::timed: draw_time(duration); break;
    case DurationKind::until_rest: text_wrapped(Ink::muted, "Until a night's rest."); break;
    case DurationKind::until_check: draw_check(context, choice.check); return;
    }
    const bool may_have_check = duration.kind != DurationKind::until_removed;
    if (!may_have_check) return;
    if (toggle_button("A check may end it sooner", choice.has_check))
        choice.has_check = !choice.has_check;
    if (choice.has_check) draw_check(context, choice.check);
}

} // namespace widgets
