// NAME.backups: a copy of the campaign file for each session and each hour of play, thinned to 24
// hourly and 30 daily ones. Names: STAMP.json, and STAMP-version-N.json for the original of a
// migrated file, which is never thinned. Files with other names are left alone.
#pragma once

#include "store/campaign_json.h"
#include "store/store_paths.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace store {

inline constexpr std::size_t hourly_backups_kept = 24;
inline constexpr std::size_t daily_backups_kept = 30;

// Which of these names (any order) may go. Times are those in the names.
std::vector<std::string> thinned_out(std::vector<std::string> names);

// Adds a backup with this content unless the newest one has it already, then thins.
base::Result<base::Nothing>
add_backup(Files& files, const StorePaths& paths, std::string_view text, const std::string& stamp);

// Keeps the original of a file that was migrated from an older version.
base::Result<base::Nothing> keep_original(
    Files& files,
    const StorePaths& paths,
    std::string_view text,
    int version,
    const std::string& stamp
);

struct GoodBackup {
    LoadedCampaign loaded;
    Path path;
};

// The newest backup that can be read.
std::optional<GoodBackup> newest_good_backup(Files& files, const StorePaths& paths);

} // namespace store
