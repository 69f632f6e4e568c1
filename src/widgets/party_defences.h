// Party Defences: everybody's numbers side by side, and what they do against a DC.
#pragma once

#include "widgets/panel.h"

#include <string>

namespace widgets {

struct PartyDefencesView {
    bool with_absent = false;
    bool has_skills = true;
    bool has_others = true; // DCs, speeds, senses
    bool is_turned_round = false;
    bool has_earlier_rolls = false;
    int members_percent = 40; // turned round: what is wanted
    int so_many = 2;
    int average_percent = 40;
    base::Id why_character = base::no_id; // the cell whose reasons stand open
    std::string why_column;               // key of its column
};

extern const PanelInfo party_defences_info;

void draw_party_defences(const PanelContext& context, PartyDefencesView& view);

} // namespace widgets
