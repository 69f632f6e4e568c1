// Prices looked up, haggled over, bought.
#include "driver.h"
#include "fixtures.h"
#include "game/treasure.h"
#include "widgets/price_book.h"

#include <doctest/doctest.h>

namespace {

using Driver = driver::PanelDriver<widgets::PriceBookView>;

game::Campaign rich(std::int64_t amount) {
    game::Campaign campaign = fixtures::pier_campaign();
    REQUIRE(game::add_ledger_line(campaign, game::LedgerKind::found, "", amount).ok());
    return campaign;
}

struct Book : Driver {
    explicit Book(
        const rules::PriceBook& book = fixtures::srd5_prices(),
        game::Campaign campaign = rich(100'000),
        const driver::Settings& settings = {}
    )
        : Driver(std::move(campaign), fixtures::srd5(), widgets::draw_price_book, settings) {
        prices = book;
        frames(3);
    }

    std::int64_t purse() const { return game::purse_of(campaign().treasury).value(); }
};

} // namespace

TEST_CASE("price book: typed letters find the price") {
    Book ui;
    ui.click("##search");
    ui.type("longsw");
    // SRD 5.2.1, Weapons: longsword 15 GP, 3 lb.
    CHECK(ui.shows("15 gp"));
    CHECK(ui.shows("weapons, 3 lb"));
    CHECK(ui.view.found.size() == 1);
    ui.fill("##search", "zzzz");
    CHECK(ui.shows("Nothing is called so."));
}

TEST_CASE("price book: magic items by rarity, scrolls by spell level, by kind from a list") {
    Book ui;
    ui.click("##kind");
    ui.click("magic items", driver::inside("##Combo"));
    ui.click("##rarity");
    ui.click("rare", driver::inside("##Combo"));
    // SRD 5.2.1, Magic Item Values by Rarity: rare 4,000 GP, half for what is used up.
    CHECK(ui.view.found.size() == 2);
    CHECK(ui.shows("4,000 gp"));
    CHECK(ui.shows("2,000 gp"));
    Book four(fixtures::four_degree_prices());
    four.click("##kind");
    four.click("lasting magic items", driver::inside("##Combo"));
    four.click("##level");
    four.click("level 4", driver::inside("##Combo"));
    // GM Core (ORC), Permanent Magic Item Price, level 4: 75 to 100 gp.
    CHECK(four.shows("75 gp to 100 gp"));
}

TEST_CASE("price book: a basket adds up, is haggled down and charged to the ledger") {
    Book ui;
    ui.fill("##search", "longsword");
    ui.click("Longsword");
    ui.click("Longsword");
    CHECK(ui.shows("30 gp"));
    CHECK(ui.shows("of 1,000 gp in the party's purse"));
    ui.fill("##haggled", "90");
    CHECK(ui.shows("27 gp"));
    CHECK(ui.shows("13 gp 5 sp")); // the list shows haggled prices
    ui.click("Charge to the ledger");
    CHECK(ui.purse() == 97'300);
    REQUIRE(ui.campaign().treasury.items.size() == 1);
    CHECK(ui.campaign().treasury.items[0].count == 2);
    CHECK(ui.campaign().treasury.items[0].value == 1'500); // its worth is the full price
    CHECK(ui.shows("Bought: 2 Longsword."));
    CHECK(ui.view.basket.empty());
    CHECK(ui.last_edit() == "Buy 2 Longsword for 27 gp");
    ui.undo();
    CHECK(ui.purse() == 100'000);
    CHECK(ui.campaign().treasury.items.empty());
}

TEST_CASE("price book: more than the purse holds is refused, and the basket stays") {
    Book ui(fixtures::srd5_prices(), rich(100));
    ui.fill("##search", "longsword");
    ui.click("Longsword");
    ui.click("Charge to the ledger");
    CHECK(ui.shows("The purse does not hold that much."));
    CHECK(ui.view.basket.size() == 1);
    CHECK(ui.purse() == 100);
    ui.click("Put back");
    CHECK(ui.view.basket.empty());
    CHECK_FALSE(ui.has("Charge to the ledger"));
}

TEST_CASE("price book: things can be paid for without being carried") {
    Book ui;
    ui.fill("##search", "longsword");
    ui.click("Longsword");
    ui.click("Keep the things");
    ui.click("Charge to the ledger");
    CHECK(ui.purse() == 98'500);
    CHECK(ui.campaign().treasury.items.empty());
}

TEST_CASE("price book: house rules in it are marked") {
    rules::PriceBook ours = fixtures::srd5_prices();
    Book plain(ours);
    CHECK_FALSE(plain.shows("house rules count here"));
    ours.house_ruled.push_back({"/equipment_srd_5_2_1/weapons/0/price_cp", "10", "20"});
    Book ui(ours);
    CHECK(ui.shows("house rules count here"));
}

TEST_CASE("price book: without a price list the panel says what is missing") {
    Book ui{rules::PriceBook()};
    CHECK(ui.shows("the price list cannot be read"));
}

TEST_CASE("price book: a price the GM's rules took away is no longer charged") {
    Book ui;
    ui.view.basket = {{"no/such", 2}};
    ui.frames(2);
    ui.click("Charge to the ledger");
    CHECK(ui.shows("The Price Book no longer has no/such."));
    CHECK(ui.purse() == 100'000);
}

TEST_CASE("price book: stands at every text size, in touch density, in both themes") {
    for (const float scale : {0.8F, 1.0F, 2.0F, 2.5F})
        for (const bool is_touch : {false, true})
            for (const float width : {340.0F, 640.0F, 1280.0F}) {
                CAPTURE(scale);
                CAPTURE(is_touch);
                CAPTURE(width);
                driver::Settings settings;
                settings.size = {width * scale, 800.0F};
                settings.scale = scale;
                settings.is_touch = is_touch;
                settings.theme = is_touch ? widgets::ThemeName::paper : widgets::ThemeName::dark;
                Book ui(fixtures::four_degree_prices(), rich(100'000), settings);
                ui.fill("##search", "striking");
                ui.view.basket = {{"fundamental_runes/striking", 2}};
                ui.frames(3);
            }
}
