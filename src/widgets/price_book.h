// Price Book: what things cost, haggled, and a basket that is charged to the Treasure Ledger.
#pragma once

#include "game/price_search.h"
#include "widgets/panel.h"

#include <cstddef>
#include <string>
#include <vector>

namespace widgets {

struct PriceBookView {
    game::PriceQuery query;
    game::PriceQuery searched;
    const rules::PriceBook* searched_in = nullptr; // compared only
    std::size_t searched_size = 0;
    std::vector<std::size_t> found;
    int haggled_percent = 100;
    game::Basket basket;
    bool keeps_items = true;
    std::string message; // what the last press did
    std::string refusal; // or why not
};

extern const PanelInfo price_book_info;

void draw_price_book(const PanelContext& context, PriceBookView& view);

} // namespace widgets
