// The calendar of the world as plain data; what is computed from it: calendar_dates.h.
#pragma once

#include "base/id.h"
#include "base/unknown_fields.h"

#include <cstdint>
#include <string>
#include <vector>

namespace game {

using base::Id;

struct Calendar {
    std::string name;
    base::UnknownFields unknown{};

    bool operator==(const Calendar&) const = default;
};

} // namespace game
