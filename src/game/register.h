// The Register: people, places, creatures, items and factions of the campaign, one short sheet
// each.
#pragma once

#include "base/id.h"
#include "base/unknown_fields.h"

#include <cstdint>
#include <string>
#include <vector>

namespace game {

using base::Id;

enum class Kind { person, place, creature, item, faction };

struct RegisterEntry {
    Id id = base::no_id;
    std::string name;
    Kind kind = Kind::person;
    std::string summary;            // one line: who or what it is
    std::string notes;              // as long as the GM likes
    Id place = base::no_id;         // of the Register: where it is found
    std::string attitude;           // towards the party, free text
    std::int64_t first_met_day = 0; // running day of the campaign; only if is_met
    bool is_met = false;
    base::UnknownFields unknown{};

    bool operator==(const RegisterEntry&) const = default;
};

struct Register {
    std::vector<RegisterEntry> entries;
    Id next_id = 1;
    base::UnknownFields unknown{};

    bool operator==(const Register&) const = default;
};

} // namespace game
