#include "store/backups.h"

#include <algorithm>
#include <set>

namespace store {

using base::Nothing;
using base::Result;

namespace {

constexpr std::string_view ending = ".json";
constexpr std::string_view stamp_pattern = "0000-00-00T00-00-00Z";
constexpr std::size_t day_part = 10;  // "2026-01-31"
constexpr std::size_t hour_part = 13; // "2026-01-31T19"

bool begins_with_stamp(const std::string& name) {
    if (name.size() < stamp_pattern.size() + ending.size()) return false;
    for (std::size_t i = 0; i < stamp_pattern.size(); ++i) {
        const bool is_digit = name[i] >= '0' && name[i] <= '9';
        if (stamp_pattern[i] == '0' ? !is_digit : name[i] != stamp_pattern[i]) return false;
    }
    return true;
}

bool is_backup(const std::string& name) {
    return begins_with_stamp(name) && name.substr(name.size() - ending.size()) == ending;
}

bool may_be_thinned(const std::string& name) {
    return is_backup(name) && name.find("-version-") == std::string::npos;
}

// By the stamp; of the same second the longer name ("-2") is the later one.
bool is_newer(const std::string& a, const std::string& b) {
    const int by_stamp = a.compare(0, stamp_pattern.size(), b, 0, stamp_pattern.size());
    if (by_stamp != 0) return by_stamp > 0;
    return a.size() != b.size() ? a.size() > b.size() : a > b;
}

// Newest first.
std::vector<std::string> backups_in(Files& files, const Path& folder) {
    auto names = files.list(folder);
    if (!names) return {};
    std::vector<std::string> backups = std::move(names).value();
    std::erase_if(backups, [](const std::string& name) { return !is_backup(name); });
    std::sort(backups.begin(), backups.end(), is_newer);
    return backups;
}

Result<Nothing> write_backup(
    Files& files, const StorePaths& paths, const std::string& name, std::string_view text
) {
    if (auto made = files.make_folder(paths.backups); !made) return made;
    if (auto synced = files.sync_folder(paths.file.parent_path()); !synced) return synced;
    const Path target = unused(files, paths.backups / name);
    return write_whole(files, paths.backups / (name + ".writing"), target, text);
}

} // namespace

std::vector<std::string> thinned_out(std::vector<std::string> names) {
    std::erase_if(names, [](const std::string& name) { return !may_be_thinned(name); });
    std::sort(names.begin(), names.end(), is_newer);
    std::set<std::string> hours;
    std::set<std::string> days;
    std::vector<std::string> out;
    for (const std::string& name : names) {
        // The newest of each hour and of each day counts for it.
        const bool is_hourly =
            hours.size() < hourly_backups_kept && hours.insert(name.substr(0, hour_part)).second;
        const bool is_daily =
            days.size() < daily_backups_kept && days.insert(name.substr(0, day_part)).second;
        if (!is_hourly && !is_daily) out.push_back(name);
    }
    return out;
}

Result<Nothing>
add_backup(Files& files, const StorePaths& paths, std::string_view text, const std::string& stamp) {
    const std::vector<std::string> there = backups_in(files, paths.backups);
    if (!there.empty()) {
        const auto newest = files.read(paths.backups / there.front());
        if (newest && newest.value() == text) return Nothing{};
    }
    if (auto written = write_backup(files, paths, stamp + ".json", text); !written) return written;
    for (const std::string& name : thinned_out(backups_in(files, paths.backups)))
        if (auto removed = files.remove(paths.backups / name); !removed) return removed;
    return Nothing{};
}

Result<Nothing> keep_original(
    Files& files,
    const StorePaths& paths,
    std::string_view text,
    int version,
    const std::string& stamp
) {
    const std::string name = stamp + "-version-" + std::to_string(version) + ".json";
    return write_backup(files, paths, name, text);
}

std::optional<GoodBackup> newest_good_backup(Files& files, const StorePaths& paths) {
    for (const std::string& name : backups_in(files, paths.backups)) {
        const Path path = paths.backups / name;
        const auto text = files.read(path);
        if (!text) continue;
        CampaignReading reading = read_campaign(text.value(), path.string());
        if (reading.loaded) return GoodBackup{std::move(*reading.loaded), path};
    }
    return std::nullopt;
}

} // namespace store
