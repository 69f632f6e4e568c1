#include "rules/hazard_building.h"

#include <algorithm>
#include <cstddef>

namespace rules {

namespace {

int middle(const BandRange& range) {
    return range.low + (range.high - range.low) / 2;
}

// Reads numbers at one level; a typed value beats the table.
class Reader {
public:
    Reader(const CreatureTables& levels, const HazardChoice& choice)
        : levels_(levels), choice_(choice) {}

    int number(const std::string& member, const NumberTable& table, Band band) const {
        const BandRange* cell = find_cell(table, levels_, choice_.level, band);
        return typed_or(member, cell == nullptr ? 0 : middle(*cell));
    }

    int typed_or(const std::string& member, int otherwise) const {
        const auto typed = choice_.typed.find(member);
        return typed == choice_.typed.end() ? otherwise : typed->second;
    }

private:
    const CreatureTables& levels_;
    const HazardChoice& choice_;
};

} // namespace

BuiltHazard built_hazard(const Rulebook& rulebook, const HazardChoice& choice) {
    const CreatureTables& levels = rulebook.creature_building.tables;
    const HazardTables& tables = rulebook.creature_building.hazards;
    BuiltHazard built;
    built.name = choice.name;
    built.is_complex = choice.is_complex;
    const std::vector<HazardOffense>& offense = choice.is_complex ? tables.complex : tables.simple;
    if (offense.empty()) return built;
    const Reader read(levels, choice);
    built.level = std::clamp(choice.level, levels.level_min, levels.level_max);
    built.stealth_dc = read.number("stealth_dc", tables.stealth_disable_dc, choice.stealth);
    built.stealth_modifier = built.stealth_dc - tables.complex_stealth_is_less;
    built.disable_dc = read.number("disable_dc", tables.stealth_disable_dc, choice.disable);
    built.armor_class = read.number("armor_class", tables.armor_class, choice.armor_class);
    built.fortitude = read.number("fortitude", tables.saves, choice.good_save);
    built.reflex = read.number("reflex", tables.saves, choice.poor_save);
    built.hardness = read.number("hardness", tables.hardness, Band::moderate);
    built.hit_points = std::max(read.number("hit_points", tables.hit_points, Band::moderate), 1);
    built.broken_threshold = built.hit_points / tables.broken_at_divisor;
    const HazardOffense& row = offense[static_cast<std::size_t>(built.level - levels.level_min)];
    built.attack = read.typed_or("attack", row.attack);
    built.damage = row.damage.dice;
    built.effect_dc = read.number("effect_dc", tables.effect_dc, choice.effect_dc);
    return built;
}

} // namespace rules
