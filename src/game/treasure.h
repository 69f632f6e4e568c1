// What happens to the Treasure Ledger, and what it adds up to. Amounts count in the smallest coin.
// Every function that changes a campaign changes its treasury alone; it stamps the in-world day and
// the session that is open.
#pragma once

#include "base/result.h"
#include "game/campaign.h"
#include "game/money.h"
#include "rules/prices.h"
#include "rules/rulebook.h"

#include <cstdint>
#include <string>
#include <vector>

namespace game {

const char* ledger_kind_word(LedgerKind kind);

const TreasureItem* find_item(const Treasury& treasury, Id id);
TreasureItem* find_item(Treasury& treasury, Id id);

// What the purse of the party holds: all lines added up.
base::Result<std::int64_t> purse_of(const Treasury& treasury);

struct Wealth {
    std::int64_t purse = 0;
    std::int64_t handed_out = 0; // by splits
    std::int64_t items = 0;      // worth of what is held
    std::int64_t total = 0;

    bool operator==(const Wealth&) const = default;
};

base::Result<Wealth> wealth_of(const Treasury& treasury);

// Why a line cannot be added, in one short sentence; empty when it can. `amount` as typed.
std::string line_problem(
    const Treasury& treasury, LedgerKind kind, const std::string& text, std::int64_t amount
);

// Adds a line: of spent money the amount counts below 0 however it was typed. Returns its id.
// Errors: bad_text with the text of line_problem.
base::Result<Id>
add_ledger_line(Campaign& campaign, LedgerKind kind, const std::string& text, std::int64_t amount);
void remove_ledger_line(Campaign& campaign, Id id);

// Splits so much of the purse evenly among these characters; what does not come out even stays in
// the purse. Errors: bad_text, out_of_range with one short sentence.
base::Result<MoneySplit>
split_purse(Campaign& campaign, std::int64_t amount, const std::vector<Id>& characters);

// What split_purse would do, without doing it.
base::Result<MoneySplit>
plan_split(const Treasury& treasury, std::int64_t amount, const std::vector<Id>& characters);

// Adds items; one that is held already with everything alike grows in number instead. Returns its
// id. Errors: bad_text without a name, out_of_range.
base::Result<Id> add_item(Campaign& campaign, TreasureItem item);
void remove_item(Campaign& campaign, Id id);

// What selling so many of it brings: the rulebook's share of its worth.
base::Result<std::int64_t>
sale_worth(const TreasureItem& item, int count, const rules::PriceBook* prices);

// Sells or gives away so many (1 to all); a line is written for a sale. Errors: not_found,
// out_of_range.
base::Result<std::int64_t>
sell_item(Campaign& campaign, const rules::PriceBook* prices, Id id, int count);
base::Result<base::Nothing> give_item_away(Campaign& campaign, Id id, int count);

// What one carrier carries.
struct Load {
    Id carrier = base::no_id; // none: the party
    std::string name;
    std::int64_t weight_thousandths_lb = 0;
    std::int64_t bulk_tenths = 0;
    int capacity_lb = 0; // srd5: at least so much; 0: the rulebook has no figure

    bool operator==(const Load&) const = default;
};

// Of everybody who carries something, in the order of the party, the party itself last.
std::vector<Load> loads_of(const Campaign& campaign, const rules::Rulebook& rulebook);

// "12.5 lb", "3 Bulk, 4 light", "1 light"; empty for nothing.
std::string weight_text(std::int64_t thousandths_lb);
std::string bulk_text(std::int64_t tenths);

// What the rulebook says of a party like this one, in sentences: wealth when made new, and treasure
// in the course of its level. Only characters that play tonight count; nobody: all.
struct WealthExpectation {
    bool is_known = false;
    std::int64_t made_new = 0;    // all characters made new at their levels, smallest coin
    std::int64_t over_level = 0;  // found in the course of the level
    std::int64_t of_it_money = 0; // currency in it
    int level = 0;                // the middle level of the party
    int characters = 0;
    std::string why_not; // when it is not known
    std::string source;

    bool operator==(const WealthExpectation&) const = default;
};

WealthExpectation expected_wealth(
    const Campaign& campaign, const rules::Rulebook& rulebook, const std::vector<Coin>& coins
);

} // namespace game
