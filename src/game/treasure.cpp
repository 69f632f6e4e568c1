#include "game/treasure.h"

#include "game/fights.h"
#include "game/roster.h"
#include "rules/wealth.h"

#include <algorithm>

namespace game {

namespace {

using base::Error;
using base::ErrorKind;
using base::Result;

Error refuse(std::string message, ErrorKind kind = ErrorKind::out_of_range) {
    return {kind, std::move(message)};
}

Id fresh_id(Treasury& treasury) {
    return treasury.next_id++;
}

Id write_line(Campaign& campaign, LedgerLine line) {
    line.id = fresh_id(campaign.treasury);
    line.day = now(campaign).day;
    line.session = campaign.sessions.current;
    campaign.treasury.lines.push_back(std::move(line));
    return campaign.treasury.lines.back().id;
}

Result<std::int64_t> worth_of_items(const Treasury& treasury) {
    std::int64_t sum = 0;
    for (const TreasureItem& item : treasury.items) {
        if (item.fate != ItemFate::held) continue;
        auto worth = money_times(item.value, item.count);
        if (!worth.ok()) return worth;
        auto added = money_sum(sum, worth.value());
        if (!added.ok()) return added;
        sum = added.value();
    }
    return sum;
}

std::string counted_name(const TreasureItem& item, int count) {
    return count == 1 ? item.name : std::to_string(count) + " " + item.name;
}

// The item without so many; those as an entry of their own, with this fate.
void part_with(Treasury& treasury, Id id, int count, ItemFate fate, std::int64_t day) {
    TreasureItem* item = find_item(treasury, id);
    if (count == item->count) {
        item->fate = fate;
        return;
    }
    TreasureItem gone = *item;
    item->count -= count;
    gone.id = fresh_id(treasury);
    gone.count = count;
    gone.fate = fate;
    gone.day = day;
    treasury.items.push_back(std::move(gone));
}

Result<const TreasureItem*> held_item(const Treasury& treasury, Id id, int count) {
    const TreasureItem* item = find_item(treasury, id);
    if (item == nullptr || item->fate != ItemFate::held)
        return refuse("The party does not have that.", ErrorKind::not_found);
    if (count < 1 || count > item->count)
        return refuse("There are " + std::to_string(item->count) + " of it.");
    return item;
}

int strength_of(const Character& character) {
    const auto found = character.statistics.abilities.find("str");
    return found == character.statistics.abilities.end() ? 0 : found->second;
}

std::int64_t gold_worth(const std::vector<Coin>& coins) {
    for (const Coin& coin : coins)
        if (coin.abbreviation == "gp") return coin.worth;
    constexpr std::int64_t usual = 100; // both rulebooks
    return usual;
}

} // namespace

const char* ledger_kind_word(LedgerKind kind) {
    switch (kind) {
    case LedgerKind::found: return "found";
    case LedgerKind::given: return "given";
    case LedgerKind::sold: return "sold";
    case LedgerKind::spent: return "spent";
    case LedgerKind::split: return "split";
    }
    return "";
}

const TreasureItem* find_item(const Treasury& treasury, Id id) {
    for (const TreasureItem& item : treasury.items)
        if (item.id == id) return &item;
    return nullptr;
}

TreasureItem* find_item(Treasury& treasury, Id id) {
    for (TreasureItem& item : treasury.items)
        if (item.id == id) return &item;
    return nullptr;
}

Result<std::int64_t> purse_of(const Treasury& treasury) {
    std::int64_t sum = 0;
    for (const LedgerLine& line : treasury.lines) {
        auto added = money_sum(sum, line.amount);
        if (!added.ok()) return added;
        sum = added.value();
    }
    return sum;
}

Result<Wealth> wealth_of(const Treasury& treasury) {
    Wealth wealth;
    auto purse = purse_of(treasury);
    if (!purse.ok()) return purse.error();
    wealth.purse = purse.value();
    for (const LedgerLine& line : treasury.lines) {
        if (line.kind != LedgerKind::split) continue;
        auto added = money_sum(wealth.handed_out, -line.amount);
        if (!added.ok()) return added.error();
        wealth.handed_out = added.value();
    }
    const auto items = worth_of_items(treasury);
    if (!items.ok()) return items.error();
    wealth.items = items.value();
    const auto money = money_sum(wealth.purse, wealth.handed_out);
    if (!money.ok()) return money.error();
    const auto total = money_sum(money.value(), wealth.items);
    if (!total.ok()) return total.error();
    wealth.total = total.value();
    return wealth;
}

std::string line_problem(
    const Treasury& treasury, LedgerKind kind, const std::string& text, std::int64_t amount
) {
    if (text.size() > Limits::text_bytes_max) return "That text is too long.";
    if (amount == 0) return "How much is it?";
    if (amount < 0 && (kind == LedgerKind::found || kind == LedgerKind::sold))
        return "What is found or sold adds money; write it under spent or given.";
    if (kind == LedgerKind::split) return "Splitting is done below, among characters.";
    auto purse = purse_of(treasury);
    if (!purse.ok()) return purse.error().message;
    const std::int64_t change = kind == LedgerKind::spent && amount > 0 ? -amount : amount;
    auto sum = money_sum(purse.value(), change);
    return sum.ok() ? std::string() : sum.error().message;
}

Result<Id>
add_ledger_line(Campaign& campaign, LedgerKind kind, const std::string& text, std::int64_t amount) {
    const std::string problem = line_problem(campaign.treasury, kind, text, amount);
    if (!problem.empty()) return refuse(problem, ErrorKind::bad_text);
    LedgerLine line;
    line.kind = kind;
    line.text = text;
    line.amount = kind == LedgerKind::spent && amount > 0 ? -amount : amount;
    return write_line(campaign, std::move(line));
}

void remove_ledger_line(Campaign& campaign, Id id) {
    std::erase_if(campaign.treasury.lines, [id](const LedgerLine& line) { return line.id == id; });
}

Result<MoneySplit>
plan_split(const Treasury& treasury, std::int64_t amount, const std::vector<Id>& characters) {
    auto split = split_money(amount, static_cast<std::int64_t>(characters.size()));
    if (!split.ok()) return split;
    auto purse = purse_of(treasury);
    if (!purse.ok()) return purse.error();
    if (amount > purse.value()) return refuse("The purse does not hold that much.");
    if (split.value().each == 0) return refuse("That is too little to split.");
    return split;
}

Result<MoneySplit>
split_purse(Campaign& campaign, std::int64_t amount, const std::vector<Id>& characters) {
    auto split = plan_split(campaign.treasury, amount, characters);
    if (!split.ok()) return split;
    LedgerLine line;
    line.kind = LedgerKind::split;
    for (const Id id : characters) {
        const Character* character = find_character(campaign.party, id);
        if (character == nullptr)
            return refuse("One of them is not in the party.", ErrorKind::not_found);
        line.text += (line.text.empty() ? "" : ", ") + character->name;
    }
    line.amount = -(amount - split.value().remainder);
    line.characters = characters;
    write_line(campaign, std::move(line));
    return split;
}

Result<Id> add_item(Campaign& campaign, TreasureItem item) {
    Treasury& treasury = campaign.treasury;
    if (item.name.empty()) return refuse("What is it called?", ErrorKind::bad_text);
    if (item.name.size() > Limits::name_bytes_max)
        return refuse("That name is too long.", ErrorKind::bad_text);
    if (item.count < 1 || item.count > item_count_max)
        return refuse("How many: 1 to " + thousands_text(item_count_max) + ".");
    if (item.value < 0 || item.value > money_max) return refuse("Its worth is 0 or more.");
    item.day = now(campaign).day;
    item.session = campaign.sessions.current;
    for (TreasureItem& held : treasury.items) {
        if (held.fate != ItemFate::held || held.count > item_count_max - item.count) continue;
        TreasureItem alike = item;
        alike.id = held.id;
        alike.count = held.count;
        alike.day = held.day;
        alike.session = held.session;
        if (!(alike == held)) continue;
        held.count += item.count;
        return held.id;
    }
    item.id = fresh_id(treasury);
    treasury.items.push_back(std::move(item));
    return treasury.items.back().id;
}

void remove_item(Campaign& campaign, Id id) {
    std::erase_if(campaign.treasury.items, [id](const TreasureItem& item) {
        return item.id == id;
    });
}

Result<std::int64_t>
sale_worth(const TreasureItem& item, int count, const rules::PriceBook* prices) {
    const rules::PriceBook usual;
    const rules::PriceBook& book = prices == nullptr ? usual : *prices;
    auto worth = money_times(item.value, count);
    if (!worth.ok()) return worth;
    return money_share(
        worth.value(), item.sells_in_full ? book.selling_percent_in_full : book.selling_percent
    );
}

Result<std::int64_t>
sell_item(Campaign& campaign, const rules::PriceBook* prices, Id id, int count) {
    const auto item = held_item(campaign.treasury, id, count);
    if (!item.ok()) return item.error();
    auto brings = sale_worth(*item.value(), count, prices);
    if (!brings.ok()) return brings;
    LedgerLine line;
    line.kind = LedgerKind::sold;
    line.text = counted_name(*item.value(), count);
    line.amount = brings.value();
    auto purse = purse_of(campaign.treasury);
    if (!purse.ok()) return purse;
    auto sum = money_sum(purse.value(), line.amount);
    if (!sum.ok()) return sum;
    part_with(campaign.treasury, id, count, ItemFate::sold, now(campaign).day);
    write_line(campaign, std::move(line));
    return brings;
}

Result<base::Nothing> give_item_away(Campaign& campaign, Id id, int count) {
    const auto item = held_item(campaign.treasury, id, count);
    if (!item.ok()) return item.error();
    part_with(campaign.treasury, id, count, ItemFate::given_away, now(campaign).day);
    return base::Nothing{};
}

std::vector<Load> loads_of(const Campaign& campaign, const rules::Rulebook& rulebook) {
    std::vector<Load> loads;
    for (const Character& character : campaign.party.characters)
        loads.push_back(
            {character.id,
             character.name,
             0,
             0,
             rules::least_carrying_capacity_lb(rulebook, strength_of(character))}
        );
    loads.push_back({base::no_id, "the party", 0, 0, 0});
    std::vector<bool> carries(loads.size(), false);
    for (const TreasureItem& item : campaign.treasury.items) {
        if (item.fate != ItemFate::held) continue;
        std::size_t at = 0;
        while (at + 1 < loads.size() && loads[at].carrier != item.carrier)
            at += 1;
        carries[at] = true;
        loads[at].weight_thousandths_lb += item.weight_thousandths_lb * item.count;
        loads[at].bulk_tenths += item.bulk_tenths * item.count;
    }
    std::vector<Load> carrying;
    for (std::size_t at = 0; at < loads.size(); ++at)
        if (carries[at]) carrying.push_back(std::move(loads[at]));
    return carrying;
}

std::string weight_text(std::int64_t thousandths_lb) {
    if (thousandths_lb == 0) return {};
    constexpr std::int64_t parts = 1000;
    std::string text = thousands_text(thousandths_lb / parts);
    std::string behind = std::to_string(parts + thousandths_lb % parts).substr(1);
    while (!behind.empty() && behind.back() == '0')
        behind.pop_back();
    return text + (behind.empty() ? "" : "." + behind) + " lb";
}

std::string bulk_text(std::int64_t tenths) {
    if (tenths == 0) return {};
    constexpr std::int64_t light = 10;
    std::string text;
    if (tenths >= light) text = thousands_text(tenths / light) + " Bulk";
    if (tenths % light != 0)
        text += (text.empty() ? "" : ", ") + std::to_string(tenths % light) + " light";
    return text;
}

WealthExpectation expected_wealth(
    const Campaign& campaign, const rules::Rulebook& rulebook, const std::vector<Coin>& coins
) {
    WealthExpectation expected;
    std::vector<int> levels;
    for (const Character& character : campaign.party.characters)
        if (character.is_present) levels.push_back(character.statistics.level);
    if (levels.empty())
        for (const Character& character : campaign.party.characters)
            levels.push_back(character.statistics.level);
    const auto made_new = rules::new_party_wealth_gp(rulebook, levels);
    if (!made_new.ok()) {
        expected.why_not = made_new.error().message;
        return expected;
    }
    std::sort(levels.begin(), levels.end());
    expected.level = levels[levels.size() / 2];
    expected.characters = static_cast<int>(levels.size());
    const auto treasure = rules::treasure_over_level(rulebook, expected.level, expected.characters);
    if (!treasure.ok()) {
        expected.why_not = treasure.error().message;
        return expected;
    }
    const std::int64_t gold = gold_worth(coins);
    expected.is_known = true;
    expected.made_new = made_new.value() * gold;
    expected.over_level = treasure.value().total_gp * gold;
    expected.of_it_money = treasure.value().currency_gp * gold;
    expected.source = rulebook.wealth.by_level_source;
    return expected;
}

} // namespace game
