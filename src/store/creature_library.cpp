#include "store/creature_library.h"

#include "game/roster.h"
#include "rules/ability_modifier.h"
#include "store/asset_file.h"
#include "store/creature_library_parts.h"

#include <array>
#include <set>
#include <string_view>
#include <utility>

namespace store {

namespace {

using base::ErrorKind;
using game::LibraryCreature;
using rules::Rulebook;
using Limits = game::Limits;

constexpr const char* what = "the creature library";
constexpr int xp_max = 1000000;
constexpr int score_max = 30; // SRD 5.1, Using Ability Scores
constexpr int few_max = 20;   // caster level, legendary actions

constexpr std::array families = {
    std::pair{std::string_view("four_degree"), rules::Family::four_degree},
    std::pair{std::string_view("srd5"), rules::Family::srd5},
};

// {"con": 6}: keys of a list of the rulebook.
void read_modifiers(
    const Spot& entry,
    const char* key,
    const std::vector<rules::StatName>& stats,
    game::Modifiers& modifiers
) {
    if (!entry.has(key)) return;
    const Spot map = entry.at(key);
    if (!map.value.is_object()) throw map.wrong("an object", ErrorKind::wrong_type);
    for (const auto& [name, ignored] : map.value.items()) {
        const Spot each = map.at(name);
        if (!is_stat_of(stats, name))
            throw each.wrong("a key that is in the rulebook", ErrorKind::dangling_reference);
        modifiers[name] = each.number(Limits::modifier_min, Limits::modifier_max);
    }
}

void read_distances(
    const Spot& entry,
    const char* key,
    const std::vector<std::string>& known,
    std::map<std::string, int>& distances
) {
    if (!entry.has(key)) return;
    const Spot map = entry.at(key);
    map.allow_only(known);
    for (const std::string& name : known) {
        if (map.has(name)) distances[name] = map.at(name).number(0, distance_max);
    }
}

void read_abilities(const Spot& entry, const Rulebook& rulebook, LibraryCreature& creature) {
    const Spot scores = entry.at("scores");
    std::vector<int> read;
    scores.each([&](const Spot& each) { read.push_back(each.number(1, score_max)); });
    if (read.size() != rulebook.abilities.size())
        throw scores.wrong("a list of " + std::to_string(rulebook.abilities.size()) + " scores");
    for (std::size_t at = 0; at < read.size(); ++at) {
        const std::string& ability = rulebook.abilities[at].key;
        creature.ability_scores[ability] = read[at];
        creature.statistics.abilities[ability] = rules::ability_modifier(read[at]);
    }
}

void read_damage_traits(
    const Spot& entry,
    const char* key,
    const Rulebook& rulebook,
    std::vector<game::DamageTrait>& traits
) {
    if (!entry.has(key)) return;
    entry.at(key).each([&](const Spot& each) {
        game::DamageTrait trait;
        trait.type = damage_type(each, rulebook);
        traits.push_back(std::move(trait));
    });
}

// Challenge ratings are 0, 1/8, 1/4, 1/2 and whole numbers to 30 (SRD 5.1, Challenge).
double challenge_rating(const Spot& spot) {
    constexpr double highest = 30;
    const double challenge = spot.fraction();
    const bool is_fraction = challenge == 0.125 || challenge == 0.25 || challenge == 0.5;
    const bool is_whole = challenge >= 0 && challenge <= highest &&
                          challenge == static_cast<double>(static_cast<int>(challenge));
    if (!is_fraction && !is_whole) throw spot.wrong("a challenge rating");
    return challenge;
}

void read_statistics(const Spot& entry, const Rulebook& rulebook, LibraryCreature& creature) {
    game::Statistics& statistics = creature.statistics;
    statistics.challenge = challenge_rating(entry.at("challenge"));
    statistics.armor_class =
        entry.at("armor_class").number(Limits::armor_class_min, Limits::armor_class_max);
    statistics.hit_points = entry.at("hit_points").number(Limits::hp_min, Limits::hp_max);
    statistics.hit_dice = dice_text(entry.at("hit_dice"));
    read_abilities(entry, rulebook, creature);
    read_modifiers(entry, "saves", rulebook.saves, statistics.saves);
    for (const rules::StatName& save : rulebook.saves) // untrained: the ability alone
        statistics.saves.try_emplace(save.key, statistics.abilities[save.ability]);
    read_modifiers(entry, "skills", rulebook.skills, statistics.skills);
    const auto perception = statistics.skills.find("perception");
    statistics.perception =
        perception == statistics.skills.end() ? statistics.abilities["wis"] : perception->second;
    read_distances(
        entry, "speeds_ft", {"land", "fly", "swim", "climb", "burrow"}, statistics.speeds_ft
    );
    read_damage_traits(entry, "resistances", rulebook, statistics.resistances);
    read_damage_traits(entry, "weaknesses", rulebook, statistics.weaknesses);
    if (!entry.has("immunities")) return;
    entry.at("immunities").each([&](const Spot& each) {
        std::string immunity = each.key();
        if (!is_damage_type(rulebook, immunity) &&
            rules::find_condition(rulebook, immunity) == nullptr)
            throw each.wrong("a damage type or a condition", ErrorKind::dangling_reference);
        statistics.immunities.push_back(std::move(immunity));
    });
}

void read_spellcasting(const Spot& entry, const Rulebook& rulebook, LibraryCreature& creature) {
    if (!entry.has("spellcasting")) return;
    entry.at("spellcasting").each([&](const Spot& each) {
        each.allow_only({"ability", "dc", "bonus", "caster_level"});
        game::Spellcasting casting;
        casting.ability = each.at("ability").key();
        if (!is_stat_of(rulebook.abilities, casting.ability))
            throw each.at("ability").wrong("the key of an ability", ErrorKind::dangling_reference);
        casting.dc = each.at("dc").number(1, Limits::dc_max);
        if (each.has("bonus"))
            casting.bonus = each.at("bonus").number(Limits::modifier_min, Limits::modifier_max);
        casting.caster_level = each.number_or("caster_level", 0, 1, few_max);
        creature.spellcasting.push_back(casting);
    });
}

LibraryCreature read_creature(const Spot& entry, const Rulebook& rulebook) {
    entry.allow_only(
        {"key",       "name",       "size",         "type",         "tags",
         "challenge", "xp",         "armor_class",  "hit_points",   "hit_dice",
         "scores",    "saves",      "skills",       "speeds_ft",    "hovers",
         "senses",    "weaknesses", "resistances",  "immunities",   "passive_perception",
         "attacks",   "routines",   "save_effects", "spellcasting", "legendary_actions",
         "notes"}
    );
    LibraryCreature creature;
    creature.key = entry.at("key").key();
    creature.name = entry.at("name").text();
    creature.size = entry.at("size").key();
    creature.type = entry.at("type").key();
    creature.tags = texts_or_none(entry, "tags");
    creature.xp = entry.at("xp").number(0, xp_max);
    creature.passive_perception = entry.at("passive_perception").number(0, Limits::dc_max);
    creature.hovers = entry.truth_or("hovers");
    read_distances(
        entry,
        "senses",
        {"blindsight", "darkvision", "tremorsense", "truesight"},
        creature.senses_ft
    );
    if (entry.has("attacks")) {
        entry.at("attacks").each([&](const Spot& each) {
            creature.attacks.push_back(read_library_attack(each, rulebook));
        });
    }
    read_routines(entry, creature);
    read_save_effects(entry, rulebook, creature);
    read_spellcasting(entry, rulebook, creature);
    creature.legendary_actions = entry.number_or("legendary_actions", 0, 1, few_max);
    creature.notes = texts_or_none(entry, "notes");
    read_statistics(entry, rulebook, creature);
    return creature;
}

std::vector<LibraryCreature> read_all(const Spot& top, const Rulebook& rulebook) {
    top.allow_only({"format", "family", "source", "about", "creatures"});
    if (top.at("format").text() != "tablewick-creatures")
        throw top.at("format").wrong("\"tablewick-creatures\"", ErrorKind::wrong_format);
    if (top.at("family").word(families) != rulebook.family)
        throw top.at("family").wrong("the family of the rulebook", ErrorKind::wrong_format);
    std::vector<LibraryCreature> creatures;
    std::set<std::string> keys;
    top.at("creatures").each([&](const Spot& entry) {
        creatures.push_back(read_creature(entry, rulebook));
        if (!keys.insert(creatures.back().key).second)
            throw entry.at("key").wrong("a key that stands once", ErrorKind::duplicate);
    });
    return creatures;
}

} // namespace

base::Result<std::vector<LibraryCreature>> read_creature_library(
    const nlohmann::json& library, const std::string& file_name, const Rulebook& rulebook
) {
    try {
        return read_all({library, {}}, rulebook);
    } catch (const Wrong& wrong) {
        return error_of(wrong, what, file_name);
    }
}

base::Result<std::vector<LibraryCreature>>
load_creature_library(const std::filesystem::path& assets_folder, const Rulebook& rulebook) {
    std::vector<LibraryCreature> creatures;
    if (rulebook.family != rules::Family::srd5) return creatures;
    const auto read =
        read_asset_file(assets_folder / "creatures" / "srd51.json", what, [&](const Spot& top) {
            creatures = read_all(top, rulebook);
        });
    if (!read.ok()) return read.error();
    return creatures;
}

} // namespace store
