// Questions in words, answered by the functions that the screen computes with: "dc level 7 hard",
// "odds +9 dc 20", "encounter party 4 level 5 vs 2 level 6". For the terminal and for a search box.
#pragma once

#include "base/result.h"
#include "game/answer.h"
#include "game/campaign.h"
#include "game/climate.h"
#include "game/reference.h"
#include "rules/prices.h"
#include "rules/rulebook.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace game {

// What a question is answered from.
struct AnswerContext {
    const rules::Rulebook& rulebook;
    const Campaign* campaign = nullptr;       // none: questions about the party are refused
    const Climates* climates = nullptr;       // none: there is no weather
    const rules::PriceBook* prices = nullptr; // none: questions about prices are refused
    const Reference* reference = nullptr;     // none: of the rules only the conditions are known
};

// The answer to these words. Errors: bad_text when they are not understood (the message says what
// is, in one line); not_possible, out_of_range, not_found from what computes the answer.
base::Result<Answer> answer(const AnswerContext& context, std::string_view words);

// A rulebook named by the first word of a question: "four" or "four-degree"; "srd", "srd5" or
// "srd5.1" for SRD 5.1, "srd5.2" or "srd5.2.1" for SRD 5.2.1.
struct RulebookChoice {
    rules::Family family = rules::Family::four_degree;
    rules::SrdEdition edition = rules::SrdEdition::srd_5_1;

    bool operator==(const RulebookChoice&) const = default;
};

std::optional<RulebookChoice> rulebook_choice(std::string_view word);

// Takes such a word off the front of a question.
std::optional<RulebookChoice> take_rulebook_choice(std::string& words);

// One kind of question, for lists of what can be asked.
struct AnswerTopicInfo {
    std::string word; // the first word
    std::string form; // how it is asked; several forms have " | " between them
    std::string help; // what it answers, in one line
};

std::vector<AnswerTopicInfo> answer_topics();

} // namespace game
