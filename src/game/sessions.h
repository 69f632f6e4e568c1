// Sessions: the plan and the running notes of each evening.
#pragma once

#include "base/id.h"
#include "base/unknown_fields.h"

#include <cstdint>
#include <string>
#include <vector>

namespace game {

using base::Id;

struct Session {
    Id id = base::no_id;
    int number = 1;
    std::string title;
    base::UnknownFields unknown{};

    bool operator==(const Session&) const = default;
};

struct Sessions {
    std::vector<Session> sessions; // oldest first
    Id current = base::no_id;
    Id next_id = 1; // for sessions and what stands in them
    base::UnknownFields unknown{};

    bool operator==(const Sessions&) const = default;
};

} // namespace game
