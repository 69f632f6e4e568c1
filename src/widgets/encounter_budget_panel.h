// Encounter Budget: how hard a prepared fight is for the party that will meet it, and what to
// change.
#pragma once

#include "game/encounter_offers.h"
#include "widgets/form.h"
#include "widgets/panel.h"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace widgets {

struct EncounterBudgetView {
    base::Id encounter = base::no_id; // the one measured; when it is gone, the first
    // Counted here otherwise than the party says, for planning alone: away tonight but counted, or
    // the other way round.
    std::set<base::Id> counted_otherwise;
    std::string aim;          // key of the threat that is looked for; empty: none
    std::optional<int> award; // typed or picked instead of what the fight awards
    FormDrafts drafts;
    game::OfferPlaces places; // where to look for it beside the shelf
    // What was last looked for, and what was found.
    std::optional<game::SuggestionQuestion> question;
    std::vector<game::PlanSuggestion> suggestions;
};

extern const PanelInfo encounter_budget_info;

void draw_encounter_budget(const PanelContext& context, EncounterBudgetView& view);

} // namespace widgets
