// "heal trained +7", "rest con +2 level 5", "rest short 3d8 con +2", "rest long 5 spent 3".
#include "game/answer_topics.h"
#include "game/experience.h"
#include "game/recovery_words.h"
#include "game/resting.h"
#include "game/sheet.h"
#include "rules/recovery.h"

#include <algorithm>

namespace game {

namespace {

using base::Error;
using base::ErrorKind;
using rules::Rulebook;
using rules::TreatWoundsOutlook;

constexpr int level_max = 30;
constexpr int hit_dice_max = 100;

// Means of treated wounds are multiples of 1/40: a d20, and dice with means of whole halves.
constexpr double outlook_parts = 40.0;

NamedValues outlook_values(const TreatWoundsOutlook& outlook) {
    Answer degrees;
    add_degrees(degrees, rules::CheckKind::four_degree, outlook.odds);
    NamedValues values = std::move(degrees.values);
    values.push_back({"rank", outlook.rank});
    values.push_back({"dc", outlook.dc});
    values.push_back({"minutes", outlook.minutes});
    values.push_back({"hp_restored", Quantity(outlook.hp_restored, outlook_parts)});
    values.push_back({"hp_lost", Quantity(outlook.hp_lost, outlook_parts)});
    values.push_back({"hp_net", Quantity(rules::net_hp(outlook), outlook_parts)});
    return values;
}

// "rest con +2 level 5 [full day | rough]".
base::Result<Answer> night_answer(const Rulebook& rulebook, Words& words) {
    if (!words.take("con")) return misfit();
    const auto con = words.take_number(AnswerLimits::modifier_min, AnswerLimits::modifier_max);
    if (!con || !words.take("level")) return misfit();
    const auto level = words.take_number(1, level_max);
    if (!level) return misfit();
    rules::NightRest kind = rules::NightRest::usual;
    if (words.take_all({"full", "day"}))
        kind = rules::NightRest::full_day;
    else if (words.take("rough"))
        kind = rules::NightRest::rough;
    Answer answer;
    const int hp = rules::night_rest_hp(rulebook, *con, *level, kind);
    answer.title = std::to_string(hp) + " HP";
    answer.lines.push_back(
        "level " + std::to_string(*level) + ", Constitution " + signed_text(*con) +
        (kind == rules::NightRest::usual      ? ", a night's rest"
         : kind == rules::NightRest::full_day ? ", a whole day and night in bed"
                                              : ", a night without comfort")
    );
    answer.source = rulebook.recovery.night_rest.source;
    answer.values = {{"hp", hp}};
    return answer;
}

// "rest short 3d8 con +2".
base::Result<Answer> short_answer(const Rulebook& rulebook, Words& words) {
    const auto dice = words.take_dice();
    if (!dice.ok()) return dice.error();
    const bool is_plain = dice.value().constant == 0 && !dice.value().terms.empty() &&
                          std::all_of(
                              dice.value().terms.begin(),
                              dice.value().terms.end(),
                              [](const rules::DiceTerm& term) { return term.count > 0; }
                          );
    if (!is_plain)
        return Error{
            ErrorKind::bad_text, "Hit dice are dice alone (3d8); the modifier stands behind con."};
    int con = 0;
    if (words.take("con")) {
        const auto typed =
            words.take_number(AnswerLimits::modifier_min, AnswerLimits::modifier_max);
        if (!typed) return misfit();
        con = *typed;
    }
    const rules::Distribution hp = rules::short_rest_hp(rulebook, dice.value().terms, con);
    constexpr double half = 0.5;
    Answer answer;
    answer.title = decimal_text(rules::mean(hp), 1) + " HP on average";
    answer.lines.push_back(
        rules::to_text(dice.value()) + " hit dice, Constitution " + signed_text(con) + ": " +
        std::to_string(hp.lowest) + " to " + std::to_string(rules::highest(hp)) + ", middle " +
        std::to_string(rules::quantile(hp, half))
    );
    answer.source = rulebook.recovery.rests.source;
    answer.values = {
        {"mean", Quantity(rules::mean(hp))},
        {"lowest", hp.lowest},
        {"highest", rules::highest(hp)},
        {"median", rules::quantile(hp, half)}};
    return answer;
}

// "rest long 5 spent 3".
base::Result<Answer> long_answer(const Rulebook& rulebook, Words& words) {
    const auto total = words.take_number(1, hit_dice_max);
    if (!total || !words.take("spent")) return misfit();
    const auto spent = words.take_number(0, *total);
    if (!spent) return misfit();
    const int regained = rules::long_rest_hit_dice(rulebook, *total, *spent);
    Answer answer;
    answer.title =
        "All HP, and " + hit_dice_text(regained) + (regained == 1 ? " comes back" : " come back");
    answer.lines.push_back(
        std::to_string(*total - *spent + regained) + " of " + std::to_string(*total) +
        " hit dice afterwards"
    );
    answer.source = rulebook.recovery.rests.source;
    answer.values = {
        {"hit_dice_regained", regained}, {"hit_dice_left", *total - *spent + regained}};
    return answer;
}

// "rest" alone: what a night (a long rest) gives the party of the campaign.
base::Result<Answer> party_rest_answer(const AnswerContext& context) {
    const Campaign& campaign = *context.campaign;
    const std::vector<RestOutlook> outlooks = night_outlooks(
        campaign, context.rulebook, present_characters(campaign.party), rules::NightRest::usual
    );
    if (outlooks.empty())
        return Error{ErrorKind::not_possible, "Nobody of the party plays tonight."};
    const bool is_srd5 = context.rulebook.family == rules::Family::srd5;
    Answer answer;
    answer.title = is_srd5 ? "A long rest of the party" : "A night's rest of the party";
    std::vector<NamedValues> rows;
    for (const RestOutlook& outlook : outlooks) {
        answer.lines.push_back(outlook.name + "\t" + rest_text(outlook));
        rows.push_back(
            {{"name", outlook.name},
             {"hp", outlook.hp},
             {"hp_gained", outlook.hp_gained},
             {"hp_max", outlook.hp_max}}
        );
        if (is_srd5) rows.back().push_back({"hit_dice_regained", outlook.hit_dice_regained});
    }
    answer.source = is_srd5 ? context.rulebook.recovery.rests.source
                            : context.rulebook.recovery.night_rest.source;
    answer.values = {{"characters", std::move(rows)}};
    return answer;
}

} // namespace

base::Result<Answer> answer_heal(const AnswerContext& context, Words& words) {
    const rules::TreatWoundsRules& rules = context.rulebook.recovery.treat_wounds;
    std::vector<std::string> ranks;
    for (const rules::TreatWoundsRank& rank : rules.ranks)
        ranks.push_back(rank.key);
    if (ranks.empty())
        return Error{ErrorKind::not_possible, "This rulebook has no treating of wounds."};
    const auto rank = words.take_key(ranks);
    if (!rank) return misfit();
    const auto modifier = words.take_number(AnswerLimits::modifier_min, AnswerLimits::modifier_max);
    if (!modifier) return misfit();
    const bool takes_hour = words.take("hour");
    const auto choices =
        rules::treat_wounds_choices(context.rulebook, *rank, *modifier, takes_hour);
    if (!choices.ok()) return choices.error();

    const TreatWoundsOutlook& best = choices.value()[rules::best_choice(choices.value())];
    Answer answer;
    answer.title = "About " + decimal_text(rules::net_hp(best), 1) + " HP in " +
                   std::to_string(best.minutes) + " minutes at DC " + std::to_string(best.dc);
    std::vector<NamedValues> rows;
    for (const TreatWoundsOutlook& each : choices.value()) {
        const double succeeds = rules::chance_of_success(each.odds);
        answer.lines.push_back(
            each.name + " DC " + std::to_string(each.dc) + "\t" + precise_percent(succeeds) +
            " succeed\t" + decimal_text(each.hp_restored) + " HP restored\t" +
            decimal_text(each.hp_lost) + " HP lost"
        );
        rows.push_back(outlook_values(each));
    }
    answer.source = rules.source;
    answer.values = {{"choices", std::move(rows)}, {"best_rank", best.rank}};
    return answer;
}

base::Result<Answer> answer_rest(const AnswerContext& context, Words& words) {
    if (words.is_at_end() && context.campaign != nullptr) return party_rest_answer(context);
    if (context.rulebook.family == rules::Family::four_degree)
        return night_answer(context.rulebook, words);
    if (words.take("short")) return short_answer(context.rulebook, words);
    if (words.take("long")) return long_answer(context.rulebook, words);
    return misfit();
}

} // namespace game
