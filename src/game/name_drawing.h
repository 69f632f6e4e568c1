// The next good name of a list: not in play, not to be taken for one in play, and not beginning
// like those that were just given.
#pragma once

#include "game/name_lists.h"
#include "game/names_in_play.h"
#include "rules/dice.h"

#include <set>
#include <string>
#include <vector>

namespace game {

// A list to draw from, ready or the GM's own.
struct NameSource {
    std::string key;   // of a ready list; the name of an own one. UsedName::list holds it.
    std::string title; // as shown
    Kind kind = Kind::person;
    std::string about;
    const std::vector<std::string>* names = nullptr; // of the ready list or the campaign
    Id own = base::no_id;                            // the own list, if it is one
};

// Own lists first, then the ready ones. Points into both arguments.
std::vector<NameSource>
name_sources(const std::vector<ReadyNameList>& ready, const std::vector<NameList>& own);

// What a list is called, from what UsedName::list holds.
std::string list_title(const std::vector<ReadyNameList>& ready, const std::string& key);

// Letters that were used to begin a name lately. Which names were given on this real evening is not
// recorded; the last twelve are about what players still have in their ears, and the in-world day
// often lasts an evening.
inline constexpr std::size_t names_in_the_ear = 12;

struct RecentInitials {
    std::set<std::u32string> last;  // of the last twelve used names
    std::set<std::u32string> today; // of all used on this in-world day
};

RecentInitials recent_initials(const NameBook& book, std::int64_t day);

// What the GM wants of the next names.
struct NameWishes {
    std::set<std::u32string> barred; // initials, as of initial_of
    bool allows_similar = false;     // also names that could be taken for one in play
    std::set<std::string> passed;    // folded; offered before and not wanted
};

// What is left of a list under these wishes. Names that fit, by how fresh their initial is.
struct NamesLeft {
    std::vector<std::string> fresh;     // initial neither among the last twelve nor of today
    std::vector<std::string> repeating; // of today, but not among the last twelve
    std::vector<std::string> echoing;   // among the last twelve
    std::size_t used = 0;               // in play themselves
    std::size_t similar = 0;            // left out because they look or sound like one in play
    std::size_t barred = 0;
    std::size_t passed = 0;

    std::size_t size() const { return fresh.size() + repeating.size() + echoing.size(); }
};

NamesLeft names_left(
    const std::vector<std::string>& names,
    const NamesInPlay& in_play,
    const RecentInitials& recent,
    const NameWishes& wishes
);

// Up to `count` of them in random order, freshest initials first. Those drawn and the ones already
// `beside` them neither begin alike nor look or sound alike, as long as enough are left.
std::vector<std::string> draw_names(
    const NamesLeft& left,
    std::size_t count,
    const std::vector<std::string>& beside,
    rules::Dice& dice
);

// Names in the manner of this one: shared pairs of letters, a like ending, a like length. Up to
// `count`, drawn from the nearest three times as many.
std::vector<std::string> draw_names_like(
    const NamesLeft& left, const std::string& name, std::size_t count, rules::Dice& dice
);

// How much two names are of one manner, 0 to 1.
double manner_shared(std::string_view one, std::string_view other);

// Why nothing is left, in one sentence.
std::string nothing_left_text(const NamesLeft& left);

} // namespace game
