// The names of the files that stand beside a campaign file.
#pragma once

#include "store/files.h"

#include <string>

namespace store {

struct StorePaths {
    Path file;      // NAME.json, symbolic links resolved
    Path temporary; // the next NAME.json while it is being written
    Path journal;
    Path temporary_journal;
    Path backups; // a folder
    Path lock;

    // NAME.WORD-STAMP.json beside the campaign file.
    Path beside(const std::string& word, const std::string& stamp) const;
    Path aside(const std::string& stamp) const; // NAME.journal.aside-STAMP
};

StorePaths store_paths(const Path& campaign_file);

// The path itself if nothing stands there, else with "-2", "-3" ... before ".json".
Path unused(Files& files, const Path& path);

} // namespace store
