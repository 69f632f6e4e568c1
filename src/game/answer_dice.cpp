// "dice 8d6", "dice 8d6 at least 30".
#include "game/answer_topics.h"
#include "rules/distribution.h"

#include <cmath>

namespace game {

namespace {

// Chances of the dice are multiples of one part in this.
double ways_of(const rules::DiceExpression& dice) {
    double ways = 1.0;
    for (const rules::DiceTerm& term : dice.terms)
        ways *= std::pow(term.sides, std::abs(term.count));
    return ways;
}

struct Limit {
    std::string words; // "at least"
    std::string key;
    double chance = 0;
    int total = 0;
};

// "at least 30", or none; `is_misfit` where the words end half-way.
std::optional<Limit> take_limit(const rules::Distribution& totals, Words& words, bool& is_misfit) {
    constexpr int total_max = 1'000'000;
    Limit limit;
    if (words.take_all({"at", "least"}))
        limit = {"at least", "chance_at_least"};
    else if (words.take_all({"at", "most"}))
        limit = {"at most", "chance_at_most"};
    else if (words.take("exactly"))
        limit = {"exactly", "chance_exactly"};
    else
        return {};
    const auto total = words.take_number(-total_max, total_max);
    is_misfit = !total;
    if (!total) return {};
    limit.total = *total;
    if (limit.key == "chance_at_least")
        limit.chance = rules::chance_at_least(totals, *total);
    else if (limit.key == "chance_at_most")
        limit.chance = rules::chance_at_most(totals, *total);
    else
        limit.chance = rules::chance_of_total(totals, *total);
    return limit;
}

} // namespace

base::Result<Answer> answer_dice(const AnswerContext& /*context*/, Words& words) {
    if (words.is_at_end()) return misfit();
    const auto dice = words.take_dice();
    if (!dice.ok()) return dice.error();
    const rules::Distribution totals = rules::distribution_of(dice.value());
    const double ways = ways_of(dice.value());
    bool is_misfit = false;
    const std::optional<Limit> limit = take_limit(totals, words, is_misfit);
    if (is_misfit) return misfit();

    constexpr double lower_quarter = 0.25;
    constexpr double half = 0.5;
    constexpr double upper_quarter = 0.75;
    constexpr double mean_parts = 2.0; // every die has a mean of whole halves
    const int low = rules::quantile(totals, lower_quarter);
    const int median = rules::quantile(totals, half);
    const int high = rules::quantile(totals, upper_quarter);
    const Quantity mean(rules::mean(dice.value()), mean_parts);
    const double deviation = rules::standard_deviation(totals);
    const std::string name = rules::to_text(dice.value());

    Answer answer;
    answer.title = name + ": " + decimal_text(mean.decimal) + " on average";
    if (limit) {
        const Quantity chance(limit->chance, ways);
        const std::string total = std::to_string(limit->total);
        answer.title =
            name + " " + limit->words + " " + total + ": " + precise_percent(limit->chance);
        if (chance.exact)
            answer.lines.push_back(
                "chance\t" + precise_percent(limit->chance) + " (" + rules::to_text(*chance.exact) +
                ")"
            );
        answer.values.push_back({limit->key, chance});
        answer.values.push_back({"total", limit->total});
    }
    answer.lines.push_back("average\t" + decimal_text(mean.decimal));
    answer.lines.push_back("standard deviation\t" + decimal_text(deviation));
    answer.lines.push_back(
        "lowest, highest\t" + std::to_string(totals.lowest) + ", " +
        std::to_string(rules::highest(totals))
    );
    answer.lines.push_back(
        "half of all rolls\t" + std::to_string(low) + " to " + std::to_string(high) + ", middle " +
        std::to_string(median)
    );
    answer.values.push_back({"dice", name});
    answer.values.push_back({"mean", mean});
    answer.values.push_back({"standard_deviation", Quantity(deviation)});
    answer.values.push_back({"lowest", totals.lowest});
    answer.values.push_back({"highest", rules::highest(totals)});
    answer.values.push_back({"lower_quartile", low});
    answer.values.push_back({"median", median});
    answer.values.push_back({"upper_quartile", high});
    return answer;
}

} // namespace game
