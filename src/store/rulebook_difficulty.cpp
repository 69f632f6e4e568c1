#include "store/rulebook_rows.h"
#include "store/rulebook_tables.h"

namespace store {

namespace {

using rules::DifficultyTables;

// Levels and ranks that the published tables have. Source: GM Core (ORC), table DCs by Level.
constexpr RowRange dc_levels = {"level", 0, 25};
constexpr RowRange spell_ranks = {"rank", 1, 10};

void read_numbered(
    const Spot& table,
    const RowRange& range,
    std::vector<rules::NumberedDc>& dcs,
    std::string& source
) {
    source = table.at("source").text();
    each_row(table, range, [&](const Spot& row, int number) {
        dcs.push_back({number, row.at("dc").number(0, table_dc_max)});
    });
}

void read_simple(const Spot& table, DifficultyTables& difficulty) {
    difficulty.simple_source = table.at("source").text();
    each_named(
        table.at("rows"),
        [&](const Spot& row, const std::string& key, const std::string& name) {
            difficulty.simple.push_back({key, name, row.at("dc").number(0, table_dc_max)});
        }
    );
}

void read_adjustments(const Spot& table, DifficultyTables& difficulty) {
    difficulty.adjustments_source = table.at("source").text();
    std::set<std::string> keys; // one list of keys: a step and a rarity are asked for alike
    const auto read = [&](const char* list, std::vector<rules::DcAdjustment>& adjustments) {
        each_named(
            table.at(list),
            keys,
            [&](const Spot& row, const std::string& key, const std::string& name) {
                const int amount = row.at("amount").number(-table_bonus_max, table_bonus_max);
                adjustments.push_back({key, name, amount});
            }
        );
    };
    read("steps", difficulty.steps);
    read("rarities", difficulty.rarities);
}

} // namespace

void read_difficulty_tables(const Spot& top, rules::Rulebook& rulebook) {
    DifficultyTables& difficulty = rulebook.difficulty;
    if (rulebook.family == rules::Family::srd5) {
        read_simple(top.at("difficulty_classes"), difficulty);
        return;
    }
    read_numbered(
        top.at("dc_by_level"), dc_levels, difficulty.by_level, difficulty.by_level_source
    );
    read_numbered(
        top.at("spell_rank_dc"),
        spell_ranks,
        difficulty.by_spell_rank,
        difficulty.by_spell_rank_source
    );
    read_simple(top.at("simple_dc"), difficulty);
    read_adjustments(top.at("dc_adjustments"), difficulty);
}

} // namespace store
