#include "store/rulebook_conditions.h"

#include <algorithm>
#include <map>
#include <set>

namespace store {

namespace {

using base::ErrorKind;
using rules::ConditionRule;
using rules::Effect;
using rules::EffectKind;
using rules::Rulebook;

using Word = std::string_view;

constexpr int amount_max = 1000; // of one effect
constexpr int value_max = 1000;  // of a condition

constexpr std::array effect_kinds = {
    std::pair{Word("modifier"), EffectKind::modifier},
    std::pair{Word("own_rolls"), EffectKind::own_rolls},
    std::pair{Word("rolls_against"), EffectKind::rolls_against},
    std::pair{Word("fails"), EffectKind::fails},
    std::pair{Word("implies"), EffectKind::implies},
    std::pair{Word("overrides"), EffectKind::overrides},
    std::pair{Word("gains_when_set"), EffectKind::gains_when_set},
    std::pair{Word("actions"), EffectKind::actions},
    std::pair{Word("cannot_act"), EffectKind::cannot_act},
    std::pair{Word("cannot_react"), EffectKind::cannot_react},
    std::pair{Word("cannot_delay"), EffectKind::cannot_delay},
    std::pair{Word("speed_becomes"), EffectKind::speed_becomes},
    std::pair{Word("speed_changes"), EffectKind::speed_changes},
    std::pair{Word("speed_factor"), EffectKind::speed_factor},
    std::pair{Word("hp_max_changes"), EffectKind::hp_max_changes},
    std::pair{Word("hp_max_factor"), EffectKind::hp_max_factor},
    std::pair{Word("hp_lost_when_set"), EffectKind::hp_lost_when_set},
    std::pair{Word("death_threshold"), EffectKind::death_threshold},
    std::pair{Word("resists_all"), EffectKind::resists_all},
    std::pair{Word("immune_to"), EffectKind::immune_to},
    std::pair{Word("ends_concentration"), EffectKind::ends_concentration},
    std::pair{Word("dies"), EffectKind::dies},
    std::pair{Word("flat_check"), EffectKind::flat_check},
    std::pair{Word("told"), EffectKind::told},
};

constexpr std::array bonus_types = {
    std::pair{Word("untyped"), rules::BonusType::untyped},
    std::pair{Word("circumstance"), rules::BonusType::circumstance},
    std::pair{Word("item"), rules::BonusType::item},
    std::pair{Word("status"), rules::BonusType::status},
};

constexpr std::array roll_modes = {
    std::pair{Word("advantage"), rules::RollMode::advantage},
    std::pair{Word("disadvantage"), rules::RollMode::disadvantage},
};

constexpr std::array fadings = {
    std::pair{Word("stays"), rules::Fading::stays},
    std::pair{Word("drops_at_turn_end"), rules::Fading::drops_at_turn_end},
    std::pair{Word("recovery_check"), rules::Fading::recovery_check},
    std::pair{Word("persistent_damage"), rules::Fading::persistent_damage},
    std::pair{Word("lost_with_actions"), rules::Fading::lost_with_actions},
};

// What a kind of effect cannot do without.
struct Needs {
    bool applies_to = false;
    bool mode = false;
    bool condition = false;
    bool factor = false;
    bool note = false;
};

Needs needs_of(EffectKind kind) {
    switch (kind) {
    case EffectKind::modifier:
    case EffectKind::fails: return {true, false, false, false, false};
    case EffectKind::own_rolls: return {true, true, false, false, false};
    case EffectKind::rolls_against: return {false, true, false, false, false};
    case EffectKind::implies:
    case EffectKind::overrides:
    case EffectKind::gains_when_set:
    case EffectKind::immune_to: return {false, false, true, false, false};
    case EffectKind::speed_factor:
    case EffectKind::hp_max_factor: return {false, false, false, true, false};
    case EffectKind::flat_check:
    case EffectKind::told: return {false, false, false, false, true};
    case EffectKind::actions:
    case EffectKind::cannot_act:
    case EffectKind::cannot_react:
    case EffectKind::cannot_delay:
    case EffectKind::speed_becomes:
    case EffectKind::speed_changes:
    case EffectKind::hp_max_changes:
    case EffectKind::hp_lost_when_set:
    case EffectKind::death_threshold:
    case EffectKind::resists_all:
    case EffectKind::ends_concentration:
    case EffectKind::dies: return {};
    }
    return {};
}

double read_factor(const Spot& spot) {
    const double factor = spot.fraction();
    if (factor <= 0.0 || factor > 1.0) throw spot.wrong("a number above 0 and up to 1");
    return factor;
}

std::vector<std::string> read_stat_words(const Spot& spot, const std::vector<std::string>& words) {
    std::vector<std::string> list;
    spot.each([&](const Spot& each) {
        if (!std::binary_search(words.begin(), words.end(), each.text()))
            throw each.wrong("a stat word such as ac, all_checks or the key of a save or skill");
        list.push_back(each.text());
    });
    if (list.empty()) throw spot.wrong("at least one stat word");
    return list;
}

Effect read_effect(const Spot& spot, const std::vector<std::string>& words) {
    Effect effect;
    effect.kind = spot.at("kind").word(effect_kinds);
    spot.allow_only(
        {"kind",
         "applies_to",
         "bonus_type",
         "amount",
         "amount_per_value",
         "factor",
         "mode",
         "condition",
         "from_value",
         "is_situational",
         "note"}
    );
    const Needs needs = needs_of(effect.kind);
    if (needs.applies_to || spot.has("applies_to"))
        effect.applies_to = read_stat_words(spot.at("applies_to"), words);
    if (needs.mode || spot.has("mode")) effect.mode = spot.at("mode").word(roll_modes);
    if (needs.condition || spot.has("condition")) effect.condition = spot.at("condition").key();
    if (needs.factor || spot.has("factor")) effect.factor = read_factor(spot.at("factor"));
    if (needs.note || spot.has("note")) effect.note = spot.at("note").text();
    if (spot.has("bonus_type")) effect.bonus_type = spot.at("bonus_type").word(bonus_types);
    effect.amount = spot.number_or("amount", 0, -amount_max, amount_max);
    effect.amount_per_value = spot.number_or("amount_per_value", 0, -amount_max, amount_max);
    effect.from_value = spot.number_or("from_value", 0, 0, value_max);
    effect.is_situational = spot.truth_or("is_situational");
    if (effect.is_situational && effect.note.empty())
        throw spot.wrong(R"(a "note" that says in which situation)", ErrorKind::missing_field);
    if (effect.kind == EffectKind::modifier && effect.amount == 0 && effect.amount_per_value == 0)
        throw spot.wrong(R"(an "amount" or "amount_per_value")", ErrorKind::missing_field);
    return effect;
}

// What only makes sense for a condition that has a value.
void check_value_words(const Spot& spot, const Spot& printed, const ConditionRule& rule) {
    if (rule.has_value) return;
    const auto refuse = [](const Spot& place) {
        throw place.wrong(R"("has_value": true in this condition, or nothing here,)");
    };
    for (const char* key : {"max_value", "night_rest", "save_lowers_value"}) {
        if (spot.has(key)) refuse(spot.at(key));
    }
    if (rule.fading == rules::Fading::drops_at_turn_end) refuse(spot.at("fading"));
    printed.at("effects").each([&](const Spot& effect) {
        for (const char* key : {"amount_per_value", "from_value"}) {
            if (effect.has(key)) refuse(effect.at(key));
        }
    });
}

// Wording and effects of a condition may differ by edition; the rest stands once.
Spot printed_part(const Spot& spot, const Rulebook& rulebook) {
    if (!spot.has("editions")) return spot;
    if (rulebook.family != rules::Family::srd5)
        throw spot.at("editions")
            .wrong("no part by edition (only srd5 has editions)", ErrorKind::wrong_format);
    Spot part = spot.at("editions").at(edition_key(rulebook.edition));
    part.allow_only({"summary", "effects"});
    return part;
}

ConditionRule
read_condition(const Spot& spot, const Rulebook& rulebook, const std::vector<std::string>& words) {
    spot.allow_only(
        {"key",
         "name",
         "group",
         "summary",
         "has_value",
         "max_value",
         "fading",
         "night_rest",
         "night_rest_ends",
         "save_lowers_value",
         "effects",
         "editions"}
    );
    ConditionRule rule;
    rule.key = spot.at("key").key();
    rule.name = spot.at("name").text();
    rule.group = spot.text_or("group");
    rule.has_value = spot.truth_or("has_value");
    rule.max_value = spot.number_or("max_value", 0, 1, value_max);
    if (spot.has("fading")) rule.fading = spot.at("fading").word(fadings);
    rule.night_rest = spot.number_or("night_rest", 0, -value_max, 0);
    rule.night_rest_ends = spot.truth_or("night_rest_ends");
    rule.save_lowers_value = spot.truth_or("save_lowers_value");
    const Spot printed = printed_part(spot, rulebook);
    rule.summary = printed.at("summary").text();
    printed.at("effects").each([&](const Spot& each) {
        rule.effects.push_back(read_effect(each, words));
    });
    check_value_words(spot, printed, rule);
    return rule;
}

using Conditions = std::map<std::string, const ConditionRule*>;

// Does this condition bring the wanted one with it, over however many steps?
bool brings(
    const Conditions& conditions,
    const std::string& key,
    const std::string& wanted,
    std::set<std::string>& seen
) {
    if (!seen.insert(key).second) return false;
    for (const Effect& effect : conditions.at(key)->effects) {
        if (effect.kind != EffectKind::implies && effect.kind != EffectKind::gains_when_set)
            continue;
        if (effect.condition == wanted || brings(conditions, effect.condition, wanted, seen))
            return true;
    }
    return false;
}

bool names_condition(const Effect& effect) {
    return effect.kind == EffectKind::implies || effect.kind == EffectKind::overrides ||
           effect.kind == EffectKind::gains_when_set;
}

// Effects may only name conditions that the rulebook has; immunities may also name damage types and
// traits. Nothing brings itself with it.
void check_references(const Spot& list, const Rulebook& rulebook) {
    Conditions conditions;
    for (const ConditionRule& rule : rulebook.conditions)
        conditions[rule.key] = &rule;
    const auto each_named = [&](auto check) {
        for (std::size_t at = 0; at < rulebook.conditions.size(); ++at) {
            const ConditionRule& rule = rulebook.conditions[at];
            const Spot spot{list.value[at], list.pointer + "/" + std::to_string(at)};
            const Spot effects = printed_part(spot, rulebook).at("effects");
            for (std::size_t which = 0; which < rule.effects.size(); ++which) {
                const Spot effect{
                    effects.value[which], effects.pointer + "/" + std::to_string(which)};
                if (names_condition(rule.effects[which])) check(rule, rule.effects[which], effect);
            }
        }
    };
    each_named([&](const ConditionRule&, const Effect& effect, const Spot& spot) {
        const auto named = conditions.find(effect.condition);
        if (named == conditions.end())
            throw spot.at("condition")
                .wrong("the key of a condition", ErrorKind::dangling_reference);
        const bool gives = effect.kind != EffectKind::overrides;
        if (gives && named->second->has_value && effect.amount < 1 && effect.amount_per_value < 1)
            throw spot.wrong(
                "an \"amount\" of 1 or more, the value of " + effect.condition + ",",
                ErrorKind::missing_field
            );
    });
    each_named([&](const ConditionRule& rule, const Effect& effect, const Spot& spot) {
        std::set<std::string> seen;
        const bool gives = effect.kind != EffectKind::overrides;
        if (gives &&
            (effect.condition == rule.key || brings(conditions, effect.condition, rule.key, seen)))
            throw spot.at("condition")
                .wrong("a condition that does not bring " + rule.key + " back");
    });
}

} // namespace

std::string edition_key(rules::SrdEdition edition) {
    return edition == rules::SrdEdition::srd_5_1 ? "srd_5_1" : "srd_5_2_1";
}

void read_conditions(const Spot& conditions, Rulebook& rulebook) {
    const std::vector<std::string> words = rules::stat_words(rulebook);
    const Spot list = conditions.at("list");
    std::set<std::string> keys;
    list.each([&](const Spot& each) {
        rulebook.conditions.push_back(read_condition(each, rulebook, words));
        if (!keys.insert(rulebook.conditions.back().key).second)
            throw each.at("key").wrong("a key that stands once", ErrorKind::duplicate);
    });
    check_references(list, rulebook);
    std::sort(
        rulebook.conditions.begin(),
        rulebook.conditions.end(),
        [](const auto& one, const auto& other) { return one.name < other.name; }
    );
}

} // namespace store
