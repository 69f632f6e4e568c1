#include "game/answers.h"

#include "game/answer_topics.h"

#include <algorithm>
#include <array>

namespace game {

namespace {

using base::Error;
using base::ErrorKind;

base::Result<Answer> answer_help(const AnswerContext& context, Words& words);

constexpr std::array<AnswerTopic, 19> topics{{
    {"dc",
     "dc level 7 [hard] [rare] | dc rank 3 | dc trained | dc hard",
     "a difficulty class from the tables, with adjustments",
     answer_dc},
    {"odds",
     "odds +9 dc 20 [advantage | disadvantage]",
     "the chance of every degree of one check",
     answer_odds},
    {"attack",
     "attack +9 ac 18 [2d6+4] [agile] [advantage | disadvantage]",
     "the chance to hit and the expected damage",
     answer_attack},
    {"group",
     "group +5 +7 +2 dc 15 [advantage | disadvantage]",
     "how many of a group succeed",
     answer_group},
    {"dice",
     "dice 8d6 [at least 30 | at most 30 | exactly 30]",
     "mean, spread and chances of dice",
     answer_dice},
    {"budget",
     "budget party 5 level 3 | budget levels 3 3 4 2",
     "the XP of each threat for a party",
     answer_budget},
    {"encounter",
     "encounter party 4 level 5 vs 2 level 6 1 level 4 1 complex hazard 5 | encounter levels 3 3 4 "
     "vs 2 cr 1/2",
     "how hard a fight is for a party",
     answer_encounter},
    {"xp",
     "xp level 6 party 4 | xp cr 5 | xp have 940 gain 110 level 3",
     "what an opponent is worth, and when a level is reached",
     answer_xp},
    {"heal",
     "heal trained +7 [hour]",
     "what treating wounds leads to, at every DC of a proficiency rank",
     answer_heal},
    {"rest",
     "rest con +2 level 5 [full day | rough] | rest short 3d8 con +2 | rest long 5 spent 3 | rest",
     "what a night, a short or a long rest gives back; alone, to the party of a campaign",
     answer_rest},
    {"creature",
     "creature level 5 [guard] [weak | elite] | creature cr 1/4 [guard]",
     "every number of a creature made up from level and kind",
     answer_creature},
    {"price", "price rope", "what a thing or a service costs", answer_price},
    {"split",
     "split 1204 gp 5 | split 12 gp 3 sp among 4",
     "an amount of money in even parts, with what is left over",
     answer_split},
    {"condition", "condition frightened [2]", "what a condition does, in words", answer_condition},
    {"party",
     "party | party will dc 20",
     "the party's defences now, and its chances against a DC; needs a campaign",
     answer_party},
    {"rule",
     "rule cover | rule travel pace | rule",
     "a rule in short words with its figures, or one of your own pages",
     answer_rule},
    {"date",
     "date | date 12 Reedmonth 1204 | date +30 | date day 40",
     "season, moons, holidays and what is due, today or another day; needs a campaign",
     answer_date},
    {"weather",
     "weather | weather day 12 | weather +3",
     "the weather where the party is, today or another day; needs a campaign",
     answer_weather},
    {"help", "help [dc]", "what can be asked", answer_help},
}};

const AnswerTopic* find_topic(std::string_view word) {
    const auto found = std::find_if(topics.begin(), topics.end(), [word](const AnswerTopic& topic) {
        return word == topic.word;
    });
    return found == topics.end() ? nullptr : &*found;
}

std::string topic_words() {
    std::string list;
    for (const AnswerTopic& topic : topics)
        list += (list.empty() ? "" : ", ") + std::string(topic.word);
    return list;
}

// The forms of a topic as the end of a sentence.
std::string forms_of(const AnswerTopic& topic) {
    return "ask: " + std::string(topic.form);
}

Error does_not_fit(const AnswerTopic& topic, const Words& words) {
    const std::string what = words.is_at_end()
                                 ? std::string("Something is missing")
                                 : "\"" + std::string(words.next()) + "\" does not fit here";
    return {ErrorKind::bad_text, what + "; " + forms_of(topic)};
}

base::Result<Answer> answer_help(const AnswerContext& /*context*/, Words& words) {
    const AnswerTopic* wanted = nullptr;
    if (!words.is_at_end()) {
        wanted = find_topic(words.next());
        if (wanted == nullptr) return misfit();
        words.take_any();
    }
    Answer answer;
    answer.title = wanted == nullptr ? "What can be asked" : wanted->help;
    std::vector<NamedValues> rows;
    for (const AnswerTopic& topic : topics) {
        if (wanted != nullptr && wanted != &topic) continue;
        answer.lines.push_back(
            wanted == nullptr ? topic.word + std::string("\t") + topic.help : topic.form
        );
        rows.push_back(
            {{"word", std::string(topic.word)},
             {"form", std::string(topic.form)},
             {"help", std::string(topic.help)}}
        );
    }
    if (wanted == nullptr) {
        answer.lines.emplace_back("\"help dc\" says how one of them is asked.");
        answer.lines.emplace_back("\"four\" or \"srd\" before a question chooses the rulebook; "
                                  "srd5.2.1 the later edition.");
    }
    answer.values.push_back({"topics", std::move(rows)});
    return answer;
}

} // namespace

Error misfit() {
    return {ErrorKind::bad_text, {}};
}

base::Result<Answer> answer(const AnswerContext& context, std::string_view text) {
    Words words(text);
    const AnswerTopic* const topic = find_topic(words.next());
    if (topic == nullptr)
        return Error{
            ErrorKind::bad_text,
            (words.is_at_end() ? std::string("Nothing is asked")
                               : "\"" + std::string(words.next()) + "\" is not understood") +
                "; ask about: " + topic_words() + "."};
    words.take_any();
    base::Result<Answer> found = topic->answer(context, words);
    const bool is_misfit = !found.ok() && found.error().message.empty();
    if (is_misfit || (found.ok() && !words.is_at_end())) return does_not_fit(*topic, words);
    return found;
}

std::optional<RulebookChoice> rulebook_choice(std::string_view word) {
    using rules::Family;
    using rules::SrdEdition;
    if (word == "four" || word == "four-degree")
        return RulebookChoice{Family::four_degree, SrdEdition::srd_5_1};
    if (word == "srd" || word == "srd5" || word == "srd5.1")
        return RulebookChoice{Family::srd5, SrdEdition::srd_5_1};
    if (word == "srd5.2" || word == "srd5.2.1")
        return RulebookChoice{Family::srd5, SrdEdition::srd_5_2_1};
    return {};
}

std::optional<RulebookChoice> take_rulebook_choice(std::string& words) {
    Words read(words);
    const std::optional<RulebookChoice> choice = rulebook_choice(read.next());
    if (!choice) return {};
    read.take_any();
    words = read.take_rest();
    return choice;
}

std::vector<AnswerTopicInfo> answer_topics() {
    std::vector<AnswerTopicInfo> infos;
    infos.reserve(topics.size());
    for (const AnswerTopic& topic : topics)
        infos.push_back({topic.word, topic.form, topic.help});
    return infos;
}

} // namespace game
