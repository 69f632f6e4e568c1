#include "store/prices.h"

#include "store/asset_file.h"
#include "store/files.h"
#include "store/house_rules.h"
#include "store/json_place.h"
#include "store/json_text.h"
#include "store/rulebook_rows.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <set>
#include <utility>

namespace store {

namespace {

using base::ErrorKind;
using nlohmann::json;
using rules::Price;
using rules::PriceBook;

constexpr const char* what = "the price list";
constexpr int copper_max = 2'000'000'000; // beyond every printed price
constexpr int gold_max = copper_max / 100;
constexpr int level_max = 30;
constexpr int percent = 100;

// Kinds that nobody carries home.
constexpr std::array services = {
    std::string_view("cost_of_living"),
    std::string_view("lifestyle"),
    std::string_view("services"),
    std::string_view("spellcasting_services"),
    std::string_view("food_drink_lodging")};

std::string spoken(std::string key) {
    std::replace(key.begin(), key.end(), '_', ' ');
    return key;
}

class Reader {
public:
    explicit Reader(PriceBook& book) : book_(book) {}

    void coins(const Spot& table) {
        each_named(
            table.at("rows"),
            [&](const Spot& row, const std::string& key, const std::string& name) {
                book_.coins.push_back(
                    {key,
                     name,
                     row.at("value_cp").number(1, copper_max),
                     !row.truth_or("is_only_read")}
                );
            }
        );
        if (book_.coins.front().worth != 1)
            throw table.at("rows").wrong("first the smallest coin, worth 1");
        for (std::size_t at = 1; at < book_.coins.size(); ++at)
            if (book_.coins[at].worth <= book_.coins[at - 1].worth)
                throw table.at("rows").wrong("coins that rise in worth");
        const auto gold = std::find_if(book_.coins.begin(), book_.coins.end(), [](const auto& one) {
            return one.key == "gp";
        });
        if (gold == book_.coins.end()) throw table.at("rows").wrong("a coin with the key gp");
        gold_ = gold->worth;
        book_.selling_percent = share(table.at("selling_factor"));
        if (table.has("selling_factor_gems_art_trade_goods"))
            book_.selling_percent_in_full = share(table.at("selling_factor_gems_art_trade_goods"));
    }

    static int share(const Spot& spot) {
        const double factor = spot.fraction();
        if (factor < 0.0 || factor > 1.0) throw spot.wrong("a share from 0 to 1");
        return static_cast<int>(std::lround(factor * percent));
    }

    void kind(const std::string& key, const std::string& name, const std::string& source) {
        kind_ = key;
        const bool is_service = std::find(services.begin(), services.end(), key) != services.end();
        book_.kinds.push_back({key, name, source, !is_service, key == "trade_goods"});
    }

    // In the smallest coin: the value of "price_cp" or of "price_gp".
    std::int64_t worth(const Spot& row, const std::string& name) const {
        if (row.has(name + "_gp")) return row.at(name + "_gp").number(0, gold_max) * gold_;
        return row.at(name + "_cp").number(0, copper_max);
    }

    Price&
    add(const Spot& row, const std::string& key, const std::string& name, std::int64_t worth) {
        Price price;
        price.key = kind_ + "/" + key;
        if (!keys_.insert(price.key).second)
            throw row.wrong("a price that stands once", ErrorKind::duplicate);
        price.name = name;
        price.kind = kind_;
        price.worth = worth;
        price.worth_max = worth;
        if (row.value.is_object()) details(row, price);
        book_.prices.push_back(std::move(price));
        return book_.prices.back();
    }

    static void details(const Spot& row, Price& price) {
        for (const char* key : {"level", "item_level"})
            if (row.has(key)) price.level = row.at(key).number(0, level_max);
        price.per = row.text_or("per");
        if (price.per.empty()) price.per = row.text_or("unit");
        if (row.has("weight_lb")) {
            const Spot weight = row.at("weight_lb");
            if (!weight.value.is_number() || weight.value < 0 || weight.value > 1'000'000)
                throw weight.wrong("a weight in pounds");
            constexpr double parts = 1000.0;
            price.weight_thousandths_lb = std::llround(weight.value.get<double>() * parts);
        }
        if (row.has("bulk")) price.bulk_tenths = bulk(row.at("bulk"));
    }

    static std::int64_t bulk(const Spot& spot) {
        constexpr std::int64_t tenths = 10;
        const std::string written = spot.text();
        if (written == "L") return 1;
        if (written == "-") return 0;
        if (written.size() > 2 || written.find_first_not_of("0123456789") != std::string::npos)
            throw spot.wrong("L, - or a whole number in quotes");
        return std::stoll(written) * tenths;
    }

    void named(const Spot& rows) {
        each_named(rows, [&](const Spot& row, const std::string& key, const std::string& name) {
            add(row, key, name, worth(row, "price"));
            if (row.has("rent_cp_per_day"))
                add(row,
                    key + "_rent",
                    name + ", rented",
                    row.at("rent_cp_per_day").number(0, copper_max))
                    .per = "day";
        });
    }

    void bands(const Spot& table, const std::string& name) {
        table.at("rows").each([&](const Spot& row) {
            const std::string level = std::to_string(row.at("level").number(0, level_max));
            const std::int64_t least = worth(row, "min");
            Price& price = add(row, level, name + ", level " + level, least);
            price.worth_max = worth(row, "max");
            if (price.worth_max < least) throw row.at("max_gp").wrong("no less than min_gp");
        });
    }

    void by_rank(const Spot& table, const std::string& name) {
        table.at("rows").each([&](const Spot& row) {
            const std::string rank = std::to_string(row.at("rank").number(0, level_max));
            add(row, rank, name + ", rank " + rank, worth(row, "price"));
        });
    }

    void living(const Spot& table) {
        each_named(
            table.at("rows"),
            [&](const Spot& row, const std::string& key, const std::string& name) {
                for (const char* span : {"week", "month", "year"})
                    add(row, key + "_" + span, name + " living", worth(row, span)).per = span;
            }
        );
    }

    // srd5: every armor made for a mount, dearer and heavier by these factors.
    void barding(const Spot& factors, const Spot& armor) {
        const int times = factors.at("cost_factor").number(1, percent);
        const int weight_times = factors.at("weight_factor").number(1, percent);
        each_named(armor, [&](const Spot& row, const std::string& key, const std::string& name) {
            if (row.text_or("category") == "shield") return;
            Price& price = add(row, key, "barding, " + name, worth(row, "price") * times);
            price.weight_thousandths_lb *= weight_times;
        });
    }

    void one(const Spot& cost, const std::string& key, const std::string& name, const char* per) {
        add(cost, key, name, cost.number(0, copper_max)).per = per;
    }

    // srd5, by rarity; things that are used up cost a share of it.
    void by_rarity(const Spot& table) {
        const int used_up = share(table.at("consumable_factor"));
        each_named(
            table.at("rows"),
            [&](const Spot& row, const std::string& key, const std::string& name) {
                if (row.truth_or("is_priceless")) return;
                const std::int64_t full = worth(row, "price");
                add(row, key, "magic item, " + name, full).rarity = name;
                add(row,
                    key + "_used_up",
                    "potion or other magic item used up, " + name,
                    full * used_up / percent)
                    .rarity = name;
            }
        );
    }

    void scrolls(const Spot& rows, const Spot& factor) {
        const int times = factor.number(1, percent);
        rows.each([&](const Spot& row) {
            const std::string level = std::to_string(row.at("spell_level").number(0, level_max));
            add(row,
                level,
                level == "0" ? "spell scroll, cantrip" : "spell scroll, spell level " + level,
                static_cast<std::int64_t>(row.at("cost_cp").number(0, copper_max)) * times);
        });
    }

    void spellcasting(const Spot& rows) {
        rows.each([&](const Spot& row) {
            std::string levels;
            row.at("spell_levels").each([&](const Spot& level) {
                levels +=
                    (levels.empty() ? "" : " and ") + std::to_string(level.number(0, level_max));
            });
            const bool is_band = row.has("price_cp_min");
            const Spot least = row.at(is_band ? "price_cp_min" : "price_cp");
            std::string key = levels;
            std::replace(key.begin(), key.end(), ' ', '_');
            Price& price =
                add(row,
                    key,
                    levels == "0" ? "spellcasting, cantrip" : "spellcasting, spell level " + levels,
                    least.number(0, copper_max));
            price.per = "spell";
            if (!is_band) return;
            price.worth_max = row.at("price_cp_max").number(0, copper_max);
            if (price.worth_max < price.worth)
                throw row.at("price_cp_max").wrong("no less than price_cp_min");
        });
    }

private:
    PriceBook& book_;
    std::set<std::string> keys_;
    std::string kind_;
    std::int64_t gold_ = 1;
};

void read_four_degree(const Spot& top, Reader& reader) {
    const auto table = [&](const char* key, const char* name) {
        reader.kind(key, name == nullptr ? spoken(key) : name, top.at(key).at("source").text());
        return top.at(key);
    };
    for (const char* key : {"adventuring_gear", "weapons", "armor", "shields"})
        reader.named(table(key, nullptr).at("rows"));
    reader.named(table("services", nullptr).at("rows"));
    reader.living(table("cost_of_living", nullptr));
    reader.named(table("animals", nullptr).at("rows"));
    reader.bands(table("permanent_item_price", "lasting magic items"), "lasting magic item");
    reader.bands(table("consumable_item_price", "items used up"), "item used up");
    reader.by_rank(table("scroll_price", "scrolls"), "scroll");
    reader.by_rank(table("wand_price", "wands"), "wand");
    reader.named(table("fundamental_runes", nullptr).at("rows"));
    reader.named(table("property_runes", nullptr).at("rows"));
}

// Prices that stand alone in the file.
void read_single_services(const Spot& equipment, Reader& reader) {
    if (equipment.has("silvering_weapon_cp"))
        reader.one(
            equipment.at("silvering_weapon_cp"),
            "silvering",
            "silvering a weapon or ten pieces of ammunition",
            ""
        );
    if (equipment.has("ship_repair"))
        reader.one(
            equipment.at("ship_repair").at("cp_per_hp"), "ship_repair", "ship repair", "hit point"
        );
}

void read_srd5(const Spot& top, rules::SrdEdition edition, Reader& reader) {
    const bool is_newer = edition == rules::SrdEdition::srd_5_2_1;
    const Spot equipment = top.at(is_newer ? "equipment_srd_5_2_1" : "equipment_srd_5_1");
    const std::string source = equipment.at("source").text();
    // In the file's own order; keys that hold no list of priced things have readers of their own.
    for (const char* key :
         {"adventuring_gear",
          "weapons",
          "armor",
          "packs",
          "tools",
          "food_drink_lodging",
          "services",
          "lifestyle",
          "mounts",
          "tack_and_drawn_vehicles",
          "waterborne_vehicles",
          "large_vehicles",
          "trade_goods",
          "poisons"}) {
        if (!equipment.has(key)) continue;
        reader.kind(key, spoken(key), source);
        reader.named(equipment.at(key));
        if (key == std::string_view("services")) read_single_services(equipment, reader);
    }
    reader.kind("barding", "barding", source);
    reader.barding(equipment.at("barding"), equipment.at("armor"));
    reader.kind("spellcasting_services", "spellcasting services", source);
    reader.spellcasting(equipment.at("spellcasting_services"));
    const Spot magic = top.at("magic_items");
    if (!is_newer) return; // SRD 5.1 has no prices for them
    reader.kind("magic_items", "magic items", magic.at("source").text());
    reader.by_rarity(magic);
    reader.kind("spell_scrolls", "spell scrolls", source);
    reader.scrolls(
        equipment.at("spell_scroll_scribing"), magic.at("spell_scroll_factor_of_scribing")
    );
}

PriceBook read_book(const Spot& top, rules::SrdEdition edition) {
    if (top.at("format").text() != "tablewick-prices")
        throw top.at("format").wrong("\"tablewick-prices\"", ErrorKind::wrong_format);
    PriceBook book;
    book.title = top.at("title").text();
    book.licence = top.at("licence").text();
    Reader reader(book);
    reader.coins(top.at("coins"));
    const std::string family = top.at("family").text();
    if (family == "four_degree")
        read_four_degree(top, reader);
    else if (family == "srd5")
        read_srd5(top, edition, reader);
    else
        throw top.at("family").wrong("four_degree or srd5");
    return book;
}

} // namespace

base::Result<PriceBook>
read_prices(const json& tables, const std::string& file_name, rules::SrdEdition edition) {
    try {
        return read_book({tables, {}}, edition);
    } catch (const Wrong& wrong) {
        return error_of(wrong, what, file_name);
    }
}

base::Result<PriceBook> load_prices(
    const std::filesystem::path& assets_folder,
    rules::Family family,
    rules::SrdEdition edition,
    const std::filesystem::path& house_rules_file
) {
    const char* name =
        family == rules::Family::four_degree ? "four_degree_prices.json" : "srd5_prices.json";
    PriceBook book;
    json tables;
    const auto read = read_asset_file(assets_folder / "rules" / name, what, [&](const Spot& top) {
        tables = top.value;
        book = read_book(top, edition);
    });
    if (!read.ok()) return read.error();
    if (house_rules_file.empty()) return book;

    const base::Result<std::string> text = disk().read(house_rules_file);
    if (!text.ok()) return text.error();
    const std::string file = house_rules_file.string();
    auto replaced = lay_prices_over(tables, text.value(), file, family);
    if (!replaced.ok()) return replaced.error();
    base::Result<PriceBook> changed = read_prices(tables, file, edition);
    if (!changed.ok()) {
        base::Error error = changed.error();
        error.place =
            place_of_replacement(text.value(), file, error.place.pointer, "/replace_prices");
        error.remedy = "Correct the house rule, or take it out.";
        return error;
    }
    changed.value().house_ruled = std::move(replaced).value();
    return changed;
}

} // namespace store
