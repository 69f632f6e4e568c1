#include "store/creature_library_parts.h"

#include "game/roster.h"
#include "rules/dice.h"

#include <algorithm>
#include <array>

namespace store {

using base::ErrorKind;
using game::LibraryCreature;
using rules::Rulebook;
using Limits = game::Limits;

namespace {

constexpr int average_max = 9999;
constexpr int recharge_max = 6; // a d6 is rolled for it
constexpr int few_max = 20;     // attacks of a turn, uses a day

enum class AttackKind { melee, ranged, both };

constexpr std::array attack_kinds = {
    std::pair{std::string_view("melee"), AttackKind::melee},
    std::pair{std::string_view("ranged"), AttackKind::ranged},
    std::pair{std::string_view("both"), AttackKind::both},
};

// [["2d10+6", 17, "piercing"], ["1d8", 4, "acid"]]
std::vector<game::DamagePart>
read_damage(const Spot& entry, const char* key, const Rulebook& rulebook) {
    std::vector<game::DamagePart> damage;
    if (!entry.has(key)) return damage;
    entry.at(key).each([&](const Spot& part) {
        if (!part.value.is_array() || part.value.size() != 3)
            throw part.wrong("a list of dice, average and type", ErrorKind::wrong_type);
        damage.push_back(
            {dice_text({part.value[0], part.pointer + "/0"}),
             Spot{part.value[1], part.pointer + "/1"}.number(0, average_max),
             damage_type({part.value[2], part.pointer + "/2"}, rulebook)}
        );
    });
    return damage;
}

game::SaveEffect
read_save_effect(const Spot& entry, const Rulebook& rulebook, const LibraryCreature& creature) {
    entry.allow_only(
        {"name",
         "ability",
         "dc",
         "damage",
         "half_on_success",
         "outcomes",
         "on_hit_of",
         "recharge",
         "per_day",
         "area",
         "is_trait",
         "legendary_cost",
         "note"}
    );
    game::SaveEffect effect;
    effect.name = entry.at("name").text();
    effect.ability = entry.at("ability").key();
    if (!is_stat_of(rulebook.saves, effect.ability))
        throw entry.at("ability").wrong("the key of a save", ErrorKind::dangling_reference);
    effect.dc = entry.at("dc").number(1, Limits::dc_max);
    effect.damage = read_damage(entry, "damage", rulebook);
    effect.half_on_success = entry.truth_or("half_on_success");
    effect.outcomes = texts_or_none(entry, "outcomes");
    effect.on_hit_of = entry.text_or("on_hit_of");
    if (!effect.on_hit_of.empty() && game::find_attack(creature, effect.on_hit_of) == nullptr)
        throw entry.at("on_hit_of").wrong("an attack above", ErrorKind::dangling_reference);
    effect.area = entry.text_or("area");
    effect.recharge = entry.number_or("recharge", 0, 1, recharge_max);
    effect.per_day = entry.number_or("per_day", 0, 1, few_max);
    effect.legendary_cost = entry.number_or("legendary_cost", 0, 1, few_max);
    effect.is_trait = entry.truth_or("is_trait");
    effect.note = entry.text_or("note");
    return effect;
}

} // namespace

bool is_stat_of(const std::vector<rules::StatName>& stats, const std::string& key) {
    return std::any_of(stats.begin(), stats.end(), [&](const rules::StatName& stat) {
        return stat.key == key;
    });
}

bool is_damage_type(const Rulebook& rulebook, const std::string& type) {
    const std::vector<std::string>& types = rulebook.damage.types;
    return std::find(types.begin(), types.end(), type) != types.end();
}

std::string damage_type(const Spot& spot, const Rulebook& rulebook) {
    std::string type = spot.key();
    if (!is_damage_type(rulebook, type))
        throw spot.wrong("a damage type of the rulebook", ErrorKind::dangling_reference);
    return type;
}

std::string dice_text(const Spot& spot) {
    std::string written = spot.text();
    if (!rules::parse_dice(written).ok()) throw spot.wrong("dice such as 2d6+3");
    return written;
}

std::vector<std::string> texts_or_none(const Spot& entry, const char* key) {
    std::vector<std::string> texts;
    if (entry.has(key)) entry.at(key).each([&](const Spot& each) { texts.push_back(each.text()); });
    return texts;
}

game::LibraryAttack read_library_attack(const Spot& entry, const Rulebook& rulebook) {
    entry.allow_only(
        {"name",
         "bonus",
         "damage",
         "kind",
         "reach_ft",
         "range_ft",
         "is_spell",
         "escape_dc",
         "recharge",
         "note"}
    );
    game::LibraryAttack attack;
    attack.name = entry.at("name").text();
    attack.bonus = entry.at("bonus").number(Limits::modifier_min, Limits::modifier_max);
    attack.damage = read_damage(entry, "damage", rulebook);
    const AttackKind kind =
        entry.has("kind") ? entry.at("kind").word(attack_kinds) : AttackKind::melee;
    attack.is_melee = kind != AttackKind::ranged;
    attack.is_ranged = kind != AttackKind::melee;
    attack.is_spell = entry.truth_or("is_spell");
    attack.reach_ft = entry.number_or("reach_ft", attack.reach_ft, 0, distance_max);
    if (entry.has("range_ft")) {
        const Spot range = entry.at("range_ft");
        std::vector<int> steps;
        range.each([&](const Spot& each) { steps.push_back(each.number(1, distance_max)); });
        if (steps.empty() || steps.size() > 2) throw range.wrong("one distance or two");
        attack.range_ft = steps.front();
        if (steps.size() > 1) attack.long_range_ft = steps.back();
    }
    attack.escape_dc = entry.number_or("escape_dc", 0, 1, Limits::dc_max);
    attack.recharge = entry.number_or("recharge", 0, 1, recharge_max);
    attack.note = entry.text_or("note");
    return attack;
}

// [[["Bite", 1], ["Claw", 2]], [["Breath", 1]]]
void read_routines(const Spot& entry, LibraryCreature& creature) {
    if (!entry.has("routines")) return;
    entry.at("routines").each([&](const Spot& option) {
        std::vector<game::RoutinePart> routine;
        option.each([&](const Spot& part) {
            if (!part.value.is_array() || part.value.size() != 2)
                throw part.wrong("an attack and how often", ErrorKind::wrong_type);
            const Spot name{part.value[0], part.pointer + "/0"};
            if (game::find_attack(creature, name.text()) == nullptr)
                throw name.wrong("an attack above", ErrorKind::dangling_reference);
            routine.push_back(
                {name.text(), Spot{part.value[1], part.pointer + "/1"}.number(1, few_max)}
            );
        });
        if (routine.empty()) throw option.wrong("at least one attack");
        creature.routines.push_back(std::move(routine));
    });
}

void read_save_effects(const Spot& entry, const Rulebook& rulebook, LibraryCreature& creature) {
    if (!entry.has("save_effects")) return;
    entry.at("save_effects").each([&](const Spot& each) {
        creature.save_effects.push_back(read_save_effect(each, rulebook, creature));
    });
}

} // namespace store
