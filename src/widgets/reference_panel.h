// Reference: rules to look up in short words with their figures, and the GM's own pages.
#pragma once

#include "game/reference.h"
#include "widgets/form.h"
#include "widgets/panel.h"

#include <string>
#include <vector>

namespace widgets {

struct ReferenceView {
    std::string search;
    std::string chapter; // only this one; empty: all
    std::string opened;  // key of the entry that is read
    std::string new_title;
    FormDrafts drafts;
    // Kept until what they were made of changes.
    std::vector<rules::ConditionRule> conditions;
    game::Reference reference;
    game::OwnPages own_pages;
    std::vector<game::ReferenceEntry> entries;
    std::string found_for;          // search and chapter
    std::vector<std::size_t> found; // places in entries
};

extern const PanelInfo reference_info;

void draw_reference(const PanelContext& context, ReferenceView& view);

} // namespace widgets
