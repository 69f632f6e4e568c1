#include "store/rulebook_rows.h"
#include "store/rulebook_tables.h"

namespace store {

namespace {

constexpr RowRange character_levels = {"level", 1, 20};
constexpr int gold_max = 100'000'000; // beyond every printed figure, and safe to multiply
constexpr int party_max = 20;
constexpr int pounds_max = 1000;

} // namespace

void read_wealth_tables(const Spot& top, rules::Rulebook& rulebook) {
    rules::WealthTables& wealth = rulebook.wealth;
    if (rulebook.family == rules::Family::srd5) {
        const Spot table = top.at("carrying_capacity");
        wealth.carry_source = table.at("source").text();
        wealth.carry_lb_per_strength = table.at("carry_lb_per_strength").number(1, pounds_max);
        return;
    }
    const Spot treasure = top.at("party_treasure_by_level");
    wealth.by_level_source = treasure.at("source").text();
    wealth.party_size = treasure.at("party_size").number(1, party_max);
    each_row(treasure, character_levels, [&](const Spot& row, int level) {
        wealth.by_level.push_back(
            {level,
             row.at("total_gp").number(1, gold_max),
             row.at("currency_gp").number(0, gold_max),
             row.at("currency_gp_per_added_character").number(0, gold_max)}
        );
    });
    const Spot made_new = top.at("new_character_wealth");
    wealth.new_character_source = made_new.at("source").text();
    each_row(made_new, character_levels, [&](const Spot& row, int level) {
        wealth.new_character.push_back({level, row.at("lump_sum_gp").number(0, gold_max)});
    });
}

} // namespace store
