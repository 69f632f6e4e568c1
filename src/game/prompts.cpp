#include "game/prompts.h"

#include "game/conditions.h"
#include "game/effects.h"
#include "game/hurt.h"
#include "game/turn_steps.h"
#include "rules/checks.h"

#include <algorithm>

namespace game {

namespace {

using rules::Degree;
using rules::Rulebook;

constexpr int die_sides = 20;
constexpr int damage_max = 999;

std::string degree_text(Degree degree) {
    switch (degree) {
    case Degree::critical_failure: return "critical failure";
    case Degree::failure: return "failure";
    case Degree::success: return "success";
    case Degree::critical_success: return "critical success";
    }
    return {};
}

std::string
against(const Combatant& combatant, const std::string& what, int rolled, const Prompt& prompt) {
    std::string text =
        combatant.name + "'s " + what + " " + std::to_string(rolled + prompt.modifier);
    return text + " against " + std::to_string(prompt.dc) + ": ";
}

std::string
answer_recovery(Encounter& encounter, const Rulebook& rulebook, const Prompt& prompt, int rolled) {
    Combatant& combatant = *find_combatant(encounter, prompt.combatant);
    const std::string head = against(combatant, "recovery check", rolled, prompt);
    const rules::DyingRules& rule = rulebook.dying;
    int change = 0;
    switch (rules::four_degree_result(rolled, 0, prompt.dc)) {
    case Degree::critical_success: change = rule.recovery_critical_success; break;
    case Degree::success: change = rule.recovery_success; break;
    case Degree::failure: change = rule.recovery_failure; break;
    case Degree::critical_failure: change = rule.recovery_critical_failure; break;
    }
    const std::string outcome = raise_dying(encounter, rulebook, combatant, change);
    return head + (outcome.empty() ? "no longer dying" : outcome);
}

std::string answer_death_save(
    Encounter& encounter, const Rulebook& rulebook, const Prompt& prompt, int rolled
) {
    Combatant& combatant = *find_combatant(encounter, prompt.combatant);
    const rules::DeathSaveRules& rule = rulebook.death_saves;
    const int total = rolled + prompt.modifier;
    const std::string head = combatant.name + "'s death save " + std::to_string(total) + ": ";
    if (rolled == die_sides) {
        heal(encounter, rulebook, prompt.combatant, rule.natural_20_hp);
        return head + "awake with " +
               std::to_string(find_combatant(encounter, prompt.combatant)->hp) + " HP";
    }
    if (rolled == 1 || total < rule.dc) {
        return head + add_failed_death_saves(
                          encounter, rulebook, combatant, rolled == 1 ? rule.natural_1_failures : 1
                      );
    }
    combatant.death_saves.successes += 1;
    if (combatant.death_saves.successes < rule.successes_to_stable) {
        return head + std::to_string(combatant.death_saves.successes) + " successful death saves";
    }
    stabilize(encounter, rulebook, prompt.combatant);
    return head + "stable";
}

std::string answer_persistent(
    Encounter& encounter, const Rulebook& rulebook, const Prompt& prompt, int rolled
) {
    const Combatant* combatant = find_combatant(encounter, prompt.combatant);
    const ActiveCondition* active = find_active(*combatant, prompt.condition);
    if (active == nullptr) return {};
    Damage damage;
    damage.amount = rolled;
    damage.type = active->damage_type;
    // It belongs to the end of its own turn, whoever's turn it is when the damage is rolled.
    std::string text =
        "Persistent damage: " +
        hurt_in_turn_of(encounter, rulebook, prompt.combatant, damage, prompt.combatant);
    combatant = find_combatant(encounter, prompt.combatant);
    active = combatant == nullptr ? nullptr : find_active(*combatant, prompt.condition);
    if (active == nullptr || combatant->is_dead || combatant->standing == Standing::defeated)
        return text;
    Prompt flat;
    flat.id = encounter.next_id++;
    flat.kind = PromptKind::end_check;
    flat.combatant = prompt.combatant;
    flat.condition = prompt.condition;
    flat.dc = prompt.dc;
    flat.text =
        "Flat check DC " + std::to_string(flat.dc) + " ends " + condition_text(rulebook, *active);
    encounter.prompts.push_back(flat);
    return text;
}

std::string
answer_end_check(Encounter& encounter, const Rulebook& rulebook, const Prompt& prompt, int rolled) {
    const Combatant& combatant = *find_combatant(encounter, prompt.combatant);
    const ActiveCondition* active = find_active(combatant, prompt.condition);
    if (active == nullptr) return {};
    const std::string name = condition_text(rulebook, *active);
    const rules::ConditionRule* rule = rules::find_condition(rulebook, active->key);
    const bool is_flat = !active->check || active->check->stat.empty();
    const std::string head =
        against(combatant, is_flat ? "flat check" : active->check->stat + " save", rolled, prompt);
    bool is_success = false;
    bool is_critical = false;
    std::string said;
    if (rulebook.family == rules::Family::four_degree) {
        const Degree degree = rules::four_degree_result(rolled, prompt.modifier, prompt.dc);
        is_success = degree >= Degree::success;
        is_critical = degree == Degree::critical_success;
        said = degree_text(degree) + ", ";
    } else {
        is_success = rules::meets_dc(rolled, prompt.modifier, prompt.dc);
    }
    if (!is_success) return head + said + name + " stays";
    if (rule != nullptr && rule->save_lowers_value && active->value > 0 && !is_flat) {
        const int value = active->value - (is_critical ? 2 : 1);
        set_condition_value(encounter, rulebook, prompt.combatant, prompt.condition, value);
        return head + said +
               (value > 0 ? rule->name + " drops to " + std::to_string(value) : rule->name + " ends"
               );
    }
    end_condition(encounter, rulebook, prompt.combatant, prompt.condition);
    return head + said + name + " ends";
}

std::string answer_concentration(Encounter& encounter, const Prompt& prompt, int rolled) {
    Combatant& combatant = *find_combatant(encounter, prompt.combatant);
    const std::string head = against(combatant, "concentration", rolled, prompt);
    const std::string on = combatant.concentrating_on;
    if (rules::meets_dc(rolled, prompt.modifier, prompt.dc)) return head + "keeps " + on;
    end_concentration(encounter, combatant, "failed save");
    return head + "loses " + on;
}

} // namespace

std::string mode_words(rules::RollMode mode) {
    switch (mode) {
    case rules::RollMode::normal: return {};
    case rules::RollMode::advantage: return ", at advantage";
    case rules::RollMode::disadvantage: return ", at disadvantage";
    }
    return {};
}

const Prompt* find_prompt(const Encounter& encounter, Id prompt) {
    const auto found = std::find_if(
        encounter.prompts.begin(),
        encounter.prompts.end(),
        [prompt](const Prompt& each) { return each.id == prompt; }
    );
    return prompt == base::no_id || found == encounter.prompts.end() ? nullptr : &*found;
}

std::string answer_prompt(Encounter& encounter, const Rulebook& rulebook, Id id, int rolled) {
    const Prompt* found = find_prompt(encounter, id);
    if (found == nullptr || find_combatant(encounter, found->combatant) == nullptr) return {};
    const Prompt prompt = *found;
    const bool is_damage = prompt.kind == PromptKind::persistent_damage;
    if (rolled < (is_damage ? 0 : 1) || rolled > (is_damage ? damage_max : die_sides)) return {};
    set_prompt_aside(encounter, id);
    switch (prompt.kind) {
    case PromptKind::recovery_check: return answer_recovery(encounter, rulebook, prompt, rolled);
    case PromptKind::death_save: return answer_death_save(encounter, rulebook, prompt, rolled);
    case PromptKind::persistent_damage:
        return answer_persistent(encounter, rulebook, prompt, rolled);
    case PromptKind::end_check: return answer_end_check(encounter, rulebook, prompt, rolled);
    case PromptKind::concentration: return answer_concentration(encounter, prompt, rolled);
    }
    return {};
}

int roll_for_prompt(const Prompt& prompt, rules::Dice& dice) {
    if (prompt.kind != PromptKind::persistent_damage) {
        const int first = dice.d20();
        if (prompt.mode == rules::RollMode::normal) return first;
        const int second = dice.d20();
        return prompt.mode == rules::RollMode::advantage ? std::max(first, second)
                                                         : std::min(first, second);
    }
    const auto expression = rules::parse_dice(prompt.dice);
    return expression.ok() ? rules::roll(expression.value(), dice) : 0;
}

void help_prompt(Encounter& encounter, const Rulebook& rulebook, Id id) {
    for (Prompt& prompt : encounter.prompts) {
        if (prompt.id != id) continue;
        const Combatant* combatant = find_combatant(encounter, prompt.combatant);
        const ActiveCondition* active =
            combatant == nullptr ? nullptr : find_active(*combatant, prompt.condition);
        const rules::ConditionRule* rule =
            active == nullptr ? nullptr : rules::find_condition(rulebook, active->key);
        if (rule == nullptr || rule->fading != rules::Fading::persistent_damage) return;
        prompt.dc = std::min(prompt.dc, rulebook.dying.persistent_helped_dc);
        if (prompt.kind == PromptKind::end_check) {
            prompt.text = "Flat check DC " + std::to_string(prompt.dc) + " ends " +
                          condition_text(rulebook, *active);
        }
        return;
    }
}

void set_prompt_aside(Encounter& encounter, Id id) {
    std::erase_if(encounter.prompts, [id](const Prompt& prompt) { return prompt.id == id; });
}

} // namespace game
