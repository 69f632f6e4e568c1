#include "game/effects.h"

#include "base/text.h"
#include "game/effect_walk.h"
#include "rules/attack_penalty.h"
#include "rules/dice.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>

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

// What is gathered about one number while the conditions are walked through.
struct Tally {
    EffectiveNumber number;
    bool has_advantage = false;
    bool has_disadvantage = false;

    void tell(const std::string& who, const std::string& what, const std::string& note) {
        std::string text = who + ":";
        if (!what.empty()) text += " " + what;
        if (!note.empty()) text += " " + note;
        if (!is_one_of(number.notes, text)) number.notes.push_back(text);
    }

    void count_modifier(const HoldingCondition& holding, const Effect& effect) {
        const int amount = amount_of(effect, holding.value);
        if (amount == 0) return;
        const std::string name = holding_name(holding);
        number.contributions.push_back(
            {name, amount, effect.bonus_type, true, effect.is_situational, effect.note}
        );
        if (effect.is_situational) tell(name, {}, effect.note);
    }

    void count_failure(const HoldingCondition& holding, const Effect& effect) {
        number.fails = number.fails || !effect.is_situational;
        tell(holding_name(holding), "fails", effect.note);
    }

    // Own rolls count as if their situation held; attacks against it come from near and far at
    // once, so there only what always holds decides.
    void count_mode(const HoldingCondition& holding, const Effect& effect) {
        const bool is_good = effect.mode == RollMode::advantage;
        if (!effect.is_situational || effect.kind == EffectKind::own_rolls) {
            has_advantage = has_advantage || is_good;
            has_disadvantage = has_disadvantage || effect.mode == RollMode::disadvantage;
        }
        tell(holding_name(holding), is_good ? "advantage" : "disadvantage", effect.note);
    }

    // The bonuses and penalties worded by the GM, on a condition or alone.
    void count_worded(const Rulebook& rulebook, const Combatant& combatant, const Words& words) {
        for (const ActiveCondition& active : combatant.conditions) {
            for (const Modifier& modifier : active.modifiers) {
                if (!is_one_of(words, modifier.applies_to) || modifier.amount == 0) continue;
                const ConditionRule* rule = rules::find_condition(rulebook, active.key);
                const std::string name = !active.name.empty() ? active.name
                                         : rule != nullptr    ? rule->name
                                                              : active.key;
                number.contributions.push_back(
                    {name, modifier.amount, modifier.bonus_type, true, false, {}}
                );
            }
        }
    }

    // One advantage and one disadvantage cancel, however many there are of each (SRD 5.1,
    // Advantage).
    EffectiveNumber settled() {
        number.mode = has_advantage == has_disadvantage ? RollMode::normal
                      : has_advantage                   ? RollMode::advantage
                                                        : RollMode::disadvantage;
        settle(number);
        return number;
    }
};

// Everything that conditions and the GM's own effects do to a number known by these stat words.
EffectiveNumber
effective(const Rulebook& rulebook, const Combatant& combatant, int base, const Words& words) {
    Tally tally;
    tally.number.base = base;
    each_effect(rulebook, combatant, [&](const HoldingCondition& holding, const Effect& effect) {
        if (!touches(effect, words)) return;
        if (effect.kind == EffectKind::modifier) tally.count_modifier(holding, effect);
        if (effect.kind == EffectKind::fails) tally.count_failure(holding, effect);
        if (effect.kind == EffectKind::own_rolls) tally.count_mode(holding, effect);
    });
    tally.count_worded(rulebook, combatant, words);
    return tally.settled();
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
    if (stat == "perception") return CheckKind::perception;
    if (is_in(rulebook.abilities, stat) || stat.empty()) return CheckKind::ability;
    return CheckKind::skill; // a lore or the like, which the rulebook does not list
}

std::string ability_of(const Rulebook& rulebook, std::string_view stat, CheckKind kind) {
    if (kind == CheckKind::perception) return "wis";
    if (kind == CheckKind::ability) return std::string(stat);
    if (const rules::StatName* known = rules::find_stat(rulebook, stat)) return known->ability;
    // Lores rest on Intelligence (Player Core (ORC), Lore); a tool of srd5 on no fixed ability.
    return rulebook.family == rules::Family::four_degree ? "int" : "";
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

EffectiveNumber effective_initiative(const Rulebook& rulebook, const Combatant& combatant) {
    const bool is_usual = combatant.initiative_stat.empty();
    const std::string& rolled =
        is_usual ? rulebook.turn.initiative_stat : combatant.initiative_stat;
    const CheckKind kind =
        is_in(rulebook.abilities, rolled) ? CheckKind::ability : kind_of(rulebook, rolled);
    Words words = words_of_check(rulebook, rolled, kind);
    words.emplace_back("initiative");
    if (rolled == "perception") words.emplace_back("perception_initiative");
    int base = base_of_check(rulebook, combatant, rolled, kind);
    if (is_usual) base = combatant.statistics.initiative.value_or(base);
    return effective(rulebook, combatant, base, words);
}

// A sheet does not say which ability an attack rests on. Melee means Strength unless it is finesse,
// ranged means Dexterity, a spell rests on the casting ability at any range.
enum class AttackForm { melee, finesse, ranged, spell };

AttackForm form_of(const Attack& attack) {
    if (base::has_word(attack.traits, "spell")) return AttackForm::spell;
    if (attack.is_ranged) return AttackForm::ranged;
    return base::has_word(attack.traits, "finesse") ? AttackForm::finesse : AttackForm::melee;
}

Words words_of_attack(const Rulebook& rulebook, const Attack& attack) {
    // An attack of srd5 is no ability check.
    const bool is_check = rulebook.family == rules::Family::four_degree;
    Words words{"all_checks", "attack"};
    switch (form_of(attack)) {
    case AttackForm::melee:
        words.insert(words.end(), {"melee_attack", "str_melee_attack"});
        if (is_check) words.emplace_back("str_checks");
        break;
    case AttackForm::finesse:
        words.emplace_back("melee_attack");
        if (is_check) words.emplace_back("dex_checks");
        break;
    case AttackForm::ranged:
        words.emplace_back("ranged_attack");
        if (is_check) words.emplace_back("dex_checks");
        break;
    case AttackForm::spell: words.emplace_back("spell_attack"); break;
    }
    return words;
}

} // namespace

EffectiveNumber effective_ac(const Rulebook& rulebook, const Combatant& combatant) {
    // AC is a DC that rests on Dexterity (Player Core (ORC), Armor Class).
    return effective(
        rulebook, combatant, combatant.statistics.armor_class, {"ac", "all_dcs", "dex_dcs"}
    );
}

// "dex" for "dex_check"; empty for every other key.
static std::string_view ability_checked(const Rulebook& rulebook, std::string_view stat) {
    constexpr std::string_view ending = "_check";
    if (stat.size() <= ending.size() || stat.substr(stat.size() - ending.size()) != ending)
        return {};
    stat.remove_suffix(ending.size());
    return is_in(rulebook.abilities, stat) ? stat : std::string_view();
}

EffectiveNumber
effective_check(const Rulebook& rulebook, const Combatant& combatant, std::string_view stat) {
    if (stat == "initiative") return effective_initiative(rulebook, combatant);
    if (const std::string_view ability = ability_checked(rulebook, stat); !ability.empty()) {
        return effective(
            rulebook,
            combatant,
            base_of_check(rulebook, combatant, ability, CheckKind::ability),
            words_of_check(rulebook, ability, CheckKind::ability)
        );
    }
    if (stat == "death_save") { // a saving throw that rests on no ability
        return effective(rulebook, combatant, 0, {"all_checks", "all_saves"});
    }
    const CheckKind kind = kind_of(rulebook, stat);
    return effective(
        rulebook,
        combatant,
        base_of_check(rulebook, combatant, stat, kind),
        words_of_check(rulebook, stat, kind)
    );
}

EffectiveNumber
effective_attack(const Rulebook& rulebook, const Combatant& combatant, const Attack& attack) {
    EffectiveNumber number =
        effective(rulebook, combatant, attack.bonus, words_of_attack(rulebook, attack));
    const int penalty =
        rules::attack_penalty(rulebook.turn, attack.is_agile, combatant.attacks_made);
    if (penalty != 0) {
        number.contributions.push_back(
            {"multiple attack penalty", penalty, BonusType::untyped, true, false, {}}
        );
        settle(number);
    }
    return number;
}

EffectiveNumber
effective_damage(const Rulebook& rulebook, const Combatant& combatant, const Attack& attack) {
    const auto dice = rules::parse_dice(attack.damage);
    const AttackForm form = form_of(attack);
    // Melee and thrown weapons add Strength, finesse or not (Player Core (ORC), damage rolls).
    const bool adds_strength =
        form == AttackForm::melee || form == AttackForm::finesse ||
        (form == AttackForm::ranged && base::has_word(attack.traits, "thrown"));
    Words words{"damage"};
    if (adds_strength) words.emplace_back("str_damage");
    return effective(rulebook, combatant, dice.ok() ? dice.value().constant : 0, words);
}

std::string
effective_damage_text(const Rulebook& rulebook, const Combatant& combatant, const Attack& attack) {
    auto dice = rules::parse_dice(attack.damage);
    const EffectiveNumber number = effective_damage(rulebook, combatant, attack);
    if (!dice.ok() || number.total == number.base) return attack.damage;
    dice.value().constant = number.total;
    return rules::to_text(dice.value());
}

EffectiveNumber
effective_dc(const Rulebook& rulebook, const Combatant& combatant, std::string_view name) {
    const auto found = combatant.statistics.difficulty_classes.find(std::string(name));
    const int base = found == combatant.statistics.difficulty_classes.end() ? 0 : found->second;
    Words words{"all_dcs", std::string(name)};
    if (name == "spell_dc") words.emplace_back("mental_dcs");
    return effective(rulebook, combatant, base, words);
}

EffectiveNumber
effective_speed(const Rulebook& rulebook, const Combatant& combatant, std::string_view kind) {
    const auto found = combatant.statistics.speeds_ft.find(std::string(kind));
    if (found == combatant.statistics.speeds_ft.end() || found->second <= 0) return {};
    Tally tally;
    tally.number.base = found->second;
    double factor = 1.0;
    std::optional<int> fixed;
    each_effect(rulebook, combatant, [&](const HoldingCondition& holding, const Effect& effect) {
        if (effect.kind == EffectKind::speed_changes) tally.count_modifier(holding, effect);
        if (effect.kind == EffectKind::speed_factor) {
            factor = std::min(factor, effect.factor);
            tally.tell(
                holding_name(holding),
                effect.factor == 0.5 ? "speed halved" : "speed reduced",
                effect.note
            );
        }
        if (effect.kind == EffectKind::speed_becomes) {
            fixed = std::min(fixed.value_or(effect.amount), effect.amount);
            tally.tell(
                holding_name(holding),
                "speed is " + std::to_string(effect.amount) + " ft",
                effect.note
            );
        }
    });
    tally.count_worded(rulebook, combatant, {"speed"});
    EffectiveNumber speed = tally.settled();
    if (fixed) { // no bonus helps then (SRD 5.1, Appendix PH-A, grappled)
        speed.total = *fixed;
        speed.contributions.clear();
        return speed;
    }
    // Bonuses first, halved afterwards: common practice, no source.
    const int halved = static_cast<int>(std::floor(speed.total * factor));
    // A reduced speed never falls below 5 feet (Player Core (ORC), Speed); srd5 knows no such
    // floor.
    speed.total = std::max(halved, rulebook.family == rules::Family::four_degree ? 5 : 0);
    return speed;
}

int effective_speed_ft(
    const Rulebook& rulebook, const Combatant& combatant, std::string_view kind
) {
    return effective_speed(rulebook, combatant, kind).total;
}

EffectiveNumber attacks_against(const Rulebook& rulebook, const Combatant& combatant) {
    Tally tally;
    each_effect(rulebook, combatant, [&](const HoldingCondition& holding, const Effect& effect) {
        if (effect.kind == EffectKind::rolls_against) tally.count_mode(holding, effect);
    });
    return tally.settled();
}

} // namespace game
