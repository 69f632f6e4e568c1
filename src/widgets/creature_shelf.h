// Creature Shelf: Ready creatures: enter one, keep it, drop it into the fight.
#pragma once

#include "widgets/panel.h"
#include "widgets/statistics_editor.h"

#include <string>

namespace widgets {

enum class ShelfSort { name, level, armor_class, hit_points };

// What "Drop in" asks for.
struct DropInView {
    bool is_wanted = false; // opens when drawn next
    base::Id creature = base::no_id;
    int count = 1;
    bool shares_initiative = false;
    std::string initiative; // typed total; empty: rolled
    std::string complaint;
};

struct CreatureShelfView {
    std::string search;
    ShelfSort sort = ShelfSort::name;
    base::Id edited = base::no_id;     // the creature whose form is open
    base::Id wants_name = base::no_id; // a new one: its name takes the keyboard when drawn
    StatisticsEditorView editor;       // drafts of this form
    DropInView drop_in;
};

extern const PanelInfo creature_shelf_info;

void draw_creature_shelf(const PanelContext& context, CreatureShelfView& view);

} // namespace widgets
