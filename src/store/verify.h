// `--verify`: says whether a campaign can be opened, and what is in it or wrong with it.
// Reads only.
#pragma once

#include "base/result.h"
#include "game/campaign.h"
#include "rules/rulebook.h"

#include <filesystem>
#include <string>
#include <vector>

namespace store {

struct VerifyReport {
    bool is_good = false;
    std::string text; // whole lines
};

// A summary, or the first ten problems, each with line, column and JSON pointer.
VerifyReport
verify_campaign(const std::filesystem::path& path, const std::filesystem::path& assets_folder);

// What game::find_problems says, with file, line and column found in the text.
std::vector<base::Error> problems_in(
    const game::Campaign& campaign,
    const rules::Rulebook& rulebook,
    std::string_view text,
    const std::string& file
);

} // namespace store
