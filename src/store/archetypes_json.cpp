// The archetypes of a rulebook: every stat they name must be one of it.
#include "rules/dice.h"
#include "store/creature_building_json.h"

#include <algorithm>
#include <set>
#include <string>
#include <vector>

namespace store {

namespace {

using base::ErrorKind;
using rules::Archetype;
using rules::Band;
using rules::Family;
using rules::Rulebook;

constexpr std::array area_words = {
    std::pair{std::string_view("unlimited"), rules::AreaUse::unlimited},
    std::pair{std::string_view("limited"), rules::AreaUse::limited},
};

// Which bands a number of this family may name.
std::vector<Band> level_bands(Family family) {
    if (family == Family::srd5) return {Band::low, Band::typical, Band::high};
    return {Band::terrible, Band::low, Band::moderate, Band::high, Band::extreme};
}

std::vector<Band> training_bands(Family family) {
    if (family == Family::srd5) return {Band::untrained, Band::trained, Band::expert};
    return level_bands(family);
}

Band band_of(const Spot& spot, const std::vector<Band>& allowed) {
    const Band band = spot.word(band_words);
    if (std::find(allowed.begin(), allowed.end(), band) != allowed.end()) return band;
    std::string known;
    for (const Band each : allowed)
        known += (known.empty() ? "" : ", ") + std::string(rules::band_word(each));
    throw spot.wrong("one of " + known);
}

bool is_in(const std::vector<rules::StatName>& stats, const std::string& key) {
    return std::any_of(stats.begin(), stats.end(), [&](const rules::StatName& stat) {
        return stat.key == key;
    });
}

bool is_damage_type(const Rulebook& rulebook, const std::string& key) {
    const std::vector<std::string>& types = rulebook.damage.types;
    return std::find(types.begin(), types.end(), key) != types.end();
}

std::string damage_type(const Spot& spot, const Rulebook& rulebook) {
    std::string key = spot.key();
    if (!is_damage_type(rulebook, key))
        throw spot.wrong("a damage type of the rulebook", ErrorKind::dangling_reference);
    return key;
}

template <class Read>
void each_entry(const Spot& object, Read read) {
    if (!object.value.is_object()) throw object.wrong("an object", ErrorKind::wrong_type);
    for (const auto& [key, ignored] : object.value.items())
        read(key, object.at(key));
}

void read_abilities(const Spot& spot, const Rulebook& rulebook, Archetype& archetype) {
    constexpr int lowest = -5; // the modifier of score 1
    constexpr int highest = 30;
    for (const rules::StatName& ability : rulebook.abilities) {
        const Spot each = spot.at(ability.key);
        rules::ArchetypeAbility& read = archetype.abilities[ability.key];
        if (each.value.is_number())
            read.fixed = each.number(lowest, highest);
        else
            read.band = band_of(each, level_bands(rulebook.family));
    }
    each_entry(spot, [&](const std::string& key, const Spot& each) {
        if (!is_in(rulebook.abilities, key))
            throw each.wrong("an ability of the rulebook", ErrorKind::dangling_reference);
    });
}

// srd5: saves that are not named are untrained; four-degree: all are named.
void read_saves(const Spot& spot, const Rulebook& rulebook, Archetype& archetype) {
    each_entry(spot, [&](const std::string& key, const Spot& each) {
        if (!is_in(rulebook.saves, key))
            throw each.wrong("a save of the rulebook", ErrorKind::dangling_reference);
        archetype.saves[key] = band_of(each, training_bands(rulebook.family));
    });
    for (const rules::StatName& save : rulebook.saves) {
        if (rulebook.family == Family::srd5)
            archetype.saves.try_emplace(save.key, Band::untrained);
        else
            spot.at(save.key);
    }
}

// four-degree: type to band. srd5: a list of types, as it halves and doubles.
void read_damage_traits(
    const Spot& entry,
    const char* key,
    const Rulebook& rulebook,
    std::map<std::string, Band>& traits
) {
    if (!entry.has(key)) return;
    const Spot spot = entry.at(key);
    if (rulebook.damage.halves_and_doubles) {
        spot.each([&](const Spot& each) { traits[damage_type(each, rulebook)] = Band::typical; });
        return;
    }
    each_entry(spot, [&](const std::string& type, const Spot& each) {
        if (!is_damage_type(rulebook, type))
            throw each.wrong("a damage type of the rulebook", ErrorKind::dangling_reference);
        traits[type] = band_of(each, {Band::low, Band::high});
    });
}

rules::ArchetypeAttack read_attack(const Spot& spot, const Rulebook& rulebook) {
    spot.allow_only({"name", "damage_type", "is_ranged", "is_agile", "traits", "attack", "damage"});
    rules::ArchetypeAttack attack;
    attack.name = spot.at("name").text();
    attack.damage_type = damage_type(spot.at("damage_type"), rulebook);
    attack.is_ranged = spot.truth_or("is_ranged");
    attack.is_agile = spot.truth_or("is_agile");
    attack.traits = spot.text_or("traits");
    const std::vector<Band> bands = level_bands(rulebook.family);
    if (spot.has("attack")) attack.attack = band_of(spot.at("attack"), bands);
    if (spot.has("damage")) attack.damage = band_of(spot.at("damage"), bands);
    return attack;
}

void read_immunities(const Spot& spot, const Rulebook& rulebook, Archetype& archetype) {
    spot.each([&](const Spot& each) {
        std::string key = each.key();
        if (!is_damage_type(rulebook, key) && rules::find_condition(rulebook, key) == nullptr)
            throw each.wrong("a damage type or a condition", ErrorKind::dangling_reference);
        archetype.immunities.push_back(std::move(key));
    });
}

std::string ability_key(const Spot& spot, const Rulebook& rulebook) {
    std::string key = spot.key();
    if (!is_in(rulebook.abilities, key))
        throw spot.wrong("an ability of the rulebook", ErrorKind::dangling_reference);
    return key;
}

void read_bands(const Spot& spot, const Rulebook& rulebook, Archetype& archetype) {
    const std::vector<Band> levels = level_bands(rulebook.family);
    const std::vector<Band> training = training_bands(rulebook.family);
    archetype.armor_class = band_of(spot.at("armor_class"), levels);
    archetype.hit_points = band_of(spot.at("hit_points"), levels);
    archetype.perception = band_of(spot.at("perception"), training);
    archetype.attack = band_of(spot.at("attack"), levels);
    archetype.damage = band_of(spot.at("damage"), levels);
    if (spot.has("spell_dc")) {
        archetype.spell_dc = band_of(spot.at("spell_dc"), levels);
        archetype.spell_ability = ability_key(spot.at("spell_ability"), rulebook);
    }
    if (spot.has("area_damage")) archetype.area_damage = spot.at("area_damage").word(area_words);
    if (rulebook.family != Family::srd5) return;
    constexpr int sides_max = 20;
    archetype.hit_die = spot.at("hit_die").number(4, sides_max);
    archetype.attacks_per_turn = band_of(spot.at("attacks_per_turn"), levels);
    archetype.attack_ability = ability_key(spot.at("attack_ability"), rulebook);
}

Archetype read_archetype(const Spot& spot, const Rulebook& rulebook) {
    constexpr int speed_max = 1000;
    spot.allow_only(
        {"key",        "name",   "summary",   "armor_class",    "hit_points",      "perception",
         "attack",     "damage", "spell_dc",  "spell_ability",  "area_damage",     "abilities",
         "saves",      "skills", "speeds_ft", "attacks",        "resistances",     "weaknesses",
         "immunities", "note",   "hit_die",   "attack_ability", "attacks_per_turn"}
    );
    Archetype archetype;
    archetype.key = spot.at("key").key();
    archetype.name = spot.at("name").text();
    archetype.summary = spot.at("summary").text();
    read_bands(spot, rulebook, archetype);
    read_abilities(spot.at("abilities"), rulebook, archetype);
    read_saves(spot.at("saves"), rulebook, archetype);
    each_entry(spot.at("skills"), [&](const std::string& key, const Spot& each) {
        if (!is_in(rulebook.skills, key))
            throw each.wrong("a skill of the rulebook", ErrorKind::dangling_reference);
        archetype.skills[key] = band_of(each, training_bands(rulebook.family));
    });
    const Spot speeds = spot.at("speeds_ft");
    speeds.allow_only({"land", "fly", "swim", "climb", "burrow"});
    each_entry(speeds, [&](const std::string& key, const Spot& each) {
        archetype.speeds_ft[key] = each.number(0, speed_max);
    });
    spot.at("attacks").each([&](const Spot& each) {
        archetype.attacks.push_back(read_attack(each, rulebook));
    });
    if (archetype.attacks.empty()) throw spot.at("attacks").wrong("at least one attack");
    read_damage_traits(spot, "resistances", rulebook, archetype.resistances);
    read_damage_traits(spot, "weaknesses", rulebook, archetype.weaknesses);
    if (spot.has("immunities")) read_immunities(spot.at("immunities"), rulebook, archetype);
    archetype.note = spot.text_or("note");
    return archetype;
}

} // namespace

void read_archetypes(const Spot& spot, Rulebook& rulebook) {
    std::vector<Archetype>& archetypes = rulebook.creature_building.archetypes;
    std::set<std::string> keys;
    spot.at("list").each([&](const Spot& each) {
        archetypes.push_back(read_archetype(each, rulebook));
        if (!keys.insert(archetypes.back().key).second)
            throw each.at("key").wrong("a key that stands once", ErrorKind::duplicate);
    });
    if (archetypes.empty()) throw spot.at("list").wrong("at least one archetype");
}

} // namespace store
