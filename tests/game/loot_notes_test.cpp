// Loot as a GM scribbles it, and its way into the Treasure Ledger.
#include "game/loot_notes.h"
#include "game/session_keeping.h"
#include "game/treasure.h"

#include <doctest/doctest.h>

namespace {

const std::vector<game::Coin> coins = {
    {"cp", "copper", 1, true, {}}, {"sp", "silver", 10, true, {}}, {"gp", "gold", 100, true, {}}};

game::ReadLoot loot(const char* text) {
    CAPTURE(text);
    return game::read_loot(text, coins);
}

} // namespace

TEST_CASE("loot: the amount in a note is money, behind \"worth\" it is what the thing is worth") {
    CHECK(loot("120 gp under the sluice") == game::ReadLoot{12'000, 0});
    CHECK(loot("under the sluice: 1,204 gp 3 sp, and a letter") == game::ReadLoot{120'430, 0});
    CHECK(loot("a purse (7gp).") == game::ReadLoot{700, 0});
    CHECK(loot("silver mask, worth 40 gp") == game::ReadLoot{0, 4'000});
    CHECK(loot("Worth 2.5 gold: the flute") == game::ReadLoot{0, 250});
    // No amount: a thing. Numbers of other things are left alone.
    CHECK(loot("3 river pearls") == game::ReadLoot{});
    CHECK(loot("a reed flute") == game::ReadLoot{});
    CHECK(loot("0 gp") == game::ReadLoot{});
    CHECK(loot("4 keys and 12 sp") == game::ReadLoot{120, 0});
    CHECK(loot("99999999999999999999 gp") == game::ReadLoot{});
    CHECK(loot("") == game::ReadLoot{});
}

TEST_CASE("loot: a note goes into the ledger once, with its own day and session") {
    game::Campaign campaign;
    campaign.clock.day = 5;
    const game::Id session = game::begin_session(campaign, "");
    const auto note = [&](const char* text) {
        return game::write_note(campaign, session, game::NoteKind::loot, text, "");
    };
    const game::Id money = note("120 gp under the sluice");
    const game::Id mask = note("silver mask worth 40 gp");
    const game::Id same = note("silver mask worth 40 gp");
    campaign.clock.day = 9;
    CHECK_FALSE(game::is_loot_taken(campaign.treasury, money));
    REQUIRE(game::take_loot(campaign, session, money, coins).ok());
    REQUIRE(game::take_loot(campaign, session, mask, coins).ok());
    REQUIRE(game::take_loot(campaign, session, same, coins).ok());
    CHECK(game::is_loot_taken(campaign.treasury, money));
    CHECK(game::is_loot_taken(campaign.treasury, mask));
    CHECK(game::is_loot_taken(campaign.treasury, same));
    REQUIRE(campaign.treasury.lines.size() == 1);
    CHECK(campaign.treasury.lines[0].amount == 12'000);
    CHECK(campaign.treasury.lines[0].kind == game::LedgerKind::found);
    CHECK(campaign.treasury.lines[0].day == 5);
    CHECK(campaign.treasury.lines[0].session == session);
    REQUIRE(campaign.treasury.items.size() == 2);
    CHECK(campaign.treasury.items[0].value == 4'000);
    CHECK(campaign.treasury.items[0].day == 5);
    const auto again = game::take_loot(campaign, session, money, coins);
    REQUIRE_FALSE(again.ok());
    CHECK(again.error().message == "That note is in the ledger already.");
    CHECK(game::take_loot(campaign, session, 999, coins).error().message == "That note is gone.");
    // Struck from the ledger it can be taken again.
    game::remove_ledger_line(campaign, campaign.treasury.lines[0].id);
    CHECK(game::take_loot(campaign, session, money, coins).ok());
}
