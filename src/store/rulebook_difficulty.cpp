#include "store/rulebook_rows.h"
#include "store/rulebook_tables.h"

namespace store {

namespace {

using rules::DifficultyTables;

// Levels and ranks that the published tables have. Source: GM Core (ORC), table DCs by Level.
constexpr RowRange dc_levels = {"level", 0, 25};
constexpr RowRange spell_ranks = {"rank", 1, 10};
constexpr int character_level_max = 20; // SRD 5.1, Beyond 1st Level

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

// Reads a figure that is at least another one.
int read_not_below(const Spot& spot, int least, int most, const std::string& than) {
    const int number = spot.number(-table_bonus_max, most);
    if (number < least) throw spot.wrong("at least " + than);
    return number;
}

void read_trap_damage(const Spot& rows, rules::TrapTables& traps) {
    int next = 1;
    rows.each([&](const Spot& row) {
        rules::TrapDamage damage;
        const Spot from = row.at("level_min");
        damage.level_min = from.number(1, character_level_max);
        if (damage.level_min != next) throw from.wrong("levels 1 to 20 in order and without a gap");
        damage.level_max =
            read_not_below(row.at("level_max"), next, character_level_max, "level_min");
        for (const rules::TrapDanger& danger : traps.dangers)
            damage.damage.push_back(read_dice(row.at(danger.key)));
        next = damage.level_max + 1;
        traps.damage.push_back(std::move(damage));
    });
    if (next <= character_level_max)
        throw rows.wrong(
            "levels 1 to 20 in order and without a gap", base::ErrorKind::missing_field
        );
}

void read_traps(const Spot& table, rules::TrapTables& traps) {
    traps.source = table.at("source").text();
    each_named(
        table.at("dangers"),
        [&](const Spot& row, const std::string& key, const std::string& name) {
            rules::TrapDanger danger{key, name};
            danger.save_dc_min = row.at("save_dc_min").number(0, table_dc_max);
            danger.save_dc_max = read_not_below(
                row.at("save_dc_max"), danger.save_dc_min, table_dc_max, "save_dc_min"
            );
            danger.attack_min = row.at("attack_min").number(-table_bonus_max, table_bonus_max);
            danger.attack_max = read_not_below(
                row.at("attack_max"), danger.attack_min, table_bonus_max, "attack_min"
            );
            traps.dangers.push_back(danger);
        }
    );
    read_trap_damage(table.at("damage"), traps);
}

} // namespace

void read_difficulty_tables(const Spot& top, rules::Rulebook& rulebook) {
    DifficultyTables& difficulty = rulebook.difficulty;
    if (rulebook.family == rules::Family::srd5) {
        read_simple(top.at("difficulty_classes"), difficulty);
        read_traps(top.at("traps"), difficulty.traps);
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
