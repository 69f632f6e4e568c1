// What a condition does, in words: "-2 to every check and DC (status)".
#pragma once

#include "rules/rulebook.h"

#include <string>
#include <string_view>
#include <vector>

namespace game {

// "every check" for "all_checks", "Dexterity saves" for "dex_saves", "Fortitude" for "fortitude".
std::string stat_phrase(const rules::Rulebook& rulebook, std::string_view word);

// One effect at this condition value; 0 says what each step of the value does ("-1 for each").
std::string
effect_text(const rules::Rulebook& rulebook, const rules::Effect& effect, int value = 0);

// How the condition ends by itself, as whole sentences; empty when it stays until it is ended.
std::vector<std::string> fading_texts(const rules::ConditionRule& rule);

} // namespace game
