// "condition frightened 2".
#include "game/answer_topics.h"
#include "game/effect_words.h"

#include <algorithm>

namespace game {

namespace {

using rules::ConditionRule;
using rules::Rulebook;

// Names that begin like this word, for a slip of the pen.
std::string names_like(const Rulebook& rulebook, std::string_view word) {
    constexpr std::size_t letters = 3;
    std::string list;
    for (const ConditionRule& rule : rulebook.conditions)
        if (rule.name.compare(0, letters, word.substr(0, letters)) == 0)
            list += (list.empty() ? "" : ", ") + rule.name;
    return list;
}

Answer all_conditions(const Rulebook& rulebook) {
    Answer answer;
    answer.title = counted(static_cast<int>(rulebook.conditions.size()), "condition");
    std::vector<std::string> keys;
    for (const ConditionRule& rule : rulebook.conditions) {
        answer.lines.push_back(rule.name + "\t" + rule.summary);
        keys.push_back(rule.key);
    }
    answer.source = rulebook.title;
    answer.values = {{"conditions", std::move(keys)}};
    return answer;
}

} // namespace

base::Result<Answer> answer_condition(const AnswerContext& context, Words& words) {
    constexpr int value_max = 99;
    const Rulebook& rulebook = context.rulebook;
    if (words.is_at_end()) return all_conditions(rulebook);
    std::vector<std::string> keys;
    for (const ConditionRule& rule : rulebook.conditions)
        keys.push_back(rule.key);
    const auto key = words.take_key(keys);
    if (!key) {
        const std::string close = names_like(rulebook, words.next());
        return base::Error{
            base::ErrorKind::not_found,
            "There is no condition \"" + words.take_rest() + "\" in this rulebook." +
                (close.empty() ? std::string() : " There is " + close + ".")};
    }
    const ConditionRule& rule = *rules::find_condition(rulebook, *key);
    const int value =
        rule.has_value
            ? words.take_number(1, rule.max_value > 0 ? rule.max_value : value_max).value_or(0)
            : 0;
    Answer answer;
    answer.title = rule.name + (value > 0 ? " " + std::to_string(value) : std::string());
    answer.lines.push_back(rule.summary);
    std::vector<std::string> effects;
    for (const rules::Effect& effect : rule.effects)
        if (value == 0 || effect.from_value <= value)
            effects.push_back(effect_text(rulebook, effect, value));
    for (const std::string& effect : effects)
        answer.lines.push_back("- " + effect);
    for (const std::string& ends : fading_texts(rule))
        answer.lines.push_back(ends);
    answer.source = rulebook.title;
    answer.values = {
        {"key", rule.key},
        {"name", rule.name},
        {"summary", rule.summary},
        {"has_value", rule.has_value},
        {"effects", std::move(effects)},
        {"ends", fading_texts(rule)}};
    if (value > 0) answer.values.push_back({"value", value});
    return answer;
}

} // namespace game
