#include "app/settings_file.h"

#include "app/print_choices.h"

#include <cerrno>
#include <chrono>
#include <cstdio>
#include <fcntl.h>
#include <fstream>
#include <iterator>
#include <optional>
#include <system_error>
#include <unistd.h>
#include <utility>

namespace app {

namespace {

namespace fs = std::filesystem;

constexpr const char* preferences_file = "preferences.json";
constexpr const char* scenes_file = "scenes.json";
constexpr const char* printing_file = "printing.json";
// A splitter that is dragged changes the scene in every frame; one writing for all of it is enough.
constexpr auto pause_before_writing = std::chrono::milliseconds(300);

std::optional<std::string> text_of(const fs::path& file) {
    std::ifstream stream(file, std::ios::binary);
    if (!stream) return std::nullopt;
    return std::string(std::istreambuf_iterator<char>(stream), {});
}

// A file that cannot be used is put aside before it is written anew.
void set_aside(const fs::path& file) {
    std::error_code ignored;
    fs::rename(file, file.string() + ".broken", ignored);
}

bool write_all(int descriptor, const std::string& text) {
    std::size_t done = 0;
    while (done < text.size()) {
        const ssize_t count = ::write(descriptor, text.data() + done, text.size() - done);
        if (count < 0 && errno == EINTR) continue;
        if (count <= 0) return false;
        done += static_cast<std::size_t>(count);
    }
    return ::fsync(descriptor) == 0;
}

} // namespace

bool replace_file(const fs::path& file, const std::string& text) {
    std::error_code error;
    fs::create_directories(file.parent_path(), error);
    const std::string half = file.string() + ".new";
    const int descriptor = ::open(half.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0644);
    if (descriptor < 0) return false;
    const bool is_written = write_all(descriptor, text);
    const bool is_closed = ::close(descriptor) == 0;
    if (is_written && is_closed && std::rename(half.c_str(), file.c_str()) == 0) return true;
    ::unlink(half.c_str());
    return false;
}

ReadSettings read_settings(const fs::path& folder) {
    ReadSettings read;
    if (const auto text = text_of(folder / preferences_file)) {
        ReadPreferences preferences = preferences_from_json(*text);
        read.settings.preferences = preferences.preferences;
        if (!preferences.complaints.empty()) set_aside(folder / preferences_file);
        read.complaints = std::move(preferences.complaints);
    }
    if (const auto text = text_of(folder / scenes_file)) {
        ReadScenes scenes = scenes_from_json(*text);
        read.settings.scenes = std::move(scenes.scenes);
        if (!scenes.complaints.empty()) set_aside(folder / scenes_file);
        for (std::string& complaint : scenes.complaints)
            read.complaints.push_back(std::move(complaint));
    }
    if (const auto text = text_of(folder / printing_file)) {
        ReadPrintChoices printing = print_choices_from_json(*text);
        read.settings.printing = std::move(printing.choices);
        if (!printing.complaints.empty()) set_aside(folder / printing_file);
        for (std::string& complaint : printing.complaints)
            read.complaints.push_back(std::move(complaint));
    }
    return read;
}

SettingsWriter::SettingsWriter(fs::path folder, Settings as_read)
    : folder_(std::move(folder)), kept_(std::move(as_read)), thread_([this] { run(); }) {}

SettingsWriter::~SettingsWriter() {
    {
        const std::lock_guard lock(mutex_);
        is_over_ = true;
    }
    wake_.notify_all();
    thread_.join();
}

void SettingsWriter::keep(const Settings& settings) {
    if (settings == kept_) return;
    {
        const std::lock_guard lock(mutex_);
        if (settings.preferences != kept_.preferences)
            waiting_[preferences_file] = to_json(settings.preferences);
        if (settings.scenes != kept_.scenes) waiting_[scenes_file] = to_json(settings.scenes);
        if (settings.printing != kept_.printing)
            waiting_[printing_file] = to_json(settings.printing);
    }
    kept_ = settings;
    wake_.notify_all();
}

std::string SettingsWriter::take_complaint() {
    const std::lock_guard lock(mutex_);
    return std::exchange(complaint_, {});
}

void SettingsWriter::run() {
    std::unique_lock lock(mutex_);
    while (true) {
        wake_.wait(lock, [this] { return is_over_ || !waiting_.empty(); });
        if (waiting_.empty()) return;
        wake_.wait_for(lock, pause_before_writing, [this] { return is_over_; });
        const auto texts = std::exchange(waiting_, {});
        lock.unlock();
        std::string failed;
        for (const auto& [name, text] : texts)
            if (!replace_file(folder_ / name, text)) failed = (folder_ / name).string();
        lock.lock();
        if (!failed.empty())
            complaint_ = "Your arrangement and preferences cannot be kept in " + failed +
                         "; they last until you leave.";
    }
}

} // namespace app
