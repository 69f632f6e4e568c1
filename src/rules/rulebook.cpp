#include "rules/rulebook.h"

#include <algorithm>

namespace rules {

const ConditionRule* find_condition(const Rulebook& rulebook, std::string_view key) {
    const auto found = std::find_if(
        rulebook.conditions.begin(),
        rulebook.conditions.end(),
        [key](const ConditionRule& rule) { return rule.key == key; }
    );
    return found == rulebook.conditions.end() ? nullptr : &*found;
}

const StatName* find_stat(const Rulebook& rulebook, std::string_view key) {
    for (const auto* list : {&rulebook.saves, &rulebook.skills, &rulebook.abilities}) {
        const auto found = std::find_if(list->begin(), list->end(), [key](const StatName& stat) {
            return stat.key == key;
        });
        if (found != list->end()) return &*found;
    }
    return nullptr;
}

bool is_house_ruled(const Rulebook& rulebook, std::string_view pointer_prefix) {
    return std::any_of(
        rulebook.house_ruled.begin(),
        rulebook.house_ruled.end(),
        [pointer_prefix](const HouseRule& rule) {
            const std::string_view pointer = rule.pointer;
            if (pointer.substr(0, pointer_prefix.size()) != pointer_prefix) return false;
            // "/rows/1" is no part of "/rows/10".
            return pointer.size() == pointer_prefix.size() || pointer[pointer_prefix.size()] == '/';
        }
    );
}

std::vector<std::string> stat_words(const Rulebook& rulebook) {
    std::vector<std::string> words = {
        "ac",        "perception",   "skills",        "initiative",       "perception_initiative",
        "attack",    "melee_attack", "ranged_attack", "str_melee_attack", "spell_attack",
        "damage",    "str_damage",   "spell_dc",      "class_dc",         "speed",
        "all_saves", "all_checks",   "all_dcs",       "mental_dcs",       "ability_checks",
    };
    for (const StatName& ability : rulebook.abilities) {
        for (const char* ending : {"_checks", "_dcs", "_saves"})
            words.push_back(ability.key + ending);
    }
    for (const StatName& save : rulebook.saves)
        words.push_back(save.key);
    for (const StatName& skill : rulebook.skills)
        words.push_back(skill.key);
    std::sort(words.begin(), words.end());
    words.erase(std::unique(words.begin(), words.end()), words.end()); // srd5: perception, a skill
    return words;
}

} // namespace rules
