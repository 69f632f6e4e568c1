#include "widgets/encounter_preparation.h"

namespace widgets {

const PanelInfo encounter_preparation_info{
    "encounter_preparation",
    "Prepared Encounters",
    "Fights made ready beforehand, to start with one press.",
    "F7",
    360.0F,
    240.0F};

void draw_encounter_preparation(
    const PanelContext& /*context*/, EncounterPreparationView& /*view*/
) {}

} // namespace widgets
