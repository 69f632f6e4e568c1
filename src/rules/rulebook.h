// The rulebook: every table of one rule family that the program computes with, as plain values.
// Filled by store from assets/rules/*.json; no figure of a rulebook stands in code.
#pragma once

#include "base/unknown_fields.h"
#include "rules/advancement_tables.h"
#include "rules/creature_tables.h"
#include "rules/difficulty_tables.h"
#include "rules/encounter_tables.h"
#include "rules/recovery_tables.h"
#include "rules/wealth_tables.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace rules {

enum class Family { four_degree, srd5 };

// Which printing of the srd5 document is played; they differ in conditions and exhaustion.
enum class SrdEdition { srd_5_1, srd_5_2_1 };

// Bonuses and penalties of one type do not add up: the highest bonus and the worst penalty count.
// Untyped ones all add up. srd5 only has untyped ones.
enum class BonusType { untyped, circumstance, item, status };

enum class RollMode { normal, advantage, disadvantage };

// What a condition, or an effect worded by the GM, does to numbers. `applies_to` holds stat words:
//   ac; every save key; every skill key; perception; skills (all of them); initiative;
//   perception_initiative (only if it is rolled with Perception);
//   attack, melee_attack, ranged_attack, str_melee_attack, spell_attack; damage, str_damage;
//   spell_dc, class_dc; speed; all_saves; all_checks (every d20 roll); all_dcs (AC and other DCs);
//   str_checks ... cha_checks, str_saves ... cha_saves and str_dcs ... cha_dcs (everything resting
//   on that ability); ability_checks (srd5: no saves, no attacks); mental_dcs (of spells).
// stat_words() lists them all.
enum class EffectKind {
    modifier,         // bonus or penalty of `amount + amount_per_value * value` to applies_to
    own_rolls,        // advantage or disadvantage on own rolls named in applies_to
    rolls_against,    // advantage or disadvantage on attacks against it; `note` says when
    fails,            // automatically (critically) fails what applies_to names
    implies,          // also has `condition` (with amount as its value)
    overrides,        // suppresses `condition`
    gains_when_set,   // when gained, also gains `condition`, which stays (falls prone)
    actions,          // actions at the start of a turn change by amount + amount_per_value * value
    cannot_act,       // no actions at all
    cannot_react,     // no reactions
    cannot_delay,     // neither delay nor ready
    speed_becomes,    // every speed is `amount` feet
    speed_changes,    // every speed changes by amount + amount_per_value * value feet, at least 5
                      // (four-degree)
    speed_factor,     // every speed is multiplied by `factor`
    hp_max_changes,   // maximum HP changes by amount_per_value * value * max(1, level)
    hp_max_factor,    // maximum HP is multiplied by `factor`
    hp_lost_when_set, // HP lost when gained, amount_per_value * value * max(1, level); not damage
    death_threshold,  // dying value that kills changes by amount_per_value * value
    resists_all,      // resistance to all damage
    immune_to,        // immune to the condition, damage type or trait `condition`
    ends_concentration,
    dies,       // dead
    flat_check, // a flat check of `amount + amount_per_value * value` when `note` happens
    told,       // nothing to compute; `note` tells the GM
};

struct Effect {
    EffectKind kind = EffectKind::told;
    std::vector<std::string> applies_to;
    BonusType bonus_type = BonusType::untyped;
    int amount = 0;
    int amount_per_value = 0;
    double factor = 1.0;
    RollMode mode = RollMode::normal;
    std::string condition; // key of another condition, or a damage type for immune_to
    int from_value =
        0; // the effect holds only at this condition value or above (exhaustion levels)
    bool is_situational =
        false; // holds only in the situation that `note` names; shown, and counted as if it held
    std::string note; // own words, one short phrase

    bool operator==(const Effect&) const = default;
};

// How a condition runs by itself.
enum class Fading {
    stays,             // until a rule, a rest or the GM ends it
    drops_at_turn_end, // value falls by 1 at the end of the creature's own turn (frightened)
    recovery_check,    // dying: a recovery check at the start of each own turn
    persistent_damage, // damage at the end of each own turn, then a flat check
    lost_with_actions, // stunned with a value: falls by the actions it takes
};

struct ConditionRule {
    std::string key;     // "off_guard"
    std::string name;    // "off-guard"
    std::string summary; // own words, one line
    std::string group;
    bool has_value = false;
    int max_value = 0; // 0: no limit
    Fading fading = Fading::stays;
    int night_rest = 0; // change of the value by a night's (long) rest
    bool night_rest_ends = false;
    bool save_lowers_value =
        false; // a save against it lowers the value (2 on a critical success) instead of ending it
    std::vector<Effect> effects;

    bool operator==(const ConditionRule&) const = default;
};

// A save, skill or ability, in the order it is shown.
struct StatName {
    std::string key;     // "fortitude"
    std::string name;    // "Fortitude"
    std::string brief;   // "Fort"; at most five letters
    std::string ability; // key of the ability it rests on: "con"; empty for abilities themselves

    bool operator==(const StatName&) const = default;
};

struct TurnRules {
    int actions = 3; // four-degree; srd5 has 1 action and 1 bonus action, counted as 1 here
    int reactions = 1;
    int round_seconds = 6;
    bool has_delay = true;                      // srd5 has no delay
    bool opponents_win_ties = true;             // four-degree: opponents act before PCs on a tie
    bool ties_by_dexterity = false;             // srd5: common practice, no source
    std::string initiative_stat = "perception"; // or "dex"
    std::vector<int> attack_penalty;            // by attack of the turn, from the first: 0, -5, -10
    std::vector<int> agile_attack_penalty;      // 0, -4, -8

    bool operator==(const TurnRules&) const = default;
};

// four-degree: Player Core (ORC), Hit Points, Healing, and Dying.
struct DyingRules {
    int gained = 1;
    int gained_on_critical = 2;
    int death_at = 4;
    int damage_adds = 1;
    int critical_damage_adds = 2;
    int recovery_dc_base = 10;
    int recovery_critical_success = -2;
    int recovery_success = -1;
    int recovery_failure = 1;
    int recovery_critical_failure = 2;
    int wounded_gained = 1;
    int massive_damage_factor = 2; // a blow of this many times the maximum HP kills outright
    int persistent_flat_dc = 15;
    int persistent_helped_dc = 10;

    bool operator==(const DyingRules&) const = default;
};

// srd5: SRD 5.1, Combat / Dropping to 0 Hit Points.
struct DeathSaveRules {
    int dc = 10;
    int successes_to_stable = 3;
    int failures_to_death = 3;
    int natural_1_failures = 2;
    int natural_20_hp = 1;
    int damage_failures = 1;
    int critical_failures = 2;
    int concentration_dc_min = 10;
    int concentration_damage_divisor = 2;
    int concentration_dc_max = 0; // 0: no limit (5.1); 30 in 5.2.1
    bool opponents_die_at_zero = true;

    bool operator==(const DeathSaveRules&) const = default;
};

// How resistances work: by a fixed amount (four-degree) or halved and doubled (srd5).
struct DamageRules {
    bool halves_and_doubles = false;
    std::vector<std::string> types; // keys, in the order they are offered

    bool operator==(const DamageRules&) const = default;
};

// A single value of the tables that the GM replaced.
struct HouseRule {
    std::string pointer;  // JSON pointer into the tables
    std::string was{};    // as the rulebook has it, as JSON text
    std::string is_now{}; // as it counts

    bool operator==(const HouseRule&) const = default;
};

struct Rulebook {
    Family family = Family::four_degree;
    SrdEdition edition = SrdEdition::srd_5_1; // only read for srd5
    std::string title;                        // document titles, shown in About and Reference
    std::string licence;
    TurnRules turn;
    DyingRules dying;           // four-degree
    DeathSaveRules death_saves; // srd5
    DamageRules damage;
    DifficultyTables difficulty;
    EncounterTables encounters;
    AdvancementTables advancement;
    RecoveryTables recovery;
    WealthTables wealth;
    std::vector<StatName> abilities;
    std::vector<StatName> saves;
    std::vector<StatName> skills;
    std::vector<ConditionRule> conditions; // sorted by name
    std::vector<HouseRule> house_ruled;    // what the GM replaced, sorted by pointer
    CreatureBuilding creature_building;

    bool operator==(const Rulebook&) const = default;
};

// The condition with this key, or nullptr.
const ConditionRule* find_condition(const Rulebook& rulebook, std::string_view key);

// The save, skill or ability with this key, or nullptr.
const StatName* find_stat(const Rulebook& rulebook, std::string_view key);

// Did the GM replace the value at this JSON pointer, or any below it? "/dc_by_level" asks for a
// whole table, an empty pointer for the whole rulebook.
bool is_house_ruled(const Rulebook& rulebook, std::string_view pointer_prefix);

// Every word that `applies_to` may hold in this rulebook, sorted.
std::vector<std::string> stat_words(const Rulebook& rulebook);

} // namespace rules
