// Small helpers for texts that people type. ASCII letters only; other bytes pass through untouched.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace base {

// "Finesse" becomes "finesse".
std::string lowercase(std::string_view text);

// Does a list of traits such as "finesse, thrown 10 feet" name this lowercase word? Whole words
// only, upper and lower case alike: "spellbound" does not name "spell".
bool has_word(std::string_view text, std::string_view word);

// At most so many bytes, cut between characters (UTF-8) and never inside one.
std::string shortened(std::string_view text, std::size_t bytes_max);

} // namespace base
