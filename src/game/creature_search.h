// Finding a creature in the library or on the shelf: by the start of a word of its name, one slip
// of the finger forgiven, and by what it is and can do. Under 1 ms for 1,000 creatures.
#pragma once

#include "game/campaign.h"
#include "game/library_creature.h"
#include "rules/rulebook.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace game {

// How a name answers what was typed, best first.
enum class NameMatch {
    whole,       // it is the name
    start,       // the name starts so
    word_starts, // each typed word starts a word of the name, in any order
    inside,      // each typed word stands somewhere in the name
    one_slip,    // as word_starts with one letter wrong, missing, too much or swapped
};

// None: it does not answer. Upper and lower case are alike; nothing typed answers every name with
// `start`. A slip is forgiven in typed words of four letters or more.
std::optional<NameMatch> name_match(std::string_view name, std::string_view typed);

enum class CreatureOrder { best_match, by_name, by_rating };

// Empty and unset parts let every creature pass.
struct CreatureQuery {
    std::string text;
    std::optional<double> rating_min; // challenge rating (srd5) or level (four-degree)
    std::optional<double> rating_max;
    std::string type;                                // "dragon"
    std::string speed;                               // "fly": moves so at all
    std::string damage_type;                         // dealt by an attack or after a failed save
    CreatureOrder order = CreatureOrder::best_match; // equal ones go by name

    bool operator==(const CreatureQuery&) const = default;
};

// What there is to ask for, each list sorted and without repeats.
struct LibraryWords {
    std::vector<std::string> types;
    std::vector<std::string> speeds;
    std::vector<std::string> damage_types; // of attacks and of effects after a failed save
    std::vector<double> ratings;

    bool operator==(const LibraryWords&) const = default;
};

LibraryWords library_words(const std::vector<LibraryCreature>& creatures);

// Places in the list, in the order asked for.
std::vector<std::size_t>
search_creatures(const std::vector<LibraryCreature>& creatures, const CreatureQuery& query);

// The same for the shelf.
std::vector<std::size_t>
search_shelf(const CreatureShelf& shelf, rules::Family family, const CreatureQuery& query);

} // namespace game
