#include "game/name_sound.h"

#include "base/text.h"
#include "base/unicode.h"

#include <array>

namespace game {

namespace {

constexpr char32_t beat = U'-';

// The class of a sound; 0 for what is not heard; a vowel's class is a small letter.
char32_t class_of(char32_t letter) {
    switch (letter) {
    case U'p':
    case U'b': return U'P';
    case U't':
    case U'd':
    case U'þ':
    case U'ð':
    case U'đ': return U'T';
    case U'k':
    case U'g':
    case U'c':
    case U'q': return U'K';
    case U'f':
    case U'v':
    case U'w': return U'F';
    case U's':
    case U'z':
    case U'j':
    case U'x': return U'S';
    case U'm': return U'M';
    case U'n': return U'N';
    case U'l':
    case U'ł': return U'L';
    case U'r': return U'R';
    case U'h': return 0;
    case U'e':
    case U'i':
    case U'y':
    case U'ı':
    case U'ø':
    case U'œ': return U'e';
    case U'a':
    case U'æ': return U'a';
    case U'o':
    case U'u': return U'o';
    default: return letter;
    }
}

bool is_vowel(char32_t sound) {
    return sound == U'e' || sound == U'a' || sound == U'o';
}

// The name without its article.
std::string_view without_article(std::string_view name) {
    constexpr std::array<std::string_view, 3> articles{"the ", "an ", "a "};
    for (const std::string_view article : articles)
        if (name.size() > article.size() &&
            base::lowercase(name.substr(0, article.size())) == article)
            return name.substr(article.size());
    return name;
}

} // namespace

std::u32string sound_of(std::u32string_view letters) {
    std::u32string key;
    bool has_vowel = false;
    bool was_vowel = false;
    char32_t last = 0; // class of the consonant before, to drop doubles
    for (std::size_t at = 0; at < letters.size(); ++at) {
        const bool is_ph =
            letters[at] == U'p' && at + 1 < letters.size() && letters[at + 1] == U'h';
        const char32_t sound = is_ph ? U'F' : class_of(letters[at]);
        if (sound == 0) continue;
        if (is_vowel(sound)) {
            if (!was_vowel) key.push_back(has_vowel ? beat : sound);
            has_vowel = was_vowel = true;
            last = 0;
            continue;
        }
        if (sound != last) key.push_back(sound);
        last = sound;
        was_vowel = false;
    }
    return key;
}

std::string shown_initial(std::string_view name) {
    for (const std::string& character : base::graphemes(without_article(name)))
        if (!base::letters_only(character).empty()) return character;
    return {};
}

std::u32string initial_of(std::string_view name) {
    return base::letters_only(shown_initial(name)).substr(0, 1);
}

} // namespace game
