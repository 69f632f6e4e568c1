#include "rules/creature_tables.h"

#include <algorithm>
#include <cstddef>

namespace rules {

namespace {

template <class Cell>
const Cell*
find_in(const BandTable<Cell>& table, const CreatureTables& levels, int level, Band band) {
    if (table.rows.empty() || table.bands.empty()) return nullptr;
    const int last = static_cast<int>(table.rows.size()) - 1;
    const auto row = static_cast<std::size_t>(std::clamp(level - levels.level_min, 0, last));
    const Cell* found = nullptr;
    for (std::size_t column = 0; column < table.bands.size(); ++column) {
        const auto& cell = table.rows[row][column];
        if (!cell || (found != nullptr && table.bands[column] > band)) continue;
        found = &*cell;
    }
    return found;
}

} // namespace

std::string_view band_word(Band band) {
    switch (band) {
    case Band::terrible: return "terrible";
    case Band::low: return "low";
    case Band::moderate: return "moderate";
    case Band::typical: return "typical";
    case Band::high: return "high";
    case Band::extreme: return "extreme";
    case Band::untrained: return "untrained";
    case Band::trained: return "trained";
    case Band::expert: return "expert";
    }
    return {};
}

const Archetype* find_archetype(const CreatureBuilding& building, std::string_view key) {
    const auto found = std::find_if(
        building.archetypes.begin(),
        building.archetypes.end(),
        [key](const Archetype& archetype) { return archetype.key == key; }
    );
    return found == building.archetypes.end() ? nullptr : &*found;
}

const BandRange*
find_cell(const NumberTable& table, const CreatureTables& levels, int level, Band band) {
    return find_in(table, levels, level, band);
}

const BandDamage*
find_cell(const DamageTable& table, const CreatureTables& levels, int level, Band band) {
    return find_in(table, levels, level, band);
}

} // namespace rules
