// The form for the numbers of a character or a creature, shared by the Party and the Creature
// Shelf. It shows plain values and asks for changes one field at a time; whose numbers they are and
// how a change is carried out is the caller's.
#pragma once

#include "game/statistics.h"
#include "widgets/form.h"
#include "widgets/panel.h"

#include <functional>
#include <string>

namespace widgets {

struct StatisticsEditorView {
    FormDrafts drafts;
};

struct StatisticsForm {
    using Change = std::function<void(game::Statistics&)>;

    const PanelContext& context;
    StatisticsEditorView& view;
    const game::Statistics& statistics;
    std::string owner;        // "Ysolde Marr": "AC of Ysolde Marr: 23"
    bool is_opponent = false; // has a challenge rating in srd5
    // Asks for one change: the label as the GM reads it; `typed_in` names the field when it is text
    // being typed, so that what is typed there undoes as one.
    std::function<void(std::string label, std::string typed_in, Change change)> ask;
    bool has_attack_numbers = true; // false: they come from elsewhere
};

void draw_statistics_editor(const StatisticsForm& form);

} // namespace widgets
