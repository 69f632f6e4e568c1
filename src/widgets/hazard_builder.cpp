#include "widgets/hazard_builder.h"

#include "game/builder_reading.h"
#include "game/hazard_reading.h"
#include "widgets/builder_footer.h"
#include "widgets/creature_builder_parts.h"
#include "widgets/entry_list.h"
#include "widgets/house_rule_mark.h"
#include "widgets/number_offers.h"
#include "widgets/ui.h"

#include <imgui.h>

namespace widgets {

using rules::HazardChoice;

const PanelInfo hazard_builder_info{
    "hazard_builder",
    "Hazard Builder",
    "A trap or another danger of a place: its level gives every number, the party shows what it "
    "does.",
    "",
    360.0F,
    300.0F};

namespace {

void draw_hazard_head(const PanelContext& context, HazardBuilderView& view) {
    HazardChoice& choice = *view.choice;
    const HazardChoice before = choice;
    const rules::CreatureTables& tables = context.rulebook.creature_building.tables;
    Flow flow;
    const float width = px(200.0F);
    flow.field("Name", width);
    const auto name =
        checked_text("##name", choice.name, view.drafts, context.now_seconds, width, check_name);
    Flow::end_field();
    if (name.has_value()) choice.name = *name;
    flow.field("Level", stepper_width());
    const auto level = stepper("level", choice.level, tables.level_min, tables.level_max, "Level");
    Flow::end_field();
    if (level.has_value()) choice.level = *level;
    flow.next(button_width("Simple"));
    if (toggle_button("Simple", !choice.is_complex)) choice.is_complex = false;
    flow.next(button_width("Complex"));
    if (toggle_button("Complex", choice.is_complex)) choice.is_complex = true;
    draw_complaints(view.drafts, "##name");
    text_wrapped(
        Ink::muted,
        choice.is_complex ? "Rolls initiative with Stealth and acts every round."
                          : "Acts once, when it is set off."
    );
    draw_house_rule_mark(context, {"/hazard_building", "/hazard_xp"});
    if (choice != before) view.done.clear();
}

// Who finds it and makes it harmless, and what it does when nobody has.
void draw_hazard_reading(const PanelContext& context, const game::BuilderReading& reading) {
    const auto chances =
        game::hazard_chances(context.campaign, context.rulebook, reading.statistics);
    if (!chances.empty()) {
        heading("Perception finds it, Thievery disables it");
        for (const game::HazardChance& each : chances)
            text_wrapped(Ink::text, game::hazard_chance_text(each));
    }
    draw_builder_reading(context, reading);
}

void draw_hazard_body(
    const PanelContext& context, HazardBuilderView& view, const game::BuilderReading& reading
) {
    const bool is_wide = has_room_for_two();
    const float width = is_wide ? ImGui::GetContentRegionAvail().x * 0.5F : 0.0F;
    if (ImGui::BeginChild("numbers", {width, 0.0F})) {
        if (draw_number_offers(view.choice->numbers, reading.numbers)) view.done.clear();
        text_wrapped(Ink::muted, reading.statistics.notes);
        if (!is_wide) draw_hazard_reading(context, reading);
    }
    ImGui::EndChild();
    if (!is_wide) return;
    ImGui::SameLine();
    if (ImGui::BeginChild("reading", {0.0F, 0.0F})) draw_hazard_reading(context, reading);
    ImGui::EndChild();
}

} // namespace

void draw_hazard_builder(const PanelContext& context, HazardBuilderView& view) {
    if (context.rulebook.creature_building.hazards.simple.empty()) {
        empty_state("This rulebook has no tables to build hazards from. Its traps stand in "
                    "Difficulty.");
        return;
    }
    if (!view.choice.has_value()) view.choice = game::first_hazard(context.campaign);
    draw_hazard_head(context, view);
    const game::BuilderReading reading =
        game::hazard_reading(context.campaign, context.rulebook, *view.choice, view.placing.count);
    if (ImGui::BeginChild("builder", {0.0F, builder_body_height()}))
        draw_hazard_body(context, view, reading);
    ImGui::EndChild();
    draw_builder_footer(context, view.choice->name, reading, view.placing, view.done);
}

} // namespace widgets
