// Names: the GM's own lists, and which names were given to whom.
#pragma once

#include "base/id.h"
#include "base/unknown_fields.h"
#include "game/register.h"

#include <cstdint>
#include <string>
#include <vector>

namespace game {

using base::Id;

// A list the GM wrote, pasted or imported, beside the ready ones.
struct NameList {
    Id id = base::no_id;
    std::string name;
    Kind kind = Kind::person; // what its names are given to
    std::vector<std::string> names;
    base::UnknownFields unknown{};

    bool operator==(const NameList&) const = default;
};

// A name that was given away.
struct UsedName {
    Id id = base::no_id;
    std::string name;
    std::string list; // key or name of the list it came from; may be empty
    std::string who;  // "ferrywoman with one eye"
    std::string where;
    std::int64_t day = 0;   // in-world, running day of the campaign
    Id entry = base::no_id; // of the Register
    base::UnknownFields unknown{};

    bool operator==(const UsedName&) const = default;
};

// A name kept for later; it goes when it is used.
struct FavouriteName {
    std::string name;
    std::string list; // as in UsedName
    base::UnknownFields unknown{};

    bool operator==(const FavouriteName&) const = default;
};

struct NameBook {
    std::vector<UsedName> used; // oldest first
    std::vector<NameList> lists;
    std::vector<FavouriteName> favourites;
    Id next_id = 1; // for used names and lists
    base::UnknownFields unknown{};

    bool operator==(const NameBook&) const = default;
};

} // namespace game
