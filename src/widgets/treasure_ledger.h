// Treasure Ledger: the party's money in large figures, what came and went, what is carried, and
// even shares.
#pragma once

#include "game/money.h"
#include "game/treasury.h"
#include "widgets/form.h"
#include "widgets/panel.h"

#include <set>
#include <string>

namespace widgets {

// What stands below the money.
enum class LedgerPage { lines, items, split, coins };

struct TreasureLedgerView {
    LedgerPage page = LedgerPage::lines;
    std::string what; // of the next line
    std::string amount;
    game::LedgerKind kind = game::LedgerKind::found;
    std::string item; // the next item
    std::string item_value;
    int item_count = 1;
    base::Id opened = base::no_id; // item with its form open
    std::string share;             // how much is split; empty: all
    std::set<base::Id> left_out;   // of the split
    std::string message;           // what the last press did
    std::string refusal;           // or why not
    bool wants_focus = false;      // back into the first field after Enter
    FormDrafts drafts;
};

extern const PanelInfo treasure_ledger_info;

void draw_treasure_ledger(const PanelContext& context, TreasureLedgerView& view);

} // namespace widgets
