#include "game/effects.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace game {

namespace {

using rules::BonusType;
using rules::ConditionRule;
using rules::Effect;
using rules::EffectKind;
using rules::RollMode;
using rules::Rulebook;

using Words = std::vector<std::string>;

bool is_one_of(const Words& words, const std::string& word) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

bool touches(const Effect& effect, const Words& words) {
    return std::any_of(
        effect.applies_to.begin(),
        effect.applies_to.end(),
        [&](const std::string& word) { return is_one_of(words, word); }
    );
}

int amount_of(const Effect& effect, int value) {
    return effect.amount + effect.amount_per_value * value;
}

bool holds_at(const Effect& effect, int value) {
    return effect.from_value == 0 || value >= effect.from_value;
}

std::string holding_name(const HoldingCondition& holding) {
    std::string name = holding.rule->name;
    if (holding.rule->has_value && holding.value > 0) name += " " + std::to_string(holding.value);
    if (!holding.because.empty()) name += " (" + holding.because + ")";
    return name;
}

// Per bonus type only the highest bonus and the worst penalty count; untyped ones all do.
void settle(EffectiveNumber& number) {
    std::map<BonusType, Contribution*> best;
    std::map<BonusType, Contribution*> worst;
    for (Contribution& contribution : number.contributions) {
        if (contribution.bonus_type == BonusType::untyped) continue;
        contribution.counts = false;
        auto& strongest = contribution.amount >= 0 ? best : worst;
        Contribution*& kept = strongest[contribution.bonus_type];
        if (kept == nullptr || std::abs(contribution.amount) > std::abs(kept->amount))
            kept = &contribution;
    }
    for (auto& [type, contribution] : best)
        contribution->counts = true;
    for (auto& [type, contribution] : worst)
        contribution->counts = true;
    number.total = number.base;
    for (const Contribution& contribution : number.contributions) {
        if (contribution.counts) number.total += contribution.amount;
    }
}

void tell(EffectiveNumber& number, const std::string& note) {
    if (!note.empty() && !is_one_of(number.notes, note)) number.notes.push_back(note);
}

// One advantage and one disadvantage cancel, however many there are of each (SRD 5.1, Advantage).
RollMode combined(bool has_advantage, bool has_disadvantage) {
    if (has_advantage == has_disadvantage) return RollMode::normal;
    return has_advantage ? RollMode::advantage : RollMode::disadvantage;
}

// Everything that conditions and the GM's own effects do to a number known by these stat words.
EffectiveNumber effective(
    const Rulebook& rulebook,
    const Combatant& combatant,
    int base,
    const Words& words,
    EffectKind mode_kind
) {
    EffectiveNumber number;
    number.base = base;
    bool has_advantage = false;
    bool has_disadvantage = false;
    for (const HoldingCondition& holding : holding_conditions(rulebook, combatant)) {
        for (const Effect& effect : holding.rule->effects) {
            if (!holds_at(effect, holding.value)) continue;
            const bool is_mode = effect.kind == mode_kind;
            if (!is_mode && effect.kind != EffectKind::modifier && effect.kind != EffectKind::fails)
                continue;
            if (!touches(effect, words) && !(is_mode && mode_kind == EffectKind::rolls_against))
                continue;
            const std::string name = holding_name(holding);
            if (effect.kind == EffectKind::modifier) {
                number.contributions.push_back(
                    {name,
                     amount_of(effect, holding.value),
                     effect.bonus_type,
                     true,
                     effect.is_situational,
                     effect.note}
                );
            } else if (effect.kind == EffectKind::fails) {
                number.fails = number.fails || !effect.is_situational;
                tell(number, name + ": fails" + (effect.note.empty() ? "" : " " + effect.note));
                continue;
            } else if (!effect.is_situational || mode_kind == EffectKind::own_rolls) {
                has_advantage = has_advantage || effect.mode == RollMode::advantage;
                has_disadvantage = has_disadvantage || effect.mode == RollMode::disadvantage;
            }
            if (is_mode || effect.is_situational) {
                const std::string what = !is_mode                             ? ""
                                         : effect.mode == RollMode::advantage ? "advantage "
                                                                              : "disadvantage ";
                tell(number, name + ": " + what + effect.note);
            }
        }
    }
    for (const ActiveCondition& active : combatant.conditions) {
        for (const Modifier& modifier : active.modifiers) {
            if (!is_one_of(words, modifier.applies_to)) continue;
            const ConditionRule* rule = rules::find_condition(rulebook, active.key);
            const std::string name = !active.name.empty() ? active.name
                                     : rule != nullptr    ? rule->name
                                                          : active.key;
            number.contributions.push_back(
                {name, modifier.amount, modifier.bonus_type, true, false, {}}
            );
        }
    }
    number.mode = combined(has_advantage, has_disadvantage);
    settle(number);
    return number;
}

int modifier_of(const Modifiers& modifiers, std::string_view key, int otherwise) {
    const auto found = modifiers.find(std::string(key));
    return found == modifiers.end() ? otherwise : found->second;
}

bool is_in(const std::vector<rules::StatName>& stats, std::string_view key) {
    return std::any_of(stats.begin(), stats.end(), [key](const rules::StatName& stat) {
        return stat.key == key;
    });
}

// What a check is: in srd5 a save and a plain ability check carry the same key ("dex"), and
// initiative is the ability check.
enum class CheckKind { save, skill, perception, ability };

CheckKind kind_of(const Rulebook& rulebook, std::string_view stat) {
    if (is_in(rulebook.saves, stat)) return CheckKind::save;
    if (is_in(rulebook.skills, stat)) return CheckKind::skill;
    return stat == "perception" ? CheckKind::perception : CheckKind::ability;
}

std::string ability_of(const Rulebook& rulebook, std::string_view stat, CheckKind kind) {
    if (kind == CheckKind::perception) return "wis";
    if (kind == CheckKind::ability) return std::string(stat);
    return rules::find_stat(rulebook, stat)->ability;
}

// A save or skill that is not on the sheet is rolled with the plain ability modifier.
int base_of_check(
    const Rulebook& rulebook, const Combatant& combatant, std::string_view stat, CheckKind kind
) {
    const Statistics& sheet = combatant.statistics;
    const int plain = modifier_of(sheet.abilities, ability_of(rulebook, stat, kind), 0);
    switch (kind) {
    case CheckKind::save: return modifier_of(sheet.saves, stat, plain);
    case CheckKind::skill:
        return modifier_of(sheet.skills, stat, stat == "perception" ? sheet.perception : plain);
    case CheckKind::perception: return sheet.perception;
    case CheckKind::ability: return plain;
    }
    return plain;
}

Words words_of_check(const Rulebook& rulebook, std::string_view stat, CheckKind kind) {
    const std::string ability = ability_of(rulebook, stat, kind);
    Words words{"all_checks"};
    if (kind != CheckKind::ability) words.emplace_back(stat);
    if (kind == CheckKind::skill) words.emplace_back("skills");
    if (kind == CheckKind::save) words.insert(words.end(), {"all_saves", ability + "_saves"});
    // Saves of four-degree are checks resting on an ability; a save of srd5 is no ability check.
    if (kind != CheckKind::save || rulebook.family == rules::Family::four_degree)
        words.push_back(ability + "_checks");
    if (kind != CheckKind::save) words.emplace_back("ability_checks");
    return words;
}

} // namespace

std::vector<HoldingCondition>
holding_conditions(const Rulebook& rulebook, const Combatant& combatant) {
    std::map<std::string, HoldingCondition> holding; // by key: the strongest
    std::vector<std::pair<std::string, HoldingCondition>> waiting;
    for (const ActiveCondition& active : combatant.conditions) {
        const ConditionRule* rule = rules::find_condition(rulebook, active.key);
        if (rule != nullptr) waiting.push_back({active.key, {rule, active.value, {}}});
    }
    for (std::size_t at = 0; at < waiting.size(); ++at) {
        const auto [key, found] = waiting[at];
        const auto known = holding.find(key);
        if (known != holding.end() && known->second.value >= found.value) continue;
        holding[key] = found;
        for (const Effect& effect : found.rule->effects) {
            if (effect.kind != EffectKind::implies || !holds_at(effect, found.value)) continue;
            const ConditionRule* implied = rules::find_condition(rulebook, effect.condition);
            if (implied != nullptr)
                waiting.push_back(
                    {effect.condition, {implied, amount_of(effect, found.value), found.rule->name}}
                );
        }
    }
    std::set<std::string> suppressed;
    for (const auto& [key, found] : holding) {
        for (const Effect& effect : found.rule->effects) {
            if (effect.kind == EffectKind::overrides) suppressed.insert(effect.condition);
        }
    }
    std::vector<HoldingCondition> result;
    for (const auto& [key, found] : holding) {
        if (suppressed.count(key) == 0) result.push_back(found);
    }
    return result;
}

bool has_condition(const Rulebook& rulebook, const Combatant& combatant, std::string_view key) {
    const auto holding = holding_conditions(rulebook, combatant);
    return std::any_of(holding.begin(), holding.end(), [key](const HoldingCondition& condition) {
        return condition.rule->key == key;
    });
}

int condition_value(const Rulebook& rulebook, const Combatant& combatant, std::string_view key) {
    for (const HoldingCondition& holding : holding_conditions(rulebook, combatant)) {
        if (holding.rule->key == key) return holding.value;
    }
    return 0;
}

EffectiveNumber effective_ac(const Rulebook& rulebook, const Combatant& combatant) {
    // AC is a DC that rests on Dexterity (Player Core (ORC), Armor Class).
    return effective(
        rulebook,
        combatant,
        combatant.statistics.armor_class,
        {"ac", "all_dcs", "dex_dcs"},
        EffectKind::own_rolls
    );
}

EffectiveNumber
effective_check(const Rulebook& rulebook, const Combatant& combatant, std::string_view stat) {
    if (stat != "initiative") {
        const CheckKind kind = kind_of(rulebook, stat);
        const int base = base_of_check(rulebook, combatant, stat, kind);
        return effective(
            rulebook, combatant, base, words_of_check(rulebook, stat, kind), EffectKind::own_rolls
        );
    }
    const bool is_usual = combatant.initiative_stat.empty();
    const std::string& rolled =
        is_usual ? rulebook.turn.initiative_stat : combatant.initiative_stat;
    const CheckKind kind =
        is_in(rulebook.abilities, rolled) ? CheckKind::ability : kind_of(rulebook, rolled);
    Words words = words_of_check(rulebook, rolled, kind);
    words.emplace_back("initiative");
    int base = base_of_check(rulebook, combatant, rolled, kind);
    if (is_usual) base = combatant.statistics.initiative.value_or(base);
    return effective(rulebook, combatant, base, words, EffectKind::own_rolls);
}

EffectiveNumber
effective_attack(const Rulebook& rulebook, const Combatant& combatant, const Attack& attack) {
    const auto has_trait = [&](const char* trait) {
        return attack.traits.find(trait) != std::string::npos;
    };
    Words words{"all_checks", "attack"};
    if (has_trait("spell")) {
        words.emplace_back("spell_attack"); // rests on the casting ability, at any range
    } else if (attack.is_ranged) {
        words.insert(words.end(), {"ranged_attack", "dex_checks"});
    } else if (has_trait("finesse")) {
        words.insert(words.end(), {"melee_attack", "dex_checks"});
    } else {
        // A sheet does not say which ability an attack rests on: melee means Strength unless it is
        // finesse.
        words.insert(words.end(), {"melee_attack", "str_melee_attack", "str_checks"});
    }
    EffectiveNumber number =
        effective(rulebook, combatant, attack.bonus, words, EffectKind::own_rolls);
    const std::vector<int>& penalties =
        attack.is_agile ? rulebook.turn.agile_attack_penalty : rulebook.turn.attack_penalty;
    if (!penalties.empty() && combatant.attacks_made > 0) {
        const auto which =
            std::min(static_cast<std::size_t>(combatant.attacks_made), penalties.size() - 1);
        number.contributions.push_back(
            {"multiple attack penalty", penalties[which], BonusType::untyped, true, false, {}}
        );
        settle(number);
    }
    return number;
}

EffectiveNumber
effective_dc(const Rulebook& rulebook, const Combatant& combatant, std::string_view name) {
    const auto found = combatant.statistics.difficulty_classes.find(std::string(name));
    const int base = found == combatant.statistics.difficulty_classes.end() ? 0 : found->second;
    Words words{"all_dcs", std::string(name)};
    if (name == "spell_dc") words.emplace_back("mental_dcs");
    return effective(rulebook, combatant, base, words, EffectKind::own_rolls);
}

int effective_speed_ft(
    const Rulebook& rulebook, const Combatant& combatant, std::string_view kind
) {
    const auto found = combatant.statistics.speeds_ft.find(std::string(kind));
    if (found == combatant.statistics.speeds_ft.end() || found->second <= 0) return 0;
    int speed = found->second;
    int change = 0;
    double factor = 1.0;
    bool is_fixed = false;
    int fixed = 0;
    const auto count = [&](const Effect& effect, int value) {
        if (effect.kind == EffectKind::speed_changes) change += amount_of(effect, value);
        if (effect.kind == EffectKind::speed_factor) factor = std::min(factor, effect.factor);
        if (effect.kind == EffectKind::speed_becomes) {
            fixed = is_fixed ? std::min(fixed, effect.amount) : effect.amount;
            is_fixed = true;
        }
    };
    for (const HoldingCondition& holding : holding_conditions(rulebook, combatant)) {
        for (const Effect& effect : holding.rule->effects) {
            if (holds_at(effect, holding.value)) count(effect, holding.value);
        }
    }
    for (const ActiveCondition& active : combatant.conditions) {
        for (const Modifier& modifier : active.modifiers) {
            if (modifier.applies_to == "speed") change += modifier.amount;
        }
    }
    if (is_fixed) return fixed;
    speed = static_cast<int>(std::floor(speed * factor)) + change;
    // A reduced speed never falls below 5 feet (Player Core (ORC), Speed); srd5 knows no such
    // floor.
    const int floor = rulebook.family == rules::Family::four_degree ? 5 : 0;
    return std::max(speed, floor);
}

int effective_hp_max(const Rulebook& rulebook, const Combatant& combatant) {
    int maximum = combatant.statistics.hit_points;
    for (const HoldingCondition& holding : holding_conditions(rulebook, combatant)) {
        for (const Effect& effect : holding.rule->effects) {
            if (!holds_at(effect, holding.value)) continue;
            if (effect.kind == EffectKind::hp_max_changes) {
                maximum += effect.amount_per_value * holding.value *
                           std::max(1, combatant.statistics.level);
            }
            if (effect.kind == EffectKind::hp_max_factor) {
                maximum = static_cast<int>(std::floor(maximum * effect.factor));
            }
        }
    }
    return std::max(maximum, 1);
}

int actions_at_turn_start(const Rulebook& rulebook, const Combatant& combatant) {
    int actions = rulebook.turn.actions;
    for (const HoldingCondition& holding : holding_conditions(rulebook, combatant)) {
        for (const Effect& effect : holding.rule->effects) {
            if (!holds_at(effect, holding.value)) continue;
            // Stunned with a value takes actions from turn to turn instead of all of them (start of
            // turn).
            const bool is_counted_stun =
                holding.rule->fading == rules::Fading::lost_with_actions && holding.value > 0;
            if (effect.kind == EffectKind::cannot_act && !is_counted_stun) return 0;
            if (effect.kind == EffectKind::actions) actions += amount_of(effect, holding.value);
        }
    }
    return std::max(actions, 0);
}

static bool is_kept_from(const Rulebook& rulebook, const Combatant& combatant, EffectKind kind) {
    for (const HoldingCondition& holding : holding_conditions(rulebook, combatant)) {
        for (const Effect& effect : holding.rule->effects) {
            if (!holds_at(effect, holding.value)) continue;
            if (effect.kind == kind || effect.kind == EffectKind::cannot_act) return true;
        }
    }
    return false;
}

bool can_react(const Rulebook& rulebook, const Combatant& combatant) {
    return !is_kept_from(rulebook, combatant, EffectKind::cannot_react);
}

bool can_delay(const Rulebook& rulebook, const Combatant& combatant) {
    return rulebook.turn.has_delay && !is_kept_from(rulebook, combatant, EffectKind::cannot_delay);
}

EffectiveNumber attacks_against(const Rulebook& rulebook, const Combatant& combatant) {
    return effective(rulebook, combatant, 0, {}, EffectKind::rolls_against);
}

int death_threshold(const Rulebook& rulebook, const Combatant& combatant) {
    int threshold = rulebook.dying.death_at;
    for (const HoldingCondition& holding : holding_conditions(rulebook, combatant)) {
        for (const Effect& effect : holding.rule->effects) {
            if (effect.kind == EffectKind::death_threshold && holds_at(effect, holding.value)) {
                threshold += effect.amount_per_value * holding.value;
            }
        }
    }
    return std::max(threshold, 0);
}

} // namespace game
