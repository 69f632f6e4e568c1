// What would bring the fight of the Encounter Budget to another threat.
#include "game/creature_search.h"
#include "widgets/encounter_budget_parts.h"
#include "widgets/encounter_preparation_form.h"
#include "widgets/read_only.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>

namespace widgets {

using game::PlanSuggestion;

namespace {

const std::vector<game::LibraryCreature>&
ready_or_none(const std::vector<game::LibraryCreature>* ready) {
    static const std::vector<game::LibraryCreature> none;
    return ready == nullptr ? none : *ready;
}

// Where to look: the shelf always, ready creatures and built ones at the GM's wish.
void draw_places(const BudgetOf& of) {
    game::OfferPlaces& places = of.view.places;
    const auto& ready = ready_or_none(of.context.library);
    Flow flow;
    if (!ready.empty()) {
        flow.next(button_width("Open creatures too"));
        if (toggle_button("Open creatures too", places.has_ready))
            places.has_ready = !places.has_ready;
    }
    if (places.has_ready && !ready.empty()) {
        const float width = px(170.0F);
        const std::string every = "every type";
        flow.next(width);
        const std::string& now = places.ready_type;
        if (begin_choice("##ready type", now.empty() ? every : now, width)) {
            if (choice_row(every, now.empty())) places.ready_type.clear();
            for (const std::string& type : game::library_words(ready).types)
                if (choice_row(type, type == now)) places.ready_type = type;
            ImGui::EndCombo();
        }
    }
    if (of.context.rulebook.creature_building.archetypes.empty()) return;
    flow.next(button_width("Built ones too"));
    if (toggle_button("Built ones too", places.has_built)) places.has_built = !places.has_built;
}

void draw_aims(const BudgetOf& of) {
    heading("Bring it to");
    Flow flow;
    for (const game::ThreatAim& aim :
         game::threat_aims(of.context.rulebook, of.plan.rating.budgets)) {
        const std::string label = aim.name + "##aim";
        flow.next(button_width(label.c_str()));
        const bool is_on = of.view.aim == aim.key;
        if (toggle_button(label.c_str(), is_on)) of.view.aim = is_on ? std::string() : aim.key;
    }
}

// Looks again only when something has changed.
void look_for(const BudgetOf& of, const game::SuggestionQuestion& question) {
    if (of.view.question == question) return;
    of.view.question = question;
    of.view.suggestions = game::suggest_changes(question.offers, question.counts, question.goal);
}

void ask_suggestion(
    const BudgetOf& of, const game::SuggestionQuestion& question, const PlanSuggestion& suggestion
) {
    of.context.edits.add(
        {game::Section::shelf, game::Section::preparation},
        of.prepared.name + ": " + game::suggestion_text(question.offers, suggestion),
        [&rulebook = of.context.rulebook,
         ready = of.context.library,
         id = of.prepared.id,
         question,
         suggestion](game::Campaign& campaign) {
            return game::carry_out(
                campaign, rulebook, id, question, suggestion, ready_or_none(ready)
            );
        }
    );
}

void draw_suggestion(
    const BudgetOf& of, const game::SuggestionQuestion& question, const PlanSuggestion& suggestion
) {
    const std::string words = game::suggestion_text(question.offers, suggestion);
    const std::string xp = std::to_string(suggestion.xp) + " XP";
    const float whole = ImGui::GetContentRegionAvail().x;
    const float inset = px(8.0F);
    const float xp_width = width_of_letters(7);
    const float words_width = std::max(whole - xp_width - 2.0F * inset, px(60.0F));
    const float words_height = ImGui::CalcTextSize(words.c_str(), nullptr, false, words_width).y;
    const float height = std::max(row_height(), words_height + px(8.0F));
    const ImVec2 at = ImGui::GetCursorPos();
    ImGui::BeginDisabled(of.context.is_read_only);
    const bool is_pressed = row_ground("##" + words, whole, height, false);
    ImGui::EndDisabled();
    ImGui::GetWindowDrawList()->AddRect(
        ImGui::GetItemRectMin(),
        ImGui::GetItemRectMax(),
        colour_u32(Ink::line),
        px(5.0F),
        0,
        std::max(1.0F, px(1.0F))
    );
    ImGui::SetCursorPos({at.x + inset, at.y + (height - words_height) / 2.0F});
    ImGui::PushTextWrapPos(at.x + inset + words_width);
    text(Ink::text, words);
    ImGui::PopTextWrapPos();
    push_numbers(TextSize::body);
    ImGui::SetCursorPos({at.x, at.y + (height - ImGui::GetTextLineHeight()) / 2.0F});
    text_right_aligned(Ink::text, xp, whole - inset);
    ImGui::PopFont();
    ImGui::SetCursorPos({at.x, at.y + height + px(4.0F)});
    ImGui::Dummy({0.0F, 0.0F});
    if (is_pressed && !of.context.is_read_only) ask_suggestion(of, question, suggestion);
}

} // namespace

void draw_budget_advice(const BudgetOf& of) {
    draw_aims(of);
    if (of.view.aim.empty()) return;
    draw_places(of);
    const auto question = game::suggestion_question(
        of.context.campaign,
        of.context.rulebook,
        of.prepared,
        of.plan,
        of.view.aim,
        of.view.places,
        ready_or_none(of.context.library)
    );
    if (!question.has_value()) {
        text_wrapped(Ink::muted, "Take away what is too dangerous for the tables first.");
        return;
    }
    look_for(of, *question);
    if (of.view.suggestions.empty()) {
        const bool is_there = of.plan.rating.xp == question->goal.xp_best;
        text_wrapped(
            Ink::muted,
            is_there ? "It is just that already."
                     : "Nothing that is looked at leads there in one or two steps."
        );
        return;
    }
    text_wrapped(Ink::muted, "Press one to do it:");
    for (const PlanSuggestion& suggestion : of.view.suggestions)
        draw_suggestion(of, *question, suggestion);
}

} // namespace widgets
