// Numbers by level and band. Source: GM Core (ORC), Building Creatures; elite and weak: Monster
// Core (ORC), Adjusting Creatures.
#include "rules/creature_building_parts.h"
#include "rules/natural_dice.h"

#include <algorithm>

namespace rules {

namespace {

const CreatureStep::HitPoints* step_row(const CreatureStep& step, int level) {
    for (const CreatureStep::HitPoints& row : step.hit_points) {
        if (row.from <= level && level <= row.to) return &row;
    }
    return nullptr;
}

// Collects the offers of one creature.
class Offers {
public:
    Offers(const Rulebook& rulebook, const BuildChoice& choice)
        : tables_(rulebook.creature_building.tables),
          step_(find_step(rulebook.creature_building, choice.step, choice.level)), choice_(choice) {
    }

    int changed_by(int CreatureStep::*change) const {
        return step_ == nullptr ? 0 : step_->*change;
    }

    int hit_points_change() const {
        return step_ == nullptr ? 0 : stepped_hit_points(*step_, choice_.level);
    }

    // A number from its table; `fixed` where the archetype names no band.
    void
    add(const std::string& key,
        const std::string& name,
        std::optional<Band> usual,
        const NumberTable& table,
        int change,
        int fixed = 0) {
        std::vector<BandOffer> bands;
        for (const Band band : table.bands) {
            const BandRange* cell = find_cell(table, tables_, choice_.level, band);
            if (cell == nullptr || !is_printed(table, band)) continue;
            const int low = cell->low + change;
            const int high = cell->high + change;
            bands.push_back({band, {low, high}, low + (high - low) / 2});
        }
        offers.push_back(settled_offer(choice_.numbers, key, name, usual, std::move(bands), fixed));
    }

    void add_damage(const std::string& key, const std::string& name, Band usual) {
        const int change = changed_by(&CreatureStep::damage);
        std::vector<BandOffer> bands;
        for (const Band band : tables_.damage.bands) {
            const BandDamage* cell = find_cell(tables_.damage, tables_, choice_.level, band);
            if (cell == nullptr) continue;
            const int average = cell->average + change;
            bands.push_back({band, {average, average}, average});
        }
        offers.push_back(settled_offer(choice_.numbers, key, name, usual, std::move(bands), 0));
    }

    std::vector<NumberOffer> offers;

private:
    template <class Cell>
    bool is_printed(const BandTable<Cell>& table, Band band) const {
        const auto column = static_cast<std::size_t>(
            std::find(table.bands.begin(), table.bands.end(), band) - table.bands.begin()
        );
        const int last = static_cast<int>(table.rows.size()) - 1;
        const auto row =
            static_cast<std::size_t>(std::clamp(choice_.level - tables_.level_min, 0, last));
        return table.rows[row][column].has_value();
    }

    const CreatureTables& tables_;
    const CreatureStep* step_;
    const BuildChoice& choice_;
};

// The dice of one attack: those of the table, or dice looked for where a mean was typed.
DiceExpression damage_dice(
    const Rulebook& rulebook, const BuildChoice& choice, const NumberOffer& offer, int change
) {
    const CreatureTables& tables = rulebook.creature_building.tables;
    if (!offer.band) {
        constexpr double half = 0.5; // the table's own constants are near half of the mean
        return natural_dice(offer.value, offer.value - half, offer.value + half, offer.value / 2);
    }
    const BandDamage* cell = find_cell(tables.damage, tables, choice.level, *offer.band);
    DiceExpression dice = cell == nullptr ? DiceExpression{} : cell->dice;
    dice.constant += change;
    return dice;
}

int resistance_amount(const CreatureTables& tables, int level, Band band) {
    const BandRange* cell = find_cell(tables.resistance, tables, level, band);
    return cell == nullptr ? 0 : cell->high;
}

} // namespace

const CreatureStep* find_step(const CreatureBuilding& building, BuildStep step, int level) {
    if (step == BuildStep::none) return nullptr;
    const CreatureStep& change = step == BuildStep::elite ? building.elite : building.weak;
    return step_row(change, level) == nullptr ? nullptr : &change;
}

int stepped_level(const CreatureStep& step, int level) {
    const auto exception = step.level_at.find(level);
    return level + (exception == step.level_at.end() ? step.level : exception->second);
}

int stepped_hit_points(const CreatureStep& step, int level) {
    const CreatureStep::HitPoints* row = step_row(step, level);
    return row == nullptr ? 0 : row->amount;
}

std::vector<NumberOffer> four_degree_offers(
    const Rulebook& rulebook, const Archetype& archetype, const BuildChoice& choice
) {
    const CreatureTables& tables = rulebook.creature_building.tables;
    Offers all(rulebook, choice);
    const auto change = [&](int CreatureStep::*part) { return all.changed_by(part); };
    all.add(
        "armor_class",
        "AC",
        archetype.armor_class,
        tables.armor_class,
        change(&CreatureStep::armor_class)
    );
    all.add("hit_points", "HP", archetype.hit_points, tables.hit_points, all.hit_points_change());
    for (const StatName& save : rulebook.saves) {
        all.add(
            "save_" + save.key,
            save.name,
            archetype.saves.at(save.key),
            tables.saves,
            change(&CreatureStep::saves)
        );
    }
    all.add(
        "perception",
        "Perception",
        archetype.perception,
        tables.perception,
        change(&CreatureStep::perception)
    );
    for (std::size_t place = 0; place < archetype.attacks.size(); ++place) {
        const ArchetypeAttack& attack = archetype.attacks[place];
        all.add(
            attack_key("attack", place),
            attack.name,
            attack.attack.value_or(archetype.attack),
            tables.attack,
            change(&CreatureStep::attack)
        );
        all.add_damage(
            attack_key("damage", place),
            attack.name + " damage",
            attack.damage.value_or(archetype.damage)
        );
    }
    if (archetype.spell_dc || choice.numbers.count("spell_dc") > 0) {
        all.add(
            "spell_dc",
            "Spell DC",
            archetype.spell_dc.value_or(Band::moderate),
            tables.spell_dc,
            change(&CreatureStep::dc)
        );
    }
    for (const StatName& ability : rulebook.abilities) {
        const ArchetypeAbility& source = archetype.abilities.at(ability.key);
        all.add(
            "ability_" + ability.key, ability.name, source.band, tables.ability, 0, source.fixed
        );
    }
    for (const auto& [key, band] : skills_of(rulebook, archetype, choice)) {
        all.add(
            "skill_" + key,
            find_stat(rulebook, key)->name,
            band.value_or(Band::moderate),
            tables.skills,
            change(&CreatureStep::skills)
        );
    }
    return std::move(all.offers);
}

void finish_four_degree(
    const Rulebook& rulebook,
    const Archetype& archetype,
    const BuildChoice& choice,
    const std::vector<NumberOffer>& offers,
    BuiltCreature& built
) {
    const CreatureBuilding& building = rulebook.creature_building;
    const CreatureTables& tables = building.tables;
    const CreatureStep* step = find_step(building, choice.step, choice.level);
    const int level = std::clamp(choice.level, tables.level_min, tables.level_max);
    built.level = step == nullptr ? level : stepped_level(*step, level);
    const int more_damage = step == nullptr ? 0 : step->damage;
    for (std::size_t place = 0; place < built.attacks.size(); ++place) {
        const NumberOffer* offer = find_offer(offers, attack_key("damage", place));
        built.attacks[place].damage = damage_dice(rulebook, choice, *offer, more_damage);
    }
    if (const NumberOffer* dc = find_offer(offers, "spell_dc")) {
        // A typed DC keeps the distance that the table prints between DC and attack.
        const Band band = dc->band.value_or(Band::moderate);
        const BandRange* attack = find_cell(tables.spell_attack, tables, choice.level, band);
        const BandRange* printed = find_cell(tables.spell_dc, tables, choice.level, band);
        if (attack != nullptr && printed != nullptr)
            built.spell_attack = dc->value + attack->low - printed->low;
    }
    if (archetype.area_damage != AreaUse::none) {
        const bool is_limited = archetype.area_damage == AreaUse::limited;
        const auto row = static_cast<std::size_t>(level - tables.level_min);
        const std::vector<BandDamage>& column =
            is_limited ? tables.area_limited : tables.area_unlimited;
        BuiltArea area{column[row].dice, is_limited};
        if (step != nullptr)
            area.damage.constant += is_limited ? step->damage_limited_use : step->damage;
        built.area = area;
    }
    for (const auto& [type, band] : archetype.resistances)
        built.resistances[type] = resistance_amount(tables, choice.level, band);
    for (const auto& [type, band] : archetype.weaknesses)
        built.weaknesses[type] = resistance_amount(tables, choice.level, band);
}

} // namespace rules
