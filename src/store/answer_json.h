// An answer as JSON text, for scripts. The form is lasting; the version counts changes of meaning:
//
//     {
//       "format": "tablewick-answer",
//       "lines": ["level 7: 23, hard +2"],
//       "source": "GM Core (ORC), table DCs by Level",
//       "title": "DC 25",
//       "values": {"dc": 25},
//       "version": 1
//     }
//
// Keys are sorted. Chances and means are objects: {"decimal": 0.35, "exact": "7/20"}, without
// "exact" where no fraction is known; decimals are rounded to 12 digits. `values` is for programs,
// `lines` for people and may be worded anew.
#pragma once

#include "game/answer.h"

#include <string>

namespace store {

// One JSON object over several lines, with a line feed at the end.
std::string answer_json(const game::Answer& answer);

} // namespace store
