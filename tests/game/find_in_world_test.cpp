// Prices, treasure and days are found like everything else.
#include "game/find_sources.h"
#include "game/finding.h"
#include "game/money.h"
#include "store/prices.h"

#include <doctest/doctest.h>

#include <memory>

namespace {

game::FindEntry best(std::vector<game::FindEntry> entries, const std::string& typed) {
    game::FindIndex index;
    index.sections = {std::make_shared<const game::FindSection>(std::move(entries))};
    const std::vector<game::FindHit> hits = index.find(typed, 5);
    REQUIRE_FALSE(hits.empty());
    return index.entry(hits.front());
}

} // namespace

TEST_CASE("find: a price is found by the name of the thing and told at once") {
    // SRD 5.1, Adventuring Gear: rope, hempen (50 feet), 1 gp.
    const auto prices = store::load_prices(
        TABLEWICK_SOURCE_DIR "/assets", rules::Family::srd5, rules::SrdEdition::srd_5_1
    );
    REQUIRE(prices.ok());
    const auto coins = game::coins_of({}, &prices.value());
    const game::FindEntry found = best(game::find_in_prices(prices.value(), coins), "rope hempen");
    CHECK(found.target.kind == game::FindKind::price);
    CHECK(found.beside.find("1 gp") == 0);
    CHECK(rules::find_price(prices.value(), found.target.key) != nullptr);
}

TEST_CASE("find: what the party carries, and what it paid for, are found") {
    game::Treasury treasury;
    game::TreasureItem item;
    item.id = 4;
    item.name = "Ring with a heron";
    treasury.items = {item};
    game::LedgerLine line;
    line.id = 5;
    line.text = "Ferry toll at the Long Cut";
    treasury.lines = {line, {}};
    const auto entries = game::find_in_treasury(treasury);
    REQUIRE(entries.size() == 2); // a line without words is not looked for
    CHECK(best(entries, "heron").target.id == 4);
    CHECK(best(entries, "heron").target.kind == game::FindKind::treasure);
    CHECK(best(entries, "toll").target.id == 5);
    CHECK(best(entries, "toll").target.kind == game::FindKind::ledger);
}

TEST_CASE("find: a page of the Day Book and what is due lead to their days") {
    game::DayBook book;
    book.pages = {{1, 12, "The ferry burned.\nSelbra lied.", {}}};
    book.timers = {{2, "Fish spoils", 15, 0, false, {}}};
    const auto entries = game::find_in_days(book);
    REQUIRE(entries.size() == 3); // each line of a page by itself
    CHECK(best(entries, "selbra").target.key == "12");
    CHECK(best(entries, "fish").target.key == "15");
    CHECK(best(entries, "fish").target.kind == game::FindKind::day);
}
