// Name Picker: the next good name in large type, who got it, and lists of the GM's own.
#pragma once

#include "game/name_drawing.h"
#include "game/names_in_play.h"
#include "widgets/form.h"
#include "widgets/panel.h"

#include <cstddef>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace widgets {

// What stands below the name.
enum class NameSection { used, favourites, own_lists };

// An own list being worked on.
struct OwnListView {
    base::Id opened = base::no_id;
    std::string pasted; // typed or pasted, not taken yet
    std::string path;   // of a file to take names from
    std::string message;
    bool wants_name = false; // a new list: its name is what is typed first
    FormDrafts drafts;
};

struct NamePickerView {
    std::string list;             // key or name of the chosen list
    std::vector<std::string> row; // the name in large type, then the further candidates
    std::string who;
    std::string where;
    std::string typed;   // a name the GM made up, to be looked at
    std::string message; // what the last press did or why not
    base::Id last_used = base::no_id;
    // For this evening: letters left out as shown by their initial, names passed by, names grown.
    std::map<std::u32string, std::string> barred;
    std::set<std::string> passed;
    std::set<std::string> grown;
    bool allows_similar = false;
    // Kept up with the campaign and the wishes, not computed in every frame.
    game::NamesInPlay in_play;
    game::NamesLeft left;
    bool is_stale = true;
    // Below the name.
    NameSection section = NameSection::used;
    std::string search;
    std::string searched;
    std::vector<std::size_t> found; // places of used names
    base::Id opened = base::no_id;  // used name whose who and where are shown
    FormDrafts drafts;
    OwnListView own;
};

extern const PanelInfo name_picker_info;

void draw_name_picker(const PanelContext& context, NamePickerView& view);

} // namespace widgets
