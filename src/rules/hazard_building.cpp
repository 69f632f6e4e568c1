#include "rules/hazard_building.h"

#include "rules/creature_building_parts.h"
#include "rules/natural_dice.h"

#include <algorithm>
#include <cstddef>

namespace rules {

namespace {

int middle(const BandRange& range) {
    return range.low + (range.high - range.low) / 2;
}

const HazardOffense* offense_of(const Rulebook& rulebook, const HazardChoice& choice) {
    const CreatureTables& levels = rulebook.creature_building.tables;
    const HazardTables& tables = rulebook.creature_building.hazards;
    const std::vector<HazardOffense>& rows = choice.is_complex ? tables.complex : tables.simple;
    if (rows.empty()) return nullptr;
    const int last = static_cast<int>(rows.size()) - 1;
    return &rows[static_cast<std::size_t>(std::clamp(choice.level - levels.level_min, 0, last))];
}

// Collects the numbers of one hazard.
class Offers {
public:
    Offers(const Rulebook& rulebook, const HazardChoice& choice)
        : levels_(rulebook.creature_building.tables), choice_(choice) {}

    void add(const char* key, const char* name, const NumberTable& table, Band usual) {
        std::vector<BandOffer> bands;
        for (const Band band : table.bands)
            if (const BandRange* cell = find_cell(table, levels_, choice_.level, band))
                bands.push_back({band, *cell, middle(*cell)});
        offers.push_back(settled_offer(choice_.numbers, key, name, usual, std::move(bands), 0));
    }

    // One that has a single value at each level.
    void add_fixed(const char* key, const char* name, int value) {
        offers.push_back(settled_offer(choice_.numbers, key, name, {}, {}, value));
    }

    int only_cell(const NumberTable& table) const {
        const BandRange* cell = find_cell(table, levels_, choice_.level, Band::moderate);
        return cell == nullptr ? 0 : middle(*cell);
    }

    std::vector<NumberOffer> offers;

private:
    const CreatureTables& levels_;
    const HazardChoice& choice_;
};

} // namespace

std::vector<NumberOffer> hazard_offers(const Rulebook& rulebook, const HazardChoice& choice) {
    const HazardOffense* offense = offense_of(rulebook, choice);
    if (offense == nullptr) return {};
    const HazardTables& tables = rulebook.creature_building.hazards;
    Offers all(rulebook, choice);
    all.add("stealth_dc", "Stealth DC", tables.stealth_disable_dc, Band::high);
    all.add("disable_dc", "Disable DC", tables.stealth_disable_dc, Band::high);
    all.add("armor_class", "AC", tables.armor_class, Band::high);
    all.add_fixed("hardness", "Hardness", all.only_cell(tables.hardness));
    all.add_fixed("hit_points", "HP", all.only_cell(tables.hit_points));
    all.add("save_fortitude", "Fortitude", tables.saves, Band::high);
    all.add("save_reflex", "Reflex", tables.saves, Band::low);
    all.add_fixed("attack", "Attack", offense->attack);
    all.add_fixed("damage", "Damage", offense->damage.average);
    all.add("effect_dc", "Save DC", tables.effect_dc, Band::high);
    return std::move(all.offers);
}

BuiltHazard built_hazard(const Rulebook& rulebook, const HazardChoice& choice) {
    BuiltHazard built;
    built.name = choice.name;
    built.is_complex = choice.is_complex;
    const HazardOffense* offense = offense_of(rulebook, choice);
    if (offense == nullptr) return built;
    const CreatureTables& levels = rulebook.creature_building.tables;
    const HazardTables& tables = rulebook.creature_building.hazards;
    const std::vector<NumberOffer> offers = hazard_offers(rulebook, choice);
    const auto number = [&offers](std::string_view key) { return value_of(offers, key, 0); };
    built.level = std::clamp(choice.level, levels.level_min, levels.level_max);
    built.stealth_dc = number("stealth_dc");
    built.stealth_modifier = built.stealth_dc - tables.complex_stealth_is_less;
    built.disable_dc = number("disable_dc");
    built.armor_class = number("armor_class");
    built.fortitude = number("save_fortitude");
    built.reflex = number("save_reflex");
    built.hardness = number("hardness");
    built.hit_points = std::max(number("hit_points"), 1);
    built.broken_threshold = built.hit_points / tables.broken_at_divisor;
    built.attack = number("attack");
    const NumberOffer* damage = find_offer(offers, "damage");
    constexpr double half = 0.5; // as for creatures with a typed mean
    built.damage =
        damage->is_typed
            ? natural_dice(
                  damage->value, damage->value - half, damage->value + half, damage->value / 2
              )
            : offense->damage.dice;
    built.effect_dc = number("effect_dc");
    return built;
}

std::vector<DcList> hazard_dcs(const Rulebook& rulebook, int level, int adjustment) {
    const CreatureTables& levels = rulebook.creature_building.tables;
    const HazardTables& tables = rulebook.creature_building.hazards;
    if (tables.simple.empty()) return {};
    level = std::clamp(level, levels.level_min, levels.level_max);
    const auto list = [&](const char* title, const char* key, const NumberTable& table) {
        DcList dcs;
        dcs.title = std::string(title) + ", level " + std::to_string(level);
        dcs.source = tables.source;
        for (const Band band : table.bands) {
            const BandRange* cell = find_cell(table, levels, level, band);
            if (cell == nullptr) continue;
            const std::string name(band_word(band));
            dcs.rows.push_back({name, name, middle(*cell) + adjustment});
            dcs.pointers.push_back(
                std::string("/hazard_building/") + key + "/rows/" + std::to_string(level)
            );
        }
        return dcs;
    };
    return {
        list("Hazards: to find or disable", "stealth_disable_dc", tables.stealth_disable_dc),
        list("Hazards: the save they ask for", "effect_dc", tables.effect_dc)};
}

} // namespace rules
