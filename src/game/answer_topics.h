// Every kind of question: its first word, how it is asked, and who answers it. To add one, write
// its function in a file answer_SUBJECT.cpp and name it in the list of answers.cpp.
//
// A function takes the words behind its first word. It returns misfit() where they do not fit; the
// caller says which word it was and how the question is asked. Words that are left over are
// refused by the caller too.
#pragma once

#include "game/answer_words.h"
#include "game/answers.h"
#include "rules/group_odds.h"

namespace game {

struct AnswerTopic {
    const char* word;
    const char* form;
    const char* help;
    base::Result<Answer> (*answer)(const AnswerContext& context, Words& words);
};

base::Error misfit();

base::Result<Answer> answer_dc(const AnswerContext& context, Words& words);
base::Result<Answer> answer_odds(const AnswerContext& context, Words& words);
base::Result<Answer> answer_attack(const AnswerContext& context, Words& words);
base::Result<Answer> answer_group(const AnswerContext& context, Words& words);
base::Result<Answer> answer_dice(const AnswerContext& context, Words& words);
base::Result<Answer> answer_creature(const AnswerContext& context, Words& words);
base::Result<Answer> answer_budget(const AnswerContext& context, Words& words);
base::Result<Answer> answer_encounter(const AnswerContext& context, Words& words);
base::Result<Answer> answer_xp(const AnswerContext& context, Words& words);
base::Result<Answer> answer_heal(const AnswerContext& context, Words& words);
base::Result<Answer> answer_rest(const AnswerContext& context, Words& words);
base::Result<Answer> answer_condition(const AnswerContext& context, Words& words);
base::Result<Answer> answer_price(const AnswerContext& context, Words& words);
base::Result<Answer> answer_split(const AnswerContext& context, Words& words);
base::Result<Answer> answer_party(const AnswerContext& context, Words& words);
base::Result<Answer> answer_rule(const AnswerContext& context, Words& words);
base::Result<Answer> answer_date(const AnswerContext& context, Words& words);
base::Result<Answer> answer_weather(const AnswerContext& context, Words& words);

// Parts that several of them share.

// The limits of what is typed: modifiers, DCs and AC.
struct AnswerLimits {
    static constexpr int modifier_min = -99;
    static constexpr int modifier_max = 199;
    static constexpr int dc_max = 199;
    static constexpr int party_max = 50;
};

// "advantage" or "fortune", "disadvantage" or "misfortune"; normal where neither stands.
rules::RollMode take_roll_mode(Words& words);

// "party 5 level 3", "levels 3 3 4 2", or nothing: the party of the campaign that plays tonight.
base::Result<std::vector<int>> take_levels(const AnswerContext& context, Words& words);

// The chances of the degrees this kind of check has, as lines and as values.
void add_degrees(Answer& answer, rules::CheckKind kind, const rules::DegreeOdds& odds);

// What a group's checks against one DC lead to, with a title. At least one member.
void add_group(
    Answer& answer, rules::CheckKind kind, const std::vector<rules::GroupMember>& members, int dc
);

} // namespace game
