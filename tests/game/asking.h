// Asking as a game master would, and taking the answer apart.
#pragma once

#include "game/answers.h"
#include "rules/books.h"

#include <string>
#include <string_view>
#include <variant>

namespace asking {

inline const rules::Rulebook& four() {
    static const rules::Rulebook book = four_degree_book();
    return book;
}

inline const rules::Rulebook& srd() {
    static const rules::Rulebook book = srd_book(rules::SrdEdition::srd_5_2_1);
    return book;
}

inline game::Answer
answer(std::string_view words, const rules::Rulebook& book, const game::Campaign* campaign) {
    CAPTURE(std::string(words));
    const auto found = game::answer({book, campaign}, words);
    REQUIRE_MESSAGE(found.ok(), found.error().message);
    return found.value();
}

inline game::Answer answer(std::string_view words) {
    return answer(words, four(), nullptr);
}

inline game::Answer srd_answer(std::string_view words) {
    return answer(words, srd(), nullptr);
}

inline std::string refusal(std::string_view words, const rules::Rulebook& book = four()) {
    const auto found = game::answer({book, nullptr}, words);
    REQUIRE_FALSE(found.ok());
    return found.error().message;
}

// The value under a path: "degrees/success".
inline const game::NamedValue& value(const game::NamedValues& values, std::string_view path) {
    CAPTURE(std::string(path));
    const std::size_t slash = path.find('/');
    const game::NamedValue* found = game::find_value(values, path.substr(0, slash));
    REQUIRE(found != nullptr);
    if (slash == std::string_view::npos) return *found;
    return value(std::get<game::NamedValues>(found->content), path.substr(slash + 1));
}

inline int whole(const game::NamedValues& values, std::string_view path) {
    return std::get<int>(value(values, path).content);
}

inline std::string text(const game::NamedValues& values, std::string_view path) {
    return std::get<std::string>(value(values, path).content);
}

inline double decimal(const game::NamedValues& values, std::string_view path) {
    return std::get<game::Quantity>(value(values, path).content).decimal;
}

// "7/20"; empty where no fraction is known.
inline std::string exact(const game::NamedValues& values, std::string_view path) {
    const auto& quantity = std::get<game::Quantity>(value(values, path).content);
    return quantity.exact ? rules::to_text(*quantity.exact) : std::string();
}

inline std::vector<game::NamedValues> rows(const game::NamedValues& values, std::string_view path) {
    return std::get<std::vector<game::NamedValues>>(value(values, path).content);
}

inline bool says(const game::Answer& answer, std::string_view words) {
    for (const std::string& line : answer.lines)
        if (line.find(words) != std::string::npos) return true;
    return answer.title.find(words) != std::string::npos;
}

} // namespace asking
