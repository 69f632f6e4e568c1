// The time of the world outside the game, as text: for history lines and names of files.
#pragma once

#include <string>

namespace store {

// UTC, "2026-01-31T19:04:05Z".
std::string utc_now();

// The same moment as a part of a file name, which some file systems want without colons:
// "2026-01-31T19-04-05Z".
std::string file_stamp(const std::string& utc);

} // namespace store
