// A ready creature of the library: the published figures as plain values, and what they come to as
// the numbers of a creature in a fight. Never saved; a copy on the shelf or in a fight is.
#pragma once

#include "game/statistics.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace game {

// One part of a hit: "1d8", acid, 4 on average (as printed: rounded down).
struct DamagePart {
    std::string dice; // an expression; a plain number where no dice are rolled
    int average = 0;
    std::string type;

    bool operator==(const DamagePart&) const = default;
};

struct LibraryAttack {
    std::string name;
    int bonus = 0;
    std::vector<DamagePart> damage; // all of it on every hit; empty: it only holds or poisons
    bool is_melee = true;
    bool is_ranged = false; // thrown weapons are both
    bool is_spell = false;
    int reach_ft = 5;
    int range_ft = 0;      // 0: none
    int long_range_ft = 0; // 0: none
    int escape_dc = 0;     // a hit also grapples; 0: it does not
    int recharge = 0;      // lowest d6 that brings it back; 0: always there
    std::string note;      // own words

    bool operator==(const LibraryAttack&) const = default;
};

// So many attacks of that name.
struct RoutinePart {
    std::string attack;
    int count = 1;

    bool operator==(const RoutinePart&) const = default;
};

// A save that it asks for.
struct SaveEffect {
    std::string name;
    std::string ability; // key of the save
    int dc = 0;
    std::vector<DamagePart> damage; // on a failure
    bool half_on_success = false;
    std::vector<std::string> outcomes; // of a failure, later stages included: "poisoned"
    std::string on_hit_of;             // the attack whose hit asks for it
    std::string area;                  // "cone 30 ft"
    int recharge = 0;                  // lowest d6 that brings it back
    int per_day = 0;
    int legendary_cost = 0;
    bool is_trait = false; // happens without an action
    std::string note;

    bool operator==(const SaveEffect&) const = default;
};

struct Spellcasting {
    std::string ability;
    int dc = 0;
    std::optional<int> bonus; // of spell attacks
    int caster_level = 0;     // 0: innate

    bool operator==(const Spellcasting&) const = default;
};

struct LibraryCreature {
    std::string key;  // "adult_black_dragon"
    std::string name; // as published
    std::string size; // "large"
    std::string type; // "dragon"
    std::vector<std::string> tags;
    int xp = 0;
    std::map<std::string, int> ability_scores;
    int passive_perception = 10;
    bool hovers = false;
    std::map<std::string, int> senses_ft; // "darkvision" to feet
    std::vector<LibraryAttack> attacks;
    // Multiattack: each entry is one whole turn of attacks, any of which may be chosen. Empty: one
    // attack a turn.
    std::vector<std::vector<RoutinePart>> routines;
    std::vector<SaveEffect> save_effects;
    std::vector<Spellcasting> spellcasting;
    int legendary_actions = 0; // a round
    std::vector<std::string> notes;
    // Challenge, AC, HP, hit dice, abilities, all six saves, skills, speeds, damage traits and
    // immunities; attacks, senses and notes are added by statistics_of.
    Statistics statistics;

    bool operator==(const LibraryCreature&) const = default;
};

// The attack with this name, or nullptr.
const LibraryAttack* find_attack(const LibraryCreature& creature, const std::string& name);

// All parts of the damage as one expression: "2d10+1d8+6"; empty if there is none.
std::string damage_text(const std::vector<DamagePart>& damage);

// "recharge 5-6"; empty for 0: always there.
std::string recharge_text(int lowest);

// "Dex DC 18, 12d8 acid, half on a success, line 60 by 5 ft, recharge 5-6".
std::string save_effect_text(const SaveEffect& effect);

// "2 Scimitar, 1 Dagger"; empty without a routine.
std::string routine_text(const std::vector<RoutinePart>& routine);

// The numbers for a fight or for the shelf: the routine that deals most when everything hits is
// counted into Attack::per_turn, what Statistics has no field for stands in its notes.
Statistics statistics_of(const LibraryCreature& creature);

} // namespace game
