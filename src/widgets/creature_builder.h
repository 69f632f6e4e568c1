// Creature Builder: an opponent of the right strength in seconds, measured against this very party.
#pragma once

#include "rules/creature_building.h"
#include "widgets/form.h"
#include "widgets/panel.h"
#include "widgets/placing_form.h"
#include "widgets/statistics_editor.h"

#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace widgets {

// What the GM changed about finished numbers, in order: done again whenever they are built anew.
class BuiltDetails {
public:
    using Change = std::function<void(game::Statistics&)>;

    // What is typed in the same field replaces what was typed there before.
    void change(const std::string& typed_in, Change change);
    void apply(game::Statistics& statistics) const;

    bool empty() const { return changes_.empty(); }

private:
    std::vector<std::pair<std::string, Change>> changes_;
};

struct CreatureBuilderView {
    // What is being made; nothing until the panel is drawn for the first time.
    std::optional<rules::BuildChoice> choice;
    game::Placing placing;
    FormDrafts drafts;
    BuiltDetails details; // gone with another kind
    StatisticsEditorView details_editor;
    bool shows_details = false;
    std::string done; // what the last press did, until something else is chosen
};

extern const PanelInfo creature_builder_info;

void draw_creature_builder(const PanelContext& context, CreatureBuilderView& view);

} // namespace widgets
