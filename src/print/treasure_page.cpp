// What the party owns: the purse, what is held and who carries it, and the ledger.
#include "game/date_text.h"
#include "game/treasure.h"
#include "print/pages.h"

namespace print {

base::Result<Blocks> treasure_page(const PrintSource& source, const std::string& /*detail*/) {
    const game::Campaign& campaign = source.campaign;
    const std::vector<game::Coin> coins = game::coins_of(campaign.treasury, &source.prices);
    const auto wealth = game::wealth_of(campaign.treasury);
    if (!wealth.ok()) return wealth.error();
    Blocks blocks{Title{"Treasure", "Purse: " + game::money_text(wealth.value().purse, coins)}};
    Table held{{{"Item"}, {"Worth", true}, {"Carried by"}}, {}, 0, false, false};
    for (const game::TreasureItem& item : campaign.treasury.items) {
        if (item.fate != game::ItemFate::held) continue;
        const game::Character* carrier = game::find_character(campaign.party, item.carrier);
        held.rows.push_back(
            {{(item.count > 1 ? std::to_string(item.count) + " " : "") + item.name,
              item.is_identified ? "" : "not identified",
              true},
             {item.value > 0 ? game::money_text(item.value, coins) : ""},
             {carrier == nullptr ? "the party" : carrier->name}}
        );
    }
    if (!held.rows.empty()) blocks.emplace_back(std::move(held));
    Table ledger{{{"When"}, {""}, {"What"}, {"Purse", true}}, {}, 0, false, false};
    for (const game::LedgerLine& line : campaign.treasury.lines)
        ledger.rows.push_back(
            {{game::short_date_text(campaign.calendar, line.day)},
             {game::ledger_kind_word(line.kind)},
             {line.text},
             {game::money_text(line.amount, coins), {}, true}}
        );
    if (!ledger.rows.empty()) {
        blocks.emplace_back(Heading{"Ledger"});
        blocks.emplace_back(std::move(ledger));
    }
    blocks.emplace_back(RuledLines{0, true});
    return blocks;
}

} // namespace print
