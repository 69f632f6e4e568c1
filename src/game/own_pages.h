// The GM's own pages beside the reference.
#pragma once

#include "base/id.h"
#include "base/unknown_fields.h"

#include <cstdint>
#include <string>
#include <vector>

namespace game {

using base::Id;

struct OwnPage {
    Id id = base::no_id;
    std::string title;
    std::string text;
    base::UnknownFields unknown{};

    bool operator==(const OwnPage&) const = default;
};

struct OwnPages {
    std::vector<OwnPage> pages;
    Id next_id = 1;
    base::UnknownFields unknown{};

    bool operator==(const OwnPages&) const = default;
};

} // namespace game
