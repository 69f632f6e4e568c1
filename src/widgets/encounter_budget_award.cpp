// XP for the party after the fight of the Encounter Budget.
#include "game/experience.h"
#include "widgets/encounter_budget_parts.h"
#include "widgets/read_only.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <stdexcept>

namespace widgets {

namespace {

constexpr int award_max = 1'000'000;

// The fight as those met it who play tonight, whoever is counted in the plan.
int fight_award(const BudgetOf& of, const std::vector<base::Id>& present) {
    const auto plan =
        game::plan_encounter(of.context.campaign, of.context.rulebook, of.prepared, present);
    return plan.ok() ? plan.value().rating.xp_award_each : 0;
}

void draw_award_choice(const BudgetOf& of, int of_fight) {
    const std::string fight = "this fight: " + std::to_string(of_fight);
    const float width = std::min(px(240.0F), ImGui::GetContentRegionAvail().x);
    if (!begin_choice("##award for", of.view.award ? "something else" : fight, width)) return;
    if (choice_row(fight, !of.view.award.has_value())) of.view.award.reset();
    for (const rules::XpAward& award : of.context.rulebook.advancement.awards) {
        const std::string words = award.name + ": " + std::to_string(award.xp);
        if (choice_row(words, of.view.award == award.xp)) of.view.award = award.xp;
    }
    ImGui::EndCombo();
}

void ask_award(const BudgetOf& of, const std::vector<base::Id>& present, int xp) {
    of.context.edits.add(
        {game::Section::party, game::Section::encounter},
        "Award " + std::to_string(xp) + " XP",
        [present, xp, rulebook = &of.context.rulebook](game::Campaign& campaign) {
            const auto said = game::award_xp(campaign, *rulebook, present, xp);
            if (!said.ok()) throw std::runtime_error(said.error().message);
            return said.value();
        }
    );
}

std::string why_no_award(const BudgetOf& of, const std::vector<base::Id>& present, int xp) {
    std::string read_only = read_only_reason(of.context);
    if (!read_only.empty()) return read_only;
    if (present.empty()) return "Nobody of the party plays tonight.";
    if (xp == 0) return "There is nothing to award.";
    const auto gains = game::xp_gains(of.context.campaign, of.context.rulebook, present, xp);
    return gains.ok() ? std::string() : gains.error().message;
}

} // namespace

void draw_budget_award(const BudgetOf& of) {
    heading("After the fight");
    const std::vector<base::Id> present = game::present_characters(of.context.campaign.party);
    const int of_fight = fight_award(of, present);
    const int xp = of.view.award.value_or(of_fight);
    Flow flow;
    flow.next(std::min(px(240.0F), ImGui::GetContentRegionAvail().x));
    ImGui::BeginGroup();
    draw_award_choice(of, of_fight);
    ImGui::EndGroup();
    const float width = width_of_letters(8);
    flow.field("XP each", width);
    const auto typed = number_field("##award", xp, 0, award_max, width, "An award");
    Flow::end_field();
    if (typed.has_value()) of.view.award = *typed;
    const char* award = "Award to the party";
    flow.next(button_width(award));
    if (button(award, why_no_award(of, present, xp))) {
        ask_award(of, present, xp);
        of.view.award.reset();
    }
    for (const base::Id id : present) {
        const game::Character* character = game::find_character(of.context.campaign.party, id);
        draw_line_with_end(
            character->name + ", level " + std::to_string(character->statistics.level),
            game::experience_text(
                of.context.rulebook,
                *character,
                game::pace_of(of.context.campaign.about, of.context.rulebook)
            ),
            ImGui::GetContentRegionAvail().x
        );
    }
}

} // namespace widgets
