#include "game/effect_words.h"

#include "game/answer_words.h"
#include "game/sheet.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <utility>

namespace game {

namespace {

using rules::Effect;
using rules::EffectKind;
using rules::Rulebook;

std::string spaced(std::string_view key) {
    std::string words(key);
    std::replace(words.begin(), words.end(), '_', ' ');
    return words;
}

std::string condition_name(const Rulebook& rulebook, const std::string& key) {
    const rules::ConditionRule* rule = rules::find_condition(rulebook, key);
    return rule == nullptr ? spaced(key) : rule->name;
}

std::string type_text(rules::BonusType type) {
    switch (type) {
    case rules::BonusType::untyped: return {};
    case rules::BonusType::circumstance: return " (circumstance)";
    case rules::BonusType::item: return " (item)";
    case rules::BonusType::status: return " (status)";
    }
    return {};
}

std::string stats_of(const Rulebook& rulebook, const Effect& effect) {
    std::string list;
    for (std::size_t at = 0; at < effect.applies_to.size(); ++at) {
        if (at > 0) list += at + 1 == effect.applies_to.size() ? " and " : ", ";
        list += stat_phrase(rulebook, effect.applies_to[at]);
    }
    return list;
}

// "-2", "-1 for each", "5".
std::string amount_text(const Effect& effect, int value, bool is_signed) {
    const auto said = [is_signed](int amount) {
        return is_signed ? signed_text(amount) : std::to_string(amount);
    };
    if (effect.amount_per_value == 0) return said(effect.amount);
    if (value > 0) return said(effect.amount + effect.amount_per_value * value);
    if (effect.amount == 0) return said(effect.amount_per_value) + " for each";
    return said(effect.amount) + " and " + said(effect.amount_per_value) + " for each";
}

std::string mode_word(rules::RollMode mode) {
    return mode == rules::RollMode::advantage ? "advantage" : "disadvantage";
}

std::string with_level(const Effect& effect, int value) {
    Effect positive = effect;
    positive.amount_per_value = std::abs(effect.amount_per_value);
    return amount_text(positive, value, false) + " times the level";
}

std::string core_text(const Rulebook& rulebook, const Effect& effect, int value) {
    switch (effect.kind) {
    case EffectKind::modifier:
        return amount_text(effect, value, true) + " to " + stats_of(rulebook, effect) +
               type_text(effect.bonus_type);
    case EffectKind::own_rolls: return mode_word(effect.mode) + " on " + stats_of(rulebook, effect);
    case EffectKind::rolls_against: return "attacks against it have " + mode_word(effect.mode);
    case EffectKind::fails: return "fails " + stats_of(rulebook, effect);
    case EffectKind::implies:
        return "is also " + condition_name(rulebook, effect.condition) +
               (effect.amount > 0 ? " " + std::to_string(effect.amount) : std::string());
    case EffectKind::overrides: return "replaces " + condition_name(rulebook, effect.condition);
    case EffectKind::gains_when_set:
        return "becomes " + condition_name(rulebook, effect.condition) + " when it begins";
    case EffectKind::actions: return amount_text(effect, value, true) + " actions a turn";
    case EffectKind::cannot_act: return "cannot act";
    case EffectKind::cannot_react: return "cannot use reactions";
    case EffectKind::cannot_delay: return "can neither delay nor ready";
    case EffectKind::speed_becomes: return "speed is " + std::to_string(effect.amount) + " feet";
    case EffectKind::speed_changes:
        return amount_text(effect, value, true) + " feet to every speed";
    case EffectKind::speed_factor: return "every speed times " + decimal_text(effect.factor);
    case EffectKind::hp_max_changes: return "maximum HP lower by " + with_level(effect, value);
    case EffectKind::hp_max_factor: return "maximum HP times " + decimal_text(effect.factor);
    case EffectKind::hp_lost_when_set:
        return "loses HP when it begins: " + with_level(effect, value);
    case EffectKind::death_threshold:
        return amount_text(effect, value, true) + " to the dying value that kills";
    case EffectKind::resists_all: return "resists all damage";
    case EffectKind::immune_to:
        return "immune to " +
               (effect.note.empty() ? condition_name(rulebook, effect.condition) : effect.note);
    case EffectKind::ends_concentration: return "ends concentration";
    case EffectKind::dies: return "dies";
    case EffectKind::flat_check: return "flat check DC " + amount_text(effect, value, false);
    case EffectKind::told: return effect.note;
    }
    return {};
}

} // namespace

std::string stat_phrase(const Rulebook& rulebook, std::string_view word) {
    static constexpr std::array<std::pair<std::string_view, std::string_view>, 14> phrases{{
        {"ac", "AC"},
        {"perception", "Perception"},
        {"skills", "every skill"},
        {"perception_initiative", "initiative with Perception"},
        {"attack", "attacks"},
        {"melee_attack", "melee attacks"},
        {"ranged_attack", "ranged attacks"},
        {"str_melee_attack", "melee attacks with Strength"},
        {"spell_attack", "spell attacks"},
        {"str_damage", "damage with Strength"},
        {"all_saves", "every save"},
        {"all_checks", "every check"},
        {"all_dcs", "every DC"},
        {"mental_dcs", "spell DCs"},
    }};
    for (const auto& [key, phrase] : phrases)
        if (key == word) return std::string(phrase);
    if (const rules::StatName* stat = rules::find_stat(rulebook, word)) return stat->name;
    if (word == "spell_dc") return "spell DC";
    if (word == "class_dc") return "class DC";
    const std::size_t split = word.find('_');
    const rules::StatName* ability = rules::find_stat(rulebook, word.substr(0, split));
    if (ability == nullptr || split == std::string_view::npos) return spaced(word);
    const std::string_view ending = word.substr(split + 1);
    return ability->name + " " + (ending == "dcs" ? std::string("DCs") : spaced(ending));
}

std::string effect_text(const Rulebook& rulebook, const Effect& effect, int value) {
    std::string text = core_text(rulebook, effect, value);
    if (effect.from_value > 0) text = "from " + std::to_string(effect.from_value) + ": " + text;
    const bool is_note_said =
        effect.kind == EffectKind::told || effect.kind == EffectKind::immune_to;
    if (!effect.note.empty() && !is_note_said) text += "; " + effect.note;
    return text;
}

std::vector<std::string> fading_texts(const rules::ConditionRule& rule) {
    std::vector<std::string> texts;
    switch (rule.fading) {
    case rules::Fading::stays: break;
    case rules::Fading::drops_at_turn_end:
        texts.emplace_back("Falls by 1 at the end of its own turn.");
        break;
    case rules::Fading::recovery_check:
        texts.emplace_back("A recovery check at the start of each of its turns.");
        break;
    case rules::Fading::persistent_damage:
        texts.emplace_back("Hurts at the end of each of its turns; then a flat check may end it.");
        break;
    case rules::Fading::lost_with_actions:
        texts.emplace_back("Falls by the actions that it takes.");
        break;
    }
    if (rule.night_rest_ends)
        texts.emplace_back("A night's rest ends it.");
    else if (rule.night_rest != 0)
        texts.push_back("A night's rest changes it by " + signed_text(rule.night_rest) + ".");
    return texts;
}

} // namespace game
