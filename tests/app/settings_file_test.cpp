#include "app/settings_file.h"

#include <doctest/doctest.h>

#include <fstream>
#include <sys/stat.h>
#include <unistd.h>

namespace {

namespace fs = std::filesystem;

// A folder of its own for each test, gone afterwards.
class Folder {
public:
    explicit Folder(const std::string& name)
        : path(fs::temp_directory_path() / ("tablewick-" + name + std::to_string(::getpid()))) {
        fs::remove_all(path);
    }

    ~Folder() { fs::remove_all(path); }

    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    const fs::path path;
};

} // namespace

TEST_CASE("settings file: without files everything is as usual, and nothing is complained about") {
    const Folder folder("none");
    const app::ReadSettings read = app::read_settings(folder.path);
    CHECK(read.settings == app::Settings());
    CHECK(read.complaints.empty());
}

TEST_CASE("settings file: what changed is there at the next start") {
    const Folder folder("kept");
    app::Settings settings;
    {
        app::SettingsWriter writer(folder.path, settings);
        settings.preferences.text_scale_percent = 130;
        settings.scenes.current = "roam";
        app::close_panel(settings.scenes.arrangements["fight"], "close_up");
        writer.keep(settings);
        CHECK(writer.take_complaint().empty());
    }
    const app::ReadSettings read = app::read_settings(folder.path);
    CHECK(read.settings.preferences == settings.preferences);
    CHECK(read.settings.scenes.current == "roam");
    CHECK_FALSE(app::is_open(read.settings.scenes.arrangements.at("fight"), "close_up"));
    CHECK(read.complaints.empty());
}

TEST_CASE("settings file: nothing is written while nothing changes") {
    const Folder folder("quiet");
    {
        app::SettingsWriter writer(folder.path, app::Settings());
        writer.keep(app::Settings());
    }
    CHECK_FALSE(fs::exists(folder.path));
}

TEST_CASE("settings file: a broken file is put aside, not written over") {
    const Folder folder("broken");
    fs::create_directories(folder.path);
    std::ofstream(folder.path / "scenes.json") << "{ by hand";
    const app::ReadSettings read = app::read_settings(folder.path);
    CHECK(read.settings == app::Settings());
    CHECK(read.complaints.size() == 1);
    CHECK(fs::exists(folder.path / "scenes.json.broken"));
}

TEST_CASE("settings file: a folder that cannot be made is complained about, once") {
    const Folder folder("refused");
    std::ofstream(folder.path) << "a file stands where the folder would be";
    app::Settings settings;
    std::string complaint;
    app::SettingsWriter writer(folder.path, settings);
    settings.preferences.is_touch = true;
    writer.keep(settings);
    for (int tries = 0; tries < 2000 && complaint.empty(); ++tries) {
        ::usleep(5000);
        complaint = writer.take_complaint();
    }
    CHECK(complaint.find("cannot be kept") != std::string::npos);
    CHECK(writer.take_complaint().empty());
    fs::remove(folder.path);
}
