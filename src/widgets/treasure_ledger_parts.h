// The pages of the Treasure Ledger, for its own files alone.
#pragma once

#include "game/treasure.h"
#include "widgets/treasure_ledger.h"

#include <vector>

namespace widgets {

struct LedgerOf {
    const PanelContext& context;
    TreasureLedgerView& view;
    const std::vector<game::Coin>& coins;
};

void draw_ledger_items(const LedgerOf& of);
void draw_ledger_split(const LedgerOf& of);
void draw_ledger_coins(const LedgerOf& of);

// Hands out an edit of the treasury that was tried on a copy before; its refusal is shown instead.
// `change` takes a campaign and returns a Result.
template <class Change>
bool ask_treasury(const LedgerOf& of, const std::string& label, Change change) {
    of.view.message.clear();
    of.view.refusal.clear();
    game::Campaign tried;
    tried.treasury = of.context.campaign.treasury;
    tried.party = of.context.campaign.party;
    const auto result = change(tried);
    if (!result.ok()) {
        of.view.refusal = result.error().message;
        return false;
    }
    of.context.edits.add({game::Section::treasury}, label, [change](game::Campaign& campaign) {
        static_cast<void>(change(campaign));
        return std::string();
    });
    return true;
}

} // namespace widgets
