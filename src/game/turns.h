// Turn order and the run of turns: initiative, whose turn it is, and what the rules do by
// themselves at the start and the end of a turn. All functions keep the invariant that `order`
// holds exactly the combatants with standing in_order, and that `current` is one of them while the
// fight runs.
#pragma once

#include "game/encounter.h"
#include "rules/dice.h"
#include "rules/rulebook.h"

#include <optional>
#include <string>
#include <vector>

namespace game {

// The modifier for an initiative roll: effective value of its initiative stat, conditions counted.
int initiative_modifier(const rules::Rulebook& rulebook, const Combatant& combatant);

// Rolls d20 (with advantage or disadvantage where conditions say so) + modifier for one combatant;
// a whole group takes the roll of its first member. Returns the total.
int roll_initiative(
    Encounter& encounter, const rules::Rulebook& rulebook, Id combatant, rules::Dice& dice
);

// Rolls for everybody who has none yet; `only` limits it to one side.
void roll_missing_initiative(
    Encounter& encounter,
    const rules::Rulebook& rulebook,
    rules::Dice& dice,
    std::optional<Side> only
);

// Typed total, -20..99; the whole group gets it. While running, the combatant moves to its new
// place.
void set_initiative(Encounter& encounter, const rules::Rulebook& rulebook, Id combatant, int total);

// Which stat is rolled ("stealth"); empty: the rulebook's usual one.
void set_initiative_stat(Encounter& encounter, Id combatant, const std::string& stat);

// Sorts `order` by initiative, ties by the rulebook (four-degree: opponents before PCs; srd5:
// higher Dexterity first, common practice, no source; then stable), groups together. Those without
// one come last.
void sort_order(Encounter& encounter, const rules::Rulebook& rulebook);

// Starts round 1 with the first in order; needs at least one combatant in order. Everybody's
// initiative must be set (false otherwise, nothing changed).
bool begin_fight(Encounter& encounter, const rules::Rulebook& rulebook);

// Ends the current turn, steps to the next combatant in order (next round at the end of the list)
// and starts its turn. Notices of both are collected; prompts of both are added. Returns a line:
// "Round 3: Ysolde Marr".
std::string advance_turn(Encounter& encounter, const rules::Rulebook& rulebook);

// Who follows the current combatant, `steps` turns on (1 = next); no_id when nobody is in order.
Id upcoming(const Encounter& encounter, int steps);

// The current combatant delays: what would happen at the end of its turn happens now, and it leaves
// the order. False when it may not (not its turn, a condition forbids it, or the rulebook has no
// delay). Source: Player Core (ORC), Delay; wording of the effects from memory.
bool delay_turn(Encounter& encounter, const rules::Rulebook& rulebook);

// A delaying combatant comes back right after the current turn: it becomes the current one, its
// initiative is that of the combatant whose turn it follows.
bool return_from_delay(Encounter& encounter, const rules::Rulebook& rulebook, Id combatant);

// Readies "trigger: action" / uses it (spends the reaction) / an empty text drops it.
void ready_action(Encounter& encounter, Id combatant, const std::string& text);
bool use_readied(Encounter& encounter, const rules::Rulebook& rulebook, Id combatant);

void spend_action(Encounter& encounter, Id combatant, int actions); // negative gives back; 0..total
void set_reaction_used(Encounter& encounter, Id combatant, bool is_used);
void set_attacks_made(Encounter& encounter, Id combatant, int attacks); // 0..9
void use_reminder(Encounter& encounter, Id combatant, Id reminder, int change);

// Puts it directly before `other` in the order (no_id: at the end): the GM's hand has the last
// word.
void move_in_order(Encounter& encounter, Id combatant, Id other);

void set_hidden(Encounter& encounter, Id combatant, bool is_hidden);
void set_note(Encounter& encounter, Id combatant, const std::string& note);
void rename_combatant(Encounter& encounter, Id combatant, const std::string& name);

// Puts combatants into one group (they share the highest initiative among them) / dissolves it.
void make_group(
    Encounter& encounter, const rules::Rulebook& rulebook, const std::vector<Id>& members
);
void leave_group(Encounter& encounter, Id combatant);

// Takes an opponent out of the fight for good; a party member becomes absent. If it was its turn,
// the next one starts.
void remove_combatant(Encounter& encounter, const rules::Rulebook& rulebook, Id combatant);

} // namespace game
