// What happens at 0 HP and below: four-degree dying and wounded, srd5 death saves, death.
// Sources: Player Core (ORC), Hit Points, Healing, and Dying; SRD 5.1, Combat / Dropping to 0 Hit
// Points.
#include "game/conditions.h"
#include "game/effects.h"
#include "game/hurt.h"
#include "game/turn_steps.h"
#include "game/turns.h"

#include <algorithm>

namespace game {

namespace {

using rules::Family;
using rules::Rulebook;

void give(Encounter& encounter, const Rulebook& rulebook, Id id, const char* key, int value) {
    ActiveCondition condition;
    condition.key = key;
    condition.value = value;
    add_condition(encounter, rulebook, id, condition);
}

// The one that falls moves to just before the turn that dropped it, so that all others act before
// its recovery check; what it had left of this round is over. One that falls in its own turn stays
// where it is: a whole round passes before its next turn anyway. If it delayed in that turn, it is
// back at the place it left.
void shift_before_turn(Encounter& encounter, Id id, Id whose_turn) {
    Combatant& combatant = *find_combatant(encounter, id);
    const bool is_in_line =
        combatant.standing == Standing::in_order || combatant.standing == Standing::delaying;
    const Combatant* acting = find_combatant(encounter, whose_turn);
    if (encounter.phase != Phase::running || acting == nullptr || !is_in_line) return;
    const std::vector<Id> line = line_of(encounter);
    combatant.is_delay_counted = false;
    combatant.standing = Standing::in_order;
    if (whose_turn == id) {
        set_line(encounter, line);
        return;
    }
    set_line(encounter, line);
    combatant.has_acted = true;
    combatant.initiative = acting->initiative;
    put_in_line(encounter, id, whose_turn);
    leave_group(encounter, id);
}

std::string
fall_four_degree(Encounter& encounter, const Rulebook& rulebook, Id id, const Fall& fall) {
    shift_before_turn(encounter, id, fall.whose_turn);
    if (!fall.is_nonlethal) return gain_dying(encounter, rulebook, id, fall.is_critical);
    give(encounter, rulebook, id, "unconscious", 0);
    return "falls unconscious";
}

std::string fall_srd5(Encounter& encounter, const Rulebook& rulebook, Id id, bool is_nonlethal) {
    Combatant& combatant = *find_combatant(encounter, id);
    combatant.death_saves = {};
    combatant.death_saves.is_stable = is_nonlethal;
    // SRD 5.2.1, Knocking Out a Creature: it keeps 1 hit point; 5.1 leaves it at 0 and stable.
    if (is_nonlethal && rulebook.edition == rules::SrdEdition::srd_5_2_1) combatant.hp = 1;
    give(encounter, rulebook, id, "unconscious", 0);
    return is_nonlethal ? "is knocked out" : "falls unconscious";
}

} // namespace

void erase_conditions(Combatant& combatant, const std::string& key) {
    std::erase_if(combatant.conditions, [&key](const ActiveCondition& active) {
        return active.key == key;
    });
}

std::string gain_dying(Encounter& encounter, const Rulebook& rulebook, Id id, bool is_critical) {
    const int gained = (is_critical ? rulebook.dying.gained_on_critical : rulebook.dying.gained) +
                       condition_value(rulebook, *find_combatant(encounter, id), "wounded");
    erase_conditions(*find_combatant(encounter, id), "unconscious"); // dying brings it anyway
    give(encounter, rulebook, id, "dying", gained);
    return find_combatant(encounter, id)->is_dead ? "dies" : "is dying " + std::to_string(gained);
}

std::string fall_at_zero(
    Encounter& encounter, const Rulebook& rulebook, Combatant& combatant, const Fall& fall
) {
    const Id id = combatant.id;
    combatant.hp = 0;
    end_concentration(encounter, combatant, "falls");
    if (combatant.dies_at_zero) {
        combatant.is_dead = !fall.is_nonlethal;
        if (fall.is_nonlethal) give(encounter, rulebook, id, "unconscious", 0);
        leave_order(encounter, rulebook, id, Standing::defeated);
        return fall.is_nonlethal ? "is knocked out" : "is defeated";
    }
    if (rulebook.family == Family::four_degree)
        return fall_four_degree(encounter, rulebook, id, fall);
    return fall_srd5(encounter, rulebook, id, fall.is_nonlethal);
}

std::string
raise_dying(Encounter& encounter, const Rulebook& rulebook, Combatant& combatant, int by) {
    const Id id = combatant.id;
    const ActiveCondition* dying = find_active(combatant, std::string("dying"));
    if (dying == nullptr) return {};
    set_condition_value(encounter, rulebook, id, dying->id, dying->value + by);
    const Combatant& after = *find_combatant(encounter, id);
    if (after.is_dead) return "dies";
    const int value = condition_value(rulebook, after, "dying");
    return value > 0 ? "dying " + std::to_string(value) : "no longer dying";
}

void die(Encounter& encounter, const Rulebook& rulebook, Combatant& combatant) {
    if (combatant.is_dead) return;
    const Id id = combatant.id;
    combatant.is_dead = true;
    combatant.hp = 0;
    erase_conditions(combatant, "dying");
    combatant.death_saves = {};
    end_concentration(encounter, combatant, "dies");
    encounter.notices.push_back({id, "Dies"});
    leave_order(encounter, rulebook, id, Standing::defeated);
}

std::string add_failed_death_saves(
    Encounter& encounter, const Rulebook& rulebook, Combatant& combatant, int failures
) {
    combatant.death_saves.is_stable = false;
    combatant.death_saves.failures += failures;
    if (combatant.death_saves.failures >= rulebook.death_saves.failures_to_death) {
        die(encounter, rulebook, combatant);
        return "dies";
    }
    return std::to_string(combatant.death_saves.failures) + " failed death saves";
}

void end_concentration(Encounter& encounter, Combatant& combatant, const std::string& why) {
    if (combatant.concentrating_on.empty()) return;
    encounter.notices.push_back(
        {combatant.id, "Concentration on " + combatant.concentrating_on + " ends: " + why}
    );
    combatant.concentrating_on.clear();
    std::erase_if(encounter.prompts, [&](const Prompt& prompt) {
        return prompt.combatant == combatant.id && prompt.kind == PromptKind::concentration;
    });
}

void stabilize(Encounter& encounter, const Rulebook& rulebook, Id id) {
    Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr || combatant->hp > 0 || combatant->is_dead) return;
    if (rulebook.family == Family::srd5) {
        combatant->death_saves = {};
        combatant->death_saves.is_stable = true;
        drop_prompts(encounter, id, base::no_id);
        return;
    }
    const ActiveCondition* dying = find_active(*combatant, std::string("dying"));
    if (dying != nullptr) end_condition(encounter, rulebook, id, dying->id);
}

} // namespace game
