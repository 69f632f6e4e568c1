// The condition picker: search a condition, choose its value and how long it holds, see what it
// will do, give it to everybody meant. A popup that any panel can host. It computes nothing itself:
// what a condition will do comes from game::preview_condition.
#pragma once

#include "game/encounter.h"
#include "widgets/panel.h"

#include <map>
#include <string>
#include <vector>

namespace widgets {

// Whose turn a duration counts on. "Own" is each target's own, so that one choice fits several.
enum class TurnOf { own, current, somebody };

// What was chosen for one condition; remembered until the program ends.
struct ConditionChoice {
    int value = 1;
    game::Duration duration{};
    TurnOf turn_of = TurnOf::own;
    bool has_check = false;
    game::EndCheck check{};
    std::string damage = "1d6";
    std::string damage_type;
    std::string name; // of an effect in the GM's own words
    std::vector<game::Modifier> modifiers;
};

struct ConditionPickerView {
    bool is_wanted = false; // opens when drawn next
    std::vector<base::Id> targets;
    std::string search;
    bool wants_search_focus = false;
    bool wants_scroll = false; // to the condition picked
    std::string key;           // the condition picked; empty while is_own
    bool is_own = false;       // an effect in the GM's own words
    base::Id source = base::no_id;
    std::string note;
    std::string complaint;
    ConditionChoice choice;                              // of the condition picked
    std::map<std::string, ConditionChoice> last_choices; // by condition key
    std::vector<std::string> recent;                     // keys, last given first
};

// Opens it for these combatants; for nobody: who gets it is chosen inside.
void open_condition_picker(ConditionPickerView& view, std::vector<base::Id> targets);

// The popup, if it is open. Call every frame at the root of the panel.
void draw_condition_picker(const PanelContext& context, ConditionPickerView& view);

} // namespace widgets
