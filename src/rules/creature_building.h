// A creature made up on the spot: every number from a level or challenge rating and an archetype,
// each of them nudged between the rulebook's bands or typed freely.
#pragma once

#include "rules/creature_tables.h"
#include "rules/dice.h"
#include "rules/rulebook.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace rules {

// What the GM wants of one number. A typed value stands as typed: the weak and elite step leaves
// it.
struct NumberChoice {
    std::optional<Band> band;
    std::optional<int> value; // beats the band

    bool operator==(const NumberChoice&) const = default;
};

using NumberChoices = std::map<std::string, NumberChoice>; // by key of the NumberOffer

enum class BuildStep { weak = -1, none = 0, elite = 1 };

struct BuildChoice {
    std::string name;
    int level = 1;                   // four-degree
    double challenge = 1;            // srd5
    std::string archetype = "plain"; // an unknown one counts as the first of the rulebook
    BuildStep step = BuildStep::none;
    NumberChoices numbers;

    bool operator==(const BuildChoice&) const = default;
};

// One band of a number at this level, step counted.
struct BandOffer {
    Band band = Band::moderate;
    BandRange range; // as printed; for damage its average
    int value = 0;   // what it gives: the middle of the range, rounded down

    bool operator==(const BandOffer&) const = default;
};

// One number of the creature, where it comes from and what else it may be. Keys: armor_class,
// hit_points, perception, spell_dc, attacks_per_turn (srd5); attack and damage for the first
// attack, attack_2, damage_2 and so on for others; save_KEY, skill_KEY, ability_KEY. damage is the
// mean of one hit (four-degree) or of all hits of a turn (srd5). A skill or the spell DC that the
// archetype does not have comes in by being named in BuildChoice::numbers.
struct NumberOffer {
    std::string key;
    std::string name;          // "Fortitude"
    std::optional<Band> usual; // of the archetype; none: fixed, or it follows from other numbers
    std::optional<Band> band;  // in force; none: fixed, following or typed
    bool is_typed = false;
    int value = 0;
    std::vector<BandOffer> bands; // weakest first

    bool operator==(const NumberOffer&) const = default;
};

struct BuiltAttack {
    std::string name;
    int bonus = 0;
    DiceExpression damage;
    std::string damage_type;
    bool is_ranged = false;
    bool is_agile = false;
    std::string traits;
    int per_turn = 0; // srd5: so often in one turn; 0: instead of the others

    bool operator==(const BuiltAttack&) const = default;
};

struct BuiltArea {
    DiceExpression damage; // basic save against the spell DC
    bool is_limited = false;

    bool operator==(const BuiltArea&) const = default;
};

struct BuiltCreature {
    std::string name;
    int level = 0;        // four-degree, step counted
    double challenge = 0; // srd5, step counted
    int armor_class = 10;
    int hit_points = 1;
    std::optional<DiceExpression> hit_dice; // srd5
    int perception = 0;
    std::map<std::string, int> abilities;
    std::map<std::string, int> saves;
    std::map<std::string, int> skills;
    std::map<std::string, int> speeds_ft;
    std::vector<BuiltAttack> attacks;
    std::optional<int> spell_dc;
    std::optional<int> spell_attack;
    std::optional<BuiltArea> area;          // four-degree
    std::map<std::string, int> resistances; // type to amount; srd5: 0
    std::map<std::string, int> weaknesses;
    std::vector<std::string> immunities;
    std::string note;

    bool operator==(const BuiltCreature&) const = default;
};

// Every number with its bands, in the order of a sheet. Levels and ratings outside the tables take
// the nearest. Empty for a rulebook without archetypes. Sources: GM Core (ORC), Building Creatures;
// for srd5 see challenge_bands.h, and saves and skills are ability plus proficiency (SRD 5.1,
// Monsters).
std::vector<NumberOffer> number_offers(const Rulebook& rulebook, const BuildChoice& choice);

// The finished creature from the same numbers.
BuiltCreature built_creature(const Rulebook& rulebook, const BuildChoice& choice);

// Is there a weak or elite form here? four-degree: the table has a row for the level (it prints
// none for weak creatures of level 0 and below). srd5, our own: one challenge rating down or up the
// list. A step that there is not changes nothing.
bool has_step(const Rulebook& rulebook, const BuildChoice& choice, BuildStep step);

// four-degree: what the step changes for a creature of this level, or nullptr where the table has
// no row; and its level and the HP it gains or loses (below 0) by it.
const CreatureStep* find_step(const CreatureBuilding& building, BuildStep step, int level);
int stepped_level(const CreatureStep& step, int level);
int stepped_hit_points(const CreatureStep& step, int level);

// The offer with this key, or nullptr.
const NumberOffer* find_offer(const std::vector<NumberOffer>& offers, std::string_view key);

// The next weaker (-1) or stronger (+1) band than what the number has now, typed values included;
// none: there is no further one.
std::optional<Band> next_band(const NumberOffer& offer, int direction);

} // namespace rules
