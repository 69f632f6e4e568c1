// What the rules do at the start and the end of a turn.
// Sources: Player Core (ORC), encounter mode (start and end of your turn); SRD 5.1, Combat.
#include "game/conditions.h"
#include "game/effects.h"
#include "game/reminding.h"
#include "game/turn_steps.h"

#include <algorithm>

namespace game {

namespace {

using rules::ConditionRule;
using rules::Fading;
using rules::Rulebook;

void ask(Encounter& encounter, Prompt prompt) {
    prompt.id = encounter.next_id++;
    // A check that is still open is asked once, with the numbers of now; each round's persistent
    // damage is due on its own.
    for (Prompt& open : encounter.prompts) {
        if (prompt.kind == PromptKind::persistent_damage || open.kind != prompt.kind ||
            open.combatant != prompt.combatant || open.condition != prompt.condition)
            continue;
        prompt.id = open.id;
        open = std::move(prompt);
        return;
    }
    encounter.prompts.push_back(std::move(prompt));
}

void ask_end_check(
    Encounter& encounter,
    const Rulebook& rulebook,
    const Combatant& combatant,
    const ActiveCondition& active
) {
    Prompt prompt;
    prompt.kind = PromptKind::end_check;
    prompt.combatant = combatant.id;
    prompt.condition = active.id;
    prompt.dc = active.check->dc;
    std::string what = "Flat check";
    if (!active.check->stat.empty()) {
        const EffectiveNumber number = effective_check(rulebook, combatant, active.check->stat);
        const rules::StatName* stat = rules::find_stat(rulebook, active.check->stat);
        what = stat == nullptr ? active.check->stat : stat->name;
        if (number.fails) { // nothing to roll
            notice(
                encounter,
                combatant.id,
                what + " fails: " + condition_text(rulebook, active) + " stays"
            );
            return;
        }
        prompt.modifier = number.total;
        prompt.mode = number.mode;
    }
    prompt.text = what + " DC " + std::to_string(prompt.dc) + " against " +
                  condition_text(rulebook, active) + mode_words(prompt.mode);
    ask(encounter, prompt);
}

void ask_end_checks(
    Encounter& encounter, const Rulebook& rulebook, const Combatant& combatant, TurnEdge edge
) {
    for (const ActiveCondition& active : combatant.conditions) {
        const ConditionRule* rule = rules::find_condition(rulebook, active.key);
        const bool is_persistent = rule != nullptr && rule->fading == Fading::persistent_damage;
        if (active.is_paused || is_persistent || !active.check || active.check->at != edge)
            continue;
        ask_end_check(encounter, rulebook, combatant, active);
    }
}

void ask_persistent_damage(Encounter& encounter, const Rulebook& rulebook, Combatant& combatant) {
    if (std::exchange(combatant.is_delay_counted, false)) return;
    for (const ActiveCondition& active : combatant.conditions) {
        const ConditionRule* rule = rules::find_condition(rulebook, active.key);
        if (active.is_paused || rule == nullptr || rule->fading != Fading::persistent_damage)
            continue;
        Prompt prompt;
        prompt.kind = PromptKind::persistent_damage;
        prompt.combatant = combatant.id;
        prompt.condition = active.id;
        prompt.dice = active.damage;
        prompt.dc = active.check ? active.check->dc : rulebook.dying.persistent_flat_dc;
        prompt.text = "Roll " + active.damage +
                      (active.damage_type.empty() ? "" : " " + active.damage_type) +
                      " persistent damage";
        ask(encounter, prompt);
    }
}

void ask_recovery(Encounter& encounter, const Rulebook& rulebook, const Combatant& combatant) {
    if (combatant.is_dead) return;
    Prompt prompt;
    prompt.combatant = combatant.id;
    if (const ActiveCondition* dying = find_active(combatant, std::string("dying"));
        dying != nullptr && !dying->is_paused) {
        prompt.kind = PromptKind::recovery_check;
        prompt.condition = dying->id;
        prompt.dc = rulebook.dying.recovery_dc_base + dying->value;
        prompt.text = "Recovery check: flat DC " + std::to_string(prompt.dc);
        ask(encounter, prompt);
    } else if (rulebook.family == rules::Family::srd5 && combatant.hp == 0 && !combatant.dies_at_zero &&
               !combatant.death_saves.is_stable) {
        // A saving throw of no ability: what changes every save changes it too (exhaustion).
        const EffectiveNumber save = effective_check(rulebook, combatant, "death_save");
        prompt.kind = PromptKind::death_save;
        prompt.dc = rulebook.death_saves.dc;
        prompt.modifier = save.total;
        prompt.mode = save.mode;
        prompt.text = "Death save DC " + std::to_string(prompt.dc) + " (" +
                      std::to_string(combatant.death_saves.successes) + " good, " +
                      std::to_string(combatant.death_saves.failures) + " bad so far)" +
                      mode_words(prompt.mode);
        ask(encounter, prompt);
    }
}

// Stunned with a value takes that many actions, from turn to turn. Actions lost to it count toward
// those that slowed takes when it ends in the same turn (Player Core (ORC), conditions, stunned).
void regain_actions(Encounter& encounter, const Rulebook& rulebook, Id id) {
    Combatant* combatant = find_combatant(encounter, id);
    const int before = actions_at_turn_start(rulebook, *combatant);
    int actions = before;
    const ActiveCondition* stunned = nullptr;
    for (const ActiveCondition& active : combatant->conditions) {
        const ConditionRule* rule = rules::find_condition(rulebook, active.key);
        if (rule != nullptr && rule->fading == Fading::lost_with_actions && active.value > 0 &&
            !active.is_paused)
            stunned = &active;
    }
    if (stunned != nullptr && before > 0) {
        const int lost = std::min(stunned->value, before);
        const std::string text = condition_text(rulebook, *stunned);
        const int left = stunned->value - lost;
        set_condition_value(encounter, rulebook, id, stunned->id, left);
        combatant = find_combatant(encounter, id);
        actions = before - lost;
        if (left == 0) actions = std::min(actions, actions_at_turn_start(rulebook, *combatant));
        notice(
            encounter,
            id,
            text + " takes " + std::to_string(lost) + (lost == 1 ? " action" : " actions")
        );
    }
    combatant->actions_total = actions;
    combatant->actions_left = actions;
}

void fade(Encounter& encounter, const Rulebook& rulebook, Id id) {
    const std::vector<ActiveCondition> before = find_combatant(encounter, id)->conditions;
    for (const ActiveCondition& active : before) {
        const ConditionRule* rule = rules::find_condition(rulebook, active.key);
        if (active.is_paused || rule == nullptr || rule->fading != Fading::drops_at_turn_end)
            continue;
        const int value = active.value - 1;
        notice(
            encounter,
            id,
            value > 0 ? rule->name + " drops to " + std::to_string(value) : rule->name + " ends"
        );
        set_condition_value(encounter, rulebook, id, active.id, value);
    }
}

// Player Core (ORC), encounter mode, start of the turn (from memory): whoever is kept from acting
// regains no reaction either. srd5 gives it back in any case and only forbids its use (SRD 5.1,
// Combat, Reactions).
void regain_reaction(const Rulebook& rulebook, Combatant& combatant) {
    combatant.reaction_used =
        rulebook.family == rules::Family::four_degree && !can_react(rulebook, combatant);
}

} // namespace

void begin_round(Encounter& encounter, const Rulebook& rulebook) {
    encounter.round += 1;
    encounter.elapsed_seconds += rulebook.turn.round_seconds;
    for (Combatant& combatant : encounter.combatants) {
        combatant.has_acted = false;
        refresh_reminders(combatant, RefreshedBy::round);
    }
    run_round_timers(encounter, rulebook);
}

void start_of_turn(Encounter& encounter, const Rulebook& rulebook, Combatant& combatant) {
    const Id id = combatant.id;
    combatant.has_acted = false;
    combatant.readied.clear();
    combatant.attacks_made = 0;
    combatant.is_delay_counted = false;
    refresh_reminders(combatant, RefreshedBy::turn);
    run_turn_timers(encounter, rulebook, id, TurnEdge::start);
    Combatant* now = find_combatant(encounter, id);
    if (now == nullptr || now->standing != Standing::in_order) return;
    ask_end_checks(encounter, rulebook, *now, TurnEdge::start);
    ask_recovery(encounter, rulebook, *now);
    regain_actions(encounter, rulebook, id);
    regain_reaction(rulebook, *find_combatant(encounter, id));
}

void end_of_turn(Encounter& encounter, const Rulebook& rulebook, Combatant& combatant) {
    const Id id = combatant.id;
    combatant.has_acted = true;
    combatant.actions_left = 0;
    ask_persistent_damage(encounter, rulebook, combatant);
    ask_end_checks(encounter, rulebook, combatant, TurnEdge::end);
    fade(encounter, rulebook, id);
    run_turn_timers(encounter, rulebook, id, TurnEdge::end);
}

void end_of_turn_costs(Encounter& encounter, const Rulebook& rulebook, Combatant& combatant) {
    ask_persistent_damage(encounter, rulebook, combatant);
    combatant.is_delay_counted = true;
}

} // namespace game
