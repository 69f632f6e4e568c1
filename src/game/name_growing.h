// New names in the manner of a list: a Markov chain over its letters; where names are made of
// several words, their beginnings and their last words put together anew.
#pragma once

#include "base/result.h"
#include "game/names_in_play.h"
#include "rules/dice.h"

#include <map>
#include <set>
#include <string>
#include <vector>

namespace game {

// How often which letter follows which letters. Contexts are `order` letters long, shorter at the
// beginning of a name; the letter 0 ends a name. Letters are code points of the folded names, so a
// letter with its mark is one.
struct NameChain {
    std::size_t order = 2;
    std::map<std::u32string, std::map<char32_t, int>> follows;
    std::size_t shortest = 0; // letters of the shortest and the longest name of the list
    std::size_t longest = 0;
};

NameChain name_chain(const std::vector<std::string>& names, std::size_t order);

// One walk along the chain: each letter as likely as it is in the list. In lower case; may be a
// name of the list, and is cut when it grows past `longest`.
std::u32string walk(const NameChain& chain, rules::Dice& dice);

// Fewer names than this show no manner to grow from.
inline constexpr std::size_t names_to_grow_from = 8;

// Up to `count` new names: none of the list, none in play or like one in play, none in `grown`
// (folded), none beginning with a barred initial; each as long as names of the list are. Ends after
// a fixed number of tries. Errors (not_possible): the list is too small, or nothing new came.
base::Result<std::vector<std::string>> grow_names(
    const std::vector<std::string>& names,
    const NamesInPlay& in_play,
    const std::set<std::string>& grown,
    const std::set<std::u32string>& barred,
    std::size_t count,
    rules::Dice& dice
);

} // namespace game
