// The Price Book as values: every table read, slips named, house rules laid over.
#include "store/prices.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>

namespace {

using nlohmann::json;
using rules::Family;
using rules::SrdEdition;

const std::string assets = std::string(TABLEWICK_SOURCE_DIR) + "/assets";

rules::PriceBook book(Family family, SrdEdition edition = SrdEdition::srd_5_1) {
    auto read = store::load_prices(assets, family, edition);
    REQUIRE_MESSAGE(read.ok(), base::to_text(read.error()));
    return read.value();
}

const rules::Price& price(const rules::PriceBook& book, const char* key) {
    CAPTURE(key);
    const rules::Price* found = rules::find_price(book, key);
    REQUIRE(found != nullptr);
    return *found;
}

json tables(const char* family) {
    std::ifstream stream(assets + "/rules/" + family + "_prices.json");
    return json::parse(stream);
}

std::string pointer_of_slip(const json& changed) {
    const auto read = store::read_prices(changed, "prices.json", SrdEdition::srd_5_2_1);
    REQUIRE_FALSE(read.ok());
    return read.error().place.pointer;
}

struct HouseRules {
    std::filesystem::path path =
        std::filesystem::temp_directory_path() / "tablewick_price_rules.json";

    explicit HouseRules(const char* text) { std::ofstream(path) << text; }

    ~HouseRules() { std::filesystem::remove(path); }
};

} // namespace

TEST_CASE("prices: four-degree, read against the published figures") {
    const rules::PriceBook four = book(Family::four_degree);
    CHECK(four.prices.size() > 300);
    CHECK(four.selling_percent == 50);
    // GM Core (ORC): Permanent Magic Item Price level 4, scroll of rank 4, runes (worked example
    // gp-03); Player Core (ORC): spellcasting of rank 4, cost of living.
    CHECK(price(four, "permanent_item_price/4").worth == 7'500);
    CHECK(price(four, "permanent_item_price/4").worth_max == 10'000);
    CHECK(price(four, "scroll_price/4").worth == 7'000);
    CHECK(price(four, "scroll_price/4").level == 7);
    CHECK(price(four, "fundamental_runes/striking").worth == 6'500);
    CHECK(price(four, "services/spellcasting_4").worth == 4'000);
    CHECK(price(four, "cost_of_living/fine_month").worth == 13'000);
    CHECK(price(four, "armor/padded").bulk_tenths == 1); // from memory
    CHECK(price(four, "armor/full_plate").bulk_tenths == 40);
    CHECK_FALSE(rules::find_price_kind(four, "services")->is_carried);
    CHECK(rules::find_price_kind(four, "weapons")->is_carried);
}

TEST_CASE("prices: srd5, both editions, read against the published figures") {
    const rules::PriceBook older = book(Family::srd5);
    const rules::PriceBook newer = book(Family::srd5, SrdEdition::srd_5_2_1);
    // SRD 5.1, Equipment: Armor, Trade Goods, Services.
    CHECK(price(older, "armor/padded").worth == 500);
    CHECK(price(older, "armor/padded").weight_thousandths_lb == 8'000);
    CHECK(price(older, "trade_goods/wheat").per == "lb");
    CHECK(price(older, "spellcasting_services/1_and_2").worth_max == 5'000);
    CHECK(rules::find_price_kind(older, "trade_goods")->sells_in_full);
    CHECK(rules::find_price_kind(older, "magic_items") == nullptr);
    // SRD 5.1, Equipment: barding costs four times and weighs twice as much as the armor (plate
    // 1,500 gp, 65 lb); silvering 100 gp. SRD 5.2.1, Equipment: ship repair 20 gp a hit point.
    CHECK(price(older, "barding/plate").worth == 600'000);
    CHECK(price(older, "barding/plate").weight_thousandths_lb == 130'000);
    CHECK(rules::find_price(older, "barding/shield") == nullptr);
    CHECK(price(older, "services/silvering").worth == 10'000);
    CHECK(price(newer, "services/ship_repair").worth == 2'000);
    CHECK(price(newer, "services/ship_repair").per == "hit point");
    // SRD 5.2.1, Magic Item Values by Rarity: rare 4,000 gp, half for what is used up; a spell
    // scroll costs twice its scribing.
    CHECK(price(newer, "magic_items/rare").worth == 400'000);
    CHECK(price(newer, "magic_items/rare_used_up").worth == 200'000);
    CHECK(price(newer, "spell_scrolls/9").worth == 10'000'000);
    CHECK(newer.coins.size() == 5);
    CHECK_FALSE(newer.coins[2].is_counted_in); // electrum is only read
}

TEST_CASE("prices: a slip is named with its pointer") {
    json four = tables("four_degree");
    four["adventuring_gear"]["rows"][4]["price_cp"] = "ten";
    CHECK(pointer_of_slip(four) == "/adventuring_gear/rows/4/price_cp");
    four = tables("four_degree");
    four["permanent_item_price"]["rows"][2]["max_gp"] = 1;
    CHECK(pointer_of_slip(four) == "/permanent_item_price/rows/2/max_gp");
    four = tables("four_degree");
    four["weapons"]["rows"][1]["key"] = four["weapons"]["rows"][0]["key"];
    CHECK(pointer_of_slip(four) == "/weapons/rows/1/key");
    four = tables("four_degree");
    four["armor"]["rows"][0]["bulk"] = "heavy";
    CHECK(pointer_of_slip(four) == "/armor/rows/0/bulk");
    four = tables("four_degree");
    four["coins"]["selling_factor"] = 2;
    CHECK(pointer_of_slip(four) == "/coins/selling_factor");
    json srd = tables("srd5");
    srd["equipment_srd_5_2_1"]["weapons"][0]["weight_lb"] = -1;
    CHECK(pointer_of_slip(srd) == "/equipment_srd_5_2_1/weapons/0/weight_lb");
}

TEST_CASE("prices: house rules replace a price, and a bad one is named") {
    {
        const HouseRules ours(R"({"format": "tablewick-house-rules", "family": "four_degree",
            "replace_prices": {"/scroll_price/rows/3/price_gp": 90}})");
        const auto read =
            store::load_prices(assets, Family::four_degree, SrdEdition::srd_5_1, ours.path);
        REQUIRE_MESSAGE(read.ok(), base::to_text(read.error()));
        CHECK(price(read.value(), "scroll_price/4").worth == 9'000);
        REQUIRE(read.value().house_ruled.size() == 1);
        CHECK(read.value().house_ruled[0].was == "70");
    }
    {
        const HouseRules ours(
            "{\"format\": \"tablewick-house-rules\", \"family\": \"four_degree\",\n"
            "\"replace_prices\": {\"/scroll_price/rows/3/price_gp\": -1}}"
        );
        const auto read =
            store::load_prices(assets, Family::four_degree, SrdEdition::srd_5_1, ours.path);
        REQUIRE_FALSE(read.ok());
        CHECK(read.error().place.pointer == "/scroll_price/rows/3/price_gp");
        CHECK(read.error().place.line == 2);
    }
    {
        const HouseRules ours(R"({"format": "tablewick-house-rules", "family": "four_degree",
            "replace_prices": {"/no_such": 90}})");
        const auto read =
            store::load_prices(assets, Family::four_degree, SrdEdition::srd_5_1, ours.path);
        REQUIRE_FALSE(read.ok());
        CHECK(read.error().message == "This pointer leads to nothing in the price list.");
    }
}
