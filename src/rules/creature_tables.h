// The tables that creatures and hazards are built from, as values of the rulebook: bands per level
// (four-degree), statistics per challenge rating (srd5), and our own archetypes.
#pragma once

#include "rules/dice.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace rules {

// How strong one number is for its level. four-degree: the columns of its tables, terrible to
// extreme. srd5: low, typical and high are first quartile, median and third quartile; saves, skills
// and Perception are untrained, trained or expert (no, single or double proficiency).
enum class Band { terrible, low, moderate, typical, high, extreme, untrained, trained, expert };

// "moderate"
std::string_view band_word(Band band);

// What a table prints for one level and band; both ends are equal unless it prints a range.
struct BandRange {
    int low = 0;
    int high = 0;

    bool operator==(const BandRange&) const = default;
};

// Damage as a table prints it: the average is a budget and may differ by one from the dice.
struct BandDamage {
    DiceExpression dice;
    int average = 0;

    bool operator==(const BandDamage&) const = default;
};

// One table: a column a band, weakest first, and a row a level from CreatureTables::level_min on.
template <class Cell>
struct BandTable {
    std::vector<Band> bands;
    std::vector<std::vector<std::optional<Cell>>> rows; // none: the table prints nothing there

    bool operator==(const BandTable&) const = default;
};

using NumberTable = BandTable<BandRange>;
using DamageTable = BandTable<BandDamage>;

// four-degree. Source: GM Core (ORC), Building Creatures.
struct CreatureTables {
    int level_min = 0;
    int level_max = -1; // below level_min: the rulebook has no such tables
    NumberTable ability;
    NumberTable perception;
    NumberTable skills;
    NumberTable armor_class;
    NumberTable saves;
    NumberTable hit_points;
    NumberTable resistance; // and weakness; low and high are the ends of the printed range
    NumberTable attack;
    DamageTable damage;
    NumberTable spell_dc;
    NumberTable spell_attack;
    std::vector<BandDamage> area_unlimited; // by level
    std::vector<BandDamage> area_limited;

    bool operator==(const CreatureTables&) const = default;
};

struct HazardOffense {
    int attack = 0;
    BandDamage damage;

    bool operator==(const HazardOffense&) const = default;
};

// four-degree; levels as in CreatureTables. Source: GM Core (ORC), Building Hazards.
struct HazardTables {
    NumberTable stealth_disable_dc;
    NumberTable armor_class;
    NumberTable saves;
    NumberTable hardness;
    NumberTable hit_points;
    NumberTable effect_dc;
    std::vector<HazardOffense> simple; // by level
    std::vector<HazardOffense> complex;
    int complex_stealth_is_less = 10; // a complex hazard rolls Stealth: the DC less this
    int broken_at_divisor = 2;        // broken when its HP fall to this part
    std::string source;               // document title

    bool operator==(const HazardTables&) const = default;
};

// What making a creature elite or weak changes. Source: Monster Core (ORC), Adjusting Creatures.
struct CreatureStep {
    struct HitPoints {
        int from = 0; // levels before the step, both ends included
        int to = 0;
        int amount = 0;

        bool operator==(const HitPoints&) const = default;
    };

    int level = 0;
    std::map<int, int> level_at; // other level changes at certain levels
    int armor_class = 0;
    int attack = 0;
    int dc = 0;
    int saves = 0;
    int perception = 0;
    int skills = 0;
    int damage = 0;
    int damage_limited_use = 0;
    std::vector<HitPoints> hit_points;

    bool operator==(const CreatureStep&) const = default;
};

// Of one number: how many creatures have it, and where the middle half of them lies.
struct Quartiles {
    int count = 0;
    double first = 0;
    double median = 0;
    double third = 0;

    bool operator==(const Quartiles&) const = default;
};

// srd5: the creatures of one challenge rating. A number without creatures has count 0.
struct ChallengeRow {
    double challenge = 0;
    Quartiles armor_class;
    Quartiles hit_points;
    Quartiles attack;  // the highest bonus
    Quartiles save_dc; // the highest DC, spells counted
    Quartiles damage;  // one turn without limited abilities, everything hits
    Quartiles attacks_per_turn;
    Quartiles ability; // modifiers, all six together

    bool operator==(const ChallengeRow&) const = default;
};

// A challenge rating with its proficiency bonus; all of them, lowest first.
struct ChallengeStep {
    double challenge = 0;
    int proficiency = 0;

    bool operator==(const ChallengeStep&) const = default;
};

// srd5. Source: computed from the creatures of SRD 5.1; proficiency: SRD 5.1, Monsters.
struct ChallengeStatistics {
    std::vector<ChallengeStep> steps;
    std::vector<ChallengeRow> rows; // challenge ratings without creatures have none
    int spell_dc_base = 8;          // a spell DC is this, proficiency and ability

    bool operator==(const ChallengeStatistics&) const = default;
};

// One attack of an archetype; bands only where they differ from the archetype's own.
struct ArchetypeAttack {
    std::string name;
    std::string damage_type;
    bool is_ranged = false;
    bool is_agile = false;
    std::string traits;
    std::optional<Band> attack;
    std::optional<Band> damage;

    bool operator==(const ArchetypeAttack&) const = default;
};

// A modifier by band, or fixed where a band says nothing (a beast's Intelligence).
struct ArchetypeAbility {
    std::optional<Band> band;
    int fixed = 0;

    bool operator==(const ArchetypeAbility&) const = default;
};

enum class AreaUse { none, unlimited, limited };

// Which band each number of a kind of creature takes. Our own.
struct Archetype {
    std::string key;
    std::string name;
    std::string summary; // one line
    Band armor_class = Band::moderate;
    Band hit_points = Band::moderate;
    Band perception = Band::moderate;
    Band attack = Band::moderate;
    Band damage = Band::moderate;
    std::optional<Band> spell_dc; // none: no magic
    AreaUse area_damage = AreaUse::none;
    std::map<std::string, ArchetypeAbility> abilities; // every one
    std::map<std::string, Band> saves;                 // every one
    std::map<std::string, Band> skills;
    std::map<std::string, int> speeds_ft;
    std::vector<ArchetypeAttack> attacks; // the first is the main one
    std::map<std::string, Band> resistances;
    std::map<std::string, Band> weaknesses;
    std::vector<std::string> immunities;
    std::string note;
    int hit_die = 0;                       // srd5: sides, by size
    Band attacks_per_turn = Band::typical; // srd5
    std::string attack_ability;            // srd5: attacks are made with it
    std::string spell_ability;             // srd5: magic rests on it

    bool operator==(const Archetype&) const = default;
};

// All of the above; in each rulebook only the parts of its family are filled.
struct CreatureBuilding {
    CreatureTables tables;
    HazardTables hazards;
    CreatureStep elite;
    CreatureStep weak;
    ChallengeStatistics statistics;
    std::vector<Archetype> archetypes;

    bool operator==(const CreatureBuilding&) const = default;
};

// The archetype with this key, or nullptr.
const Archetype* find_archetype(const CreatureBuilding& building, std::string_view key);

// The cell of a level and band. Levels outside take the nearest; where the table has no such band
// or prints nothing, the nearest weaker one counts, else the weakest printed. nullptr: an empty
// table.
const BandRange*
find_cell(const NumberTable& table, const CreatureTables& levels, int level, Band band);
const BandDamage*
find_cell(const DamageTable& table, const CreatureTables& levels, int level, Band band);

} // namespace rules
