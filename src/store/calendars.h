// Reads the ready calendars: assets/calendars/*.json, one calendar a file.
#pragma once

#include "base/result.h"
#include "game/calendar.h"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace store {

struct ReadyCalendars {
    std::vector<game::Calendar> calendars; // by the names of their files
    std::vector<base::Error> errors;       // of files that are left out
};

// One calendar from its text; `file_name` says where something is wrong. Errors: not_json,
// wrong_format, and whatever does not fit together (the first of several), with line and pointer.
base::Result<game::Calendar> read_calendar(std::string_view text, const std::string& file_name);

// All of assets_folder/calendars. A broken file leaves the rest.
ReadyCalendars load_calendars(const std::filesystem::path& assets_folder);

} // namespace store
