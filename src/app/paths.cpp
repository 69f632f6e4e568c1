#include "app/paths.h"

#include <cstdlib>
#include <string>
#include <system_error>

namespace app {

namespace {

namespace fs = std::filesystem;

// The specification asks to ignore values that are not absolute paths.
fs::path folder_of(const char* variable, const char* below_home) {
    const char* value = std::getenv(variable); // NOLINT(concurrency-mt-unsafe): before any thread
    if (value != nullptr && fs::path(value).is_absolute()) return fs::path(value) / "tablewick";
    const char* home = std::getenv("HOME"); // NOLINT(concurrency-mt-unsafe): as above
    return fs::path(home == nullptr || *home == '\0' ? "." : home) / below_home / "tablewick";
}

fs::path program_folder() {
    std::error_code error;
    const fs::path program = fs::read_symlink("/proc/self/exe", error);
    return error ? fs::current_path(error) : program.parent_path();
}

} // namespace

fs::path config_folder() {
    return folder_of("XDG_CONFIG_HOME", ".config");
}

fs::path data_folder() {
    return folder_of("XDG_DATA_HOME", ".local/share");
}

fs::path assets_folder() {
    std::error_code error;
    const fs::path installed = program_folder() / ".." / "share" / "tablewick" / "assets";
    if (fs::is_directory(installed, error)) return fs::weakly_canonical(installed, error);
    return TABLEWICK_SOURCE_ASSETS;
}

base::Result<fs::path> own_demo() {
    const fs::path own = data_folder() / "demo_campaign.json";
    std::error_code error;
    if (fs::exists(own, error)) return own;
    fs::path source = TABLEWICK_DEMO_CAMPAIGN;
    if (!fs::exists(source, error)) source = assets_folder().parent_path() / "demo_campaign.json";
    const auto refused = [&](const fs::path& place, std::string what) {
        return base::Error{
            base::ErrorKind::cannot_write,
            std::move(what) + " (" + error.message() + ").",
            {place.string(), 0, 0, {}},
            "Name a campaign to open, or make one with --new FILE.json."};
    };
    fs::create_directories(own.parent_path(), error);
    if (error) return refused(own.parent_path(), "The folder for your data cannot be made");
    // Copied beside and renamed, so that a copy that stops half-way is never taken for the demo.
    const fs::path half = own.string() + ".new";
    fs::copy_file(source, half, fs::copy_options::overwrite_existing, error);
    if (!error) fs::permissions(half, fs::perms::owner_write, fs::perm_options::add, error);
    if (!error) fs::rename(half, own, error);
    if (error) return refused(source, "The demo campaign cannot be copied");
    return own;
}

} // namespace app
