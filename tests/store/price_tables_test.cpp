// The price tables beside the rulebooks: they parse, every table names its source, and spot values
// equal the published ones.
#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <fstream>
#include <set>

namespace {

using nlohmann::json;

json prices(const std::string& family) {
    std::ifstream stream(
        std::string(TABLEWICK_SOURCE_DIR) + "/assets/rules/" + family + "_prices.json"
    );
    REQUIRE(stream.is_open());
    return json::parse(stream);
}

const json& row_with(const json& rows, const char* field, const json& value) {
    for (const json& row : rows) {
        if (row.at(field) == value) return row;
    }
    FAIL("no row with " << field << " " << value.dump());
    return rows;
}

const json& named(const json& rows, const char* key) {
    return row_with(rows, "key", key);
}

// Every list of keyed rows of a table, lists in lists included.
void check_keys(const json& value) {
    if (value.is_array() && !value.empty() && value[0].is_object() && value[0].contains("key")) {
        std::set<std::string> keys;
        for (const json& row : value) {
            CAPTURE(row.dump());
            CHECK(keys.insert(row.at("key").get<std::string>()).second);
            CHECK_FALSE(row.at("name").get<std::string>().empty());
        }
    }
    if (!value.is_structured()) return;
    for (const json& each : value)
        check_keys(each);
}

int gold(int amount) {
    return amount * 100;
}

} // namespace

TEST_CASE("prices: every table names its source, and no key stands twice in a list") {
    for (const std::string family : {"four_degree", "srd5"}) {
        const json book = prices(family);
        CHECK(book.at("format") == "tablewick-prices");
        CHECK(book.at("family") == family);
        int tables = 0;
        for (const auto& item : book.items()) {
            CAPTURE(item.key());
            const json& table = item.value();
            if (!table.is_object()) continue;
            CHECK_FALSE(table.at("source").get<std::string>().empty());
            CHECK_FALSE(table.at("verified").get<std::string>().empty());
            check_keys(table);
            tables += 1;
        }
        CHECK(tables >= 4);
    }
}

TEST_CASE("prices: four-degree items, runes and services, against the published figures") {
    const json book = prices("four_degree");
    // GM Core (ORC), table Permanent Magic Item Price.
    const json& permanent = book.at("permanent_item_price").at("rows");
    CHECK(permanent.size() == 20);
    CHECK(row_with(permanent, "level", 4).at("max_gp") == 100);
    CHECK(row_with(permanent, "level", 20).at("min_gp") == 52000);
    // GM Core (ORC), table Consumable Price (from memory, agreeing with the scroll prices).
    CHECK(row_with(book.at("consumable_item_price").at("rows"), "level", 9).at("max_gp") == 150);
    // GM Core (ORC), scroll statistics; wands from memory.
    CHECK(row_with(book.at("scroll_price").at("rows"), "rank", 4).at("price_gp") == 70);
    CHECK(row_with(book.at("wand_price").at("rows"), "rank", 2).at("price_gp") == 160);
    // GM Core (ORC), fundamental runes: worked example gp-03. Full sets add up to the prices of
    // the core items in the published price table.
    const json& runes = book.at("fundamental_runes").at("rows");
    const auto rune = [&](const char* key) { return named(runes, key).at("price_gp").get<int>(); };
    CHECK(rune("weapon_potency_1") + rune("striking") == 100);
    CHECK(rune("weapon_potency_3") + rune("striking_major") == 40000);
    CHECK(rune("armor_potency_1") + rune("resilient") == 500);
    CHECK(rune("armor_potency_3") + rune("resilient_major") == 70000);
    CHECK(rune("weapon_potency_2") - rune("weapon_potency_1") == 900);
    // Player Core (ORC), services, table Cost of Living, adventuring gear.
    const json& services = book.at("services").at("rows");
    CHECK(named(services, "spellcasting_4").at("price_cp") == gold(40));
    CHECK(named(services, "private_room_for_2").at("price_cp") == 80);
    CHECK(named(book.at("cost_of_living").at("rows"), "fine").at("month_cp") == gold(130));
    const json& gear = book.at("adventuring_gear").at("rows");
    CHECK(named(gear, "healers_toolkit").at("price_cp") == gold(5));
    CHECK(named(gear, "lock_superior").at("price_cp") == gold(4500));
    // From memory.
    CHECK(named(book.at("weapons").at("rows"), "longbow").at("price_cp") == gold(6));
    CHECK(named(book.at("armor").at("rows"), "full_plate").at("price_cp") == gold(30));
    CHECK(named(book.at("shields").at("rows"), "steel_shield").at("hardness") == 5);
    CHECK(named(book.at("coins").at("rows"), "gp").at("value_cp") == 100);
}

TEST_CASE("prices: each scroll lies in the price band of its item level") {
    // GM Core (ORC): the scroll prices were read, the consumable bands recalled; they must agree.
    const json book = prices("four_degree");
    const json& bands = book.at("consumable_item_price").at("rows");
    const json& scrolls = book.at("scroll_price").at("rows");
    CHECK(scrolls.size() == 10);
    for (const json& scroll : scrolls) {
        const json& band = row_with(bands, "level", scroll.at("item_level"));
        CHECK(scroll.at("price_gp") >= band.at("min_gp"));
        CHECK(scroll.at("price_gp") <= band.at("max_gp"));
    }
}

TEST_CASE("prices: srd5 equipment of both editions, against the published figures") {
    const json book = prices("srd5");
    const json& older = book.at("equipment_srd_5_1");
    const json& newer = book.at("equipment_srd_5_2_1");
    // SRD 5.1, Equipment: Weapons, Armor, Tack Harness and Drawn Vehicles, Trade Goods.
    CHECK(older.at("weapons").size() == 37);
    CHECK(named(older.at("weapons"), "club").at("damage") == "1d4");
    CHECK(named(older.at("armor"), "padded").at("price_cp") == gold(5));
    CHECK(named(older.at("tack_and_drawn_vehicles"), "cart").at("price_cp") == gold(15));
    CHECK(named(older.at("waterborne_vehicles"), "galley").at("price_cp") == gold(30000));
    CHECK(named(older.at("trade_goods"), "wheat").at("price_cp") == 1);
    // SRD 5.2.1, Equipment, Crafting, Magic Items.
    CHECK(newer.at("weapons").size() == 38);
    CHECK(named(newer.at("mounts"), "warhorse").at("price_cp") == gold(400));
    CHECK(named(newer.at("large_vehicles"), "airship").at("price_cp") == gold(40000));
    CHECK(
        row_with(newer.at("spell_scroll_scribing"), "spell_level", 9).at("cost_cp") == gold(50000)
    );
    CHECK(named(book.at("magic_items").at("rows"), "rare").at("price_cp") == gold(4000));
    CHECK(named(book.at("coins").at("rows"), "ep").at("value_cp") == 50);
}
