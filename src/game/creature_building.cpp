#include "game/creature_building.h"

#include "rules/dice.h"

#include <utility>

namespace game {

namespace {

std::vector<DamageTrait> traits_of(const std::map<std::string, int>& amounts) {
    std::vector<DamageTrait> traits;
    for (const auto& [type, amount] : amounts) {
        DamageTrait trait;
        trait.type = type;
        trait.amount = amount;
        traits.push_back(std::move(trait));
    }
    return traits;
}

void add_line(std::string& text, const std::string& line) {
    if (line.empty()) return;
    if (!text.empty()) text += "\n";
    text += line;
}

std::string area_text(const rules::BuiltArea& area, const std::optional<int>& dc) {
    std::string text = "Area damage: " + rules::to_text(area.damage);
    if (dc) text += ", basic save against DC " + std::to_string(*dc);
    if (area.is_limited) text += ", seldom";
    return text;
}

} // namespace

Statistics built_statistics(const rules::Rulebook& rulebook, const rules::BuildChoice& choice) {
    const rules::BuiltCreature built = rules::built_creature(rulebook, choice);
    Statistics statistics;
    statistics.level = built.level;
    statistics.challenge = built.challenge;
    statistics.armor_class = built.armor_class;
    statistics.hit_points = built.hit_points;
    if (built.hit_dice) statistics.hit_dice = rules::to_text(*built.hit_dice);
    statistics.perception = built.perception;
    statistics.abilities = built.abilities;
    statistics.saves = built.saves;
    statistics.skills = built.skills;
    statistics.speeds_ft = built.speeds_ft;
    for (const rules::BuiltAttack& source : built.attacks) {
        Attack attack;
        attack.name = source.name;
        attack.bonus = source.bonus;
        attack.damage = rules::to_text(source.damage);
        attack.damage_type = source.damage_type;
        attack.is_ranged = source.is_ranged;
        attack.is_agile = source.is_agile;
        attack.traits = source.traits;
        attack.per_turn = source.per_turn;
        statistics.attacks.push_back(std::move(attack));
    }
    if (built.spell_dc) statistics.difficulty_classes["spell_dc"] = *built.spell_dc;
    statistics.resistances = traits_of(built.resistances);
    statistics.weaknesses = traits_of(built.weaknesses);
    statistics.immunities = built.immunities;
    if (built.spell_attack)
        add_line(statistics.notes, "Spell attack: +" + std::to_string(*built.spell_attack));
    if (built.area) add_line(statistics.notes, area_text(*built.area, built.spell_dc));
    add_line(statistics.notes, built.note);
    return statistics;
}

Statistics hazard_statistics(const rules::Rulebook& rulebook, const rules::HazardChoice& choice) {
    const rules::BuiltHazard built = rules::built_hazard(rulebook, choice);
    Statistics statistics;
    statistics.level = built.level;
    statistics.armor_class = built.armor_class;
    statistics.hit_points = built.hit_points;
    statistics.saves = {{"fortitude", built.fortitude}, {"reflex", built.reflex}};
    statistics.skills = {{"stealth", built.stealth_modifier}};
    statistics.initiative = built.stealth_modifier;
    Attack attack;
    attack.name = "harm";
    attack.bonus = built.attack;
    attack.damage = rules::to_text(built.damage);
    statistics.attacks = {attack};
    statistics.difficulty_classes = {
        {"effect_dc", built.effect_dc},
        {"stealth_dc", built.stealth_dc},
        {"disable_dc", built.disable_dc}};
    statistics.hazard = built.is_complex ? Hazard::complex : Hazard::simple;
    statistics.hardness = built.hardness;
    add_line(
        statistics.notes,
        "Broken at " + std::to_string(built.broken_threshold) + " HP or fewer" +
            (built.is_complex ? "" : "; acts once, when it is set off")
    );
    return statistics;
}

} // namespace game
