// The price list of the rulebook, kind by kind.
#include "base/unicode.h"
#include "game/money.h"
#include "game/price_search.h"
#include "print/pages.h"

namespace print {

base::Result<Blocks> prices_page(const PrintSource& source, const std::string& detail) {
    const auto coins = game::coins_of(source.campaign.treasury, &source.prices);
    Blocks blocks{Title{"Prices", source.prices.title}};
    bool has_any = false;
    for (const rules::PriceKind& kind : source.prices.kinds) {
        if (!detail.empty() && base::folded(kind.name) != base::folded(detail) &&
            kind.key != detail)
            continue;
        Table table{{{"For"}, {"Price", true}}, {}, 0, false, false};
        table.may_fold = true;
        for (const rules::Price& price : source.prices.prices)
            if (price.kind == kind.key)
                table.rows.push_back({{price.name}, {game::price_text(price, coins), {}, true}});
        if (table.rows.empty()) continue;
        has_any = true;
        blocks.emplace_back(Heading{base::capitalised(kind.name)});
        blocks.emplace_back(std::move(table));
    }
    if (has_any) return blocks;
    std::string known;
    for (const rules::PriceKind& kind : source.prices.kinds)
        known += (known.empty() ? "Kinds: " : ", ") + kind.name;
    return base::Error{
        base::ErrorKind::not_found, "There are no prices of " + detail + ".", {}, known};
}

} // namespace print
