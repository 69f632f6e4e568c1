// Scenes and preferences in the person's configuration folder: read once, written by a thread of
// their own whenever they have changed, so that drawing never waits for a disk.
#pragma once

#include "app/shell.h"

#include <condition_variable>
#include <filesystem>
#include <map>
#include <mutex>
#include <string>
#include <thread>
#include <vector>

namespace app {

struct ReadSettings {
    Settings settings;
    std::vector<std::string> complaints;
};

// Files that are not there give the usual settings; broken ones too, with a sentence each.
ReadSettings read_settings(const std::filesystem::path& folder);

// Replaces a file whole: written beside it, flushed to the disk, and renamed.
bool replace_file(const std::filesystem::path& file, const std::string& text);

class SettingsWriter {
public:
    SettingsWriter(std::filesystem::path folder, Settings as_read);
    ~SettingsWriter(); // what is not yet written is written now
    SettingsWriter(const SettingsWriter&) = delete;
    SettingsWriter& operator=(const SettingsWriter&) = delete;

    // Called after every frame; does nothing while nothing has changed.
    void keep(const Settings& settings);
    // A sentence when the last writing failed; empty otherwise. Once per failure.
    std::string take_complaint();

private:
    void run();

    std::filesystem::path folder_;
    Settings kept_;
    std::mutex mutex_;
    std::condition_variable wake_;
    std::map<std::string, std::string> waiting_; // file name to text
    std::string complaint_;
    bool is_over_ = false;
    std::thread thread_;
};

} // namespace app
