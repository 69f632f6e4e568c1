// Parts of the campaign as JSON values and back. For the files of this folder; everybody else reads
// and writes whole campaigns (campaign_json.h).
#pragma once

#include "game/campaign.h"
#include "store/json_fields.h"

#include <string_view>

namespace store {

// Defined for Campaign, its sections, Combatant, Character, Creature, TableRoll
// and HistoryLine. `left_out`
// names one key of the outermost object that is not written.
template <class Part>
Json to_json(const Part& part, std::string_view left_out = {});

// Fills a default-constructed part; problems carry pointers that begin with `pointer`.
template <class Part>
Part from_json(const Json& value, Problems& problems, const std::string& pointer);

} // namespace store
