// The parts of Party Defences. Nothing but that panel needs them.
#pragma once

#include "game/party_figures.h"
#include "game/party_odds.h"
#include "widgets/party_defences.h"

namespace widgets {

// What the frame shows, worked out once.
struct PartyPicture {
    game::PartyFigures figures;
    game::PartyOdds odds;
};

// What is asked: the number, the DC, the roll, and the question turned round.
void draw_odds_question(
    const PanelContext& context, PartyDefencesView& view, const game::PartyOdds& odds
);
void draw_odds_summary(const PanelContext& context, const game::PartyOdds& odds);
void draw_turned_round(
    const PanelContext& context, PartyDefencesView& view, const game::PartyOdds& odds
);
void ask_secret_roll(const PanelContext& context);

// A row for everybody: who takes part, the exact chances, the needed roll.
void draw_member_odds(const PanelContext& context, const PartyPicture& picture);

// What was rolled in secret: the last, and those before.
void draw_secret_rolls(const PanelContext& context, PartyDefencesView& view);

// The grid: as many columns as fit stand side by side, the others below.
void draw_party_grid(
    const PanelContext& context, PartyDefencesView& view, const game::PartyFigures& figures
);

} // namespace widgets
