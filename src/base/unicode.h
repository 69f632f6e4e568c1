// Texts of any script, in UTF-8: the same name in another spelling, and whole letters. The rules
// are those of the Unicode Standard; bytes that are no UTF-8 are taken as U+FFFD, one each.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace base {

bool is_utf8(std::string_view text);

// Normalization Form C: letters with their marks in one piece where there is one, as texts are
// stored.
std::string composed(std::string_view text);

// Case folded and composed: two texts with the same result are the same to a reader.
std::string folded(std::string_view text);

// Case folded, taken apart (Normalization Form KD), and only the letters kept: no marks, spaces,
// digits or signs. "Ñá O'Rhé" becomes "naorhe".
std::u32string letters_only(std::string_view text);

// The words of a text as one looks for them: case folded, taken apart (Normalization Form KD),
// without marks and apostrophes; letters and digits make words, everything else parts them.
// "Ñá O'Rhé, 12 crowns" gives "na", "orhe", "12", "crowns".
std::vector<std::u32string> search_words(std::string_view text);

// Characters as a reader counts them: extended grapheme clusters (UAX #29).
std::vector<std::string> graphemes(std::string_view text);

// The code points of a text, as they stand.
std::u32string code_points(std::string_view text);

// The first letter of every word as a capital (simple upper case of the Unicode Character
// Database).
std::string capitalised(std::string_view text);

std::string to_utf8(std::u32string_view code_points);

} // namespace base
