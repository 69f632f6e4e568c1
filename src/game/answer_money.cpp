// "price rope", "split 1204 gp 5".
#include "game/answer_topics.h"
#include "game/money.h"
#include "game/price_search.h"

namespace game {

static bool is_number(const std::string& word) {
    return word.find_first_not_of("0123456789") == std::string::npos;
}

base::Result<Answer> answer_price(const AnswerContext& context, Words& words) {
    if (words.is_at_end()) return misfit();
    if (context.prices == nullptr || context.prices->prices.empty())
        return base::Error{base::ErrorKind::not_found, "There is no price list at hand."};
    const rules::PriceBook& book = *context.prices;
    const std::string wanted = words.take_rest();
    const std::vector<std::size_t> found = search_prices(book, {wanted, {}, -1, {}});
    if (found.empty())
        return base::Error{
            base::ErrorKind::not_found, "The price list has nothing called \"" + wanted + "\"."};
    const Treasury none;
    const std::vector<Coin> coins =
        coins_of(context.campaign == nullptr ? none : context.campaign->treasury, &book);
    constexpr std::size_t rows_max = 12;
    Answer answer;
    const rules::Price& first = book.prices[found.front()];
    answer.title = first.name + ": " + price_text(first, coins);
    std::vector<NamedValues> rows;
    for (std::size_t at = 0; at < found.size() && at < rows_max; ++at) {
        const rules::Price& price = book.prices[found[at]];
        const rules::PriceKind* kind = rules::find_price_kind(book, price.kind);
        answer.lines.push_back(
            price.name + "\t" + price_text(price, coins) + "\t" +
            (kind == nullptr ? price.kind : kind->name)
        );
        rows.push_back(
            {{"name", price.name},
             {"price", price_text(price, coins)},
             {"worth", price.worth},
             {"worth_max", price.worth_max},
             {"kind", price.kind}}
        );
    }
    if (found.size() > rows_max)
        answer.lines.push_back("and " + std::to_string(found.size() - rows_max) + " more");
    const rules::PriceKind* kind = rules::find_price_kind(book, first.kind);
    if (kind != nullptr) answer.source = kind->source;
    answer.values.push_back({"prices", std::move(rows)});
    return answer;
}

base::Result<Answer> answer_split(const AnswerContext& context, Words& words) {
    std::vector<std::string> parts;
    while (const auto word = words.take_any())
        parts.push_back(*word);
    if (parts.size() < 2) return misfit();
    Words last(parts.back());
    constexpr int people_max = 50;
    const auto people = last.take_number(1, people_max);
    if (!people) return misfit();
    std::string amount;
    for (std::size_t at = 0; at + 1 < parts.size(); ++at) {
        if (parts[at] == "among") continue;
        // The comma of "1,204" has parted words.
        const bool goes_on = at > 0 && is_number(parts[at - 1]) && is_number(parts[at]);
        amount += (amount.empty() || goes_on ? "" : " ") + parts[at];
    }
    const Treasury none;
    const std::vector<Coin> coins =
        coins_of(context.campaign == nullptr ? none : context.campaign->treasury, context.prices);
    const auto whole = parse_money(amount, coins);
    if (!whole.ok()) return whole.error();
    const auto split = split_money(whole.value(), *people);
    if (!split.ok()) return split.error();
    Answer answer;
    answer.title = money_text(split.value().each, coins) + " each";
    answer.lines.push_back("split\t" + money_text(whole.value(), coins));
    answer.lines.push_back("among\t" + std::to_string(*people));
    answer.lines.push_back("left over\t" + money_text(split.value().remainder, coins));
    answer.values.push_back({"each", money_text(split.value().each, coins)});
    answer.values.push_back({"each_worth", split.value().each});
    answer.values.push_back({"left_over", money_text(split.value().remainder, coins)});
    answer.values.push_back({"left_over_worth", split.value().remainder});
    answer.values.push_back({"people", *people});
    return answer;
}

} // namespace game
