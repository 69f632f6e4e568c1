// The parts of the Encounter Budget. Nothing but that panel needs them.
#pragma once

#include "widgets/encounter_budget_panel.h"

namespace widgets {

// One prepared encounter and what it comes to.
struct BudgetOf {
    const PanelContext& context;
    EncounterBudgetView& view;
    const game::PreparedEncounter& prepared;
    const game::EncounterPlan& plan;
};

// The threat in large letters, its numbers, the bar and the cautions.
void draw_budget_threat(const game::EncounterPlan& plan);
// Creatures and hazards with their XP.
void draw_budget_parts(const BudgetOf& of);
// What would bring it to another threat.
void draw_budget_advice(const BudgetOf& of);
// XP for the party after the fight.
void draw_budget_award(const BudgetOf& of);

// A line with a text at its left and one at its right edge, the left one cut if need be.
void draw_line_with_end(std::string_view start, std::string_view end, float width);

} // namespace widgets
