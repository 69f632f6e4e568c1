// Money and things written down, sold, handed out; coins of the GM's own.
#include "driver.h"
#include "fixtures.h"
#include "game/session_keeping.h"
#include "game/treasure.h"
#include "widgets/treasure_ledger.h"

#include <doctest/doctest.h>

namespace {

using Driver = driver::PanelDriver<widgets::TreasureLedgerView>;
using game::LedgerKind;

struct Ledger : Driver {
    explicit Ledger(
        game::Campaign campaign = fixtures::sluice_campaign(), const driver::Settings& settings = {}
    )
        : Driver(
              std::move(campaign), fixtures::four_degree(), widgets::draw_treasure_ledger, settings
          ) {
        prices = fixtures::four_degree_prices();
        frames(3);
    }

    const game::Treasury& treasury() const { return campaign().treasury; }

    std::int64_t purse() const { return game::purse_of(treasury()).value(); }
};

game::Campaign with_money(std::int64_t amount) {
    game::Campaign campaign = fixtures::sluice_campaign();
    campaign.clock.day = 12;
    game::begin_session(campaign, "2026-01-31");
    REQUIRE(game::add_ledger_line(campaign, LedgerKind::found, "the sluice chest", amount).ok());
    return campaign;
}

game::Campaign with_things() {
    game::Campaign campaign = with_money(10'000);
    game::TreasureItem mask;
    mask.name = "Reed mask";
    mask.count = 3;
    mask.value = 1'001;
    mask.bulk_tenths = 4;
    REQUIRE(game::add_item(campaign, mask).ok());
    return campaign;
}

} // namespace

TEST_CASE("treasure ledger: an empty one says what it is for, and the first find is two fields") {
    Ledger ui;
    CHECK(ui.shows("0 gp"));
    CHECK(ui.shows("Nothing came or went yet."));
    ui.click("##what");
    ui.type("the sluice chest");
    ui.click("##amount");
    ui.type("1,204 gp 3 sp");
    ui.key(ImGuiKey_Enter);
    REQUIRE(ui.treasury().lines.size() == 1);
    CHECK(ui.purse() == 120'430);
    CHECK(ui.treasury().lines[0].kind == LedgerKind::found);
    CHECK(ui.shows("1,204 gp 3 sp"));
    CHECK(ui.last_edit() == "Note 1,204 gp 3 sp found: the sluice chest");
    CHECK(ui.view.amount.empty());
    // The next one can be typed at once.
    ui.frames(2);
    ui.type("ferry");
    CHECK(ui.view.what == "ferry");
    ui.undo();
    CHECK(ui.treasury().lines.empty());
}

TEST_CASE("treasure ledger: money that is spent goes down, whatever the sign") {
    Ledger ui(with_money(10'000));
    CHECK(ui.shows("found, day 12, session 1: the sluice chest"));
    ui.click("spent");
    ui.click("##amount");
    ui.type("4 sp");
    ui.click("Note it");
    CHECK(ui.purse() == 9'960);
    ui.click("given");
    ui.click("##amount");
    ui.type("-60 cp");
    ui.click("Note it");
    CHECK(ui.purse() == 9'900);
    CHECK(ui.shows("-6 sp"));
}

TEST_CASE("treasure ledger: a line is struck and comes back with undo") {
    Ledger ui(with_money(10'000));
    ui.click("Strike");
    CHECK(ui.treasury().lines.empty());
    CHECK(ui.last_edit() == "Strike 100 gp from the ledger");
    ui.undo();
    CHECK(ui.purse() == 10'000);
}

TEST_CASE("treasure ledger: what is no amount is refused with a reason, and nothing is lost") {
    Ledger ui;
    ui.click("##what");
    ui.type("odd coins");
    ui.click("##amount");
    ui.type("12 zl");
    ui.key(ImGuiKey_Enter);
    CHECK(ui.shows("There is no coin \"zl\"; there are pp, gp, sp, cp."));
    CHECK(ui.treasury().lines.empty());
    CHECK(ui.view.what == "odd coins");
    ui.fill("##amount", "99999999999 gp");
    CHECK(ui.shows("That is more money than the ledger can hold."));
    ui.fill("##amount", "-5 gp");
    CHECK(ui.shows("What is found or sold adds money; write it under spent or given."));
    CHECK(ui.treasury().lines.empty());
}

TEST_CASE("treasure ledger: a level's treasure and what new characters own stand beside it") {
    // GM Core (ORC), tables Party Treasure by Level and Character Wealth: level 4, four characters
    // 850 gp, 200 gp of it currency, 50 gp more for a fifth; new at level 4 140 gp each.
    Ledger ui;
    CHECK(ui.shows("Over level 4 they find 900 gp, 250 gp of it money."));
    CHECK(ui.shows("5 new characters of that level would own 700 gp."));
    Driver pier(fixtures::pier_campaign(), fixtures::srd5(), widgets::draw_treasure_ledger);
    CHECK(pier.shows("says nothing of wealth by level"));
}

TEST_CASE("treasure ledger: an item is written down, given to somebody, identified, weighed") {
    Ledger ui;
    ui.click("Items");
    CHECK(ui.shows("No items yet."));
    ui.click("##item");
    ui.type("Reed mask");
    ui.click("##worth");
    ui.type("12 gp 5 sp");
    ui.click("+##more how many");
    ui.click("Add item");
    REQUIRE(ui.treasury().items.size() == 1);
    CHECK(ui.treasury().items[0].count == 2);
    CHECK(ui.treasury().items[0].value == 1'250);
    CHECK(ui.shows("worth 25 gp"));
    ui.click("Reed mask");
    ui.click("##carrier");
    ui.click("Orrin Tace", driver::inside("##Combo"));
    CHECK(ui.treasury().items[0].carrier == 2);
    ui.click("Identified");
    CHECK_FALSE(ui.treasury().items[0].is_identified);
    CHECK(ui.shows("Orrin Tace, not identified"));
    ui.fill("##bulk", "12");
    CHECK(ui.treasury().items[0].bulk_tenths == 12);
    CHECK(ui.shows("Carried: Orrin Tace 2 Bulk, 4 light."));
    ui.fill("##value", "nonsense");
    CHECK(ui.treasury().items[0].value == 1'250);
    CHECK(ui.shows("An amount begins with a number, as in 12 gp."));
}

TEST_CASE("treasure ledger: things are sold for half, one or all, or given away") {
    Ledger ui(with_things());
    ui.click("Items");
    ui.click("Reed mask");
    // GM Core (ORC): half the price, rounded down to the smallest coin: 1,001 cp give 500.
    ui.click("Sell one for 5 gp###Sell one");
    CHECK(ui.purse() == 10'500);
    CHECK(ui.treasury().items[0].count == 2);
    ui.click("Sells in full");
    ui.click("Sell all for 20 gp 2 cp###Sell all");
    CHECK(ui.purse() == 12'502);
    CHECK(ui.treasury().items[0].fate == game::ItemFate::sold);
    ui.undo();
    ui.click("Give away");
    CHECK(ui.treasury().items[0].fate == game::ItemFate::given_away);
    CHECK(ui.purse() == 10'500);
    ui.click("Take out");
    CHECK(ui.treasury().items.size() == 1); // the record of the one that was sold
}

TEST_CASE("treasure ledger: a split says who gets what before it is done, and what is left over") {
    Ledger ui(with_money(120'403));
    ui.click("Split");
    CHECK(ui.shows("240 gp 8 sp each"));
    CHECK(ui.shows("3 cp stays with the party."));
    ui.click("Bram Oake##gets 3");
    CHECK(ui.shows("301 gp each")); // 120,403 / 4 = 30,100 and 3 left
    ui.click("Bram Oake##gets 3");
    ui.fill("##share", "100 gp");
    CHECK(ui.shows("20 gp each"));
    CHECK(ui.shows("It comes out even."));
    ui.fill("##share", "9,000 gp");
    CHECK(ui.shows("The purse does not hold that much."));
    CHECK_FALSE(ui.is_enabled("Hand out the shares"));
    ui.fill("##share", "");
    ui.click("Hand out the shares");
    CHECK(ui.purse() == 3);
    CHECK(ui.treasury().lines.back().characters.size() == 5);
    CHECK(ui.last_edit() == "Split 1,204 gp 3 cp: 240 gp 8 sp each");
}

TEST_CASE("treasure ledger: a campaign has coins of its own") {
    Ledger ui(with_money(1'234));
    ui.click("Coins");
    ui.fill("##2 short name", "mk");
    REQUIRE(ui.treasury().coins.size() == 4);
    CHECK(ui.treasury().coins[2].abbreviation == "mk");
    CHECK(ui.shows("12 mk 3 sp 4 cp"));
    ui.fill("##2 short name", "cp");
    CHECK(ui.shows("Two coins are called cp."));
    CHECK(ui.treasury().coins[2].abbreviation == "mk");
    ui.click("Add a coin");
    CHECK(ui.treasury().coins.size() == 5);
    ui.click("The rulebook's coins");
    CHECK(ui.treasury().coins.empty());
    CHECK(ui.shows("12 gp 3 sp 4 cp"));
}

TEST_CASE("treasure ledger: read-only, everything is shown and nothing can be pressed") {
    Ledger ui(with_things());
    ui.is_read_only = true;
    ui.frames(2);
    CHECK_FALSE(ui.is_enabled("Note it"));
    CHECK_FALSE(ui.is_enabled("Strike"));
    ui.click("##amount");
    ui.type("4 gp");
    ui.key(ImGuiKey_Enter);
    CHECK(ui.treasury().lines.size() == 1);
    ui.click("Items");
    CHECK_FALSE(ui.is_enabled("Add item"));
}

TEST_CASE("treasure ledger: thousands of lines are drawn as few as there is room for") {
    game::Campaign campaign = with_money(1);
    for (int each = 0; each < 5'000; ++each)
        REQUIRE(game::add_ledger_line(campaign, LedgerKind::found, "toll", 1).ok());
    Ledger ui(std::move(campaign));
    CHECK(ui.labels().size() < 100);
    CHECK(ui.shows("50 gp 1 cp"));
}

TEST_CASE("treasure ledger: stands at every text size, in touch density, in both themes") {
    for (const float scale : {0.8F, 1.0F, 2.0F, 2.5F})
        for (const bool is_touch : {false, true})
            for (const float width : {360.0F, 640.0F, 1280.0F}) {
                CAPTURE(scale);
                CAPTURE(is_touch);
                CAPTURE(width);
                driver::Settings settings;
                settings.size = {width * scale, 800.0F};
                settings.scale = scale;
                settings.is_touch = is_touch;
                settings.theme = is_touch ? widgets::ThemeName::paper : widgets::ThemeName::dark;
                Ledger ui(with_things(), settings);
                for (const char* page : {"Items", "Split", "Coins", "Money"})
                    ui.click(page);
                ui.click("Items");
                ui.click("Reed mask");
                ui.frames(2);
            }
}
