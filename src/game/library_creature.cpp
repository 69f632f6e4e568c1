#include "game/library_creature.h"

#include "rules/dice.h"

#include <algorithm>
#include <utility>

namespace game {

namespace {

void add_words(std::string& text, const std::string& words) {
    if (words.empty()) return;
    if (!text.empty()) text += ", ";
    text += words;
}

std::string feet(int distance) {
    return std::to_string(distance) + " ft";
}

std::string parts_text(const std::vector<DamagePart>& damage) {
    std::string text;
    for (const DamagePart& part : damage) {
        if (!text.empty()) text += " and ";
        text += part.dice + " " + part.type;
    }
    return text;
}

std::string attack_traits(const LibraryAttack& attack) {
    constexpr int usual_reach_ft = 5;
    std::string traits;
    if (attack.is_spell) add_words(traits, "spell");
    if (attack.is_melee && attack.is_ranged) add_words(traits, "thrown");
    if (attack.is_melee && attack.reach_ft > usual_reach_ft)
        add_words(traits, "reach " + feet(attack.reach_ft));
    if (attack.range_ft > 0) {
        std::string range = "range " + std::to_string(attack.range_ft);
        if (attack.long_range_ft > 0) range += "/" + std::to_string(attack.long_range_ft);
        add_words(traits, range + " ft");
    }
    if (attack.escape_dc > 0) add_words(traits, "escape DC " + std::to_string(attack.escape_dc));
    add_words(traits, recharge_text(attack.recharge));
    if (attack.damage.size() > 1) add_words(traits, parts_text(attack.damage));
    return traits;
}

// What a routine deals when everything hits.
double full_damage(const LibraryCreature& creature, const std::vector<RoutinePart>& routine) {
    double total = 0;
    for (const RoutinePart& part : routine) {
        const LibraryAttack* attack = find_attack(creature, part.attack);
        if (attack == nullptr) continue;
        const auto dice = rules::parse_dice(damage_text(attack->damage));
        if (dice.ok()) total += part.count * rules::mean(dice.value());
    }
    return total;
}

const std::vector<RoutinePart>* strongest_routine(const LibraryCreature& creature) {
    const auto found = std::max_element(
        creature.routines.begin(),
        creature.routines.end(),
        [&](const std::vector<RoutinePart>& left, const std::vector<RoutinePart>& right) {
            return full_damage(creature, left) < full_damage(creature, right);
        }
    );
    return found == creature.routines.end() ? nullptr : &*found;
}

std::string upper_first(std::string word) {
    if (!word.empty() && word[0] >= 'a' && word[0] <= 'z')
        word[0] = static_cast<char>(word[0] - 'a' + 'A');
    return word;
}

std::string senses_text(const LibraryCreature& creature) {
    std::string text;
    for (const auto& [sense, distance] : creature.senses_ft)
        add_words(text, sense + " " + feet(distance));
    add_words(text, "passive Perception " + std::to_string(creature.passive_perception));
    return text;
}

void add_line(std::string& text, const std::string& line) {
    if (!text.empty()) text += "\n";
    text += line;
}

std::string notes_text(const LibraryCreature& creature) {
    std::string text;
    std::string routines;
    for (const auto& routine : creature.routines)
        routines += (routines.empty() ? "" : "; or ") + routine_text(routine);
    if (!routines.empty()) add_line(text, "Attacks of one turn: " + routines);
    for (const SaveEffect& effect : creature.save_effects)
        add_line(text, effect.name + ": " + save_effect_text(effect));
    for (const LibraryAttack& attack : creature.attacks) {
        if (!attack.note.empty()) add_line(text, attack.name + ": " + attack.note);
    }
    if (creature.hovers) add_line(text, "Hovers");
    for (const std::string& note : creature.notes)
        add_line(text, upper_first(note));
    return text;
}

} // namespace

const LibraryAttack* find_attack(const LibraryCreature& creature, const std::string& name) {
    const auto found = std::find_if(
        creature.attacks.begin(),
        creature.attacks.end(),
        [&](const LibraryAttack& attack) { return attack.name == name; }
    );
    return found == creature.attacks.end() ? nullptr : &*found;
}

std::string recharge_text(int lowest) {
    constexpr int highest = 6; // a d6 is rolled
    if (lowest <= 0) return {};
    if (lowest >= highest) return "recharge 6";
    return "recharge " + std::to_string(lowest) + "-6";
}

std::string damage_text(const std::vector<DamagePart>& damage) {
    if (damage.empty()) return {};
    rules::DiceExpression sum;
    for (const DamagePart& part : damage) {
        const auto dice = rules::parse_dice(part.dice);
        if (!dice.ok()) continue; // the library was read with every expression checked
        sum.terms.insert(sum.terms.end(), dice.value().terms.begin(), dice.value().terms.end());
        sum.constant += dice.value().constant;
    }
    return rules::to_text(sum);
}

std::string save_effect_text(const SaveEffect& effect) {
    std::string text = upper_first(effect.ability) + " DC " + std::to_string(effect.dc);
    if (!effect.on_hit_of.empty()) add_words(text, "on a hit of " + effect.on_hit_of);
    add_words(text, parts_text(effect.damage));
    if (effect.half_on_success) add_words(text, "half on a success");
    for (const std::string& outcome : effect.outcomes)
        add_words(text, outcome);
    add_words(text, effect.area);
    add_words(text, recharge_text(effect.recharge));
    if (effect.per_day > 0) add_words(text, std::to_string(effect.per_day) + " a day");
    if (effect.legendary_cost > 0)
        add_words(text, "legendary action (" + std::to_string(effect.legendary_cost) + ")");
    add_words(text, effect.note);
    return text;
}

std::string routine_text(const std::vector<RoutinePart>& routine) {
    std::string text;
    for (const RoutinePart& part : routine)
        add_words(text, std::to_string(part.count) + " " + part.attack);
    return text;
}

Statistics statistics_of(const LibraryCreature& creature) {
    Statistics statistics = creature.statistics;
    for (const LibraryAttack& source : creature.attacks) {
        Attack attack;
        attack.name = source.name;
        attack.bonus = source.bonus;
        attack.damage = damage_text(source.damage);
        if (!source.damage.empty()) attack.damage_type = source.damage.front().type;
        attack.is_ranged = source.is_ranged && !source.is_melee;
        attack.traits = attack_traits(source);
        statistics.attacks.push_back(std::move(attack));
    }
    if (const std::vector<RoutinePart>* routine = strongest_routine(creature)) {
        for (const RoutinePart& part : *routine) {
            const LibraryAttack* used = find_attack(creature, part.attack);
            if (used == nullptr) continue;
            const auto place = static_cast<std::size_t>(used - creature.attacks.data());
            statistics.attacks[place].per_turn += part.count;
        }
    }
    for (const Spellcasting& casting : creature.spellcasting) {
        int& dc = statistics.difficulty_classes["spell_dc"];
        dc = std::max(dc, casting.dc);
    }
    statistics.senses = senses_text(creature);
    statistics.creature_type = creature.type;
    statistics.notes = notes_text(creature);
    return statistics;
}

} // namespace game
