// Enumerators as the words that stand in files: their own names. A new enumerator is found by the
// compiler, because the switches in enum_words.cpp have no default.
#pragma once

#include "game/campaign.h"

#include <optional>
#include <string>
#include <string_view>

namespace store {

std::string_view word_of(rules::Family value);
std::string_view word_of(rules::SrdEdition value);
std::string_view word_of(rules::BonusType value);
std::string_view word_of(rules::RollMode value);
std::string_view word_of(rules::Degree value);
std::string_view word_of(game::TurnEdge value);
std::string_view word_of(game::DurationKind value);
std::string_view word_of(game::Side value);
std::string_view word_of(game::Standing value);
std::string_view word_of(game::RefreshedBy value);
std::string_view word_of(game::ComesUp value);
std::string_view word_of(game::PromptKind value);
std::string_view word_of(game::Phase value);
std::string_view word_of(game::Kind value);
std::string_view word_of(game::NoteKind value);
std::string_view word_of(game::Hazard value);
std::string_view word_of(game::Sky value);
std::string_view word_of(game::WindStrength value);
std::string_view word_of(game::LedgerKind value);
std::string_view word_of(game::ItemFate value);
std::string_view word_of(game::HolidayRule value);

// The enumerators of these enums count from 0 without a gap; the first number without a word ends
// them.
template <class Enum>
std::optional<Enum> from_word(std::string_view word) {
    for (int i = 0; !word_of(static_cast<Enum>(i)).empty(); ++i)
        if (word_of(static_cast<Enum>(i)) == word) return static_cast<Enum>(i);
    return std::nullopt;
}

// "party, opponents, others"
template <class Enum>
std::string all_words() {
    std::string words;
    for (int i = 0; !word_of(static_cast<Enum>(i)).empty(); ++i)
        words += (i == 0 ? "" : ", ") + std::string(word_of(static_cast<Enum>(i)));
    return words;
}

} // namespace store
