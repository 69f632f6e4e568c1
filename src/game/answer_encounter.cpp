// "budget party 5 level 3", "encounter party 4 level 5 vs 2 level 6", "xp level 6 party 4".
#include "game/answer_topics.h"
#include "rules/challenge_text.h"
#include "rules/encounter_budget.h"
#include "rules/level_up.h"

#include <algorithm>

namespace game {

namespace {

using base::Error;
using base::ErrorKind;
using rules::Opponents;
using rules::Rulebook;

constexpr int level_max = 999; // the tables themselves say how far they go
constexpr int count_max = 1000;
constexpr int xp_max = 100'000'000;

bool is_srd(const Rulebook& rulebook) {
    return rulebook.family == rules::Family::srd5;
}

// "level 6", "CR 1/4", "complex hazard of level 5".
std::string opponents_text(const Rulebook& rulebook, const Opponents& opponents) {
    std::string level =
        (is_srd(rulebook) ? "CR " : "level ") + rules::challenge_text(opponents.level);
    if (!opponents.is_hazard) return level;
    return (opponents.is_complex ? "complex hazard of " : "hazard of ") + level;
}

// "level 6" or "cr 1/4"; the level of a hazard may stand without a word.
std::optional<double> take_level(const Rulebook& rulebook, Words& words, bool is_hazard) {
    const bool has_word = is_srd(rulebook) ? words.take("cr") : words.take("level");
    if (!has_word && !is_hazard) return {};
    if (is_srd(rulebook)) return words.take_challenge();
    const auto level = words.take_number(-level_max, level_max);
    if (!level) return {};
    return static_cast<double>(*level);
}

// "2 level 6", "level 6", "1 complex hazard 5".
std::optional<Opponents> take_opponents(const Rulebook& rulebook, Words& words) {
    Opponents opponents;
    opponents.count = words.take_number(0, count_max).value_or(1);
    opponents.is_complex = words.take("complex");
    opponents.is_hazard = words.take("hazard") || words.take("hazards");
    if (opponents.is_complex && !opponents.is_hazard) return {};
    const auto level = take_level(rulebook, words, opponents.is_hazard);
    if (!level) return {};
    opponents.level = *level;
    return opponents;
}

NamedValues budget_values(const std::vector<rules::ThreatBudget>& budgets) {
    NamedValues values;
    for (const rules::ThreatBudget& budget : budgets)
        values.push_back({budget.key, budget.xp});
    return values;
}

std::string party_text(const Rulebook& rulebook, const std::vector<int>& levels) {
    const std::string size = counted(static_cast<int>(levels.size()), "character");
    const bool is_even = std::equal(levels.begin() + 1, levels.end(), levels.begin());
    if (is_even) return size + " of level " + std::to_string(levels.front());
    if (is_srd(rulebook)) return size + " of mixed levels";
    return size + ", level " + std::to_string(rules::party_level(levels)) + " on average";
}

void add_opponents(
    Answer& answer,
    const Rulebook& rulebook,
    const std::vector<Opponents>& opponents,
    const rules::EncounterRating& rating
) {
    std::vector<NamedValues> rows;
    for (std::size_t at = 0; at < opponents.size(); ++at) {
        const Opponents& each = opponents[at];
        const std::optional<int>& xp = rating.xp_each[at];
        answer.lines.push_back(
            std::to_string(each.count) + " x " + opponents_text(rulebook, each) + "\t" +
            (xp ? std::to_string(*xp) + " XP each" : std::string("not rated"))
        );
        NamedValues row{
            {"count", each.count},
            {is_srd(rulebook) ? "challenge" : "level", Quantity(each.level)},
            {"is_hazard", each.is_hazard},
            {"is_complex", each.is_complex}};
        if (!is_srd(rulebook)) row[1].content = static_cast<int>(each.level);
        if (xp) row.push_back({"xp_each", *xp});
        rows.push_back(std::move(row));
    }
    answer.values.push_back({"opponents", std::move(rows)});
}

// "xp have 940 gain 110 level 3".
base::Result<Answer> level_up_answer(const Rulebook& rulebook, Words& words) {
    const auto have = words.take_number(0, xp_max);
    if (!have || !words.take("gain")) return misfit();
    const auto gained = words.take_number(0, xp_max);
    if (!gained || !words.take("level")) return misfit();
    const auto level = words.take_number(-level_max, level_max);
    if (!level) return misfit();
    const auto after = rules::gain_xp(rulebook, *level, *have, *gained);
    if (!after.ok()) return after.error();
    const rules::LevelUp& now = after.value();
    Answer answer;
    answer.title = "Level " + std::to_string(now.level) + " with " + std::to_string(now.xp) + " XP";
    if (now.levels_gained > 0)
        answer.lines.push_back(counted(now.levels_gained, "level") + " gained");
    if (now.xp_to_next)
        answer.lines.push_back(std::to_string(*now.xp_to_next) + " XP to the next level");
    answer.source = rulebook.advancement.source;
    answer.values = {{"level", now.level}, {"xp", now.xp}, {"levels_gained", now.levels_gained}};
    if (now.xp_to_next) answer.values.push_back({"xp_to_next", *now.xp_to_next});
    return answer;
}

} // namespace

base::Result<std::vector<int>> take_levels(const AnswerContext& context, Words& words) {
    if (words.take("party")) {
        const auto size = words.take_number(1, AnswerLimits::party_max);
        if (!size || !words.take("level")) return misfit();
        const auto level = words.take_number(-level_max, level_max);
        if (!level) return misfit();
        return std::vector<int>(static_cast<std::size_t>(*size), *level);
    }
    std::vector<int> levels;
    if (words.take("levels")) {
        while (const auto level = words.take_number(-level_max, level_max))
            levels.push_back(*level);
        if (levels.empty()) return misfit();
        if (static_cast<int>(levels.size()) > AnswerLimits::party_max)
            return Error{
                ErrorKind::out_of_range,
                "A party has " + std::to_string(AnswerLimits::party_max) +
                    " characters at most here."};
        return levels;
    }
    if (context.campaign == nullptr) return misfit();
    for (const Character& character : context.campaign->party.characters)
        if (character.is_present) levels.push_back(character.statistics.level);
    if (levels.empty()) return Error{ErrorKind::not_possible, "Nobody of the party plays tonight."};
    return levels;
}

base::Result<Answer> answer_budget(const AnswerContext& context, Words& words) {
    const Rulebook& rulebook = context.rulebook;
    const auto levels = take_levels(context, words);
    if (!levels.ok()) return levels.error();
    const auto rating = rules::rate_encounter(rulebook, levels.value(), {});
    if (!rating.ok()) return rating.error();
    Answer answer;
    answer.title = "XP budget for " + party_text(rulebook, levels.value());
    for (const rules::ThreatBudget& budget : rating.value().budgets)
        answer.lines.push_back(budget.name + "\t" + std::to_string(budget.xp) + " XP");
    for (const std::string& remark : rating.value().remarks)
        answer.lines.push_back(remark);
    answer.source = rulebook.encounters.budget_source;
    answer.values = {
        {"budgets", budget_values(rating.value().budgets)},
        {"characters", static_cast<int>(levels.value().size())}};
    if (!is_srd(rulebook)) answer.values.push_back({"party_level", rating.value().party_level});
    return answer;
}

base::Result<Answer> answer_encounter(const AnswerContext& context, Words& words) {
    const Rulebook& rulebook = context.rulebook;
    const auto levels = take_levels(context, words);
    if (!levels.ok()) return levels.error();
    if (!words.take("vs") && !words.take("against")) return misfit();
    std::vector<Opponents> opponents;
    do {
        const auto taken = take_opponents(rulebook, words);
        if (!taken) return misfit();
        opponents.push_back(*taken);
    } while (!words.is_at_end());
    const auto rated = rules::rate_encounter(rulebook, levels.value(), opponents);
    if (!rated.ok()) return rated.error();
    const rules::EncounterRating& rating = rated.value();

    Answer answer;
    const std::string threat = rating.threat.empty() ? std::string("no threat") : rating.threat;
    answer.title = threat + ": " + std::to_string(rating.xp) + " XP against " +
                   party_text(rulebook, levels.value());
    answer.title.front() =
        static_cast<char>(std::toupper(static_cast<unsigned char>(answer.title.front())));
    add_opponents(answer, rulebook, opponents, rating);
    if (rating.xp_to_next)
        answer.lines.push_back(
            std::to_string(*rating.xp_to_next) +
            (is_srd(rulebook) ? " XP left within " : " XP more make it ") + rating.next_budget
        );
    answer.lines.push_back(std::to_string(rating.xp_award_each) + " XP to each character");
    for (const std::string& remark : rating.remarks)
        answer.lines.push_back(remark);
    answer.source = rulebook.encounters.budget_source;
    answer.values.push_back({"threat", rating.threat});
    answer.values.push_back({"is_beyond", rating.is_beyond});
    answer.values.push_back({"xp", rating.xp});
    answer.values.push_back({"budgets", budget_values(rating.budgets)});
    if (rating.xp_to_next) {
        answer.values.push_back({"next_budget", rating.next_budget});
        answer.values.push_back({"xp_to_next", *rating.xp_to_next});
    }
    answer.values.push_back({"xp_award_each", rating.xp_award_each});
    answer.values.push_back({"remarks", rating.remarks});
    if (!is_srd(rulebook)) answer.values.push_back({"party_level", rating.party_level});
    return answer;
}

base::Result<Answer> answer_xp(const AnswerContext& context, Words& words) {
    const Rulebook& rulebook = context.rulebook;
    if (words.take("have")) return level_up_answer(rulebook, words);
    Opponents opponents;
    opponents.is_complex = words.take("complex");
    opponents.is_hazard = words.take("hazard");
    if (opponents.is_complex && !opponents.is_hazard) return misfit();
    const auto level = take_level(rulebook, words, opponents.is_hazard);
    if (!level) return misfit();
    opponents.level = *level;
    int party = 0;
    if (!is_srd(rulebook)) {
        if (words.take("party")) {
            const auto typed = words.take_number(-level_max, level_max);
            if (!typed) return misfit();
            party = *typed;
        } else {
            const auto levels = take_levels(context, words);
            if (!levels.ok()) return levels.error();
            party = rules::party_level(levels.value());
        }
    }
    const auto xp = rules::opponent_xp(rulebook, party, opponents);
    if (!xp)
        return Error{
            ErrorKind::not_possible,
            "The tables have no XP for " + opponents_text(rulebook, opponents) +
                (is_srd(rulebook) ? std::string(".")
                                  : " and a party of level " + std::to_string(party) + ".")};
    Answer answer;
    answer.title = std::to_string(*xp) + " XP: " + opponents_text(rulebook, opponents);
    if (!is_srd(rulebook)) {
        answer.title += " against a party of level " + std::to_string(party);
        answer.values.push_back({"party_level", party});
    }
    answer.source = rulebook.encounters.xp_source;
    answer.values.push_back({"xp", *xp});
    return answer;
}

} // namespace game
