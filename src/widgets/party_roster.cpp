#include "widgets/party_roster.h"

namespace widgets {

const PanelInfo party_roster_info{
    "party_roster",
    "Party",
    "The player characters: defences, skills, speeds, reminders, notes.",
    "F5",
    420.0F,
    320.0F};

void draw_party_roster(const PanelContext& /*context*/, PartyRosterView& /*view*/) {}

} // namespace widgets
