#include "widgets/encounter_budget_panel.h"

#include "widgets/encounter_budget_parts.h"
#include "widgets/encounter_preparation_form.h"
#include "widgets/entry_list.h"
#include "widgets/house_rule_mark.h"
#include "widgets/party_first.h"
#include "widgets/read_only.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>

namespace widgets {

using game::PreparedEncounter;

const PanelInfo encounter_budget_info{
    "encounter_budget",
    "Encounter Budget",
    "How hard a prepared fight is for this party, what would change it, and its XP afterwards.",
    "F11",
    360.0F,
    320.0F};

static const PreparedEncounter&
measured_encounter(const PanelContext& context, const EncounterBudgetView& view) {
    const game::Preparation& preparation = context.campaign.preparation;
    const PreparedEncounter* chosen = game::find_prepared(preparation, view.encounter);
    return chosen == nullptr ? preparation.encounters.front() : *chosen;
}

static void choose(EncounterBudgetView& view, base::Id encounter) {
    view.encounter = encounter;
    view.award.reset();
    view.drafts = {};
}

static void draw_budget_header(
    const PanelContext& context, EncounterBudgetView& view, const PreparedEncounter& prepared
) {
    Flow flow;
    const float width = std::min(px(240.0F), ImGui::GetContentRegionAvail().x);
    flow.next(width);
    if (begin_choice("##encounter", prepared.name, width)) {
        for (const PreparedEncounter& each : context.campaign.preparation.encounters) {
            const std::string row = each.name + "##" + std::to_string(each.id);
            if (choice_row(row, each.id == prepared.id)) choose(view, each.id);
        }
        ImGui::EndCombo();
    }
    flow.next(start_width(context));
    draw_start(context, prepared, "##budget");
    const char* another = "Prepare another";
    flow.next(button_width(another));
    if (button(another, read_only_reason(context))) choose(view, ask_new_prepared(context));
}

static bool is_counted(const EncounterBudgetView& view, const game::Character& character) {
    return character.is_present != (view.counted_otherwise.count(character.id) > 0);
}

static std::vector<base::Id>
counted_characters(const PanelContext& context, const EncounterBudgetView& view) {
    std::vector<base::Id> counted;
    for (const game::Character& character : context.campaign.party.characters)
        if (is_counted(view, character)) counted.push_back(character.id);
    return counted;
}

static void
draw_budget_party(const PanelContext& context, EncounterBudgetView& view, const std::string& size) {
    heading(size.empty() ? std::string("Party") : "Party: " + size);
    Flow flow;
    for (const game::Character& character : context.campaign.party.characters) {
        const std::string label = character.name + "##counted " + std::to_string(character.id);
        flow.next(button_width(label.c_str()));
        if (!toggle_button(label.c_str(), is_counted(view, character))) continue;
        if (view.counted_otherwise.erase(character.id) == 0)
            view.counted_otherwise.insert(character.id);
    }
    if (view.counted_otherwise.empty()) return;
    const char* tonight = "As tonight";
    flow.next(button_width(tonight));
    if (button(tonight)) view.counted_otherwise.clear();
    text_wrapped(Ink::muted, "Counted for this plan only: who plays stays as the party says.");
}

static void draw_budget_body(
    const PanelContext& context, EncounterBudgetView& view, const PreparedEncounter& prepared
) {
    const auto plan = game::plan_encounter(
        context.campaign, context.rulebook, prepared, counted_characters(context, view)
    );
    if (!plan.ok()) {
        text_wrapped(Ink::harm, plan.error().message);
        if (context.campaign.party.characters.empty()) {
            text_wrapped(Ink::muted, "Enter the player characters in the Party panel.");
            offer_the_party(context);
        }
        draw_budget_party(context, view, {});
        return;
    }
    const BudgetOf of{context, view, prepared, plan.value()};
    draw_budget_threat(plan.value());
    draw_house_rule_mark(
        context,
        {"/encounter_budget",
         "/creature_xp",
         "/hazard_xp",
         "/xp_awards",
         "/level_up_xp",
         "/xp_by_challenge",
         "/xp_budget_per_character",
         "/character_advancement"}
    );
    const bool is_wide = has_room_for_two();
    if (is_wide) {
        ImGui::BeginChild("fight", {ImGui::GetContentRegionAvail().x * 0.5F - px(8.0F), 0.0F});
        draw_budget_parts(of);
        ImGui::EndChild();
        ImGui::SameLine(0.0F, px(16.0F));
        ImGui::BeginChild("party", {0.0F, 0.0F});
    } else {
        draw_budget_parts(of);
    }
    draw_budget_advice(of);
    draw_budget_party(context, view, plan.value().party_text);
    draw_budget_award(of);
    if (is_wide) ImGui::EndChild();
}

void draw_encounter_budget(const PanelContext& context, EncounterBudgetView& view) {
    if (context.campaign.preparation.encounters.empty()) {
        empty_state("Prepare an encounter here, and see how hard it is for your party while you "
                    "put it together.");
        if (primary_button("Prepare an encounter", read_only_reason(context)))
            choose(view, ask_new_prepared(context));
        return;
    }
    const PreparedEncounter& prepared = measured_encounter(context, view);
    draw_budget_header(context, view, prepared);
    ImGui::PushID(static_cast<int>(prepared.id));
    if (ImGui::BeginChild("budget", {0.0F, 0.0F})) draw_budget_body(context, view, prepared);
    ImGui::EndChild();
    ImGui::PopID();
}

} // namespace widgets
