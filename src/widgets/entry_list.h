// A list of entries with their main numbers in columns: as many columns as there is room for, the
// first ones first. Shared by the Party and the Creature Shelf.
#pragma once

#include "widgets/panel.h"

#include <cstddef>
#include <string>
#include <vector>

namespace widgets {

struct EntryColumns {
    float width = 0.0F;    // of a whole row
    float left = 0.0F;     // kept free at the left, for a control of the caller's
    float right = 0.0F;    // the same at the right
    float name = 0.0F;     // width of the name
    float cell = 0.0F;     // width of a number
    std::size_t count = 0; // how many numbers are shown
    float row = 0.0F;      // height of a row
};

EntryColumns entry_columns(float left, float right, std::size_t wanted);

// The names of the columns, in small print.
void draw_entry_titles(const EntryColumns& columns, const std::vector<std::string>& titles);

// One row; the cursor stands below it afterwards. True when it is pressed.
bool draw_entry_row(
    const EntryColumns& columns,
    const std::string& name,
    const std::string& second_line,
    const std::vector<std::string>& numbers,
    bool is_on
);

// The arrow keys open the entry above or below the open one, Escape closes it.
void read_entry_keys(
    const PanelContext& context, const std::vector<base::Id>& shown, base::Id& edited
);

// The entry that this panel is asked to open (take_wanted), if any.
void take_wanted_entry(const PanelContext& context, const PanelInfo& info, base::Id& edited);

// Lists and forms stand beside each other where a panel is this wide, otherwise one replaces the
// other.
bool has_room_for_two();

} // namespace widgets
