// The fight as it stands: who takes part, in which order, and what is running on whom.
// Plain values; what happens to them lives in turns.h, hurt.h, conditions.h and prompts.h.
// The party's combatants stay here between fights (standing `absent`), so their HP and conditions
// do.
#pragma once

#include "base/id.h"
#include "base/unknown_fields.h"
#include "game/statistics.h"
#include "rules/rulebook.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace game {

using base::Id;

enum class TurnEdge { start, end };

enum class DurationKind {
    until_removed, // the GM or a rule ends it
    until_turn,    // the next `edge` of the turn of `whose_turn`
    rounds,        // `rounds_left` such edges
    timed,         // `seconds_left` of in-world time; a fight's round takes 6
    until_rest,    // a night's (long) rest
    until_check,   // only `check` ends it
};

struct Duration {
    DurationKind kind = DurationKind::until_removed;
    Id whose_turn = base::no_id; // combatant; none: the top of the round counts
    TurnEdge edge = TurnEdge::end;
    int rounds_left = 0;
    int seconds_left = 0;
    base::UnknownFields unknown{};

    bool operator==(const Duration&) const = default;
};

// A check that may end a condition each turn of the creature that has it.
struct EndCheck {
    std::string stat; // save or skill key; empty: a flat check
    int dc = 15;
    TurnEdge at = TurnEdge::end;
    base::UnknownFields unknown{};

    bool operator==(const EndCheck&) const = default;
};

// A bonus or penalty the GM words: "+2 circumstance to AC".
struct Modifier {
    std::string applies_to; // a stat word, see rules::EffectKind
    int amount = 0;
    rules::BonusType bonus_type = rules::BonusType::untyped;
    base::UnknownFields unknown{};

    bool operator==(const Modifier&) const = default;
};

struct ActiveCondition {
    Id id = base::no_id;
    std::string key;  // of the rulebook; empty: an effect worded by the GM
    std::string name; // only for an effect worded by the GM: "Shield raised"
    int value = 0;    // 0: no value
    Duration duration{};
    std::optional<EndCheck> check;
    std::string damage;      // persistent damage: a dice expression
    std::string damage_type; // persistent damage
    std::vector<Modifier> modifiers;
    Id source = base::no_id; // combatant that caused it
    bool is_paused = false;  // its timer and fading stand still
    std::string note;
    base::UnknownFields unknown{};

    bool operator==(const ActiveCondition&) const = default;
};

enum class Side { party, opponents, others };

enum class Standing {
    in_order, // takes turns
    delaying, // out of the order until it returns
    defeated, // out of the order; below the list
    absent,   // not in this fight (a party member between fights, or away)
};

// What gives back the uses of something a character can do so many times; ordered by how seldom it
// comes.
enum class RefreshedBy { turn, round, fight, short_rest, rest, dawn, hand };

// When a reminder is shown.
enum class ComesUp { own_turn, hurt, falls, ally_hurt, ally_falls, initiative, exploring };

struct Reminder {
    Id id = base::no_id;
    std::string text;
    int uses = 1; // 0: not counted, only shown
    RefreshedBy refreshed_by = RefreshedBy::fight;
    ComesUp comes_up = ComesUp::own_turn;
    base::UnknownFields unknown{};

    bool operator==(const Reminder&) const = default;
};

struct DeathSaves { // srd5
    int successes = 0;
    int failures = 0;
    bool is_stable = false;
    base::UnknownFields unknown{};

    bool operator==(const DeathSaves&) const = default;
};

struct Combatant {
    Id id = base::no_id;
    std::string name;
    Side side = Side::opponents;
    Id character = base::no_id; // of Party; none for opponents
    Id creature = base::no_id;  // of CreatureShelf, where it came from
    Statistics statistics;      // for party members always the character's (see link_party)
    int hp = 0;
    int temp_hp = 0;
    Standing standing = Standing::in_order;
    bool is_dead = false;
    bool dies_at_zero = true;      // opponents as a rule; false: falls and dies as a PC does
    std::optional<int> initiative; // total; none: not yet rolled or typed
    std::string initiative_stat;   // what was rolled: "perception", "stealth"; empty: the usual one
    Id group = base::no_id;        // members of one group share an initiative and stand together
    bool is_hidden = false;        // from the players
    bool has_acted = false;        // this round
    int actions_left = 0;
    int actions_total = 0; // at the start of its turn, conditions counted
    int attacks_made = 0;  // this turn, for the multiple-attack penalty
    bool reaction_used = false;
    std::string readied;          // "trigger: action"; empty: nothing readied
    std::string concentrating_on; // srd5; empty: not concentrating
    DeathSaves death_saves{};
    std::vector<ActiveCondition> conditions;
    std::vector<Reminder> reminders;  // for party members always the character's (see link_party)
    std::map<Id, int> reminders_used; // reminder id to uses
    Id delayed_after = base::no_id;   // delaying: whom it followed; none: it was first
    bool is_delay_counted =
        false; // what delaying costs at the end of this turn has already happened
    std::string note;
    base::UnknownFields unknown{};

    bool operator==(const Combatant&) const = default;
};

// Something the rules ask for now; the GM rolls it, types it, or sets it aside.
enum class PromptKind {
    recovery_check,    // four-degree dying: d20 flat
    death_save,        // srd5: d20
    persistent_damage, // roll `dice`; then comes its flat check
    end_check,         // d20 + modifier against dc ends `condition`
    concentration,     // srd5: d20 + modifier against dc, else concentration ends
};

struct Prompt {
    Id id = base::no_id;
    PromptKind kind = PromptKind::end_check;
    Id combatant = base::no_id;
    Id condition = base::no_id;
    int dc = 0;
    int modifier = 0;
    rules::RollMode mode = rules::RollMode::normal; // of the d20; a typed roll is already settled
    std::string dice;                               // persistent damage
    std::string text; // what is asked, ready to be read: "Flat check DC 15 ends burning"
    base::UnknownFields unknown{};

    bool operator==(const Prompt&) const = default;
};

// What happened by itself at the last change of turn: "Frightened drops to 1".
struct Notice {
    Id combatant = base::no_id;
    std::string text;
    base::UnknownFields unknown{};

    bool operator==(const Notice&) const = default;
};

// A reminder that something called up: shown until it is used, set aside, or the turn passes.
struct CalledReminder {
    Id combatant = base::no_id;
    Id reminder = base::no_id;
    base::UnknownFields unknown{};

    bool operator==(const CalledReminder&) const = default;
};

enum class Phase { no_fight, gathering, running };

struct Encounter {
    Phase phase = Phase::no_fight;
    std::string name;
    int round = 0;            // from 1 while running
    int elapsed_seconds = 0;  // since the fight began
    Id current = base::no_id; // whose turn it is
    std::vector<Id> order;    // turn order: combatants with standing in_order, first to last
    std::vector<Combatant> combatants;
    std::vector<Prompt> prompts;
    std::vector<Notice> notices;
    std::vector<CalledReminder> called; // the latest last
    Id next_id = 1;                     // for combatants, conditions, prompts and groups
    base::UnknownFields unknown{};

    bool operator==(const Encounter&) const = default;
};

// The combatant with this id, or nullptr.
const Combatant* find_combatant(const Encounter& encounter, Id id);
Combatant* find_combatant(Encounter& encounter, Id id);

// The combatant of this character, or nullptr.
const Combatant* find_party_combatant(const Encounter& encounter, Id character);

// The condition instance with this id on that combatant, or nullptr.
const ActiveCondition* find_active(const Combatant& combatant, Id condition);
ActiveCondition* find_active(Combatant& combatant, Id condition);

// The first condition with this rulebook key, or nullptr; implied ones are not stored, see
// effects.h.
const ActiveCondition* find_active(const Combatant& combatant, const std::string& key);

} // namespace game
