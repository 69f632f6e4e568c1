#include "game/name_growing.h"

#include "base/unicode.h"
#include "game/name_sound.h"

#include <algorithm>
#include <optional>

namespace game {

namespace {

constexpr int tries_a_name = 300; // a few thousand steps, far below a tenth of a second

char32_t drawn_letter(const std::map<char32_t, int>& counts, rules::Dice& dice) {
    int total = 0;
    for (const auto& [letter, count] : counts)
        total += count;
    int rolled = dice.roll(total);
    for (const auto& [letter, count] : counts) {
        rolled -= count;
        if (rolled <= 0) return letter;
    }
    return 0;
}

bool has_three_in_a_row(std::u32string_view letters) {
    for (std::size_t at = 2; at < letters.size(); ++at)
        if (letters[at] == letters[at - 1] && letters[at] == letters[at - 2]) return true;
    return false;
}

bool are_phrases(const std::vector<std::string>& names) {
    const auto phrases = std::count_if(names.begin(), names.end(), [](const std::string& name) {
        return name.find(' ') != std::string::npos;
    });
    return static_cast<std::size_t>(phrases) * 2 > names.size();
}

const std::string& any_of(const std::vector<std::string>& names, rules::Dice& dice) {
    return names[static_cast<std::size_t>(dice.roll(static_cast<int>(names.size())) - 1)];
}

// A few names of two words would grow words that run into each other.
std::vector<std::string> single_words(std::vector<std::string> names) {
    std::erase_if(names, [](const std::string& name) {
        return name.find(' ') != std::string::npos;
    });
    return names;
}

// The beginning of one and the last word of another.
std::string crossed(const std::vector<std::string>& names, rules::Dice& dice) {
    const std::string& first = any_of(names, dice);
    const std::string& second = any_of(names, dice);
    const std::size_t cut = first.rfind(' ');
    const std::size_t word = second.rfind(' ');
    if (cut == std::string::npos || word == std::string::npos) return {};
    return first.substr(0, cut) + second.substr(word);
}

std::string
grown_once(const std::vector<std::string>& names, const NameChain& chain, rules::Dice& dice) {
    if (chain.order == 0) return crossed(names, dice);
    const std::u32string letters = walk(chain, dice);
    if (letters.size() < chain.shortest || letters.size() > chain.longest) return {};
    if (has_three_in_a_row(letters)) return {};
    return base::capitalised(base::to_utf8(letters));
}

} // namespace

NameChain name_chain(const std::vector<std::string>& names, std::size_t order) {
    NameChain chain;
    chain.order = order;
    for (const std::string& name : names) {
        const std::u32string letters = base::code_points(base::folded(name));
        if (letters.empty()) continue;
        chain.longest = std::max(chain.longest, letters.size());
        chain.shortest =
            chain.shortest == 0 ? letters.size() : std::min(chain.shortest, letters.size());
        for (std::size_t at = 0; at <= letters.size(); ++at) {
            const std::size_t from = at > order ? at - order : 0;
            chain.follows[letters.substr(from, at - from)][at < letters.size() ? letters[at] : 0] +=
                1;
        }
    }
    return chain;
}

std::u32string walk(const NameChain& chain, rules::Dice& dice) {
    std::u32string name;
    while (name.size() <= chain.longest) {
        const std::size_t from = name.size() > chain.order ? name.size() - chain.order : 0;
        const auto found = chain.follows.find(name.substr(from));
        if (found == chain.follows.end()) break;
        const char32_t letter = drawn_letter(found->second, dice);
        if (letter == 0) break;
        name.push_back(letter);
    }
    return name;
}

base::Result<std::vector<std::string>> grow_names(
    const std::vector<std::string>& names,
    const NamesInPlay& in_play,
    const std::set<std::string>& grown,
    const std::set<std::u32string>& barred,
    std::size_t count,
    rules::Dice& dice
) {
    if (names.size() < names_to_grow_from)
        return base::Error{
            base::ErrorKind::not_possible,
            "This list is too small to grow names from; it needs " +
                std::to_string(names_to_grow_from) + " names.",
            {},
            {}};
    // Three letters back keep the words of a list pronounceable; in a short list they would mostly
    // say its names again, so two must do there.
    constexpr std::size_t long_list = 100;
    const std::size_t order = names.size() >= long_list ? 3 : 2;
    NameChain chain;
    chain.order = 0;
    if (!are_phrases(names)) chain = name_chain(single_words(names), order);
    std::set<std::string> known = grown;
    for (const std::string& name : names)
        known.insert(base::folded(name));
    std::vector<std::string> fresh;
    const int tries = tries_a_name * static_cast<int>(count);
    for (int attempt = 0; attempt < tries && fresh.size() < count; ++attempt) {
        const std::string name = grown_once(names, chain, dice);
        if (name.empty() || barred.count(initial_of(name)) > 0) continue;
        if (known.count(base::folded(name)) > 0) continue;
        if (in_play.check(name).clash != NameClash::none) continue;
        known.insert(base::folded(name));
        fresh.push_back(name);
    }
    if (fresh.empty())
        return base::Error{
            base::ErrorKind::not_possible,
            "Nothing new grows from this list any more; its names are too much alike or too few.",
            {},
            {}};
    return fresh;
}

} // namespace game
