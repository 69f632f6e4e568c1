#include "store/creature_building_json.h"

#include "rules/dice.h"

#include <algorithm>
#include <string>
#include <vector>

namespace store {

namespace {

using base::ErrorKind;
using rules::Band;
using rules::BandDamage;
using rules::BandRange;

constexpr int number_min = -30;
constexpr int number_max = 9999; // hit points are the largest
constexpr int level_lowest = -1; // GM Core (ORC), Building Creatures
constexpr int level_highest = 30;

rules::DiceExpression dice(const Spot& spot) {
    const auto read = rules::parse_dice(spot.text());
    if (!read.ok()) throw spot.wrong("dice such as 2d6+3");
    return read.value();
}

Spot element(const Spot& list, std::size_t place) {
    return {list.value[place], list.pointer + "/" + std::to_string(place)};
}

void need_length(const Spot& list, std::size_t length) {
    if (!list.value.is_array() || list.value.size() != length)
        throw list.wrong("a list of " + std::to_string(length), ErrorKind::wrong_type);
}

// 17, or [15, 17]
BandRange read_range(const Spot& spot) {
    if (!spot.value.is_array()) {
        const int number = spot.number(number_min, number_max);
        return {number, number};
    }
    need_length(spot, 2);
    const int low = element(spot, 0).number(number_min, number_max);
    return {low, element(spot, 1).number(low, number_max)};
}

// ["2d12+13", 26]
BandDamage read_damage(const Spot& spot) {
    need_length(spot, 2);
    return {dice(element(spot, 0)), element(spot, 1).number(0, number_max)};
}

// The rows of a table, each under its level, without a gap.
template <class Read>
void each_level(const Spot& table, const rules::CreatureTables& levels, Read read) {
    const Spot rows = table.at("rows");
    for (int level = levels.level_min; level <= levels.level_max; ++level)
        read(rows.at(std::to_string(level)));
    const auto count = static_cast<std::size_t>(levels.level_max - levels.level_min) + 1;
    if (rows.value.size() != count)
        throw rows.wrong(
            "a row for each level from " + std::to_string(levels.level_min) + " to " +
            std::to_string(levels.level_max)
        );
}

template <class Cell, class Read>
rules::BandTable<Cell>
read_table(const Spot& table, const rules::CreatureTables& levels, Read read_cell) {
    table.allow_only({"source", "verified", "bands", "rows"});
    rules::BandTable<Cell> read;
    table.at("bands").each([&](const Spot& band) {
        read.bands.push_back(band.word(band_words));
        if (read.bands.size() > 1 && read.bands[read.bands.size() - 2] >= read.bands.back())
            throw band.wrong("a stronger band than the one before");
    });
    if (read.bands.empty()) throw table.at("bands").wrong("at least one band");
    each_level(table, levels, [&](const Spot& row) {
        need_length(row, read.bands.size());
        std::vector<std::optional<Cell>>& cells = read.rows.emplace_back();
        for (std::size_t column = 0; column < read.bands.size(); ++column) {
            const Spot cell = element(row, column);
            if (cell.value.is_null())
                cells.emplace_back();
            else
                cells.emplace_back(read_cell(cell));
        }
        const bool is_empty = std::none_of(cells.begin(), cells.end(), [](const auto& cell) {
            return cell.has_value();
        });
        if (is_empty) throw row.wrong("at least one number");
    });
    return read;
}

// The levels of all tables are those of the first.
void read_levels(const Spot& rows, rules::CreatureTables& tables) {
    const auto has_level = [&](int level) { return rows.has(std::to_string(level)); };
    tables.level_min = level_lowest;
    while (tables.level_min < level_highest && !has_level(tables.level_min))
        tables.level_min += 1;
    tables.level_max = tables.level_min;
    while (tables.level_max < level_highest && has_level(tables.level_max + 1))
        tables.level_max += 1;
}

void read_tables(const Spot& spot, rules::CreatureTables& tables) {
    read_levels(spot.at("armor_class").at("rows"), tables);
    const auto numbers = [&](const char* key) {
        return read_table<BandRange>(spot.at(key), tables, read_range);
    };
    tables.ability = numbers("ability");
    tables.perception = numbers("perception");
    tables.skills = numbers("skills");
    tables.armor_class = numbers("armor_class");
    tables.saves = numbers("saves");
    tables.hit_points = numbers("hit_points");
    tables.resistance = numbers("resistance");
    tables.attack = numbers("attack");
    tables.damage = read_table<BandDamage>(spot.at("damage"), tables, read_damage);
    tables.spell_dc = numbers("spell_dc");
    tables.spell_attack = numbers("spell_attack");
    each_level(spot.at("area_damage"), tables, [&](const Spot& row) {
        need_length(row, 2);
        tables.area_unlimited.push_back(read_damage(element(row, 0)));
        tables.area_limited.push_back(read_damage(element(row, 1)));
    });
}

// [13, "4d8+10", 28]
rules::HazardOffense read_offense(const Spot& spot) {
    need_length(spot, 3);
    return {
        element(spot, 0).number(number_min, number_max),
        {dice(element(spot, 1)), element(spot, 2).number(0, number_max)}};
}

void read_hazards(
    const Spot& spot, const rules::CreatureTables& levels, rules::HazardTables& hazards
) {
    constexpr int small = 100;
    const auto numbers = [&](const char* key) {
        return read_table<BandRange>(spot.at(key), levels, read_range);
    };
    hazards.stealth_disable_dc = numbers("stealth_disable_dc");
    hazards.armor_class = numbers("armor_class");
    hazards.saves = numbers("saves");
    hazards.hardness = numbers("hardness");
    hazards.hit_points = numbers("hit_points");
    hazards.effect_dc = numbers("effect_dc");
    each_level(spot.at("offense"), levels, [&](const Spot& row) {
        need_length(row, 2);
        hazards.simple.push_back(read_offense(element(row, 0)));
        hazards.complex.push_back(read_offense(element(row, 1)));
    });
    hazards.complex_stealth_is_less = spot.at("complex_stealth_is_less").number(0, small);
    hazards.source = spot.at("source").text();
    hazards.broken_at_divisor = spot.at("broken_at_divisor").number(1, small);
}

void read_step(const Spot& spot, rules::CreatureStep& step) {
    constexpr int change_max = 999;
    spot.allow_only(
        {"level",
         "level_at",
         "armor_class",
         "attack",
         "dc",
         "saves",
         "perception",
         "skills",
         "damage",
         "damage_limited_use",
         "hit_points"}
    );
    const auto change = [&](const char* key) {
        return spot.at(key).number(-change_max, change_max);
    };
    step.level = change("level");
    const Spot exceptions = spot.at("level_at");
    for (int level = level_lowest; level <= level_highest; ++level) {
        const std::string key = std::to_string(level);
        if (exceptions.has(key))
            step.level_at[level] = exceptions.at(key).number(-change_max, change_max);
    }
    step.armor_class = change("armor_class");
    step.attack = change("attack");
    step.dc = change("dc");
    step.saves = change("saves");
    step.perception = change("perception");
    step.skills = change("skills");
    step.damage = change("damage");
    step.damage_limited_use = change("damage_limited_use");
    spot.at("hit_points").each([&](const Spot& each) {
        each.allow_only({"from", "to", "amount"});
        const int from = each.at("from").number(level_lowest, level_highest);
        step.hit_points.push_back(
            {from,
             each.at("to").number(from, level_highest),
             each.at("amount").number(-change_max, change_max)}
        );
    });
}

// [18, 12, 12, 13.75]: count and quartiles.
rules::Quartiles read_quartiles(const Spot& entry, const char* key) {
    constexpr int count_max = 100000;
    if (!entry.has(key)) return {};
    const Spot list = entry.at(key);
    need_length(list, 4);
    const rules::Quartiles read{
        element(list, 0).number(1, count_max),
        element(list, 1).fraction(),
        element(list, 2).fraction(),
        element(list, 3).fraction()};
    const bool is_in_order = number_min <= read.first && read.first <= read.median &&
                             read.median <= read.third && read.third <= number_max;
    if (!is_in_order) throw list.wrong("a count and three quartiles in order");
    return read;
}

void read_statistics(const Spot& spot, rules::ChallengeStatistics& statistics) {
    constexpr int proficiency_max = 20;
    statistics.spell_dc_base = spot.at("spell_dc_base").number(0, proficiency_max);
    spot.at("proficiency").each([&](const Spot& step) {
        need_length(step, 2);
        const double challenge = element(step, 0).fraction();
        if (!statistics.steps.empty() && challenge <= statistics.steps.back().challenge)
            throw step.wrong("a higher challenge rating than the one before");
        statistics.steps.push_back({challenge, element(step, 1).number(0, proficiency_max)});
    });
    spot.at("rows").each([&](const Spot& entry) {
        rules::ChallengeRow row;
        row.challenge = entry.at("challenge").fraction();
        const bool is_known = std::any_of(
            statistics.steps.begin(),
            statistics.steps.end(),
            [&](const rules::ChallengeStep& step) { return step.challenge == row.challenge; }
        );
        if (!is_known)
            throw entry.at("challenge")
                .wrong("a challenge rating listed above", ErrorKind::dangling_reference);
        if (!statistics.rows.empty() && row.challenge <= statistics.rows.back().challenge)
            throw entry.at("challenge").wrong("a higher challenge rating than the one before");
        row.armor_class = read_quartiles(entry, "armor_class");
        row.hit_points = read_quartiles(entry, "hit_points");
        row.attack = read_quartiles(entry, "attack");
        row.save_dc = read_quartiles(entry, "save_dc");
        row.damage = read_quartiles(entry, "damage");
        row.attacks_per_turn = read_quartiles(entry, "attacks_per_turn");
        row.ability = read_quartiles(entry, "ability");
        statistics.rows.push_back(row);
    });
    if (statistics.rows.empty()) throw spot.at("rows").wrong("at least one row");
}

} // namespace

void read_creature_building(const Spot& top, rules::Rulebook& rulebook) {
    rules::CreatureBuilding& building = rulebook.creature_building;
    if (rulebook.family == rules::Family::four_degree) {
        read_tables(top.at("creature_building"), building.tables);
        read_hazards(top.at("hazard_building"), building.tables, building.hazards);
        read_step(top.at("elite_weak").at("elite"), building.elite);
        read_step(top.at("elite_weak").at("weak"), building.weak);
    } else {
        read_statistics(top.at("challenge_statistics"), building.statistics);
    }
    read_archetypes(top.at("archetypes"), rulebook);
}

} // namespace store
