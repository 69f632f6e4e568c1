// What every panel gets, and what every panel tells about itself. A panel is one pair of files with
// `struct XView`, `void draw_x(const PanelContext&, XView&)` and `const PanelInfo x_info`; it draws
// content only, the host opens the window. Read any one panel and you have read them all.
#pragma once

#include "base/id.h"
#include "base/result.h"
#include "game/campaign.h"
#include "game/edits.h"
#include "game/library_creature.h"
#include "game/name_lists.h"
#include "game/party_odds.h"
#include "rules/dice.h"
#include "rules/prices.h"
#include "rules/rulebook.h"

#include <functional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace game {
struct Climates;
struct Reference;
} // namespace game

namespace widgets {

class PrintDesk;

// What a panel is asked to open. `id`, `line` and `key` mean what that panel says: an entry, a line
// in it, an entry that has no number.
struct Wanted {
    std::string panel; // its key; empty: nothing is asked
    base::Id id = base::no_id;
    base::Id line = base::no_id;
    std::string key{};

    bool operator==(const Wanted&) const = default;
};

// Which combatants are picked, and what is asked of the party; all panels share it. Not part of the
// campaign.
struct Selection {
    std::vector<base::Id> combatants; // in the order they were picked; the last one is the main one
    game::OddsQuestion odds{};
    // Where another panel is asked to go; the one that has gone there clears its part.
    std::string wanted_panel{};          // key of the panel to bring to the front
    base::Id wanted_entry = base::no_id; // of the Register
    bool wants_note = false;             // the field for running notes
    Wanted wanted{};                     // see take_wanted

    bool operator==(const Selection&) const = default;
};

struct PanelContext {
    const game::Campaign& campaign; // stands still for the whole frame
    const rules::Rulebook& rulebook;
    rules::Dice& dice; // for rolls the GM asks the program to make
    Selection& selection;
    game::Edits& edits;        // changes are queued here, never made
    double now_seconds = 0.0;  // monotone, for marks that fade and for typing pauses
    bool is_read_only = false; // edits are refused; buttons that edit are disabled
    bool has_keyboard = true;  // this panel has the keyboard focus: its shortcuts act
    bool can_undo = true;
    bool can_redo = true;
    // Ready creatures of the rulebook; nothing: it has none.
    const std::vector<game::LibraryCreature>* library = nullptr;
    std::string_view real_time{};      // UTC, "2026-01-31T19:04:05Z", for what is written now
    std::string_view campaign_file{};  // where the campaign is kept, to be shown
    bool* reads_rules_again = nullptr; // set to have rulebook and house rules read anew
    // Ready lists of names; nothing: there are none.
    const std::vector<game::ReadyNameList>* name_lists = nullptr;
    // Reads a text file the GM names; the error is one clear sentence. Nothing: files are out of
    // reach here.
    const std::function<base::Result<std::string>(const std::string& path)>* read_text = nullptr;
    // Saves a text under a name the GM gives; how it went is told in a message. Nothing: as above.
    const std::function<void(const std::string& path, const std::string& text)>* save_text =
        nullptr;
    // Climates and the words weather is told in; nothing: none could be read.
    const game::Climates* climates = nullptr;
    const rules::PriceBook* prices = nullptr; // nothing, or without prices: they cannot be read
    // Rules to look up; nothing: they could not be read.
    const game::Reference* reference = nullptr;
    // Ready calendars to start from; nothing: none could be read.
    const std::vector<game::Calendar>* calendars = nullptr;
    PrintDesk* print_desk = nullptr; // nothing: there is no printing here
};

struct PanelInfo {
    const char* key;      // "turn_order": stable, in saved scenes
    const char* title;    // "Turn Order"
    const char* help;     // one line: what it is for
    const char* shortcut; // default key, "" for none
    float min_width;      // at scale 1
    float min_height;
};

// What this panel is asked to open, once; its panel is empty when nothing is asked of it.
inline Wanted take_wanted(Selection& selection, const PanelInfo& info) {
    return selection.wanted.panel == info.key ? std::exchange(selection.wanted, {}) : Wanted{};
}

} // namespace widgets
