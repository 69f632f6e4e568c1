#include "game/typed_condition.h"

#include "base/unicode.h"
#include "game/turns.h"

#include <algorithm>
#include <vector>

namespace game {

namespace {

using Words = std::vector<std::u32string>;

constexpr std::size_t letters_least = 4;
constexpr int digits_most = 2;

bool begins(const std::u32string& word, const std::u32string& typed) {
    return word.compare(0, typed.size(), typed) == 0;
}

// How many typed words the name takes; 0: it is not meant.
std::size_t words_taken(const Words& name, const Words& typed) {
    if (name.empty() || name.size() > typed.size()) return 0;
    for (std::size_t at = 0; at < name.size(); ++at) {
        const bool is_whole = name[at] == typed[at];
        if (!is_whole && (typed[at].size() < letters_least || !begins(name[at], typed[at])))
            return 0;
    }
    return name.size();
}

std::optional<int> number_of(const std::u32string& word) {
    if (word.empty() || word.size() > digits_most) return std::nullopt;
    int number = 0;
    for (const char32_t letter : word) {
        if (letter < U'0' || letter > U'9') return std::nullopt;
        number = number * 10 + static_cast<int>(letter - U'0');
    }
    return number;
}

struct Meant {
    const rules::ConditionRule* rule = nullptr;
    std::size_t taken = 0;
};

// The condition with the most words; of several none, unless one is written out.
Meant condition_meant(const rules::Rulebook& rulebook, const Words& typed) {
    Meant meant;
    bool is_one = true;
    for (const rules::ConditionRule& rule : rulebook.conditions) {
        const Words name = base::search_words(rule.name);
        const std::size_t taken = words_taken(name, typed);
        if (taken == 0 || rule.fading == rules::Fading::persistent_damage) continue;
        if (std::equal(name.begin(), name.end(), typed.begin())) return {&rule, taken};
        is_one = meant.rule == nullptr;
        meant = {&rule, taken};
    }
    return is_one ? meant : Meant{};
}

bool is_called(const Combatant& combatant, const Words& typed) {
    const Words name = base::search_words(combatant.name);
    return std::all_of(typed.begin(), typed.end(), [&name](const std::u32string& word) {
        return std::any_of(name.begin(), name.end(), [&word](const std::u32string& each) {
            return begins(each, word);
        });
    });
}

const Combatant* combatant_meant(const Encounter& encounter, const Words& typed) {
    if (typed.empty()) return find_combatant(encounter, encounter.current);
    for (const Combatant& combatant : encounter.combatants)
        if (combatant.standing != Standing::absent && is_called(combatant, typed))
            return &combatant;
    return nullptr;
}

} // namespace

std::optional<TypedCondition> typed_condition(
    const Encounter& encounter, const rules::Rulebook& rulebook, std::string_view typed
) {
    if (encounter.phase != Phase::running) return std::nullopt;
    Words words = base::search_words(typed);
    const Meant meant = condition_meant(rulebook, words);
    if (meant.rule == nullptr) return std::nullopt;
    TypedCondition given;
    given.key = meant.rule->key;
    given.says_more = words.size() > meant.taken;
    words.erase(words.begin(), words.begin() + static_cast<std::ptrdiff_t>(meant.taken));
    if (meant.rule->has_value) given.value = 1;
    const std::optional<int> number = words.empty() ? std::nullopt : number_of(words.front());
    if (number && (!meant.rule->has_value || *number == 0)) return std::nullopt;
    if (number) {
        const int most = meant.rule->max_value;
        given.value = most > 0 ? std::min(*number, most) : *number;
        words.erase(words.begin());
    }
    const bool has_link = !words.empty() && (words.front() == U"to" || words.front() == U"on");
    if (has_link) words.erase(words.begin());
    const Combatant* combatant = combatant_meant(encounter, words);
    if (combatant == nullptr) return std::nullopt;
    given.combatant = combatant->id;
    given.text = "Give " + meant.rule->name +
                 (given.value > 0 ? " " + std::to_string(given.value) : "") + " to " +
                 combatant->name;
    return given;
}

} // namespace game
