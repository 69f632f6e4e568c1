// Money: typed, shown, added and split. Coins: Player Core (ORC), coins; SRD 5.1, Equipment /
// Currency: 10 cp a sp, 10 sp a gp, 10 gp a pp.
#include "game/money.h"

#include <doctest/doctest.h>

#include <random>

namespace {

const std::vector<game::Coin> coins = {
    {"cp", "copper", 1, true, {}},
    {"sp", "silver", 10, true, {}},
    {"gp", "gold", 100, true, {}},
    {"pp", "platinum", 1000, false, {}}};

std::int64_t read(const char* text) {
    CAPTURE(text);
    const auto amount = game::parse_money(text, coins);
    REQUIRE_MESSAGE(amount.ok(), amount.error().message);
    return amount.value();
}

std::string refusal(const char* text) {
    CAPTURE(text);
    const auto amount = game::parse_money(text, coins);
    REQUIRE_FALSE(amount.ok());
    return amount.error().message;
}

} // namespace

TEST_CASE("money: read as a GM types it") {
    CHECK(read("12 gp 3 sp") == 1230);
    CHECK(read("12.5 gp") == 1250);
    CHECK(read("1,204 cp") == 1204);
    CHECK(read("-3 gp") == -300);
    CHECK(
        read("\xE2\x88\x92"
             "3 gp") == -300
    );
    CHECK(read("+4gp2SP") == 420);
    CHECK(read("3 gold") == 300);
    CHECK(read("7 pp") == 7000);
    CHECK(read("25") == 2500); // a number alone is gold
    CHECK(read(".5 gp") == 50);
    CHECK(read("1.250 gp") == 125);
    CHECK(read("0 cp") == 0);
    CHECK(read("  1,234,567 gp ") == 123'456'700);
    CHECK(read("10000000000 gp") == game::money_max);
}

TEST_CASE("money: nonsense is refused in one short sentence") {
    CHECK(refusal("") == "No amount is there yet.");
    CHECK(refusal("-") == "No amount is there yet.");
    CHECK(refusal("gp") == "An amount begins with a number, as in 12 gp.");
    CHECK(refusal("12 zl") == "There is no coin \"zl\"; there are pp, gp, sp, cp.");
    CHECK(refusal("1,20 gp") == "A comma parts thousands, as in 1,204.");
    CHECK(refusal("1204,000 gp") == "A comma parts thousands, as in 1,204.");
    CHECK(refusal(",204 gp") == "A comma parts thousands, as in 1,204.");
    CHECK(refusal("1. gp") == "Behind the point stand digits, as in 12.5 gp.");
    CHECK(refusal("0.125 gp") == "That leaves a part of a cp, the smallest coin.");
    CHECK(refusal("1 gp 2 gp") == "gp stands there twice.");
    CHECK(refusal("1 gp 2") == "Every number needs its coin, as in 12 gp 3 sp.");
    CHECK(refusal("1 2 gp") == "Every number needs its coin, as in 12 gp 3 sp.");
    CHECK(refusal("10000000001 gp") == "That is more money than the ledger can hold.");
    CHECK(refusal("99999999999999999999999 cp") == "That is more money than the ledger can hold.");
}

TEST_CASE("money: shown in the coins a GM counts in") {
    CHECK(game::money_text(1230, coins) == "12 gp 3 sp");
    CHECK(game::money_text(120'400, coins) == "1,204 gp"); // not in platinum
    CHECK(game::money_text(-301, coins) == "-3 gp 1 cp");
    CHECK(game::money_text(0, coins) == "0 gp");
    CHECK(game::thousands_text(-1'000) == "-1,000");
    CHECK(game::thousands_text(999) == "999");
}

TEST_CASE("money: every amount that is shown is read back as itself") {
    std::mt19937_64 random(11);
    for (int i = 0; i < 20'000; ++i) {
        const int bits = static_cast<int>(random() % 40);
        std::int64_t amount = static_cast<std::int64_t>(random() % (std::uint64_t{1} << bits));
        if (random() % 2 == 0) amount = -amount;
        std::vector<game::Coin> set = coins;
        if (random() % 2 == 0) set = {{"bit", "bit", 1, true, {}}, {"mk", "mark", 240, true, {}}};
        const std::string text = game::money_text(amount, set);
        CAPTURE(text);
        const auto back = game::parse_money(text, set);
        REQUIRE(back.ok());
        REQUIRE(back.value() == amount);
    }
}

TEST_CASE("money: the parts and what is left over are the whole") {
    std::mt19937_64 random(12);
    for (int i = 0; i < 20'000; ++i) {
        const auto amount = static_cast<std::int64_t>(random() % game::money_max);
        const auto people = static_cast<std::int64_t>(1 + random() % 20);
        const auto split = game::split_money(amount, people);
        REQUIRE(split.ok());
        REQUIRE(split.value().each * people + split.value().remainder == amount);
        REQUIRE(split.value().remainder >= 0);
        REQUIRE(split.value().remainder < people);
    }
    CHECK_FALSE(game::split_money(10, 0).ok());
    CHECK_FALSE(game::split_money(-1, 2).ok());
}

TEST_CASE("money: sums and products that would not fit are refused") {
    CHECK(game::money_sum(2, 3).value() == 5);
    CHECK_FALSE(game::money_sum(game::money_max, 1).ok());
    CHECK_FALSE(game::money_sum(INT64_MIN, -1).ok());
    CHECK_FALSE(game::money_times(INT64_MAX, 2).ok());
    CHECK_FALSE(game::money_times(INT64_MAX, -2).ok());
    CHECK(game::money_share(101, 50).value() == 50);
    CHECK(game::money_share(-101, 50).value() == -51);
}

TEST_CASE("money: a set of coins that cannot write every amount is refused") {
    CHECK(game::coins_problem(coins).empty());
    CHECK(game::coins_problem({}) == "There must be a coin.");
    CHECK_FALSE(game::coins_problem({{"gp", "gold", 100, true, {}}}).empty());
    CHECK_FALSE(game::coins_problem({{"c1", "copper", 1, true, {}}}).empty());
    CHECK_FALSE(game::coins_problem({{"cp", "a", 1, true, {}}, {"CP", "b", 10, true, {}}}).empty());
    CHECK_FALSE(game::coins_problem({{"cp", "copper", 1, false, {}}}).empty());
}
