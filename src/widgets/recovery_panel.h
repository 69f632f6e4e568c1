// Recovery: hit points that come back between fights, for whoever is chosen, with the time it
// takes.
#pragma once

#include "game/resting.h"
#include "widgets/panel.h"
#include "widgets/roll_field.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>

namespace widgets {

enum class RecoveryKind {
    brief,     // treating wounds (four-degree), a short rest (srd5)
    overnight, // a night's rest, a long rest
};

struct RecoveryView {
    RecoveryKind kind = RecoveryKind::brief;
    // Otherwise than the panel would: who plays tonight is chosen (for treatment: if hurt).
    std::set<base::Id> chosen_otherwise;

    // Treating wounds.
    base::Id healer = base::no_id; // no one yet: the best of the party
    std::optional<int> modifier;   // typed instead of the healer's
    std::string proficiency = "trained";
    std::string rank; // of the DC; empty: the best
    bool takes_full_hour = false;
    std::map<base::Id, int> natural; // typed rolls, by character
    std::map<base::Id, int> rolled;

    // Nights and rests.
    rules::NightRest night = rules::NightRest::usual;
    std::map<std::pair<base::Id, int>, int> spent; // by character and size
    std::map<std::pair<base::Id, int>, int> dice;  // typed rolls

    std::string refusal; // of the last press
    RollDrafts natural_drafts;
    RollDrafts rolled_drafts;
};

extern const PanelInfo recovery_info;

void draw_recovery(const PanelContext& context, RecoveryView& view);

} // namespace widgets
