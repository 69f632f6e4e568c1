// Names of stats, speeds and damage types as they stand on the screen.
#pragma once

#include "rules/rulebook.h"

#include <string>

namespace widgets {

// "cold iron" for the key "cold_iron".
std::string plain_word(const std::string& key);
// "Cold iron".
std::string opening_word(const std::string& key);

// "Fortitude", "Perception", "flat check" for an empty key.
std::string stat_words(const rules::Rulebook& rulebook, const std::string& key);

// "all saves" for the stat word "all_saves"; names of the rulebook where it has one.
std::string applies_to_words(const rules::Rulebook& rulebook, const std::string& word);

const char* bonus_type_words(rules::BonusType type); // "status"; "untyped"

// "speed" for "land", else "fly speed".
std::string speed_words(const std::string& kind);

} // namespace widgets
