// The parts of the Recovery panel. Nothing but that panel needs them.
#pragma once

#include "widgets/recovery_panel.h"

#include <string>
#include <string_view>
#include <vector>

namespace widgets {

void draw_treat_wounds(const PanelContext& context, RecoveryView& view);
void draw_short_rest(const PanelContext& context, RecoveryView& view);
void draw_night(const PanelContext& context, RecoveryView& view);

// Why the button that carries it out cannot be pressed; empty when it can.
std::string why_no_recovery(const PanelContext& context, bool is_anybody_chosen);

// Is this character chosen, given whom the panel would choose?
bool is_chosen(const RecoveryView& view, base::Id character, bool is_usual);

// One member of the party: the name as a toggle and the HP bar. Toggles the choice.
void draw_member(
    const PanelContext& context,
    RecoveryView& view,
    const game::Character& character,
    bool is_usual,
    std::string_view why_not
);

// The combatant of a character, or nullptr.
const game::Combatant* combatant_of(const PanelContext& context, const game::Character& character);

// What was typed and chosen for one time only.
void forget_rolls(RecoveryView& view);

} // namespace widgets
