// Opening a campaign: lock, file, journal, backups. Ends in a campaign to work on and plain
// sentences about what happened, or in an Error when there is nothing to open. A file that cannot
// be read is never written over: a backup is opened read-only instead.
#pragma once

#include "store/campaign_json.h"
#include "store/campaign_writer.h"

#include <optional>
#include <string>
#include <vector>

namespace store {

struct OpenedCampaign {
    LoadedCampaign loaded;
    std::vector<std::string> messages; // for the person, one or two sentences each
    std::string read_only_cause;       // empty: may be written
    StorePaths paths;
    std::optional<WriterStart> start; // none when read-only
};

// `holder` is what other programs are told: "process 4711 on lamp, since 2026-01-31T19:04:05Z".
base::Result<OpenedCampaign>
open_campaign(Files& files, const Path& path, const std::string& holder, const std::string& stamp);

// This process, in the words of the lock.
std::string holder_text(const std::string& now);

} // namespace store
