// The words of a question, taken one after the other, and how numbers are said in an answer.
#pragma once

#include "base/result.h"
#include "rules/dice.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace game {

// Words in lower case. Commas part words as spaces do, and so does the step from "dc", "ac",
// "level" or "cr" to a number ("dc20"). Every take_ function moves on only when it succeeds.
class Words {
public:
    explicit Words(std::string_view text);

    bool is_at_end() const { return at_ >= words_.size(); }

    // The next word; empty at the end.
    std::string_view next() const;

    bool take(std::string_view word);
    // Several words in a row.
    bool take_all(const std::vector<std::string_view>& words);
    std::optional<std::string> take_any();
    // A whole number with or without a sign, within these limits.
    std::optional<int> take_number(int minimum, int maximum);
    // "3", "0.25", "1/4"; 0 or more.
    std::optional<double> take_challenge();
    // "2d6+4", also with spaces beside + and -. The error says what is wrong with it.
    base::Result<rules::DiceExpression> take_dice();
    // The longest run of words that is one of these; keys have _ between words. Its key.
    std::optional<std::string> take_key(const std::vector<std::string>& keys);
    // All that is left, with spaces between.
    std::string take_rest();

private:
    std::vector<std::string> words_;
    std::size_t at_ = 0;
};

// "45 %", "12.5 %", "under 0.1 %", "over 99.9 %".
std::string precise_percent(double chance);
// At most this many digits behind the point, no zeros at the end: "14.4".
std::string decimal_text(double number, int digits = 2);
// "1 creature", "2 creatures".
std::string counted(int count, const std::string& noun);

} // namespace game
