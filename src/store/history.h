// The readable history: lines that the document writes with every edit, undo and redo.
#pragma once

#include "game/campaign.h"
#include "store/json.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace store {

inline constexpr std::size_t history_lines_kept = 5000;

// The line for a change that brought the campaign to this revision.
game::HistoryLine history_line(
    const game::Campaign& campaign,
    std::uint64_t revision,
    const std::string& label,
    std::string written_at
);

// Appends the line (or puts it in the place of the last one), drops the oldest above the limit, and
// returns the JSON Patch operations for that.
Json add_to_history(game::History& history, game::HistoryLine line, bool replaces_last);

// Valid UTF-8, so that it can stand in a JSON text.
bool is_text(std::string_view text);

// Every text inside the value is valid UTF-8.
bool is_writable_text(const Json& value);

// At most 500 bytes, cut between characters.
std::string short_label(const std::string& label);

} // namespace store
