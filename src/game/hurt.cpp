#include "game/hurt.h"

#include "game/conditions.h"
#include "game/damage_taking.h"
#include "game/effects.h"
#include "game/reminding.h"
#include "game/turn_steps.h"

#include <algorithm>

namespace game {

namespace {

using rules::Family;
using rules::Rulebook;

struct Taken {
    int amount = 0;
    std::string why; // ", resists 5"
};

std::string why_of(const DamageTaking& taking) {
    std::string why;
    if (taking.is_immune) return ", immune";
    if (taking.is_halved) why += ", resistance halves";
    if (taking.is_doubled) why += ", vulnerability doubles";
    if (taking.is_weak) why += ", weakness " + std::to_string(taking.weakness);
    if (taking.resists) why += ", resists " + std::to_string(taking.resistance);
    if (taking.hardness > 0) why += ", hardness " + std::to_string(taking.hardness);
    return why;
}

Taken taken_of(const Rulebook& rulebook, const Combatant& combatant, const Damage& damage) {
    int amount = std::max(damage.amount, 0);
    std::string why;
    if (damage.is_half) {
        amount /= 2;
        why += ", half";
    }
    if (damage.is_doubled) {
        amount *= 2;
        why += ", double";
    }
    const DamageTaking taking = damage_taking(rulebook, combatant, damage.type);
    // Nothing is left to resist, but what is immune says so.
    if (amount > 0 || taking.is_immune || rulebook.damage.halves_and_doubles) why += why_of(taking);
    return {taken_amount(taking, amount), why};
}

std::string hurt_at_zero(
    Encounter& encounter,
    const Rulebook& rulebook,
    Combatant& combatant,
    const Damage& damage,
    const Fall& fall,
    int taken
) {
    if (combatant.dies_at_zero) return fall_at_zero(encounter, rulebook, combatant, fall);
    if (rulebook.family == Family::four_degree) {
        if (find_active(combatant, std::string("dying")) == nullptr) {
            // Unconscious at 0 HP: it gains dying again, its place in the order stays.
            return damage.is_nonlethal
                       ? "stays unconscious"
                       : gain_dying(encounter, rulebook, combatant.id, fall.is_critical);
        }
        const rules::DyingRules& rule = rulebook.dying;
        return raise_dying(
            encounter,
            rulebook,
            combatant,
            damage.is_critical ? rule.critical_damage_adds : rule.damage_adds
        );
    }
    if (taken >= effective_hp_max(rulebook, combatant)) {
        die(encounter, rulebook, combatant);
        return "dies at once";
    }
    const rules::DeathSaveRules& rule = rulebook.death_saves;
    return add_failed_death_saves(
        encounter,
        rulebook,
        combatant,
        damage.is_critical ? rule.critical_failures : rule.damage_failures
    );
}

bool is_massive(const Rulebook& rulebook, const Combatant& combatant, int taken, int left_over) {
    const int maximum = effective_hp_max(rulebook, combatant);
    // four-degree: from memory; srd5: SRD 5.1, Instant Death.
    if (rulebook.family == Family::four_degree)
        return taken >= rulebook.dying.massive_damage_factor * maximum;
    return left_over >= maximum;
}

void ask_concentration(
    Encounter& encounter, const Rulebook& rulebook, const Combatant& combatant, int taken
) {
    Prompt prompt;
    prompt.id = encounter.next_id++;
    prompt.kind = PromptKind::concentration;
    prompt.combatant = combatant.id;
    prompt.dc = concentration_dc(rulebook, taken);
    const EffectiveNumber save = effective_check(rulebook, combatant, "con");
    prompt.modifier = save.total;
    prompt.mode = save.mode;
    prompt.text = "Constitution save DC " + std::to_string(prompt.dc) + " keeps " +
                  combatant.concentrating_on + mode_words(save.mode);
    encounter.prompts.push_back(prompt);
}

// Player Core (ORC), unconscious (from memory): whoever sleeps with hit points left wakes when it
// is hurt or healed.
std::string wake_sleeper(Encounter& encounter, const Rulebook& rulebook, Id id) {
    const Combatant& combatant = *find_combatant(encounter, id);
    const ActiveCondition* asleep = find_active(combatant, std::string("unconscious"));
    if (rulebook.family != Family::four_degree || combatant.hp == 0 || asleep == nullptr) return {};
    end_condition(encounter, rulebook, id, asleep->id);
    return ", wakes";
}

void wake(Encounter& encounter, const Rulebook& rulebook, Id id) {
    Combatant& combatant = *find_combatant(encounter, id);
    combatant.death_saves = {};
    if (const ActiveCondition* dying = find_active(combatant, std::string("dying"))) {
        end_condition(encounter, rulebook, id, dying->id); // gives wounded
    }
    Combatant& awake = *find_combatant(encounter, id);
    erase_conditions(awake, "unconscious");
    std::erase_if(encounter.prompts, [id](const Prompt& prompt) {
        return prompt.combatant == id &&
               (prompt.kind == PromptKind::death_save || prompt.kind == PromptKind::recovery_check);
    });
}

} // namespace

DamagePreview
preview_damage(const Rulebook& rulebook, const Combatant& combatant, const Damage& damage) {
    const Taken taken = taken_of(rulebook, combatant, damage);
    DamagePreview preview;
    preview.taken = taken.amount;
    preview.from_temp = std::min(combatant.temp_hp, taken.amount);
    const int lost = taken.amount - preview.from_temp;
    preview.hp_after = std::max(combatant.hp - lost, 0);
    preview.drops = combatant.hp > 0 && preview.hp_after == 0;
    preview.text = std::to_string(damage.amount) + (damage.type.empty() ? "" : " " + damage.type) +
                   taken.why + ": loses " + std::to_string(lost);
    if (preview.from_temp > 0)
        preview.text += " and " + std::to_string(preview.from_temp) + " temporary";
    return preview;
}

std::string hurt(Encounter& encounter, const Rulebook& rulebook, Id id, const Damage& damage) {
    return hurt_in_turn_of(encounter, rulebook, id, damage, encounter.current);
}

std::string hurt_in_turn_of(
    Encounter& encounter, const Rulebook& rulebook, Id id, const Damage& damage, Id whose_turn
) {
    const Fall fall{damage.is_critical, damage.is_nonlethal, whose_turn};
    Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr) return {};
    const std::string name = combatant->name;
    if (combatant->is_dead) return name + " is dead already";
    const DamagePreview preview = preview_damage(rulebook, *combatant, damage);
    const std::string type = damage.type.empty() ? "" : " " + damage.type;
    if (preview.taken == 0)
        return name + " takes no" + (type.empty() ? " damage" : type + " damage");
    const int lost = preview.taken - preview.from_temp;
    combatant->temp_hp -= preview.from_temp;
    std::string text = name + " loses " + std::to_string(preview.taken) + type;
    if (preview.from_temp > 0) text += " (" + std::to_string(preview.from_temp) + " temporary)";
    if (lost == 0) {
        call_reminders(encounter, id, ComesUp::hurt);
        if (!combatant->concentrating_on.empty())
            ask_concentration(encounter, rulebook, *combatant, preview.taken);
        return text;
    }
    if (combatant->hp == 0)
        return text + ", " + hurt_at_zero(encounter, rulebook, *combatant, damage, fall, lost);
    const int left_over = lost - combatant->hp;
    combatant->hp = preview.hp_after;
    if (combatant->hp > 0) {
        call_reminders(encounter, id, ComesUp::hurt);
        if (!combatant->concentrating_on.empty())
            ask_concentration(encounter, rulebook, *combatant, preview.taken);
        return text + wake_sleeper(encounter, rulebook, id);
    }
    if (!combatant->dies_at_zero && !damage.is_nonlethal &&
        is_massive(rulebook, *combatant, preview.taken, left_over)) {
        die(encounter, rulebook, *combatant);
        return text + ", dies at once";
    }
    text += ", " + fall_at_zero(encounter, rulebook, *combatant, fall);
    call_reminders(encounter, id, ComesUp::falls);
    return text;
}

std::string heal(Encounter& encounter, const Rulebook& rulebook, Id id, int amount) {
    Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr || amount <= 0) return {};
    if (combatant->is_dead) return combatant->name + " is dead and stays so";
    const int before = combatant->hp;
    combatant->hp =
        std::min(combatant->hp + amount, std::max(effective_hp_max(rulebook, *combatant), before));
    if (before == 0 && combatant->hp > 0) wake(encounter, rulebook, id);
    const std::string woken = before > 0 ? wake_sleeper(encounter, rulebook, id) : std::string();
    combatant = find_combatant(encounter, id);
    if (before == 0 && combatant->standing == Standing::defeated)
        enter_order(encounter, rulebook, id);
    return combatant->name + " regains " + std::to_string(combatant->hp - before) + ", now " +
           std::to_string(combatant->hp) + (before == 0 && combatant->hp > 0 ? ", awake" : woken);
}

std::string give_temp_hp(Encounter& encounter, Id id, int amount) {
    Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr || amount < 0) return {};
    combatant->temp_hp = amount == 0 ? 0 : std::max(combatant->temp_hp, amount);
    return combatant->name + " has " + std::to_string(combatant->temp_hp) + " temporary HP";
}

void set_hp(Encounter& encounter, const Rulebook& rulebook, Id id, int hp) {
    Combatant* combatant = find_combatant(encounter, id);
    if (combatant != nullptr)
        combatant->hp = std::clamp(hp, 0, effective_hp_max(rulebook, *combatant));
}

int concentration_dc(const Rulebook& rulebook, int damage_taken) {
    const rules::DeathSaveRules& rule = rulebook.death_saves;
    const int dc = std::max(
        rule.concentration_dc_min, damage_taken / std::max(rule.concentration_damage_divisor, 1)
    );
    return rule.concentration_dc_max > 0 ? std::min(dc, rule.concentration_dc_max) : dc;
}

} // namespace game
