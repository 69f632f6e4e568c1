// A ready list of names, as it comes with the program: assets/names, one culture or kind a file.
#pragma once

#include "game/register.h"

#include <string>
#include <vector>

namespace game {

struct ReadyNameList {
    std::string key;   // "hill_folk", lasting: campaigns name it
    std::string title; // "Hill folk, given names"
    Kind kind = Kind::person;
    std::string about; // one line: who bears these names, how they sound
    std::string source;
    std::vector<std::string> names; // no two alike

    bool operator==(const ReadyNameList&) const = default;
};

} // namespace game
