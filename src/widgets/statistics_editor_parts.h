// The parts of the form for numbers. Nothing but its own files needs them.
#pragma once

#include "widgets/statistics_editor.h"

#include <string>
#include <vector>

namespace widgets {

// One number field of the form in the flow; asks for the change when it is committed.
void draw_form_number(
    const StatisticsForm& form,
    Flow& flow,
    const std::string& name,
    const std::string& label,
    int value,
    int minimum,
    int maximum,
    const std::function<void(game::Statistics&, int)>& set
);

void draw_statistics_modifiers(const StatisticsForm& form); // abilities, saves, skills
void draw_statistics_difficulty_classes(const StatisticsForm& form);
void draw_statistics_speeds(const StatisticsForm& form);
void draw_statistics_senses(const StatisticsForm& form);
void draw_statistics_attacks(const StatisticsForm& form);
void draw_statistics_defences(const StatisticsForm& form); // resistances and the like

// A button that opens a list; returns the one picked, or an empty text.
std::string pick_to_add(
    const char* caption, const std::vector<std::string>& keys, const std::vector<std::string>& names
);

} // namespace widgets
