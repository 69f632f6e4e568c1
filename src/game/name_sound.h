// What a name sounds like across a table, and the letter it begins with.
//
// The key is our own, made for names that nobody has heard before. Letters come without marks and
// case. Sounds that are confused at the far end of a table fall into one class:
//   p b | t d and th | k g c q | f v w and ph | s z j x and sh | m | n | l | r
// h is dropped (after p it makes f). A letter that stands twice counts once. Vowels in a row are
// one: the first one of the name says whether it is e/i/y (e), a (a) or o/u (o), because that is
// where the stress falls; later ones are blurred in speech and only mark a beat (-).
// Letters of other scripts stand for themselves. "Marek" and "Mharrik": MaR-K.
#pragma once

#include <string>
#include <string_view>

namespace game {

// `letters` as of base::letters_only.
std::u32string sound_of(std::u32string_view letters);

// The letter a name begins with, without marks and in lower case: "Éva" and "Eva" begin alike. A
// leading "the", "a" or "an" of a name of several words does not count. Empty without a letter.
std::u32string initial_of(std::string_view name);

// The same as it is shown: "É".
std::string shown_initial(std::string_view name);

} // namespace game
