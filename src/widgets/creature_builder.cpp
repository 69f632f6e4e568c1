#include "widgets/creature_builder.h"

#include "rules/challenge_text.h"
#include "widgets/builder_footer.h"
#include "widgets/creature_builder_parts.h"
#include "widgets/entry_list.h"
#include "widgets/house_rule_mark.h"
#include "widgets/stat_words.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <array>
#include <utility>

namespace widgets {

using rules::BuildChoice;
using rules::BuildStep;

const PanelInfo creature_builder_info{
    "creature_builder",
    "Creature Builder",
    "An opponent made up on the spot: level and kind give every number, the party shows what it "
    "does.",
    "F12",
    360.0F,
    300.0F};

void BuiltDetails::change(const std::string& typed_in, Change change) {
    if (!typed_in.empty() && !changes_.empty() && changes_.back().first == typed_in)
        changes_.back().second = std::move(change);
    else
        changes_.emplace_back(typed_in, std::move(change));
}

void BuiltDetails::apply(game::Statistics& statistics) const {
    for (const auto& [typed_in, change] : changes_)
        change(statistics);
}

static void draw_builder_level(const PanelContext& context, BuildChoice& choice, Flow& flow) {
    const rules::CreatureBuilding& building = context.rulebook.creature_building;
    if (context.rulebook.family == rules::Family::srd5) {
        const float width = width_of_letters(8);
        flow.field("CR", width);
        if (begin_choice("##challenge", rules::challenge_text(choice.challenge), width)) {
            for (const rules::ChallengeStep& step : building.statistics.steps)
                if (choice_row(
                        rules::challenge_text(step.challenge), step.challenge == choice.challenge
                    ))
                    choice.challenge = step.challenge;
            ImGui::EndCombo();
        }
        Flow::end_field();
        return;
    }
    flow.field("Level", stepper_width());
    const rules::CreatureTables& tables = building.tables;
    const auto typed = stepper("level", choice.level, tables.level_min, tables.level_max, "Level");
    if (typed.has_value()) choice.level = *typed;
    Flow::end_field();
}

static void draw_builder_kind(const PanelContext& context, BuildChoice& choice, Flow& flow) {
    const rules::CreatureBuilding& building = context.rulebook.creature_building;
    const rules::Archetype* now = rules::find_archetype(building, choice.archetype);
    const float width = px(150.0F);
    flow.field("Kind", width);
    if (begin_choice("##kind", now == nullptr ? choice.archetype : now->name, width)) {
        for (const rules::Archetype& archetype : building.archetypes) {
            if (choice_row(archetype.name, archetype.key == choice.archetype))
                game::choose_archetype(choice, context.rulebook, archetype.key);
            if (ImGui::IsItemHovered()) ImGui::SetTooltip("%s", archetype.summary.c_str());
        }
        ImGui::EndCombo();
    }
    Flow::end_field();
}

static void draw_builder_step(const PanelContext& context, BuildChoice& choice, Flow& flow) {
    const std::array<std::pair<BuildStep, const char*>, 3> steps{
        std::pair{BuildStep::weak, "Weak"},
        std::pair{BuildStep::none, "As is"},
        std::pair{BuildStep::elite, "Elite"}};
    for (const auto& [step, words] : steps) {
        const bool is_there =
            step == BuildStep::none || rules::has_step(context.rulebook, choice, step);
        flow.next(button_width(words));
        if (toggle_button(
                words, choice.step == step, is_there ? "" : "The rules have no such form here."
            ))
            choice.step = step;
    }
}

static void draw_builder_head(const PanelContext& context, CreatureBuilderView& view) {
    BuildChoice& choice = *view.choice;
    const BuildChoice before = choice;
    Flow flow;
    const float width = px(200.0F);
    flow.field("Name", width);
    const auto typed =
        checked_text("##name", choice.name, view.drafts, context.now_seconds, width, check_name);
    Flow::end_field();
    if (typed.has_value()) choice.name = *typed;
    draw_builder_level(context, choice, flow);
    draw_builder_kind(context, choice, flow);
    draw_builder_step(context, choice, flow);
    draw_complaints(view.drafts, "##name");
    const rules::Archetype* now =
        rules::find_archetype(context.rulebook.creature_building, choice.archetype);
    if (now != nullptr) text_fitted(Ink::muted, now->summary, ImGui::GetContentRegionAvail().x);
    draw_house_rule_mark(
        context,
        {"/creature_building",
         "/elite_weak",
         "/archetypes",
         "/challenge_statistics",
         "/proficiency_by_challenge"}
    );
    if (choice.archetype != before.archetype) {
        view.details = {};
        view.details_editor = {};
    }
    if (choice != before) view.done.clear();
}

static void draw_builder_body(
    const PanelContext& context, CreatureBuilderView& view, const game::BuilderReading& reading
) {
    const bool is_wide = has_room_for_two();
    const float width = is_wide ? ImGui::GetContentRegionAvail().x * 0.5F : 0.0F;
    if (ImGui::BeginChild("numbers", {width, 0.0F})) {
        draw_builder_numbers(context, view, reading);
        if (!is_wide) draw_builder_reading(context, reading);
    }
    ImGui::EndChild();
    if (!is_wide) return;
    ImGui::SameLine();
    if (ImGui::BeginChild("reading", {0.0F, 0.0F})) draw_builder_reading(context, reading);
    ImGui::EndChild();
}

void draw_creature_builder(const PanelContext& context, CreatureBuilderView& view) {
    if (context.rulebook.creature_building.archetypes.empty()) {
        empty_state("This rulebook has no tables to build creatures from.");
        return;
    }
    if (!view.choice.has_value())
        view.choice = game::first_choice(context.campaign, context.rulebook);
    draw_builder_head(context, view);
    const game::BuilderReading reading = game::builder_reading(
        context.campaign,
        context.rulebook,
        *view.choice,
        view.placing.count,
        [&view](game::Statistics& statistics) { view.details.apply(statistics); }
    );
    if (ImGui::BeginChild("builder", {0.0F, builder_body_height()}))
        draw_builder_body(context, view, reading);
    ImGui::EndChild();
    draw_builder_footer(context, view.choice->name, reading, view.placing, view.done);
}

} // namespace widgets
