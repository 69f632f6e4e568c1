#include "base/unicode.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <utf8proc.h>

namespace base {

namespace {

constexpr utf8proc_int32_t replacement = 0xFFFD;

const utf8proc_uint8_t* bytes_of(std::string_view text) {
    // The library takes bytes; a text is bytes.
    return reinterpret_cast<const utf8proc_uint8_t*>(text.data()); // NOLINT
}

// Length and code point of the character at the front; not empty. A stray byte is U+FFFD.
std::size_t take_front(std::string_view text, utf8proc_int32_t& code_point) {
    const utf8proc_ssize_t taken =
        utf8proc_iterate(bytes_of(text), static_cast<utf8proc_ssize_t>(text.size()), &code_point);
    if (taken > 0) return static_cast<std::size_t>(taken);
    code_point = replacement;
    return 1;
}

bool is_letter(char32_t code_point) {
    switch (utf8proc_category(static_cast<utf8proc_int32_t>(code_point))) {
    case UTF8PROC_CATEGORY_LU:
    case UTF8PROC_CATEGORY_LL:
    case UTF8PROC_CATEGORY_LT:
    case UTF8PROC_CATEGORY_LM:
    case UTF8PROC_CATEGORY_LO: return true;
    default: return false;
    }
}

enum class WordPart { letter, left_out, parting };

WordPart word_part(char32_t code_point) {
    constexpr char32_t high_apostrophe = 0x2019;
    if (code_point == U'\'' || code_point == high_apostrophe) return WordPart::left_out;
    if (is_letter(code_point)) return WordPart::letter;
    switch (utf8proc_category(static_cast<utf8proc_int32_t>(code_point))) {
    case UTF8PROC_CATEGORY_ND:
    case UTF8PROC_CATEGORY_NL:
    case UTF8PROC_CATEGORY_NO: return WordPart::letter;
    case UTF8PROC_CATEGORY_MN:
    case UTF8PROC_CATEGORY_MC:
    case UTF8PROC_CATEGORY_ME: return WordPart::left_out;
    default: return WordPart::parting;
    }
}

// Most texts are plain, and many are searched: small letters without the tables of Unicode.
std::u32string small_ascii(std::string_view text) {
    std::u32string small;
    small.reserve(text.size());
    for (const char letter : text) {
        const auto code = static_cast<char32_t>(letter);
        small.push_back(code >= U'A' && code <= U'Z' ? code + (U'a' - U'A') : code);
    }
    return small;
}

bool is_ascii(std::string_view text) {
    return std::all_of(text.begin(), text.end(), [](char letter) {
        return static_cast<unsigned char>(letter) < 0x80U;
    });
}

// Decomposed by `options`, and canonically ordered.
std::u32string mapped(std::string_view text, int options) {
    const std::string sound = is_utf8(text) ? std::string(text) : to_utf8(code_points(text));
    const auto all = static_cast<utf8proc_option_t>(options | UTF8PROC_STABLE);
    const auto length = static_cast<utf8proc_ssize_t>(sound.size());
    utf8proc_ssize_t size = utf8proc_decompose(bytes_of(sound), length, nullptr, 0, all);
    std::vector<utf8proc_int32_t> buffer(static_cast<std::size_t>(size < 0 ? 0 : size) + 1);
    size = utf8proc_decompose(bytes_of(sound), length, buffer.data(), size, all);
    if (size < 0) return {};
    if ((options & UTF8PROC_COMPOSE) != 0)
        size = utf8proc_normalize_utf32(buffer.data(), size, all);
    return {buffer.begin(), buffer.begin() + size};
}

} // namespace

std::u32string code_points(std::string_view text) {
    std::u32string code_points;
    while (!text.empty()) {
        utf8proc_int32_t code_point = 0;
        text.remove_prefix(take_front(text, code_point));
        code_points.push_back(static_cast<char32_t>(code_point));
    }
    return code_points;
}

bool is_utf8(std::string_view text) {
    while (!text.empty()) {
        utf8proc_int32_t code_point = 0;
        const utf8proc_ssize_t taken = utf8proc_iterate(
            bytes_of(text), static_cast<utf8proc_ssize_t>(text.size()), &code_point
        );
        if (taken <= 0) return false;
        text.remove_prefix(static_cast<std::size_t>(taken));
    }
    return true;
}

std::string composed(std::string_view text) {
    return to_utf8(mapped(text, UTF8PROC_COMPOSE));
}

std::string folded(std::string_view text) {
    return to_utf8(mapped(text, UTF8PROC_CASEFOLD | UTF8PROC_COMPOSE));
}

std::u32string letters_only(std::string_view text) {
    std::u32string letters = mapped(text, UTF8PROC_DECOMPOSE | UTF8PROC_COMPAT | UTF8PROC_CASEFOLD);
    std::erase_if(letters, [](char32_t code_point) { return !is_letter(code_point); });
    return letters;
}

std::vector<std::u32string> search_words(std::string_view text) {
    const std::u32string letters =
        is_ascii(text) ? small_ascii(text)
                       : mapped(text, UTF8PROC_DECOMPOSE | UTF8PROC_COMPAT | UTF8PROC_CASEFOLD);
    std::vector<std::u32string> words;
    bool begins = true;
    for (const char32_t code_point : letters) {
        const WordPart part = word_part(code_point);
        if (part == WordPart::letter) {
            if (begins) words.emplace_back();
            words.back() += code_point;
            begins = false;
        } else if (part == WordPart::parting) {
            begins = true;
        }
    }
    return words;
}

std::vector<std::string> graphemes(std::string_view text) {
    std::vector<std::string> all;
    utf8proc_int32_t before = 0;
    utf8proc_int32_t state = 0;
    while (!text.empty()) {
        utf8proc_int32_t code_point = 0;
        const std::size_t length = take_front(text, code_point);
        const bool begins =
            all.empty() || utf8proc_grapheme_break_stateful(before, code_point, &state);
        if (begins) all.emplace_back();
        all.back() += text.substr(0, length);
        text.remove_prefix(length);
        before = code_point;
    }
    return all;
}

std::string capitalised(std::string_view text) {
    std::u32string all = code_points(text);
    bool begins = true;
    for (char32_t& code_point : all) {
        if (begins)
            code_point =
                static_cast<char32_t>(utf8proc_toupper(static_cast<utf8proc_int32_t>(code_point)));
        begins = code_point == U' ' || code_point == U'-';
    }
    return to_utf8(all);
}

std::string to_utf8(std::u32string_view code_points) {
    constexpr std::size_t bytes_max = 4;
    std::string text;
    for (const char32_t code_point : code_points) {
        std::array<utf8proc_uint8_t, bytes_max> bytes{};
        const utf8proc_ssize_t length =
            utf8proc_encode_char(static_cast<utf8proc_int32_t>(code_point), bytes.data());
        for (utf8proc_ssize_t at = 0; at < length; ++at)
            text.push_back(static_cast<char>(bytes[static_cast<std::size_t>(at)]));
    }
    return text;
}

} // namespace base
