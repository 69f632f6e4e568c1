// The Treasure Ledger: lines, items, sales, splits and what the rulebook expects.
#include "game/price_search.h"
#include "game/treasure.h"
#include "rules/books.h"
#include "rules/wealth.h"
#include "store/prices.h"

#include <doctest/doctest.h>

namespace {

using game::LedgerKind;

const std::string assets = std::string(TABLEWICK_SOURCE_DIR) + "/assets";

rules::PriceBook prices(rules::Family family) {
    auto read = store::load_prices(assets, family, rules::SrdEdition::srd_5_1);
    REQUIRE(read.ok());
    return read.value();
}

game::Campaign five_at_level(int level) {
    game::Campaign campaign;
    for (game::Id id = 1; id <= 5; ++id) {
        game::Character character;
        character.id = id;
        character.name = std::string(1, static_cast<char>('A' + id - 1));
        character.statistics.level = level;
        character.statistics.abilities = {{"str", static_cast<int>(id) - 2}};
        campaign.party.characters.push_back(character);
    }
    campaign.clock.day = 12;
    campaign.sessions.current = 3;
    return campaign;
}

std::int64_t purse(const game::Campaign& campaign) {
    return game::purse_of(campaign.treasury).value();
}

game::TreasureItem thing(const char* name, std::int64_t value, int count = 1) {
    game::TreasureItem item;
    item.name = name;
    item.value = value;
    item.count = count;
    return item;
}

} // namespace

TEST_CASE("treasure: lines carry the day and the session, and spent money goes down") {
    game::Campaign campaign = five_at_level(3);
    REQUIRE(game::add_ledger_line(campaign, LedgerKind::found, "the sluice chest", 12'040).ok());
    REQUIRE(game::add_ledger_line(campaign, LedgerKind::spent, "ferry", 40).ok());
    CHECK(purse(campaign) == 12'000);
    CHECK(campaign.treasury.lines[0].day == 12);
    CHECK(campaign.treasury.lines[0].session == 3);
    CHECK(campaign.treasury.lines[1].amount == -40);
    CHECK_FALSE(game::add_ledger_line(campaign, LedgerKind::found, "x", 0).ok());
    CHECK_FALSE(game::add_ledger_line(campaign, LedgerKind::found, "x", -5).ok());
    CHECK_FALSE(game::add_ledger_line(campaign, LedgerKind::found, "x", game::money_max).ok());
    game::remove_ledger_line(campaign, campaign.treasury.lines[1].id);
    CHECK(purse(campaign) == 12'040);
}

TEST_CASE("treasure: a split hands out even shares, and the party keeps the remainder") {
    game::Campaign campaign = five_at_level(3);
    REQUIRE(game::add_ledger_line(campaign, LedgerKind::found, "chest", 120'403).ok());
    const auto split = game::split_purse(campaign, 120'403, {1, 2, 3, 4, 5});
    REQUIRE(split.ok());
    CHECK(split.value().each == 24'080);
    CHECK(split.value().remainder == 3);
    CHECK(purse(campaign) == 3);
    CHECK(campaign.treasury.lines.back().text == "A, B, C, D, E");
    const game::Wealth wealth = game::wealth_of(campaign.treasury).value();
    CHECK(wealth.handed_out == 120'400);
    CHECK(wealth.total == 120'403); // a split makes nobody richer
    CHECK(
        game::split_purse(campaign, 4, {1}).error().message == "The purse does not hold that much."
    );
    CHECK(game::split_purse(campaign, 3, {}).error().message == "Choose who gets a share.");
    CHECK(
        game::split_purse(campaign, 3, {1, 2, 3, 4}).error().message ==
        "That is too little to split."
    );
}

TEST_CASE("treasure: gear sells for half, trade goods in full") {
    // GM Core (ORC) and SRD 5.1, Equipment / Selling Treasure: half the price; SRD: gems, art
    // objects and trade goods keep their value.
    for (const rules::Family family : {rules::Family::four_degree, rules::Family::srd5}) {
        const rules::PriceBook book = prices(family);
        game::Campaign campaign = five_at_level(3);
        const game::Id sword = game::add_item(campaign, thing("longsword", 1501, 3)).value();
        CHECK(game::sell_item(campaign, &book, sword, 2).value() == 1501);
        CHECK(purse(campaign) == 1501);
        CHECK(campaign.treasury.items[0].count == 1);
        CHECK(campaign.treasury.items[1].count == 2);
        CHECK(campaign.treasury.items[1].fate == game::ItemFate::sold);
        CHECK(campaign.treasury.lines.back().text == "2 longsword");
        game::TreasureItem gem = thing("river pearl", 5000);
        gem.sells_in_full = true;
        const game::Id pearl = game::add_item(campaign, gem).value();
        CHECK(game::sell_item(campaign, &book, pearl, 1).value() == 5000);
        CHECK_FALSE(game::sell_item(campaign, &book, pearl, 1).ok());
        CHECK_FALSE(game::sell_item(campaign, &book, sword, 2).ok());
        CHECK(game::give_item_away(campaign, sword, 1).ok());
        CHECK(game::wealth_of(campaign.treasury).value().items == 0);
    }
}

TEST_CASE("treasure: the same thing twice is one entry with a count") {
    game::Campaign campaign = five_at_level(3);
    const game::Id torch = game::add_item(campaign, thing("torch", 1, 4)).value();
    CHECK(game::add_item(campaign, thing("torch", 1, 2)).value() == torch);
    CHECK(campaign.treasury.items.size() == 1);
    CHECK(campaign.treasury.items[0].count == 6);
    game::TreasureItem odd = thing("torch", 1);
    odd.is_identified = false;
    CHECK(game::add_item(campaign, odd).value() != torch);
    CHECK_FALSE(game::add_item(campaign, thing("", 1)).ok());
    CHECK_FALSE(game::add_item(campaign, thing("x", 1, 0)).ok());
}

TEST_CASE("treasure: who carries what, against the capacity") {
    game::Campaign campaign = five_at_level(3);
    game::TreasureItem plate = thing("plate", 150'000);
    plate.weight_thousandths_lb = 65'000;
    plate.carrier = 2; // Strength +0
    REQUIRE(game::add_item(campaign, plate).ok());
    game::TreasureItem darts = thing("dart", 5, 3);
    darts.weight_thousandths_lb = 250;
    REQUIRE(game::add_item(campaign, darts).ok());
    const auto loads = game::loads_of(campaign, srd_book(rules::SrdEdition::srd_5_1));
    REQUIRE(loads.size() == 2);
    CHECK(loads[0].name == "B");
    // SRD 5.1, Using Ability Scores / Strength: 15 pounds for each point of Strength.
    CHECK(loads[0].capacity_lb == 150);
    CHECK(game::weight_text(loads[0].weight_thousandths_lb) == "65 lb");
    CHECK(loads[1].name == "the party");
    CHECK(game::weight_text(loads[1].weight_thousandths_lb) == "0.75 lb");
    CHECK(game::loads_of(campaign, four_degree_book())[0].capacity_lb == 0);
    CHECK(game::bulk_text(34) == "3 Bulk, 4 light");
    CHECK(game::bulk_text(1) == "1 light");
    CHECK(game::bulk_text(0).empty());
}

TEST_CASE("treasure: over level 3 five characters find 530 gp, 150 gp of it money") {
    // GM Core (ORC), table Party Treasure by Level, worked example gp-01.
    const rules::Rulebook book = four_degree_book();
    CHECK(rules::treasure_over_level(book, 3, 5).value() == rules::TreasureOverLevel{530, 150});
    CHECK(rules::treasure_over_level(book, 3, 4).value() == rules::TreasureOverLevel{500, 120});
    CHECK(rules::treasure_over_level(book, 1, 4).value().total_gp == 175);
    CHECK_FALSE(rules::treasure_over_level(book, 21, 4).ok());
    CHECK_FALSE(rules::treasure_over_level(book, 3, 0).ok());
    // GM Core (ORC), table Character Wealth: level 5 a lump sum of 270 gp, level 1 15 gp.
    CHECK(rules::new_party_wealth_gp(book, {5, 5, 1}).value() == 555);
    const auto prices_of = prices(rules::Family::four_degree);
    const auto expected =
        game::expected_wealth(five_at_level(3), book, game::coins_of({}, &prices_of));
    CHECK(expected.is_known);
    CHECK(expected.over_level == 53'000);
    CHECK(expected.made_new == 5 * 7'500); // 75 gp each at level 3
}

TEST_CASE("treasure: srd5 expects nothing by level, and says so") {
    const auto expected =
        game::expected_wealth(five_at_level(3), srd_book(rules::SrdEdition::srd_5_1), {});
    CHECK_FALSE(expected.is_known);
    CHECK(expected.why_not.find("says nothing of wealth by level") != std::string::npos);
}

TEST_CASE("prices: found as they are typed, a slip forgiven") {
    const rules::PriceBook book = prices(rules::Family::srd5);
    const auto first = [&](const char* typed) {
        const auto found = game::search_prices(book, {typed, {}, -1, {}});
        REQUIRE_FALSE(found.empty());
        return book.prices[found.front()].name;
    };
    CHECK(first("longsw") == "Longsword");
    CHECK(first("longsowrd") == "Longsword");
    CHECK(game::search_prices(book, {"longsword", {}, -1, {}}).size() == 1);
    CHECK(game::search_prices(book, {"zzzz", {}, -1, {}}).empty());
    const rules::PriceBook four = prices(rules::Family::four_degree);
    for (const std::size_t at : game::search_prices(four, {"", {}, 4, {}}))
        CHECK(four.prices[at].level == 4);
}

TEST_CASE("prices: a basket is charged in one go, things kept and services not") {
    const rules::PriceBook book = prices(rules::Family::srd5);
    game::Campaign campaign = five_at_level(3);
    const game::Basket basket{
        {"adventuring_gear/abacus", 3}, {"food_drink_lodging/ale_mug", 2}}; // 2 gp and 4 cp each
    CHECK(game::basket_cost(book, basket, 100).value() == 608);
    CHECK(game::basket_cost(book, basket, 75).value() == 456);
    CHECK_FALSE(game::charge_basket(campaign, book, basket, 100, true).ok()); // no money yet
    CHECK(campaign.treasury.items.empty());
    REQUIRE(game::add_ledger_line(campaign, LedgerKind::found, "", 1000).ok());
    CHECK(game::charge_basket(campaign, book, basket, 75, true).value() == 456);
    CHECK(purse(campaign) == 544);
    REQUIRE(campaign.treasury.items.size() == 1);
    CHECK(campaign.treasury.items[0].count == 3);
    CHECK(campaign.treasury.items[0].weight_thousandths_lb == 2000);
    CHECK(campaign.treasury.lines.back().text == "3 Abacus, 2 Ale, mug");
    CHECK_FALSE(game::charge_basket(campaign, book, {}, 100, true).ok());
    CHECK_FALSE(game::charge_basket(campaign, book, {{"no/such", 1}}, 100, true).ok());
}
