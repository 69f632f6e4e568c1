#include "base/text.h"

namespace base {

static char lower(char letter) {
    return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
}

static bool is_part_of_word(char letter) {
    const bool is_ascii_letter = lower(letter) >= 'a' && lower(letter) <= 'z';
    const bool is_digit = letter >= '0' && letter <= '9';
    return is_ascii_letter || is_digit || static_cast<unsigned char>(letter) >= 0x80;
}

std::string lowercase(std::string_view text) {
    std::string result(text);
    for (char& letter : result)
        letter = lower(letter);
    return result;
}

bool has_word(std::string_view text, std::string_view word) {
    if (word.empty()) return false;
    const std::string all = lowercase(text);
    for (std::size_t at = all.find(word); at != std::string::npos; at = all.find(word, at + 1)) {
        const std::size_t end = at + word.size();
        const bool starts = at == 0 || !is_part_of_word(all[at - 1]);
        const bool ends = end == all.size() || !is_part_of_word(all[end]);
        if (starts && ends) return true;
    }
    return false;
}

std::string shortened(std::string_view text, std::size_t bytes_max) {
    if (text.size() <= bytes_max) return std::string(text);
    constexpr unsigned continuation_mask = 0xC0;
    constexpr unsigned continuation = 0x80; // UTF-8 bytes 10xxxxxx belong to the character before
    std::size_t end = bytes_max;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & continuation_mask) == continuation)
        end -= 1;
    return std::string(text.substr(0, end));
}

} // namespace base
