// What is asked of the party in Party Defences, and what comes of it for the party as a whole.
#include "game/odds_text.h"
#include "game/roster.h"
#include "game/secret_roll.h"
#include "game/sheet.h"
#include "widgets/form.h"
#include "widgets/party_defences_parts.h"
#include "widgets/party_question.h"
#include "widgets/read_only.h"
#include "widgets/stat_words.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <cmath>
#include <string>

namespace widgets {

using game::PartyOdds;
using game::TurnedRound;
using rules::RollMode;

namespace {

void draw_dc_slider(const PanelContext& context, const PartyOdds& odds, Flow& flow) {
    const float width = std::min(px(170.0F), ImGui::GetContentRegionAvail().x);
    flow.next(width);
    const game::DcSpan span = game::useful_dcs(odds, odds.dc);
    int dc = odds.dc;
    ImGui::SetNextItemWidth(width);
    const ImGuiSliderFlags flags = ImGuiSliderFlags_AlwaysClamp | ImGuiSliderFlags_NoInput;
    if (ImGui::SliderInt("##slide the DC", &dc, span.from, span.to, "", flags))
        context.selection.odds.dc = dc;
    ImGui::SetItemTooltip("Drag the DC, from %d to %d", span.from, span.to);
}

void draw_mode(const PanelContext& context, Flow& flow) {
    RollMode& mode = context.selection.odds.mode;
    for (const RollMode each : {RollMode::advantage, RollMode::disadvantage}) {
        const std::string label = opening_word(game::mode_words(context.rulebook.family, each));
        flow.next(button_width(label.c_str()));
        if (toggle_button(label.c_str(), mode == each))
            mode = mode == each ? RollMode::normal : each;
    }
}

std::string why_no_roll(const PanelContext& context, const PartyOdds& odds) {
    std::string why = read_only_reason(context);
    if (why.empty() && odds.members.empty()) why = "Nobody takes part.";
    return why;
}

// One question turned round on a line: words, what is wanted, words, and the DC that does it.
struct Turned {
    TurnedRound question;
    std::string before;
    std::string after;
    const char* key;
    int most;
    const char* what;
};

void draw_turned(
    const PanelContext& context, const PartyOdds& odds, const Turned& turned, int& amount
) {
    Flow flow;
    const auto words = [&flow](const std::string& text_words) {
        flow.next(ImGui::CalcTextSize(text_words.c_str()).x);
        ImGui::AlignTextToFramePadding();
        text(Ink::text, text_words);
    };
    words(turned.before);
    flow.next(stepper_width());
    ImGui::BeginGroup();
    if (const auto changed = stepper(turned.key, amount, 0, turned.most, turned.what))
        amount = *changed;
    ImGui::EndGroup();
    words(turned.after);
    const rules::ChosenDc chosen = game::dc_for(odds, turned.question, amount);
    const std::string label =
        "Set DC " + std::to_string(chosen.dc) + "###set " + std::string(turned.key);
    flow.next(button_width(label.c_str()));
    if (button(label.c_str(), odds.members.empty() ? "Nobody takes part." : ""))
        context.selection.odds.dc = chosen.dc;
    const std::string outcome = game::count_text(chosen.expected_failing) + " fail";
    flow.next(ImGui::CalcTextSize(outcome.c_str()).x);
    ImGui::AlignTextToFramePadding();
    text(Ink::muted, outcome);
}

} // namespace

void ask_secret_roll(const PanelContext& context) {
    context.edits.add(
        {game::Section::table_rolls},
        "Roll in secret",
        [question = context.selection.odds, book = &context.rulebook, dice = &context.dice](
            game::Campaign& campaign
        ) { return game::roll_in_secret(campaign, *book, question, *dice); }
    );
}

void draw_odds_question(
    const PanelContext& context, PartyDefencesView& view, const PartyOdds& odds
) {
    Flow flow;
    const float width = std::min(px(160.0F), ImGui::GetContentRegionAvail().x);
    flow.next(width);
    draw_stat_choice(context, "##asked", width);
    flow.field("DC", stepper_width());
    if (const auto dc =
            stepper("asked DC", odds.dc, game::Limits::dc_min, game::Limits::dc_max, "DC"))
        context.selection.odds.dc = *dc;
    Flow::end_field();
    const char* roll = "Roll in secret";
    flow.next(button_width(roll));
    if (primary_button(roll, why_no_roll(context, odds))) ask_secret_roll(context);
    draw_dc_slider(context, odds, flow);
    draw_mode(context, flow);
    const char* turn = "Find a DC";
    flow.next(button_width(turn));
    if (toggle_button(turn, view.is_turned_round)) view.is_turned_round = !view.is_turned_round;
}

void draw_odds_summary(const PanelContext& context, const PartyOdds& odds) {
    push_font(TextSize::current);
    const std::string dc = "DC " + std::to_string(odds.dc);
    text(Ink::accent, dc);
    ImGui::PopFont();
    ImGui::SameLine(0.0F, px(16.0F));
    ImGui::BeginGroup();
    if (odds.members.empty()) {
        text_wrapped(Ink::muted, "Nobody takes part. Tick who does.");
        ImGui::EndGroup();
        return;
    }
    const std::string name = game::rollable_name(context.rulebook, context.selection.odds.stat);
    ImGui::PushFont(look().fonts.strong);
    text_wrapped(
        Ink::text,
        name + ": about " + game::count_text(odds.group.expected_failing) + " of " +
            std::to_string(odds.members.size()) + " fail"
    );
    ImGui::PopFont();
    text_wrapped(
        Ink::text,
        "nobody succeeds " + game::percent_text(odds.group.none_succeeds) +
            ", at least half succeed " + game::percent_text(odds.group.at_least_half_succeed) +
            ", all succeed " + game::percent_text(odds.group.all_succeed)
    );
    ImGui::EndGroup();
}

void draw_turned_round(
    const PanelContext& context, PartyDefencesView& view, const PartyOdds& odds
) {
    constexpr int hundred = 100;
    const int members = static_cast<int>(odds.members.size());
    view.so_many = std::min(view.so_many, std::max(members, 1));
    draw_turned(
        context,
        odds,
        {TurnedRound::members_fail, "On average", "% fail", "by members", hundred, "Percent"},
        view.members_percent
    );
    draw_turned(
        context,
        odds,
        {TurnedRound::so_many_fail,
         "About",
         "of " + std::to_string(members) + " fail",
         "by number",
         std::max(members, 1),
         "The number"},
        view.so_many
    );
    draw_turned(
        context,
        odds,
        {TurnedRound::average_roller,
         "The average, " + game::signed_text(odds.average_modifier) + ", fails",
         "%",
         "by average",
         hundred,
         "Percent"},
        view.average_percent
    );
    ImGui::Dummy({0.0F, px(4.0F)});
}

} // namespace widgets
