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

} // namespace rules
