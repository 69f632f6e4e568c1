#include "game/answer_words.h"

#include "base/text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace game {

namespace {

bool is_digit(char letter) {
    return letter >= '0' && letter <= '9';
}

std::optional<double> number_in(std::string_view text) {
    double number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc() || end != text.data() + text.size()) return {};
    return number;
}

// "dc20" -> "dc", "20".
void add_word(std::vector<std::string>& words, std::string word) {
    for (const std::string_view stem : {"dc", "ac", "level", "cr"}) {
        const bool is_joined =
            word.size() > stem.size() && word.compare(0, stem.size(), stem) == 0 &&
            std::all_of(
                word.begin() + static_cast<std::ptrdiff_t>(stem.size()), word.end(), is_digit
            );
        if (!is_joined) continue;
        words.emplace_back(stem);
        word.erase(0, stem.size());
        break;
    }
    words.push_back(std::move(word));
}

bool has_only_dice_letters(std::string_view word) {
    return word.find_first_not_of("0123456789d+-") == std::string_view::npos;
}

bool is_sign(char letter) {
    return letter == '+' || letter == '-';
}

} // namespace

Words::Words(std::string_view text) {
    std::string word;
    for (const char letter : base::lowercase(text)) {
        const bool parts = letter == ' ' || letter == '\t' || letter == '\n' || letter == ',';
        if (!parts) {
            word += letter;
        } else if (!word.empty()) {
            add_word(words_, std::move(word));
            word.clear();
        }
    }
    if (!word.empty()) add_word(words_, std::move(word));
}

std::string_view Words::next() const {
    return is_at_end() ? std::string_view() : std::string_view(words_[at_]);
}

bool Words::take(std::string_view word) {
    if (is_at_end() || words_[at_] != word) return false;
    at_ += 1;
    return true;
}

bool Words::take_all(const std::vector<std::string_view>& words) {
    const std::size_t before = at_;
    for (const std::string_view word : words) {
        if (take(word)) continue;
        at_ = before;
        return false;
    }
    return true;
}

std::optional<std::string> Words::take_any() {
    if (is_at_end()) return {};
    return words_[at_++];
}

std::optional<int> Words::take_number(int minimum, int maximum) {
    std::string_view text = next();
    if (text.size() > 1 && text.front() == '+' && is_digit(text[1])) text.remove_prefix(1);
    int number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (text.empty() || error != std::errc() || end != text.data() + text.size()) return {};
    if (number < minimum || number > maximum) return {};
    at_ += 1;
    return number;
}

std::optional<double> Words::take_challenge() {
    const std::string_view text = next();
    const std::size_t slash = text.find('/');
    std::optional<double> number = number_in(text.substr(0, slash));
    if (number && slash != std::string_view::npos) {
        const std::optional<double> parts = number_in(text.substr(slash + 1));
        if (!parts || *parts <= 0) return {};
        *number /= *parts;
    }
    if (!number || !(*number >= 0) || !std::isfinite(*number)) return {};
    at_ += 1;
    return number;
}

base::Result<rules::DiceExpression> Words::take_dice() {
    std::string text;
    std::size_t end = at_;
    while (end < words_.size() && has_only_dice_letters(words_[end])) {
        const std::string& word = words_[end];
        if (!text.empty() && !is_sign(text.back()) && !is_sign(word.front())) break;
        text += word;
        end += 1;
    }
    if (text.empty()) text = next();
    auto dice = rules::parse_dice(text);
    if (dice.ok()) at_ = end;
    return dice;
}

std::optional<std::string> Words::take_key(const std::vector<std::string>& keys) {
    std::string joined;
    std::optional<std::string> longest;
    std::size_t end = at_;
    for (std::size_t at = at_; at < words_.size(); ++at) {
        joined += (joined.empty() ? "" : "_") + words_[at];
        std::replace(joined.begin(), joined.end(), '-', '_');
        if (std::find(keys.begin(), keys.end(), joined) == keys.end()) continue;
        longest = joined;
        end = at + 1;
    }
    if (longest) at_ = end;
    return longest;
}

std::string Words::take_rest() {
    std::string rest;
    for (; at_ < words_.size(); ++at_)
        rest += (rest.empty() ? "" : " ") + words_[at_];
    return rest;
}

std::string decimal_text(double number, int digits) {
    std::array<char, 64> text{};
    const auto [end, error] = std::to_chars(
        text.data(), text.data() + text.size(), number, std::chars_format::fixed, digits
    );
    if (error != std::errc()) return "out of range";
    std::string words(text.data(), end);
    if (words.find('.') == std::string::npos) return words;
    while (words.back() == '0')
        words.pop_back();
    if (words.back() == '.') words.pop_back();
    return words == "-0" ? "0" : words;
}

std::string precise_percent(double chance) {
    constexpr double least = 0.001;
    constexpr double rounding = 1e-12;
    if (chance > rounding && chance < least) return "under 0.1 %";
    if (chance < 1.0 - rounding && chance > 1.0 - least) return "over 99.9 %";
    return decimal_text(chance * 100.0, 1) + " %";
}

std::string counted(int count, const std::string& noun) {
    return std::to_string(count) + " " + noun + (count == 1 ? "" : "s");
}

} // namespace game
