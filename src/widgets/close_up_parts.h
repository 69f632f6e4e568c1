// The parts of the Close-up. Nothing but that panel needs them.
#pragma once

#include "game/sheet.h"
#include "widgets/close_up.h"

#include <string>
#include <vector>

namespace widgets {

// AC, saves and perception as large cells: what is asked most stands on top.
void draw_close_up_defences(
    const PanelContext& context,
    const game::Combatant& combatant,
    const std::vector<game::SheetNumber>& numbers
);
// DCs, skills and speeds in lines.
void draw_close_up_skills(
    const PanelContext& context,
    const game::Combatant& combatant,
    const std::vector<game::SheetNumber>& numbers
);
void draw_close_up_attacks(
    const PanelContext& context,
    const game::Combatant& combatant,
    const std::vector<game::SheetNumber>& numbers
);
// Why each changed number is what it is; numbers changed by the same things stand together.
void draw_close_up_reasons(const std::vector<game::SheetNumber>& numbers);

void draw_close_up_conditions(
    const PanelContext& context, CloseUpView& view, const game::Combatant& combatant
);
void draw_close_up_upkeep( // death saves and concentration (srd5)
    const PanelContext& context,
    CloseUpView& view,
    const game::Combatant& combatant
);
void draw_close_up_reminders(const PanelContext& context, const game::Combatant& combatant);
void draw_close_up_traits(const PanelContext& context, const game::Combatant& combatant);
void draw_close_up_notes(
    const PanelContext& context, CloseUpView& view, const game::Combatant& combatant
);

} // namespace widgets
