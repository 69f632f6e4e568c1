#include "game/money.h"

#include "base/text.h"

#include <algorithm>
#include <cctype>
#include <optional>
#include <set>

namespace game {

namespace {

using base::Error;
using base::ErrorKind;
using base::Result;

constexpr int percent = 100;

bool is_digit(char letter) {
    return letter >= '0' && letter <= '9';
}

Error bad(std::string message) {
    return {ErrorKind::bad_text, std::move(message)};
}

Error too_much() {
    return {ErrorKind::out_of_range, "That is more money than the ledger can hold."};
}

bool is_too_much(std::int64_t amount) {
    return amount > money_max || amount < -money_max;
}

// Largest first.
std::vector<Coin> falling(std::vector<Coin> coins) {
    std::stable_sort(coins.begin(), coins.end(), [](const Coin& one, const Coin& other) {
        return one.worth > other.worth;
    });
    return coins;
}

// Takes the text of an amount apart.
class MoneyReader {
public:
    MoneyReader(std::string_view text, const std::vector<Coin>& coins)
        : text_(text), coins_(falling(coins)) {}

    Result<std::int64_t> read() {
        const bool is_negative = take_sign();
        if (at_ == text_.size()) return bad("No amount is there yet.");
        std::int64_t sum = 0;
        std::set<std::string> seen;
        while (at_ < text_.size()) {
            const Result<std::int64_t> part = read_part(seen);
            if (!part.ok()) return part.error();
            const Result<std::int64_t> added = money_sum(sum, part.value());
            if (!added.ok()) return added.error();
            sum = added.value();
            skip_spaces();
        }
        return is_negative ? -sum : sum;
    }

private:
    void skip_spaces() {
        while (at_ < text_.size() && text_[at_] == ' ')
            at_ += 1;
    }

    bool take_sign() {
        skip_spaces();
        constexpr std::string_view minus = "\xE2\x88\x92"; // U+2212
        bool is_negative = false;
        if (text_.substr(at_, minus.size()) == minus) {
            at_ += minus.size();
            is_negative = true;
        } else if (at_ < text_.size() && (text_[at_] == '-' || text_[at_] == '+')) {
            is_negative = text_[at_] == '-';
            at_ += 1;
        }
        skip_spaces();
        return is_negative;
    }

    // Digits, with commas before every third one from the right or without any.
    Result<std::string> read_whole() {
        std::string digits;
        std::size_t since_comma = 0;
        bool has_comma = false;
        while (at_ < text_.size() && (is_digit(text_[at_]) || text_[at_] == ',')) {
            if (text_[at_] == ',') {
                const bool is_well_placed =
                    has_comma ? since_comma == 3 : since_comma >= 1 && since_comma <= 3;
                if (!is_well_placed) return bad("A comma parts thousands, as in 1,204.");
                has_comma = true;
                since_comma = 0;
            } else {
                digits += text_[at_];
                since_comma += 1;
            }
            at_ += 1;
        }
        if (has_comma && since_comma != 3) return bad("A comma parts thousands, as in 1,204.");
        return digits;
    }

    Result<const Coin*> read_coin(bool is_only_part) {
        skip_spaces();
        const std::size_t start = at_;
        while (at_ < text_.size() && !is_digit(text_[at_]) && text_[at_] != ' ' &&
               text_[at_] != '.' && text_[at_] != ',')
            at_ += 1;
        const std::string word = base::lowercase(text_.substr(start, at_ - start));
        if (word.empty()) {
            if (!is_only_part || at_ < text_.size())
                return bad("Every number needs its coin, as in 12 gp 3 sp.");
            for (const Coin& coin : coins_)
                if (coin.is_counted_in) return &coin;
        }
        for (const Coin& coin : coins_)
            if (word == base::lowercase(coin.abbreviation) || word == base::lowercase(coin.name))
                return &coin;
        std::string known;
        for (const Coin& coin : coins_)
            known += (known.empty() ? "" : ", ") + coin.abbreviation;
        return bad("There is no coin \"" + word + "\"; there are " + known + ".");
    }

    Result<std::int64_t> read_part(std::set<std::string>& seen) {
        const Result<std::string> whole = read_whole();
        if (!whole.ok()) return whole.error();
        std::string fraction;
        if (at_ < text_.size() && text_[at_] == '.') {
            at_ += 1;
            while (at_ < text_.size() && is_digit(text_[at_]))
                fraction += text_[at_++];
            if (fraction.empty()) return bad("Behind the point stand digits, as in 12.5 gp.");
        }
        if (whole.value().empty() && fraction.empty())
            return bad("An amount begins with a number, as in 12 gp.");
        const Result<const Coin*> coin = read_coin(seen.empty());
        if (!coin.ok()) return coin.error();
        if (!seen.insert(coin.value()->abbreviation).second)
            return bad(coin.value()->abbreviation + " stands there twice.");
        return worth_of(whole.value(), fraction, *coin.value());
    }

    Result<std::int64_t>
    worth_of(const std::string& whole, std::string fraction, const Coin& coin) const {
        while (!fraction.empty() && fraction.back() == '0')
            fraction.pop_back();
        constexpr std::size_t digits_max = 13; // money_max has as many
        const std::size_t first = std::min(whole.find_first_not_of('0'), whole.size());
        if (whole.size() - first > digits_max) return too_much();
        const std::int64_t number = first == whole.size() ? 0 : std::stoll(whole.substr(first));
        Result<std::int64_t> full = money_times(number, coin.worth);
        if (!full.ok() || fraction.empty()) return full;
        // Long division of worth by 10 for every digit: exact, and nothing can overflow.
        std::int64_t part = 0;
        std::int64_t rest = coin.worth;
        constexpr std::int64_t ten = 10;
        for (const char digit : fraction) {
            if (rest % ten != 0)
                return bad(
                    "That leaves a part of a " + coins_.back().abbreviation + ", the smallest coin."
                );
            rest /= ten;
            part += (digit - '0') * rest;
        }
        return money_sum(full.value(), part);
    }

    std::string_view text_;
    std::vector<Coin> coins_;
    std::size_t at_ = 0;
};

} // namespace

std::vector<Coin> coins_of(const Treasury& treasury, const rules::PriceBook* prices) {
    if (!treasury.coins.empty()) return treasury.coins;
    std::vector<Coin> coins;
    if (prices != nullptr)
        for (const rules::CoinRule& rule : prices->coins)
            coins.push_back({rule.key, rule.name, rule.worth, rule.is_counted_in, {}});
    if (coins.empty()) coins.push_back({"cp", "copper", 1, true, {}});
    return coins;
}

Result<std::int64_t> parse_money(std::string_view text, const std::vector<Coin>& coins) {
    return MoneyReader(text, coins).read();
}

std::string thousands_text(std::int64_t number) {
    constexpr std::size_t group = 3;
    std::string digits = std::to_string(number);
    const std::size_t sign = number < 0 ? 1 : 0;
    for (std::size_t at = digits.size(); at > sign + group;) {
        at -= group;
        digits.insert(at, ",");
    }
    return digits;
}

std::string money_text(std::int64_t amount, const std::vector<Coin>& coins) {
    std::string text;
    std::int64_t rest = amount < 0 ? -amount : amount;
    const std::vector<Coin> by_worth = falling(coins);
    for (const Coin& coin : by_worth) {
        if (!coin.is_counted_in) continue;
        const std::int64_t count = rest / coin.worth;
        rest %= coin.worth;
        if (count == 0) continue;
        text += (text.empty() ? "" : " ") + thousands_text(count) + " " + coin.abbreviation;
    }
    if (!text.empty()) return (amount < 0 ? "-" : "") + text;
    for (const Coin& coin : by_worth)
        if (coin.is_counted_in) return "0 " + coin.abbreviation;
    return "0";
}

Result<std::int64_t> money_sum(std::int64_t one, std::int64_t other) {
    std::int64_t sum = 0;
    if (__builtin_add_overflow(one, other, &sum) || is_too_much(sum)) return too_much();
    return sum;
}

Result<std::int64_t> money_times(std::int64_t amount, std::int64_t factor) {
    std::int64_t product = 0;
    if (__builtin_mul_overflow(amount, factor, &product) || is_too_much(product)) return too_much();
    return product;
}

Result<std::int64_t> money_share(std::int64_t amount, int percents) {
    std::int64_t product = 0;
    if (__builtin_mul_overflow(amount, static_cast<std::int64_t>(percents), &product))
        return too_much();
    std::int64_t share = product / percent;
    if (product % percent < 0) share -= 1;
    if (is_too_much(share)) return too_much();
    return share;
}

Result<MoneySplit> split_money(std::int64_t amount, std::int64_t people) {
    if (people < 1) return Error{ErrorKind::out_of_range, "Choose who gets a share."};
    if (amount < 0) return Error{ErrorKind::out_of_range, "Only what is there can be split."};
    return MoneySplit{amount / people, amount % people};
}

std::string coins_problem(const std::vector<Coin>& coins) {
    if (coins.empty()) return "There must be a coin.";
    std::set<std::string> seen;
    bool has_smallest = false;
    for (const Coin& coin : coins) {
        if (coin.abbreviation.empty()) return "Every coin needs a short name, such as gp.";
        for (const char letter : coin.abbreviation)
            if (is_digit(letter) || std::isspace(static_cast<unsigned char>(letter)) != 0 ||
                letter == '.' || letter == ',' || letter == '-' || letter == '+')
                return "\"" + coin.abbreviation + "\" must be letters only.";
        if (!seen.insert(base::lowercase(coin.abbreviation)).second)
            return "Two coins are called " + coin.abbreviation + ".";
        if (coin.worth < 1 || coin.worth > coin_worth_max)
            return "A coin is worth at least 1 of the smallest.";
        has_smallest = has_smallest || (coin.worth == 1 && coin.is_counted_in);
    }
    if (!has_smallest) return "One coin that amounts are shown in must be worth 1.";
    return {};
}

} // namespace game
